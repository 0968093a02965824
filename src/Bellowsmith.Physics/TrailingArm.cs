using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>
/// A wheel fixed to an arm that turns about one axis: across the car a trailing arm, and half of a twist beam while both wheels travel alike;
/// skew a semi-trailing arm. It has no rack.
/// </summary>
public sealed record TrailingArm(LinkageWheel Wheel) : Suspension(Wheel)
{
    public required Point PivotOuter { get; init; }

    public required Point PivotInner { get; init; }

    public required Point StrutTop { get; init; }

    public required Point StrutBottom { get; init; }

    internal override Mechanism Mechanism() => new()
    {
        Constraints = Constraints(Adjustment.None),
        StrutTop = StrutTop,
        StrutBottom = StrutBottom,
    };

    internal override Constraint[] Constraints(Adjustment by)
    {
        Point axis = (PivotOuter - PivotInner).Unit(), across = Point.Up.SquareTo(axis).Unit(), along = axis.Cross(across);
        return
        [
            Height,
            Held(PivotOuter, axis), Held(PivotOuter, across), Held(PivotOuter, along), Held(PivotInner, across), Held(PivotInner, along),
        ];
    }

    private InPlane Held(Point pivot, Point direction) => new(LinkagePart.TrailingArm, pivot, direction, Wheel.Centre);
}
