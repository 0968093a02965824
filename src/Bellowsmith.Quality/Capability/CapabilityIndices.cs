using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Capability;

/// <summary>An index and its 95 % two-sided interval.</summary>
public sealed record IndexEstimate(double Value, double Low, double High);

/// <summary>
/// Process capability of normal readings from their mean x̄ and n − 1 standard deviation s [NIST Handbook 2012, sec. 6.1.6]:
/// <c>Cp = (U − L)/6s</c>, <c>Cpu = (U − x̄)/3s</c>, <c>Cpl = (x̄ − L)/3s</c>, <c>Cpk</c> the smaller,
/// <c>Cpm = (U − L)/6√(s² + (x̄ − T)²)</c>. s is that of all readings together, so Cp here is what some call Pp.
/// Intervals: Cp from χ²(n − 1), exact; Cpu, Cpl and Cpk normal, <c>± z·√(1/(9n) + C²/(2(n − 1)))</c> [Bissell 1990], which held in 95 % of
/// simulated batches of 10 and 30; Cpm from χ² with fitted degrees of freedom [Boyles 1991].
/// </summary>
/// <param name="Count">n, readings.</param>
/// <param name="Mean">x̄.</param>
/// <param name="StandardDeviation">s, n − 1.</param>
/// <param name="Cp">Null with one limit.</param>
/// <param name="Cpl">Null without a lower limit.</param>
/// <param name="Cpu">Null without an upper limit.</param>
/// <param name="Cpk">The nearer side's.</param>
/// <param name="Cpm">Null with one limit or without a target.</param>
/// <param name="CpkShown">
/// The index that is shown with 95 % one-sided confidence, from the noncentral t of the nearer limit. Exact with one limit; with two
/// it holds at least 95 %, because the smaller of two indices can only lie lower.
/// </param>
public sealed record CapabilityIndices(
    int Count, double Mean, double StandardDeviation,
    IndexEstimate? Cp, IndexEstimate? Cpl, IndexEstimate? Cpu, IndexEstimate Cpk, IndexEstimate? Cpm, double CpkShown)
{
    /// <summary>Of every interval and bound here.</summary>
    public const double Confidence = 0.95;

    /// <summary>From at least 2 readings and a standard deviation (n − 1) greater than nothing.</summary>
    public static CapabilityIndices Of(int count, double mean, double standardDeviation, SpecificationLimits limits)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 2);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(standardDeviation);
        double? width = limits.Upper - limits.Lower;
        IndexEstimate? lower = OneSide((mean - limits.Lower) / (3 * standardDeviation), count);
        IndexEstimate? upper = OneSide((limits.Upper - mean) / (3 * standardDeviation), count);
        IndexEstimate nearer = lower is null || upper?.Value < lower.Value ? upper! : lower;
        return new(
            count, mean, standardDeviation,
            width is { } w ? Scaled(w / (6 * standardDeviation), count - 1) : null,
            lower, upper, nearer,
            width is { } u && limits.Target is { } target ? AboutTarget(u, mean - target, standardDeviation, count) : null,
            NoncentralBound.IndexShown(nearer.Value, count, Confidence));
    }

    private static IndexEstimate? OneSide(double? index, int count)
    {
        if (index is not { } c) return null;
        double half = Normal.InvCDF(0, 1, (1 + Confidence) / 2) * Math.Sqrt(1.0 / (9.0 * count) + c * c / (2.0 * (count - 1)));
        return new(c, c - half, c + half);
    }

    private static IndexEstimate Scaled(double index, double degrees) => new(
        index,
        index * Math.Sqrt(ChiSquared.InvCDF(degrees, (1 - Confidence) / 2) / degrees),
        index * Math.Sqrt(ChiSquared.InvCDF(degrees, (1 + Confidence) / 2) / degrees));

    private static IndexEstimate AboutTarget(double width, double miss, double standardDeviation, int count)
    {
        double variance = standardDeviation * standardDeviation * (count - 1) / count, ratio = miss * miss / variance;
        double degrees = count * (1 + ratio) * (1 + ratio) / (1 + 2 * ratio);
        return Scaled(width / (6 * Math.Sqrt(standardDeviation * standardDeviation + miss * miss)), degrees);
    }
}
