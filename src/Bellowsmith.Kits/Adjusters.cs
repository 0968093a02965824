using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>What can be set on the car or the kit to align a wheel, and how far either way from where its points were measured.</summary>
public sealed record Adjusters
{
    /// <summary>The top mount slides across the car, m, outward +.</summary>
    public AdjusterRange? CamberSlide { get; init; }

    /// <summary>The knuckle turns on the strut about its lower bolt, rad, top outward +.</summary>
    public AdjusterRange? KnuckleSlot { get; init; }

    /// <summary>Where the lower bolt is; null where the knuckle does not turn on the strut.</summary>
    public Point? KnucklePivot { get; init; }

    /// <summary>The tie rod or toe link is made longer, m, longer +.</summary>
    public AdjusterRange? TieRod { get; init; }

    /// <summary>An inner end moves across the car on an eccentric bolt, m, outward +.</summary>
    public AdjusterRange? EccentricBolt { get; init; }

    /// <summary>The point it moves, by the suspension document's name.</summary>
    public string? EccentricPoint { get; init; }
}

/// <summary>From what to what; where the car was measured is 0.</summary>
public readonly record struct AdjusterRange(double Least, double Greatest);
