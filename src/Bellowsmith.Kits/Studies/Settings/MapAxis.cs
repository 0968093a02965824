using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Settings;

/// <summary>What may run along a map's axis.</summary>
public enum MapVariable
{
    /// <summary>Damper click from fully closed.</summary>
    Click,

    /// <summary>Spring height at drive, set by the thread with the car held where it is, m.</summary>
    Height,

    /// <summary>Gauge pressure at load, the thread left alone, Pa.</summary>
    GaugePressure,

    /// <summary>Free length of the bump stop, m.</summary>
    Stop,

    /// <summary>Driving speed, m/s.</summary>
    Speed,

    /// <summary>Road class, 0 for A.</summary>
    Road,

    /// <summary>Load case, by its place in the car document.</summary>
    Load,
}

/// <summary>One axis: a variable and its values, ascending, in SI or as a place.</summary>
public sealed record MapAxis(MapVariable Variable, IReadOnlyList<double> Values)
{
    private const double SlowestUsual_m_per_s = 20 / 3.6, FastestUsual_m_per_s = 140 / 3.6;

    /// <summary>Whether its values are things rather than amounts: between two of them there is nothing.</summary>
    public bool IsChoice => Variable is MapVariable.Road or MapVariable.Load;

    /// <summary>
    /// Evenly over all a strut can have: measured clicks, the heights spring and data share, 0.4 to 1.6 times the gauge pressure at
    /// drive within the spring's limit, 0.5 to 2 times the stop, 20 to 140 km/h, classes A to E, the car's load cases. A choice has
    /// as many values as there are. Null where the strut has no such thing.
    /// </summary>
    public static MapAxis? Usual(MapVariable variable, RideStrut strut, Car car, int count)
    {
        switch (variable)
        {
            case MapVariable.Click: return strut.Damper.Clicks.Count < 2 ? null : Even(strut.Damper.Clicks[0], strut.Damper.Clicks[^1]);
            case MapVariable.Height: return strut.Case is { } air ? Even(air.LeastHeight_m, air.GreatestHeight_m) : null;
            case MapVariable.GaugePressure: return Drive_Pa(strut) is { } gauge ? Even(0.4 * gauge, Math.Min(1.6 * gauge, strut.Case!.Part.MaxGaugePressure_Pa)) : null;
            case MapVariable.Stop: return strut.Case?.Damper?.BumpStop is { } stop && strut.HasEnds ? Even(0.5 * stop.FreeLength_m, 2 * stop.FreeLength_m) : null;
            case MapVariable.Speed: return Even(SlowestUsual_m_per_s, FastestUsual_m_per_s);
            case MapVariable.Road: return new(variable, Places((int)RoadClass.E + 1));
            default: return new(variable, Places(car.Loads.Count));
        }

        MapAxis Even(double low, double high) => new(variable, [.. Enumerable.Range(0, count).Select(k => count == 1 ? low : low + (high - low) * k / (count - 1))]);
        static double[] Places(int places) => [.. Enumerable.Range(0, places).Select(k => (double)k)];
    }

    private static double? Drive_Pa(RideStrut strut) =>
        strut.DriveHeight_m() is { } height && strut.Case is { } air && InstalledHeight.InstalledHeightStudy.At(air, height).GaugePressure_Pa is var gauge and > 0 ? gauge : null;
}
