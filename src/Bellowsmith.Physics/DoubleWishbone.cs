using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>Two arms, a tie rod (a rack that never moves at a rear axle), and a strut on either arm or on the upright.</summary>
public sealed record DoubleWishbone(LinkageWheel Wheel) : Suspension(Wheel)
{
    public required Point LowerArmFront { get; init; }

    public required Point LowerArmRear { get; init; }

    public required Point LowerBallJoint { get; init; }

    public required Point UpperArmFront { get; init; }

    public required Point UpperArmRear { get; init; }

    public required Point UpperBallJoint { get; init; }

    public required Point TieRodInner { get; init; }

    public required Point TieRodOuter { get; init; }

    public required Point StrutTop { get; init; }

    public required Point StrutBottom { get; init; }

    public required StrutCarrier StrutOn { get; init; }

    /// <summary>An eccentric bolt at either arm, and the tie rod.</summary>
    public override bool Takes(Adjustment by) => !by.MovesStrut
        && by.Moves(InnerPoint.LowerArmFront, InnerPoint.LowerArmRear, InnerPoint.UpperArmFront, InnerPoint.UpperArmRear);

    internal override Mechanism Mechanism()
    {
        Arm lower = Arm.Between(LinkagePart.LowerArm, LowerArmFront, LowerArmRear, LowerBallJoint);
        Arm upper = Arm.Between(LinkagePart.UpperArm, UpperArmFront, UpperArmRear, UpperBallJoint);
        return new()
        {
            Constraints = Constraints(Adjustment.None),
            StrutTop = StrutTop,
            StrutBottom = StrutBottom,
            StrutCarrier = StrutOn switch { StrutCarrier.LowerArm => lower, StrutCarrier.UpperArm => upper, _ => null },
            Arms = [lower, upper],
            Rods = [new(LinkagePart.TieRod, TieRodInner, TieRodOuter, OnRack: true)],
            SteeringJoints = (LowerBallJoint, UpperBallJoint),
        };
    }

    internal override Constraint[] Constraints(Adjustment by) =>
    [
        Height,
        Link(LinkagePart.LowerArm, LowerArmFront, Inner(InnerPoint.LowerArmFront, LowerArmFront, by), LowerBallJoint),
        Link(LinkagePart.LowerArm, LowerArmRear, Inner(InnerPoint.LowerArmRear, LowerArmRear, by), LowerBallJoint),
        Link(LinkagePart.UpperArm, UpperArmFront, Inner(InnerPoint.UpperArmFront, UpperArmFront, by), UpperBallJoint),
        Link(LinkagePart.UpperArm, UpperArmRear, Inner(InnerPoint.UpperArmRear, UpperArmRear, by), UpperBallJoint),
        TieRod(TieRodInner, TieRodOuter, by),
    ];

    private protected override Suspension Standing(Adjustment by, BodyMotion knuckle)
    {
        DoubleWishbone now = this with
        {
            Wheel = Carried(knuckle),
            HalfshaftOuter = HalfshaftOuterOn(knuckle),
            LowerArmFront = Inner(InnerPoint.LowerArmFront, LowerArmFront, by),
            LowerArmRear = Inner(InnerPoint.LowerArmRear, LowerArmRear, by),
            LowerBallJoint = knuckle.At(LowerBallJoint),
            UpperArmFront = Inner(InnerPoint.UpperArmFront, UpperArmFront, by),
            UpperArmRear = Inner(InnerPoint.UpperArmRear, UpperArmRear, by),
            UpperBallJoint = knuckle.At(UpperBallJoint),
            TieRodOuter = knuckle.At(TieRodOuter),
        };
        return now with
        {
            StrutBottom = StrutOn switch
            {
                StrutCarrier.LowerArm => LowerFrame.Carried(StrutBottom, now.LowerFrame),
                StrutCarrier.UpperArm => UpperFrame.Carried(StrutBottom, now.UpperFrame),
                _ => knuckle.At(StrutBottom),
            },
        };
    }

    private Frame LowerFrame => Frame.OfArm(LowerArmFront, LowerArmRear, LowerBallJoint);

    private Frame UpperFrame => Frame.OfArm(UpperArmFront, UpperArmRear, UpperBallJoint);
}
