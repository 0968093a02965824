using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>What is to be seen of one corner of a car.</summary>
public sealed record CornerScene
{
    /// <summary>The suspension as its document has it, and what was measured on the body.</summary>
    public required SuspensionPart Part { get; init; }

    /// <summary>Where the corner stands.</summary>
    public required LinkageState Here { get; init; }

    /// <summary>Where it stood at its old drive height; null where the car was not lowered, or the view is not of that.</summary>
    public LinkageState? Before { get; init; }

    /// <summary>The wheel on it, and how much further out its middle plane stands than the one the points were measured with; null where none is known.</summary>
    public (RoadWheel Wheel, double Outward_m)? Wheel { get; init; }

    /// <summary>The wheel it is compared with, where it stood; drawn dashed.</summary>
    public (RoadWheel Wheel, LinkageState At)? OtherWheel { get; init; }

    /// <summary>Bellows and strut; null where the kit says too little.</summary>
    public CornerBodies? Bodies { get; init; }

    /// <summary>What a hand that drags the wheel or the tie rod's end moves.</summary>
    public (string Travel, string Rack) Handles { get; init; } = ("zw", "rack");

    /// <summary>Only what stands above the wheel's middle, where a wheel meets arch and strut.</summary>
    public bool UpperHalf { get; init; }

    public IReadOnlyList<ViewGap> Gaps { get; init; } = [];
}
