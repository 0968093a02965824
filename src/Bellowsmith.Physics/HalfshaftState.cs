namespace Bellowsmith.Physics;

/// <summary>A halfshaft between its two joints; the inner one's housing lies across the car.</summary>
/// <param name="Plunge_m">How much longer than at rest: + the shaft is drawn out of the inner joint.</param>
/// <param name="Inner_rad">What the inner joint bends.</param>
/// <param name="Outer_rad">What the outer joint bends.</param>
public sealed record HalfshaftState(double Plunge_m, double Inner_rad, double Outer_rad)
{
    internal static HalfshaftState? Of(Linkage linkage, in BodyMotion knuckle)
    {
        LinkageWheel wheel = linkage.Suspension.Wheel;
        if (linkage.Suspension.HalfshaftInner is not { } inner) return null;
        Point outer = linkage.Suspension.HalfshaftOuter ?? wheel.Centre, shaft = knuckle.At(outer) - inner;
        return new(
            shaft.Length - (outer - inner).Length, shaft.AngleTo_rad(wheel.Outward * Point.Left),
            shaft.AngleTo_rad(knuckle.Direction(wheel.Axis)));
    }
}
