namespace Bellowsmith.Physics;

/// <summary>What one run over a road says of a corner, SI; travel is wheel minus body, bump +.</summary>
public sealed record RideFigures
{
    /// <summary>Body acceleration, unweighted.</summary>
    public required double Rms_m_per_s2 { get; init; }

    /// <summary>Body acceleration weighted by Wk [ISO 2631-1 1997].</summary>
    public required double WeightedRms_m_per_s2 { get; init; }

    /// <summary>Greatest weighted acceleration over its r.m.s.; above 9 the r.m.s. alone says too little [ISO 2631-1 1997, 6.2.1].</summary>
    public required double CrestFactor { get; init; }

    /// <summary>VDV = (∫aw⁴dt)^¼ over the time counted.</summary>
    public required double VibrationDose_m_per_s175 { get; init; }

    /// <summary>MTVV: the greatest r.m.s. of any second, moved on by 1/64 s.</summary>
    public required double GreatestRunningRms_m_per_s2 { get; init; }

    /// <summary>About its mean.</summary>
    public required double TravelRms_m { get; init; }

    /// <summary>About its mean.</summary>
    public required double TyreLoadRms_N { get; init; }

    /// <summary>Share of the time in which the tyre pushes nothing.</summary>
    public required double LiftOffShare { get; init; }

    /// <summary>How often the bump stop was met after at least 1 mm of clearance.</summary>
    public required int StopContacts { get; init; }

    /// <summary>At the strut.</summary>
    public required double PeakStopForce_N { get; init; }

    public required double LeastTravel_m { get; init; }
    public required double GreatestTravel_m { get; init; }

    /// <summary>The damper's fastest compression and rebound.</summary>
    public required double GreatestCompression_m_per_s { get; init; }
    public required double GreatestRebound_m_per_s { get; init; }

    /// <summary>The time counted, without settling.</summary>
    public required double Time_s { get; init; }

    /// <summary>The contacts against the way driven in the time counted.</summary>
    public double StopContactsPerKm(double speed_m_per_s) => StopContacts / (speed_m_per_s * Time_s / 1000);
}
