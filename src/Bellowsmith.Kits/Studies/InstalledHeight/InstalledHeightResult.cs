namespace Bellowsmith.Kits.Studies.InstalledHeight;

/// <summary>What the spring can do at this load, and every installed height that gives the wanted rate.</summary>
public sealed record InstalledHeightResult
{
    public required StrutCase Case { get; init; }

    /// <summary>Spring, gas force and wanted rate hold at <see cref="ReferenceHeight_m"/>: the recommended height, else the
    /// nearest that exists.</summary>
    public required double ReferenceHeight_m { get; init; }

    public required double SpringForce_N { get; init; }
    public required double GasForce_N { get; init; }
    public required double TargetSpringRate_N_per_m { get; init; }

    /// <summary>Ascending by height; empty where no height gives the rate.</summary>
    public required IReadOnlyList<HeightSolution> Solutions { get; init; }

    /// <summary>Least and greatest rate over the heights that spring and data share, at the load, whatever gauge pressure they
    /// take; null where the spring carries the load nowhere.</summary>
    public required RatePlace? Minimum { get; init; }

    public required RatePlace? Maximum { get; init; }

    /// <summary>Where no usable solution exists: the height whose rate comes nearest within the pressure limit.</summary>
    public RatePlace? Nearest { get; init; }

    public required RecommendedFor RecommendedFor { get; init; }

    public HeightSolution? Recommended => Solutions.FirstOrDefault(s => s.Recommended);
}

/// <summary>What set the recommended height apart.</summary>
public enum RecommendedFor { Nothing, OnlyOne, GaugePressureLimit, MoreRoom, FlatterRate }

/// <summary>A rate at a height, the load held.</summary>
public sealed record RatePlace(double Height_m, double GaugePressure_Pa, double SpringRate_N_per_m, double RideFrequency_Hz);

/// <summary>One installed height that gives the wanted rate.</summary>
public sealed record HeightSolution
{
    public required double Height_m { get; init; }
    public required double GaugePressure_Pa { get; init; }
    public required double SpringRate_N_per_m { get; init; }

    /// <summary>95 % band of the rate from the data; null where they carry no scatter.</summary>
    public required (double Low, double High)? SpringRateBand_N_per_m { get; init; }

    /// <summary>What that band means for the height: heights whose rate could be the wanted one.</summary>
    public required (double Low, double High)? HeightBand_m { get; init; }

    public required double SpringRateIsothermal_N_per_m { get; init; }
    public required double SpringRateAdiabatic_N_per_m { get; init; }
    public required double WheelRate_N_per_m { get; init; }
    public required double RideFrequency_Hz { get; init; }
    public required double? RideFrequencyWithTyre_Hz { get; init; }
    public required double EffectiveArea_m2 { get; init; }

    /// <summary>Enclosed air, displaced volume taken off and line volume added.</summary>
    public required double Volume_m3 { get; init; }

    public required bool WithinPressureLimit { get; init; }
    public required bool WithinTestedPressure { get; init; }
    public required HeightRoom Room { get; init; }
    public required ThreadSetting? Thread { get; init; }

    /// <summary>Gauge pressure that holds this height on the left and the right side, whose loads differ.</summary>
    public required (double Left_Pa, double Right_Pa) SideGaugePressures { get; init; }

    public required HeightSensitivities Sensitivities { get; init; }
    public bool Recommended { get; init; }
}

/// <summary>Room around a height as travel of the spring, m; null where damper or thread is not known.</summary>
/// <param name="DownToSpring_m">Down to the spring's least height.</param>
/// <param name="UpToSpring_m">Up to the spring's greatest height.</param>
/// <param name="DownToStop_m">Down to first contact of the bump stop, or to the closed damper where there is none.</param>
/// <param name="UpToTopOut_m">Up to the damper's full length.</param>
/// <param name="ToDataEdge_m">To the nearer end of the measured heights.</param>
/// <param name="BumpShortfall_m">What is missing of the bump travel the limits ask for.</param>
/// <param name="DroopShortfall_m">What is missing of the droop travel.</param>
/// <param name="Shortfall_m">All that this height lacks: travel both ways, distance from the data's edge, reach of the thread.</param>
public readonly record struct HeightRoom(
    double DownToSpring_m, double UpToSpring_m, double? DownToStop_m, double? UpToTopOut_m, double ToDataEdge_m,
    double BumpShortfall_m, double DroopShortfall_m, double Shortfall_m)
{
    public double Down_m => Math.Min(DownToSpring_m, DownToStop_m ?? double.PositiveInfinity);

    public double Up_m => Math.Min(UpToSpring_m, UpToTopOut_m ?? double.PositiveInfinity);
}

/// <summary>The thread that puts the spring at a height, car height held.</summary>
/// <param name="Exposed_m">Exposed length it takes.</param>
/// <param name="Turns">Turns from the stop, + exposes more.</param>
/// <param name="Reachable">True within the thread's least and greatest exposed length.</param>
/// <param name="Nearest">Where it is not: the setting and state that can be reached.</param>
public sealed record ThreadSetting(double Exposed_m, double Turns, bool Reachable, ReachableHeight? Nearest);

public sealed record ReachableHeight(
    double Exposed_m, double Turns, double Height_m, double GaugePressure_Pa, double SpringRate_N_per_m);

/// <summary>
/// What small changes do. At fixed ride height and load unless said otherwise.
/// </summary>
/// <param name="RateByThread_N_per_m">One millimetre more exposed thread: the spring stands 1 mm lower.</param>
/// <param name="GaugePressureByThread_Pa">The same, in gauge pressure.</param>
/// <param name="RideHeightByGaugePressure_m">One psi more at fixed thread: the car rises at the wheel.</param>
/// <param name="RateByGaugePressure_N_per_m">One psi more at fixed thread, in rate.</param>
/// <param name="RateByMass_N_per_m">10 kg more sprung mass at this corner.</param>
/// <param name="GaugePressureByMass_Pa">The same, in gauge pressure.</param>
/// <param name="RateByExponent_N_per_m">0.02 more in n.</param>
/// <param name="RateByDisplaced_N_per_m">10 cm³ more taken up inside the bellows.</param>
/// <param name="RateSlope_N_per_m2">dks/dh at constant load.</param>
public readonly record struct HeightSensitivities(
    double RateByThread_N_per_m,
    double GaugePressureByThread_Pa,
    double RideHeightByGaugePressure_m,
    double RateByGaugePressure_N_per_m,
    double RateByMass_N_per_m,
    double GaugePressureByMass_Pa,
    double RateByExponent_N_per_m,
    double RateByDisplaced_N_per_m,
    double RateSlope_N_per_m2);
