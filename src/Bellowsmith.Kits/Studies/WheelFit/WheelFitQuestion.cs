using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>A wheel to be tried in place of another.</summary>
/// <param name="Old">The wheel the car was measured with.</param>
/// <param name="New">The wheel to be tried.</param>
/// <param name="Spacer_m">Between the new wheel and the hub.</param>
/// <param name="Camber_rad">Change of camber at the wheel, top out +, made where the kit says its adjuster is.</param>
public sealed record WheelFitQuestion(RoadWheel Old, RoadWheel New, double Spacer_m = 0, double Camber_rad = 0)
{
    /// <summary>Room asked at arch and tower, [Wheel Clearance Guide 2026]: 6 mm to whatever is no part of the suspension.</summary>
    public double ArchMargin_m { get; init; } = 0.006;

    /// <summary>Room asked at the strut, [Wheel Clearance Guide 2026]: 4 mm to struts, springs, arms and tie rods.</summary>
    public double StrutMargin_m { get; init; } = 0.004;

    public WheelChange Change => new(Old, New, Spacer_m);
}
