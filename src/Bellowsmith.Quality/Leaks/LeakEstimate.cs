namespace Bellowsmith.Quality.Leaks;

/// <summary>A measured value with its standard uncertainty, in the unit its holder names.</summary>
public readonly record struct Measured(double Value, double StandardUncertainty)
{
    /// <summary>Known to ±half width and no better: <c>u = a/√3</c> [JCGM 100 2008, 4.3.7].</summary>
    public static Measured Rectangular(double value, double halfWidth) => new(value, halfWidth / Math.Sqrt(3));
}

/// <summary>Where the uncertainty of a leak comes from.</summary>
public enum LeakSource { Volume, StartGauge, EndGauge, StartTemperature, EndTemperature, Time, Ambient, Creep, Scatter }

/// <summary>
/// One source's share, standard uncertainties: of the leak rate, and of the corrected loss, which the volume does not touch because
/// the loss is in the readings whatever the volume.
/// </summary>
public sealed record LeakContribution(LeakSource Source, double Rate_Pa_m3_per_s, double Loss_Pa);

/// <summary>
/// A leak as measured. The corrected loss is what the part would have lost in <paramref name="Time_s"/> had it stayed at its start
/// temperature, Pa. Degrees of freedom are infinite where the uncertainties are stated, not estimated.
/// </summary>
public sealed record LeakEstimate(
    LeakRate Rate, double CorrectedLoss_Pa, double Time_s, IReadOnlyList<LeakContribution> Contributions, double Degrees = double.PositiveInfinity)
{
    /// <summary>Standard uncertainty of the leak rate: the root sum of squares of the contributions.</summary>
    public double RateUncertainty_Pa_m3_per_s => Math.Sqrt(Contributions.Sum(c => c.Rate_Pa_m3_per_s * c.Rate_Pa_m3_per_s));

    /// <summary>Standard uncertainty of the corrected loss.</summary>
    public double LossUncertainty_Pa => Math.Sqrt(Contributions.Sum(c => c.Loss_Pa * c.Loss_Pa));

    /// <summary>Standard uncertainty of the corrected loss from some of the sources alone.</summary>
    public double LossUncertaintyOf_Pa(params ReadOnlySpan<LeakSource> sources)
    {
        double squares = 0;
        foreach (LeakContribution c in Contributions)
            if (sources.Contains(c.Source)) squares += c.Loss_Pa * c.Loss_Pa;
        return Math.Sqrt(squares);
    }
}
