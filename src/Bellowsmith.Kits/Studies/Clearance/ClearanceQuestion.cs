using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>How many wheel travels and rack travels are looked at; drive height and where load cases stand come on top.</summary>
public readonly record struct Density(int Travels, int Racks)
{
    /// <summary>For an answer.</summary>
    public static readonly Density Full = new(21, 13);

    /// <summary>For a hand that drags.</summary>
    public static readonly Density Live = new(7, 9);
}

/// <summary>What stands at the corner otherwise than in its documents, and how closely to look.</summary>
public sealed record ClearanceQuestion
{
    /// <summary>A wheel tried in place of the car's; null: the car's.</summary>
    public RoadWheel? Wheel { get; init; }

    /// <summary>Between wheel and hub.</summary>
    public double Spacer_m { get; init; }

    /// <summary>Change of camber, top out +, made where the kit says its adjuster is.</summary>
    public double Camber_rad { get; init; }

    /// <summary>More exposed thread at the same car height +: the spring stands so much lower.</summary>
    public double Thread_m { get; init; }

    public ClearanceMargins Margins { get; init; } = ClearanceMargins.Usual;

    public IReadOnlyList<GroundRule> Rules { get; init; } = [];

    public Density Density { get; init; } = Density.Full;

    /// <summary>Whether what camber, spacer and thread do is asked too, and the least camber that clears the wheel.</summary>
    public bool WithChanges { get; init; } = true;
}
