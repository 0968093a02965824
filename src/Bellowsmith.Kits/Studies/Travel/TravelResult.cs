namespace Bellowsmith.Kits.Studies.Travel;

/// <summary>How far a strut can move about drive height, what stops it, and which rules that meets.</summary>
public sealed record TravelResult
{
    public required StrutCase Case { get; init; }
    public required TravelState Drive { get; init; }

    /// <summary>End of bump, the valve shut at drive.</summary>
    public required TravelState FullBump { get; init; }

    /// <summary>End of droop, the wheel hanging, the valve shut at drive.</summary>
    public required TravelState FullDroop { get; init; }

    /// <summary>No air: the car rests on stop and gas.</summary>
    public required TravelState AiredOut { get; init; }

    /// <summary>The spring's greatest gauge pressure, the car on its wheels.</summary>
    public required TravelState Lifted { get; init; }

    /// <summary>Wheel travel at which the stop is first touched, m, bump +.</summary>
    public required double StopContact_m { get; init; }

    /// <summary>Ride height against gauge pressure, the stop's force included; wheel travel is from drive, bump +.</summary>
    public required IReadOnlyList<RideHeight> RideHeights { get; init; }

    public required IReadOnlyList<TravelFinding> Findings { get; init; }

    /// <summary>Of the body's thread; null where the kit has none.</summary>
    public TravelFinding? Thread() => Findings.FirstOrDefault(finding => finding.Rule == TravelRule.ThreadEngagement);

    /// <summary>Single changes that mend every miss at once, smallest first.</summary>
    public required IReadOnlyList<Mend> MendsAll { get; init; }

    /// <summary>True where the drive height is the kit's own, false where it is the recommended one.</summary>
    public required bool DriveHeightGiven { get; init; }
}

/// <summary>One position. What cannot be known from the data (outside the measured heights) is null.</summary>
public sealed record TravelState(
    double? WheelTravel_m, double? SpringHeight_m, double? DamperLength_m, double? StopGap_m, double? GaugePressure_Pa, TravelEnd? End);

public sealed record RideHeight(double GaugePressure_Pa, double? WheelTravel_m, double? SpringHeight_m, double StopForce_N, TravelEnd? End);

public enum TravelRule { DriveWithinDamper, TopOutBeforeSpring, SolidBeforeSpring, DroopAtWheel, StopContactAtWheel, ThreadEngagement }

/// <summary>One rule, what it asks and what there is. Holds is null where the kit does not say enough to check it.</summary>
public sealed record TravelFinding(TravelRule Rule, double? Value_m, double? Limit_m, bool? Holds, IReadOnlyList<Mend> Mends);

public enum MendKind { Body, Stop, Thread, Perch }

/// <summary>The smallest change of one thing that mends a miss, and what else it does.</summary>
/// <param name="Kind">What is changed.</param>
/// <param name="Change_m">By how much; signs as in <see cref="StrutChange"/>.</param>
/// <param name="AlsoMends">Other misses that the same change mends.</param>
/// <param name="Breaks">Rules that held and would not any more.</param>
public sealed record Mend(MendKind Kind, double Change_m, IReadOnlyList<TravelRule> AlsoMends, IReadOnlyList<TravelRule> Breaks);
