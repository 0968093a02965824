namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>What is driven over, how fast and how long.</summary>
/// <param name="Surface">The road.</param>
/// <param name="Speed_m_per_s">Driving speed.</param>
/// <param name="Time_s">Time driven, the first 5 s of it not counted.</param>
/// <param name="Seed">Which of the many random roads of a roughness; the same number is the same road.</param>
public sealed record RoadQuestion(RoadSurface Surface, double Speed_m_per_s, double Time_s = 60, ulong Seed = 1)
{
    /// <summary>Whether it is the same road all along, so that counts may be set against the way driven.</summary>
    public bool IsRandom => Surface is RoadOfClass or RoadOfVelocity;
}
