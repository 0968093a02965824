using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Settings;

/// <summary>Which ride answer over which two variables; what is on no axis stays as road and setting say.</summary>
/// <param name="Strut">The strut at the load the kit drives with.</param>
/// <param name="Loads">The same at every load case of the car, in the document's order; null where the scales show less than the unsprung mass.</param>
/// <param name="X">Along.</param>
/// <param name="Y">Up; another variable than X.</param>
/// <param name="Show">What shades the map.</param>
/// <param name="Road">The road, where no axis says otherwise.</param>
/// <param name="Setting">The setting, where no axis says otherwise.</param>
public sealed record MapQuestion(
    RideStrut Strut, IReadOnlyList<RideStrut?> Loads, MapAxis X, MapAxis Y, RideQuantity Show, RoadQuestion Road, RideSetting Setting)
{
    /// <summary>The strut, road and setting of one cell.</summary>
    internal Trial At(int column, int row)
    {
        Trial trial = new(Strut, Road, Setting with { Click = Setting.Click ?? Strut.Click });
        trial = With(trial, X.Variable, X.Values[column]);
        return With(trial, Y.Variable, Y.Values[row]);
    }

    /// <summary>Where the present setting stands along a variable; null where the strut has no such thing or cannot stand.</summary>
    public double? Here(MapVariable variable) => variable switch
    {
        MapVariable.Click => Setting.Click ?? Strut.Click,
        MapVariable.Height => Setting.Height_m ?? Strut.DriveHeight_m(),
        MapVariable.GaugePressure => Stand.Of(Strut, Setting with { Click = Setting.Click ?? Strut.Click }, out _)?.Setting.GaugePressure_Pa,
        MapVariable.Stop => Setting.StopFreeLength_m ?? Strut.Case?.Damper?.BumpStop?.FreeLength_m,
        MapVariable.Speed => Road.Speed_m_per_s,
        MapVariable.Road => Road.Surface is RoadOfClass road ? (double)road.Class : null,
        _ => Loads.ToList().FindIndex(load => load?.Load == Strut.Load) is var at and >= 0 ? at : null,
    };

    /// <summary>Whether both are the same cells driven alike, whatever is shown and wherever the setting stands along the axes.</summary>
    public bool DrivesAs(MapQuestion other) => X.Variable == other.X.Variable && Y.Variable == other.Y.Variable
        && X.Values.SequenceEqual(other.X.Values) && Y.Values.SequenceEqual(other.Y.Values) && At(0, 0) == other.At(0, 0);

    private Trial With(Trial trial, MapVariable variable, double value) => variable switch
    {
        MapVariable.Click => trial with { Setting = trial.Setting with { Click = value } },
        MapVariable.Height => trial with { Setting = trial.Setting with { Height_m = value } },
        MapVariable.GaugePressure => trial with { Setting = trial.Setting with { GaugePressure_Pa = value } },
        MapVariable.Stop => trial with { Setting = trial.Setting with { StopFreeLength_m = value } },
        MapVariable.Speed => trial with { Road = trial.Road with { Speed_m_per_s = value } },
        MapVariable.Road => trial with { Road = trial.Road with { Surface = new RoadOfClass((RoadClass)(int)value) } },
        _ => trial with { Strut = Loads[(int)value] },
    };
}
