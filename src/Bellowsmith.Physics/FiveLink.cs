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
            Constraints = [Height, .. rods.Select(rod => Link(rod.Part, rod.Inner, rod.Outer, rod.OnRack))],
            StrutTop = StrutTop,
            StrutBottom = StrutBottom,
            StrutCarrier = StrutOn == StrutCarrier.LowerRearLink ? Arm.OfLink(LinkagePart.LowerRearLink, LowerRearInner, LowerRearOuter) : null,
            Rods = rods,
        };
    }
}
