using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>What is to be seen of one corner of a car.</summary>
public sealed record CornerScene
{
    private const int MostGaps = 4;

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

    /// <summary>A swept corner at one place, with the pair that has least room there and some of those that lack it.</summary>
    public static CornerScene Touching(ClearanceResult swept, ClearanceLook look)
    {
        RoadWheel own = swept.Case.Corner.MeasuredWheel, wheel = swept.Question.Wheel ?? own;
        return new()
        {
            Part = swept.Case.Part,
            Here = look.State,
            Wheel = (wheel, new WheelChange(own, wheel, swept.Question.Spacer_m).Shift_m),
            Bodies = swept.Case.Corner.Bodies,
            Gaps = [.. look.Pairs.Where((pair, k) => k == 0 || !pair.Holds).Take(MostGaps)
                .Select((pair, k) => new ViewGap($"gap{k}", ClearanceWords.Name(pair.Pair), pair.Gap.On, pair.Gap.Other, pair.Gap.Distance_m, pair.Holds))],
        };
    }
}
