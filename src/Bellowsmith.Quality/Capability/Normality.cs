using MathNet.Numerics;

namespace Bellowsmith.Quality.Capability;

/// <summary>
/// Whether readings look normal: Anderson–Darling with mean and standard deviation estimated,
/// <c>A² = −n − (1/n)·Σ(2i − 1)(ln Φ(zᵢ) + ln Φ(−z₍n+1−i₎))</c>, stretched by <c>1 + 0.75/n + 2.25/n²</c>, its chance by the fitted
/// exponentials of [D'Agostino Stephens 1986, table 4.9], good to about 0.002 near 0.05 from 8 readings on. Skewness and excess kurtosis are
/// the unbiased-for-normal G1 and G2 with their standard errors [Joanes Gill 1998].
/// </summary>
/// <param name="AndersonDarling">A², stretched.</param>
/// <param name="Chance">Of so large an A² from normal parts; null with fewer than 8 readings.</param>
/// <param name="Skewness">G1: positive where the long tail is on the high side.</param>
/// <param name="SkewnessError">Standard error of G1 for normal readings.</param>
/// <param name="Kurtosis">Excess, G2: positive where tails are heavy.</param>
/// <param name="KurtosisError">Standard error of G2 for normal readings.</param>
/// <param name="Step">The smallest difference between two unlike readings: the gauge's step, as far as they show it.</param>
public sealed record Normality(
    double AndersonDarling, double? Chance, double Skewness, double SkewnessError, double Kurtosis, double KurtosisError, double Step)
{
    public const int FewestReadings = 8;

    /// <summary>Normal parts would do this in fewer than 5 of 100 samples.</summary>
    public bool IsDoubted => Chance < 0.05;

    /// <summary>Of at least 4 readings in ascending order, not all equal.</summary>
    public static Normality Of(ReadOnlySpan<double> sorted)
    {
        double mean = Sample.Mean(sorted), deviation = Sample.StandardDeviation(sorted), n = sorted.Length;
        double distance = Distance(sorted, mean, deviation) * (1 + 0.75 / n + 2.25 / (n * n));
        (double skewness, double kurtosis) = Shape(sorted, mean);
        double skewnessError = Math.Sqrt(6 * n * (n - 1) / ((n - 2) * (n + 1) * (n + 3)));
        return new(
            distance, sorted.Length < FewestReadings ? null : ChanceOf(distance),
            skewness, skewnessError, kurtosis, 2 * skewnessError * Math.Sqrt((n * n - 1) / ((n - 3) * (n + 5))), StepOf(sorted));
    }

    internal static double ChanceOf(double a) => a switch
    {
        // Beyond 10 the fitted parabola turns up again; the chance is below 1e-23 there.
        >= 0.6 => Math.Exp(1.2937 - 5.709 * Math.Min(a, 10) + 0.0186 * Math.Min(a, 10) * Math.Min(a, 10)),
        >= 0.34 => Math.Exp(0.9177 - 4.279 * a - 1.38 * a * a),
        > 0.2 => 1 - Math.Exp(-8.318 + 42.796 * a - 59.938 * a * a),
        _ => 1 - Math.Exp(-13.436 + 101.14 * a - 223.73 * a * a),
    };

    private static double Distance(ReadOnlySpan<double> sorted, double mean, double deviation)
    {
        double sum = 0;
        for (int i = 0; i < sorted.Length; i++)
            sum += (2.0 * i + 1) * (LogBelow((sorted[i] - mean) / deviation) + LogBelow((mean - sorted[^(i + 1)]) / deviation));
        return -sorted.Length - sum / sorted.Length;
    }

    // ln Φ(z); far out its first asymptotic term, within 1/z² of it.
    private static double LogBelow(double z) => z > -30
        ? Math.Log(SpecialFunctions.Erfc(-z / Constants.Sqrt2) / 2)
        : -z * z / 2 - Math.Log(-z * Constants.Sqrt2Pi);

    private static (double Skewness, double Kurtosis) Shape(ReadOnlySpan<double> sorted, double mean)
    {
        double second = 0, third = 0, fourth = 0, n = sorted.Length;
        foreach (double value in sorted)
        {
            double difference = value - mean, square = difference * difference;
            (second, third, fourth) = (second + square / n, third + square * difference / n, fourth + square * square / n);
        }

        double skewness = third / Math.Pow(second, 1.5), excess = fourth / (second * second) - 3;
        return (skewness * Math.Sqrt(n * (n - 1)) / (n - 2), ((n + 1) * excess + 6) * (n - 1) / ((n - 2) * (n - 3)));
    }

    private static double StepOf(ReadOnlySpan<double> sorted)
    {
        double step = double.PositiveInfinity, rounding = 1e-9 * (sorted[^1] - sorted[0]);
        for (int i = 1; i < sorted.Length; i++)
            if (sorted[i] - sorted[i - 1] > rounding) step = Math.Min(step, sorted[i] - sorted[i - 1]);
        return step;
    }
}
