using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>
/// A rigid axle while both wheels travel alike: a trailing arm on either side, an upper link (a pair counts as one in its middle), a Panhard
/// rod, the spring on the arm or on the axle. It has no rack.
/// </summary>
public sealed record BeamAxle(LinkageWheel Wheel) : Suspension(Wheel)
{
    public required Point TrailingArmFront { get; init; }

    public required Point TrailingArmRear { get; init; }

    public required Point UpperLinkFront { get; init; }

    public required Point UpperLinkRear { get; init; }

    public required Point PanhardRodFrame { get; init; }

    public required Point PanhardRodAxle { get; init; }

    public required Point StrutTop { get; init; }

    public required Point StrutBottom { get; init; }

    public required StrutCarrier StrutOn { get; init; }

    /// <summary>Where the Panhard rod, or its line, crosses the middle of the car.</summary>
    internal Point CrossesMiddle(in BodyMotion axle)
    {
        Point end = axle.At(PanhardRodAxle), along = end - PanhardRodFrame;
        return PanhardRodFrame - PanhardRodFrame.Y / along.Y * along;
    }

    internal override Mechanism Mechanism() => new()
    {
        Constraints = Constraints(Adjustment.None),
        StrutTop = StrutTop,
        StrutBottom = StrutBottom,
        StrutCarrier = StrutOn == StrutCarrier.TrailingArm ? Arm.OfLink(LinkagePart.TrailingArm, TrailingArmFront, TrailingArmRear) : null,
        Rods =
        [
            new(LinkagePart.TrailingArm, TrailingArmFront, TrailingArmRear), new(LinkagePart.UpperLink, UpperLinkFront, UpperLinkRear),
            new(LinkagePart.PanhardRod, PanhardRodFrame, PanhardRodAxle),
        ],
    };

    internal override Constraint[] Constraints(Adjustment by) =>
    [
        Height,
        Link(LinkagePart.TrailingArm, TrailingArmFront, TrailingArmRear),
        Link(LinkagePart.OtherTrailingArm, TrailingArmFront.Mirrored, TrailingArmRear.Mirrored),
        Link(LinkagePart.UpperLink, UpperLinkFront, UpperLinkRear),
        Link(LinkagePart.PanhardRod, PanhardRodFrame, PanhardRodAxle),
        new WheelHeight(Wheel.Centre.Mirrored, Wheel.Centre),
    ];
}
