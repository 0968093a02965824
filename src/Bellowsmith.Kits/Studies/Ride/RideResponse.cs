namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>How a corner answers waves of an amplitude, and of half and twice it: what no linear corner can tell apart.</summary>
public sealed record RideResponse(WaveResponse Half, WaveResponse Asked, WaveResponse Twice)
{
    public IReadOnlyList<WaveResponse> All => [Half, Asked, Twice];
}

/// <summary>One amplitude (half of crest to trough), ascending by frequency.</summary>
public sealed record WaveResponse(double Amplitude_m, IReadOnlyList<WavePoint> Points)
{
    private const double WheelFrom_Hz = 5;

    /// <summary>Where the body moves most for what the road moves.</summary>
    public WavePoint Body => Points.MaxBy(p => p.BodyTransmissibility)!;

    /// <summary>Where the wheel hops: the greatest swing of tyre load from 5 Hz on. Null where it still grows at the highest frequency.</summary>
    public WavePoint? Hop => Points.Where(p => p.Frequency_Hz >= WheelFrom_Hz).MaxBy(p => p.TyreLoadAmplitude_N) is { } most && most != Points[^1] ? most : null;
}

/// <summary>The settled answer to one sine road.</summary>
public sealed record WavePoint
{
    public required double Frequency_Hz { get; init; }

    /// <summary>Body over road at the road's frequency: |z̈s|/(ω²·amplitude), both displacements.</summary>
    public required double BodyTransmissibility { get; init; }

    /// <summary>Of body acceleration, unweighted, all harmonics.</summary>
    public required double BodyRms_m_per_s2 { get; init; }

    /// <summary>Half of what the wheel travels from end to end.</summary>
    public required double TravelAmplitude_m { get; init; }

    /// <summary>Half of what the tyre's load swings from least to greatest.</summary>
    public required double TyreLoadAmplitude_N { get; init; }

    public required bool StopTouched { get; init; }
    public required bool LeavesRoad { get; init; }

    /// <summary>Whether the damper moved faster than it was measured.</summary>
    public required bool OutsideMeasuredSpeed { get; init; }

    /// <summary>Whether two windows after one another agree within 1 %; a light damper needs longer, hard stops may never settle.</summary>
    public required bool Steady { get; init; }
}
