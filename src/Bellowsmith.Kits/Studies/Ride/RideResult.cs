using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>How one strut rides at a setting on a road, and how much that leans on the setting being exact.</summary>
public sealed record RideResult
{
    public required RideStrut Strut { get; init; }
    public required RoadQuestion Road { get; init; }

    /// <summary>The setting driven, every value filled in; height and gauge pressure are null for a spring without air.</summary>
    public required RideSetting Setting { get; init; }

    /// <summary>Null where the strut cannot stand at the setting.</summary>
    public required RideFigures? Figures { get; init; }

    /// <summary>Why there are no figures.</summary>
    public string? Reason { get; init; }

    /// <summary>The same road at a click, a gauge pressure or a load beside this one.</summary>
    public IReadOnlyList<RideNeighbour> Neighbours { get; init; } = [];

    /// <summary>What the run shows step by step; null where there are no figures.</summary>
    public RideDetail? Detail { get; init; }

    /// <summary>How it answers waves; null where that was not asked.</summary>
    public RideResponse? Response { get; init; }

    /// <summary>How often a run over this road met the stop, each kilometre counted.</summary>
    public double StopContactsPerKm(RideFigures figures) => figures.StopContactsPerKm(Road.Speed_m_per_s);
}

/// <summary>One step aside: what was changed, in words, and what came of it; null figures where it cannot stand there.</summary>
public sealed record RideNeighbour(string Change, RideFigures? Figures);

/// <summary>What only the steps of a run show.</summary>
public sealed record RideDetail
{
    public required RideTrace Trace { get; init; }

    /// <summary>Body acceleration between 0.5 and 5 Hz, and between 5 and 25 Hz.</summary>
    public required double PrimaryRms_m_per_s2 { get; init; }
    public required double SecondaryRms_m_per_s2 { get; init; }

    /// <summary>Greatest acceleration of the body upward, and downward as +.</summary>
    public required double GreatestUp_m_per_s2 { get; init; }
    public required double GreatestDown_m_per_s2 { get; init; }

    /// <summary>Share of the time the damper moves faster than it was measured.</summary>
    public required double OutsideMeasuredSpeed { get; init; }

    /// <summary>Share of the time the spring is outside the heights it was measured at.</summary>
    public required double OutsideMeasuredHeight { get; init; }

    /// <summary>Least and greatest of the air in the spring; null without air. Looked for when first asked.</summary>
    public (double Low, double High)? GaugePressure_Pa => Air.Value.GaugePressure_Pa;
    public (double Low, double High)? Temperature_K => Air.Value.Temperature_K;

    internal Lazy<((double Low, double High)? GaugePressure_Pa, (double Low, double High)? Temperature_K)> Air { get; init; } = new(() => (null, null));

    /// <summary>Of the wall and of the air at drive.</summary>
    public const double WallTemperature_K = 293.15;

    /// <summary>Wheel travel below which 1, 5, 50, 95 and 99 % of the time is spent, bump +.</summary>
    public required IReadOnlyList<(double Share, double Travel_m)> TravelShares { get; init; }

    /// <summary>Share of the time at each damper speed, extension +.</summary>
    public required IReadOnlyList<(double From_m_per_s, double To_m_per_s, double Share)> DamperSpeeds { get; init; }

    /// <summary>Wheel travel from rest at which the bump stop is first touched, bump +; null without one.</summary>
    public double? StopContact_m { get; init; }

    /// <summary>The least speed at which the reference hump brings the stop to be touched; null where it never does. Looked for when first asked.</summary>
    public double? HumpSpeed_m_per_s => Hump.Value;

    internal Lazy<double?> Hump { get; init; } = new((double?)null);
}
