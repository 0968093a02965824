namespace Bellowsmith.Quality.Leaks;

public enum LeakVerdict { Conforms, DoesNotConform, NotDecidable }

/// <summary>Why the verdict is what it is.</summary>
public enum LeakReason
{
    /// <summary>The loss keeps the limit, or does not, with 95 %.</summary>
    Shown,

    /// <summary>The uncertainty leaves it open.</summary>
    TooUncertain,

    /// <summary>The part gained gas beyond doubt, which a shut part cannot: the readings contradict each other.</summary>
    Gained,

    /// <summary>No limit was given.</summary>
    NoLimit,

    /// <summary>A temperature is missing: cooling and leaking cannot be told apart.</summary>
    NoTemperatures,

    /// <summary>The log is too short to tell its scatter.</summary>
    TooFewReadings,

    /// <summary>The log lies on its line exactly: its instruments do not resolve their scatter.</summary>
    NoScatter,
}

/// <summary>
/// What would decide an open test if the estimate stayed as it is: that many times as long with the same readings, or
/// thermometer or gauge readings each of this standard uncertainty. Null where that alone would not do.
/// </summary>
public sealed record LeakRemedy(double? TimeFactor, double? TemperatureUncertainty_K, double? GaugeUncertainty_Pa);

/// <summary>
/// A leak beside its limit, a corrected loss over the test's time, at the start temperature. It conforms where that is true with a
/// probability of 95 % or more, does not where with 5 % or less, and is not decidable between
/// [ISO 14253-1 2017], [JCGM 106 2012, sec. 7].
/// </summary>
public sealed record LeakJudgement(LeakVerdict Verdict, LeakReason Reason, double? Limit_Pa, double? ConformanceProbability, LeakRemedy? Remedy)
{
    /// <summary>The probability a verdict needs.</summary>
    public const double Probability = 0.95;

    /// <summary>So many standard uncertainties below nothing are a gain beyond doubt: a tight part shows them once in 700 tests.</summary>
    public const double GainDeviations = 3;

    private const double LongestTest = 1000;

    public static LeakJudgement Undecided(LeakReason reason, double? limit_Pa) => new(LeakVerdict.NotDecidable, reason, limit_Pa, null, null);

    /// <param name="estimate">The leak as measured.</param>
    /// <param name="limit_Pa">Greatest corrected loss over the test's time, above 0; null where there is none.</param>
    /// <param name="pascalsPerKelvin">What a kelvin looks like, p/T, to say how fine a thermometer would do.</param>
    public static LeakJudgement Of(LeakEstimate estimate, double? limit_Pa, double pascalsPerKelvin)
    {
        if (limit_Pa is not { } limit) return Undecided(LeakReason.NoLimit, null);
        double loss = estimate.CorrectedLoss_Pa, uncertainty = estimate.LossUncertainty_Pa;
        double probability = Conformance.Below(loss, uncertainty, limit, estimate.Degrees);
        if (loss < -GainDeviations * uncertainty) return new(LeakVerdict.NotDecidable, LeakReason.Gained, limit, probability, null);
        if (probability >= Probability) return new(LeakVerdict.Conforms, LeakReason.Shown, limit, probability, null);
        if (probability <= 1 - Probability) return new(LeakVerdict.DoesNotConform, LeakReason.Shown, limit, probability, null);
        return new(LeakVerdict.NotDecidable, LeakReason.TooUncertain, limit, probability, WhatWouldDecide(estimate, limit, pascalsPerKelvin));
    }

    private static LeakRemedy WhatWouldDecide(LeakEstimate estimate, double limit, double pascalsPerKelvin)
    {
        double needed = Math.Abs(limit - estimate.CorrectedLoss_Pa) / Conformance.Factor(Probability, estimate.Degrees);
        double all = estimate.LossUncertainty_Pa;
        double factor = all / needed;
        return new(
            factor <= LongestTest ? factor : null,
            Each(estimate.LossUncertaintyOf_Pa(LeakSource.StartTemperature, LeakSource.EndTemperature)) / pascalsPerKelvin,
            Each(estimate.LossUncertaintyOf_Pa(LeakSource.StartGauge, LeakSource.EndGauge)));

        // What each of two like readings may have, the other sources being as they are.
        double? Each(double share)
        {
            double room = needed * needed - (all * all - share * share);
            return share > 0 && room > 0 ? Math.Sqrt(room / 2) : null;
        }
    }
}
