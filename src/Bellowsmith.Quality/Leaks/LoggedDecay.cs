namespace Bellowsmith.Quality.Leaks;

/// <summary>
/// Pressure decay from a log: p/T of a shut part falls on a straight line, whose slope by least squares gives
/// <c>q = −V·Tref·d(p/T)/dt</c>. Neighbouring readings share the room's swings and the thermometer's lag, so the slope's standard
/// error is that of independent residuals times √((1 + r)/(1 − r)), r their lag-1 autocorrelation where it is positive, with
/// n·(1 − r)/(1 + r) − 2 degrees of freedom (first-order autoregression, common practice; r itself is biased low in short logs).
/// What every reading shares, such as a gauge's gain, does not scatter and is not in it.
/// </summary>
public sealed record LoggedDecay
{
    /// <summary>Fewer independent readings than this leave the scatter unknown.</summary>
    public const int LeastIndependent = 5;

    private const int LeastReadings = 4;

    private LoggedDecay() { }

    /// <summary>How many readings were used, the settling ones left out.</summary>
    public required int Count { get; init; }

    /// <summary>How many independent readings they are worth.</summary>
    public required double Independent { get; init; }

    /// <summary>Lag-1 autocorrelation of the residuals.</summary>
    public required double Autocorrelation { get; init; }

    /// <summary>
    /// How far the residuals bend: the quadratic term beside its own standard error, autocorrelation counted. Beyond ±2 the line does
    /// not describe the log, and the part or its air is still settling.
    /// </summary>
    public required double Bend { get; init; }

    public required double StartTemperature_K { get; init; }
    public required double StartAbsolutePressure_Pa { get; init; }
    public required double Duration_s { get; init; }

    /// <summary>Slope of p/T, Pa/(K·s), negative where it leaks, and its standard error.</summary>
    public required Measured Slope { get; init; }

    public bool IsEnough => Independent >= LeastIndependent;

    /// <summary>Whether the readings scatter at all about their line, beyond what rounding of the arithmetic makes.</summary>
    public bool HasScatter => Slope.StandardUncertainty * Duration_s > 1e-12 * StartAbsolutePressure_Pa / StartTemperature_K;

    /// <summary>Whether the residuals drift.</summary>
    public bool Bends => Math.Abs(Bend) > 2;

    /// <summary>Fits the readings from a time on; null where fewer than four are left or all stand at one time.</summary>
    /// <param name="time_s">In order.</param>
    /// <param name="absolutePressure_Pa">Above 0.</param>
    /// <param name="temperature_K">Above 0.</param>
    /// <param name="settle_s">Readings sooner than this after the first are left out.</param>
    public static LoggedDecay? Fit(ReadOnlySpan<double> time_s, ReadOnlySpan<double> absolutePressure_Pa, ReadOnlySpan<double> temperature_K, double settle_s = 0)
    {
        int first = 0;
        while (first < time_s.Length && time_s[first] - time_s[0] < settle_s) first++;
        int count = time_s.Length - first;
        if (count < LeastReadings || !(time_s[^1] > time_s[first])) return null;
        double[] line = [.. time_s[first..]], density = new double[count];
        for (int i = 0; i < count; i++) density[i] = absolutePressure_Pa[first + i] / temperature_K[first + i];
        Centre(line);
        double[] square = [.. line.Select(t => t * t)];
        Centre(square);
        Take(square, line);
        Centre(density);
        double slope = Take(density, line), r = Correlation(density);
        double error = StandardError(density, line, 2, r);
        double bend = Take(density, square), bendError = StandardError(density, square, 3, Correlation(density));
        return new LoggedDecay
        {
            Count = count,
            Independent = count * (1 - r) / (1 + r),
            Autocorrelation = r,
            Bend = bendError > 0 ? bend / bendError : 0,
            StartTemperature_K = temperature_K[first],
            StartAbsolutePressure_Pa = absolutePressure_Pa[first],
            Duration_s = time_s[^1] - time_s[first],
            Slope = new(slope, error),
        };
    }

    /// <summary>The leak over a test's time; the volume's uncertainty and creep as in <see cref="DecayTest"/>.</summary>
    public LeakEstimate Estimate(Measured volume_m3, double time_s, double referenceTemperature_K, double creepUncertainty)
    {
        double ratePerSlope = volume_m3.Value * referenceTemperature_K, lossPerSlope = StartTemperature_K * time_s;
        LeakRate rate = new(-ratePerSlope * Slope.Value, referenceTemperature_K);
        double creep = creepUncertainty * StartAbsolutePressure_Pa / Duration_s;
        return new(rate, -lossPerSlope * Slope.Value, time_s,
        [
            new(LeakSource.Volume, Math.Abs(rate.Value_Pa_m3_per_s) * volume_m3.StandardUncertainty / volume_m3.Value, 0),
            new(LeakSource.Scatter, ratePerSlope * Slope.StandardUncertainty, lossPerSlope * Slope.StandardUncertainty),
            new(LeakSource.Creep, creep * volume_m3.Value, creep * time_s),
        ], Independent - 2);
    }

    private static void Centre(double[] values)
    {
        double mean = Sample.Mean(values);
        for (int i = 0; i < values.Length; i++) values[i] -= mean;
    }

    // Regresses the values on one centred direction, leaves the residuals in their place, and answers with the coefficient.
    private static double Take(double[] values, double[] direction)
    {
        double squares = Dot(direction, direction), coefficient = squares > 0 ? Dot(values, direction) / squares : 0;
        for (int i = 0; i < values.Length; i++) values[i] -= coefficient * direction[i];
        return coefficient;
    }

    private static double StandardError(double[] residuals, double[] direction, int parameters, double r) =>
        Math.Sqrt(Dot(residuals, residuals) / (residuals.Length - parameters) / Dot(direction, direction) * (1 + r) / (1 - r));

    private static double Correlation(double[] residuals)
    {
        double r = Sample.LagOneAutocorrelation(residuals);
        return double.IsNaN(r) ? 0 : Math.Clamp(r, 0, 0.999);
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++) sum += a[i] * b[i];
        return sum;
    }
}
