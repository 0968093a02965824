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

    /// <summary>Whether it has what is moved.</summary>
    public virtual bool Takes(Adjustment by) => by.Size_m == 0;

    /// <summary>
    /// With its adjusters moved and put together again, wheel centre at its height and rack in the middle: all points are where they then
    /// stand, camber and toe what the spin axis then makes. Links keep their lengths, points of the knuckle their places in it.
    /// </summary>
    /// <exception cref="ArgumentException">It has no such adjuster.</exception>
    public AdjustedSuspension Adjusted(Adjustment by)
    {
        if (!Takes(by)) throw new ArgumentException("This suspension has no such adjuster.", nameof(by));
        (Pose pose, double share) = AdjustmentWalk.Along(this, by);
        BodyMotion knuckle = new() { Rest = Wheel.Centre, Pose = pose };
        return new(share < 1 ? null : Standing(by, knuckle), knuckle, share);
    }

    internal abstract Mechanism Mechanism();

    /// <summary>What holds the knuckle with its adjusters moved so.</summary>
    internal abstract Constraint[] Constraints(Adjustment by);

    /// <summary>All points where they stand once the knuckle is there.</summary>
    private protected virtual Suspension Standing(Adjustment by, BodyMotion knuckle) => this;

    private protected WheelHeight Height => new(Wheel.Centre, Wheel.Centre);

    private protected FixedLength Link(LinkagePart part, Point inner, Point outer) => Link(part, inner, inner, outer);

    /// <summary>A link as long as between two points, its inner one moved since.</summary>
    private protected FixedLength Link(LinkagePart part, Point inner, Point innerNow, Point outer) =>
        new(part, innerNow, outer, Wheel.Centre, (outer - inner).Length);

    private protected FixedLength TieRod(Point inner, Point outer, Adjustment by) =>
        new(LinkagePart.TieRod, inner, outer, Wheel.Centre, (outer - inner).Length + by.TieRodLonger_m, onRack: true);

    private protected Point Inner(InnerPoint name, Point point, Adjustment by) =>
        by.EccentricPoint == name ? Outward(point, by.EccentricOutward_m) : point;

    private protected Point Outward(Point point, double by_m) => point with { Y = point.Y + Wheel.Outward * by_m };

    private protected LinkageWheel Carried(BodyMotion knuckle)
    {
        (double camber, double toe) = LinkageWheel.Of(knuckle.Direction(Wheel.Axis), Wheel.Outward);
        return new(knuckle.At(Wheel.Centre), Wheel.Radius_m, camber, toe);
    }

    private protected Point? HalfshaftOuterOn(BodyMotion knuckle) => HalfshaftOuter is { } outer ? knuckle.At(outer) : null;
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

    /// <summary>An eccentric bolt at the lower arm; the knuckle turns where its pivot is given.</summary>
    public override bool Takes(Adjustment by) =>
        by.Moves(InnerPoint.LowerArmFront, InnerPoint.LowerArmRear) && (by.KnuckleTurned_rad == 0 || by.KnucklePivot is not null);

    internal override Mechanism Mechanism() => new()
    {
        Constraints = Constraints(Adjustment.None),
        StrutTop = StrutTop,
        StrutBottom = StrutAxisPoint,
        StrutSteers = true,
        Arms = [Arm.Between(LinkagePart.LowerArm, LowerArmFront, LowerArmRear, LowerBallJoint)],
        Rods = [new(LinkagePart.TieRod, TieRodInner, TieRodOuter, OnRack: true)],
        SteeringJoints = (LowerBallJoint, null),
    };

    internal override Constraint[] Constraints(Adjustment by)
    {
        (Point bottom, Point axis) = StrutInKnuckle(by);
        Point across = Point.Left.SquareTo(axis).Unit(), along = axis.Cross(across), top = Outward(StrutTop, by.StrutTopOutward_m);
        return
        [
            Height,
            Link(LinkagePart.LowerArm, LowerArmFront, Inner(InnerPoint.LowerArmFront, LowerArmFront, by), LowerBallJoint),
            Link(LinkagePart.LowerArm, LowerArmRear, Inner(InnerPoint.LowerArmRear, LowerArmRear, by), LowerBallJoint),
            new OnAxis(top, bottom, across, Wheel.Centre), new OnAxis(top, bottom, along, Wheel.Centre),
            TieRod(TieRodInner, TieRodOuter, by),
        ];
    }

    private protected override Suspension Standing(Adjustment by, BodyMotion knuckle) => this with
    {
        Wheel = Carried(knuckle),
        HalfshaftOuter = HalfshaftOuterOn(knuckle),
        LowerArmFront = Inner(InnerPoint.LowerArmFront, LowerArmFront, by),
        LowerArmRear = Inner(InnerPoint.LowerArmRear, LowerArmRear, by),
        LowerBallJoint = knuckle.At(LowerBallJoint),
        StrutTop = Outward(StrutTop, by.StrutTopOutward_m),
        StrutAxisPoint = knuckle.At(StrutInKnuckle(by).Bottom),
        TieRodOuter = knuckle.At(TieRodOuter),
    };

    // The knuckle turns one way against the strut: seen from the knuckle the strut turns the other.
    private (Point Bottom, Point Axis) StrutInKnuckle(Adjustment by)
    {
        Point axis = (StrutTop - StrutAxisPoint).Unit();
        if (by.KnucklePivot is not { } pivot) return (StrutAxisPoint, axis);
        Turn turn = Turn.By(axis.Cross(Wheel.Axis).Unit(), -by.KnuckleTurned_rad);
        return (pivot + turn.Of(StrutAxisPoint - pivot), turn.Of(axis));
    }
}
