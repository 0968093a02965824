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

    internal override Mechanism Mechanism()
    {
        Arm lower = Arm.Between(LinkagePart.LowerArm, LowerArmFront, LowerArmRear, LowerBallJoint);
        Arm upper = Arm.Between(LinkagePart.UpperArm, UpperArmFront, UpperArmRear, UpperBallJoint);
        return new()
        {
            Constraints =
            [
                Height,
                Link(LinkagePart.LowerArm, LowerArmFront, LowerBallJoint), Link(LinkagePart.LowerArm, LowerArmRear, LowerBallJoint),
                Link(LinkagePart.UpperArm, UpperArmFront, UpperBallJoint), Link(LinkagePart.UpperArm, UpperArmRear, UpperBallJoint),
                Link(LinkagePart.TieRod, TieRodInner, TieRodOuter, onRack: true),
            ],
            StrutTop = StrutTop,
            StrutBottom = StrutBottom,
            StrutCarrier = StrutOn switch { StrutCarrier.LowerArm => lower, StrutCarrier.UpperArm => upper, _ => null },
            Arms = [lower, upper],
            Rods = [new(LinkagePart.TieRod, TieRodInner, TieRodOuter, OnRack: true)],
            SteeringJoints = (LowerBallJoint, UpperBallJoint),
        };
    }
}
