using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>A wheel to be tried in place of another.</summary>
/// <param name="Old">The wheel the car was measured with.</param>
/// <param name="New">The wheel to be tried.</param>
/// <param name="Spacer_m">Between the new wheel and the hub.</param>
/// <param name="Camber_rad">Change of camber at the wheel, top out +, made where the kit says its adjuster is.</param>
public sealed record WheelFitQuestion(RoadWheel Old, RoadWheel New, double Spacer_m = 0, double Camber_rad = 0)
{
    /// <summary>Room asked between wheel and arch.</summary>
    public double ArchMargin_m { get; init; } = ClearanceMargins.Usual.Of_m(MarginKind.TyreToArch);

    /// <summary>Between wheel and strut.</summary>
    public double StrutMargin_m { get; init; } = ClearanceMargins.Usual.Of_m(MarginKind.TyreToStrut);

    /// <summary>Between bellows and tower.</summary>
    public double TowerMargin_m { get; init; } = ClearanceMargins.Usual.Of_m(MarginKind.BellowsToTower);

    /// <summary>With the room a kit asks.</summary>
    public WheelFitQuestion With(ClearanceMargins margins) => this with
    {
        ArchMargin_m = margins.Of_m(MarginKind.TyreToArch),
        StrutMargin_m = margins.Of_m(MarginKind.TyreToStrut),
        TowerMargin_m = margins.Of_m(MarginKind.BellowsToTower),
    };

    public WheelChange Change => new(Old, New, Spacer_m);
}
