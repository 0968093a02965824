using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Search;

/// <summary>
/// What to order where no part at hand keeps the limits: the least change of spring rate, damper force and bump travel from the
/// nearest setting that does, on a spring whose rate is the same at every height.
/// </summary>
public sealed record PartsOrder
{
    /// <summary>Factors on the nearest setting's wheel rate and on its damper's force, and wheel travel added before the stop.</summary>
    public required (double Rate, double DamperForce, double BumpTravel_m) Change { get; init; }

    /// <summary>Spring height at drive, and what the spring carries there.</summary>
    public required double Height_m { get; init; }
    public required double SpringForce_N { get; init; }

    /// <summary>Rate at drive height in service, of the spring alone and at the wheel.</summary>
    public required double SpringRate_N_per_m { get; init; }
    public required double WheelRate_N_per_m { get; init; }

    /// <summary>Heights the spring must allow, with the kit's margins; null for a strut without ends.</summary>
    public required (double Least_m, double Greatest_m)? SpringHeights { get; init; }

    /// <summary>Damper lengths between outer faces, with its stop solid and at full length; null for a strut without ends.</summary>
    public required (double Shortest_m, double Longest_m)? DamperLengths { get; init; }

    /// <summary>Damper force at each published speed that the nearest's damper was measured at, all +.</summary>
    public required IReadOnlyList<OrderedForce> Forces { get; init; }

    /// <summary>What such parts came to on the same road.</summary>
    public required RideFigures Figures { get; init; }
}

/// <summary>Damper force at one speed, without gas and friction, + in both strokes; null beyond the speeds measured.</summary>
public readonly record struct OrderedForce(double Speed_m_per_s, double? Compression_N, double? Rebound_N);
