using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>Four links and a tie rod, each with a joint at either end; the strut on the upright or on the lower rear link.</summary>
public sealed record FiveLink(LinkageWheel Wheel) : Suspension(Wheel)
{
    public required Point LowerFrontInner { get; init; }

    public required Point LowerFrontOuter { get; init; }

    public required Point LowerRearInner { get; init; }

    public required Point LowerRearOuter { get; init; }

    public required Point UpperFrontInner { get; init; }

    public required Point UpperFrontOuter { get; init; }

    public required Point UpperRearInner { get; init; }

    public required Point UpperRearOuter { get; init; }

    public required Point TieRodInner { get; init; }

    public required Point TieRodOuter { get; init; }

    public required Point StrutTop { get; init; }

    public required Point StrutBottom { get; init; }

    public required StrutCarrier StrutOn { get; init; }

    /// <summary>An eccentric bolt at any link's inner end, and the tie rod.</summary>
    public override bool Takes(Adjustment by) => !by.MovesStrut
        && by.Moves(InnerPoint.LowerFrontInner, InnerPoint.LowerRearInner, InnerPoint.UpperFrontInner, InnerPoint.UpperRearInner);

    internal override Mechanism Mechanism()
    {
        Rod[] rods =
        [
            new(LinkagePart.LowerFrontLink, LowerFrontInner, LowerFrontOuter), new(LinkagePart.LowerRearLink, LowerRearInner, LowerRearOuter),
            new(LinkagePart.UpperFrontLink, UpperFrontInner, UpperFrontOuter), new(LinkagePart.UpperRearLink, UpperRearInner, UpperRearOuter),
            new(LinkagePart.TieRod, TieRodInner, TieRodOuter, OnRack: true),
        ];
        return new()
        {
            Constraints = Constraints(Adjustment.None),
            StrutTop = StrutTop,
            StrutBottom = StrutBottom,
            StrutCarrier = StrutOn == StrutCarrier.LowerRearLink ? Arm.OfLink(LinkagePart.LowerRearLink, LowerRearInner, LowerRearOuter) : null,
            Rods = rods,
        };
    }

    internal override Constraint[] Constraints(Adjustment by) =>
    [
        Height,
        Link(LinkagePart.LowerFrontLink, LowerFrontInner, Inner(InnerPoint.LowerFrontInner, LowerFrontInner, by), LowerFrontOuter),
        Link(LinkagePart.LowerRearLink, LowerRearInner, Inner(InnerPoint.LowerRearInner, LowerRearInner, by), LowerRearOuter),
        Link(LinkagePart.UpperFrontLink, UpperFrontInner, Inner(InnerPoint.UpperFrontInner, UpperFrontInner, by), UpperFrontOuter),
        Link(LinkagePart.UpperRearLink, UpperRearInner, Inner(InnerPoint.UpperRearInner, UpperRearInner, by), UpperRearOuter),
        TieRod(TieRodInner, TieRodOuter, by),
    ];

    private protected override Suspension Standing(Adjustment by, BodyMotion knuckle)
    {
        FiveLink now = this with
        {
            Wheel = Carried(knuckle),
            HalfshaftOuter = HalfshaftOuterOn(knuckle),
            LowerFrontInner = Inner(InnerPoint.LowerFrontInner, LowerFrontInner, by),
            LowerFrontOuter = knuckle.At(LowerFrontOuter),
            LowerRearInner = Inner(InnerPoint.LowerRearInner, LowerRearInner, by),
            LowerRearOuter = knuckle.At(LowerRearOuter),
            UpperFrontInner = Inner(InnerPoint.UpperFrontInner, UpperFrontInner, by),
            UpperFrontOuter = knuckle.At(UpperFrontOuter),
            UpperRearInner = Inner(InnerPoint.UpperRearInner, UpperRearInner, by),
            UpperRearOuter = knuckle.At(UpperRearOuter),
            TieRodOuter = knuckle.At(TieRodOuter),
        };
        return now with
        {
            StrutBottom = StrutOn == StrutCarrier.LowerRearLink ? LowerRearFrame.Carried(StrutBottom, now.LowerRearFrame) : knuckle.At(StrutBottom),
        };
    }

    private Frame LowerRearFrame => Frame.OfLink(LowerRearInner, LowerRearOuter);
}
