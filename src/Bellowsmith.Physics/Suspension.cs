using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>
/// The points of one wheel's suspension at rest, m. Links and arms do not stretch, bushes turn freely. Left or right wheel by the
/// sign of its y.
/// </summary>
public abstract record Suspension(LinkageWheel Wheel)
{
    /// <summary>Centre of the halfshaft's inner joint, where there is one.</summary>
    public Point? HalfshaftInner { get; init; }

    /// <summary>Of its outer joint; the wheel centre where not given.</summary>
    public Point? HalfshaftOuter { get; init; }

    internal abstract Mechanism Mechanism();

    private protected WheelHeight Height => new(Wheel.Centre, Wheel.Centre);

    private protected FixedLength Link(LinkagePart part, Point inner, Point outer, bool onRack = false) =>
        new(part, inner, outer, Wheel.Centre, onRack);
}

/// <summary>A strut that steers and guides: its axis, fixed in the knuckle, slides through the top mount; one arm below, one tie rod.</summary>
public sealed record MacPherson(LinkageWheel Wheel) : Suspension(Wheel)
{
    public required Point LowerArmFront { get; init; }

    public required Point LowerArmRear { get; init; }

    public required Point LowerBallJoint { get; init; }

    public required Point StrutTop { get; init; }

    /// <summary>Any point of the knuckle on the strut's axis; strut length is counted from it.</summary>
    public required Point StrutAxisPoint { get; init; }

    public required Point TieRodInner { get; init; }

    public required Point TieRodOuter { get; init; }

    internal override Mechanism Mechanism()
    {
        Point axis = (StrutTop - StrutAxisPoint).Unit();
        Point across = Point.Left.SquareTo(axis).Unit(), along = axis.Cross(across);
        return new()
        {
            Constraints =
            [
                Height,
                Link(LinkagePart.LowerArm, LowerArmFront, LowerBallJoint), Link(LinkagePart.LowerArm, LowerArmRear, LowerBallJoint),
                new OnAxis(StrutTop, StrutAxisPoint, across, Wheel.Centre), new OnAxis(StrutTop, StrutAxisPoint, along, Wheel.Centre),
                Link(LinkagePart.TieRod, TieRodInner, TieRodOuter, onRack: true),
            ],
            StrutTop = StrutTop,
            StrutBottom = StrutAxisPoint,
            StrutSteers = true,
            Arms = [Arm.Between(LinkagePart.LowerArm, LowerArmFront, LowerArmRear, LowerBallJoint)],
            Rods = [new(LinkagePart.TieRod, TieRodInner, TieRodOuter, OnRack: true)],
            SteeringJoints = (LowerBallJoint, null),
        };
    }
}
