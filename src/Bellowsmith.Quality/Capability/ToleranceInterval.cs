using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Capability;

/// <summary>
/// Between (or beyond) these numbers lies a share of all parts, with a confidence: two-sided with two limits, one-sided with one.
/// </summary>
/// <param name="Low">Null where open to that side or where too few parts were measured.</param>
/// <param name="High">Null likewise.</param>
/// <param name="Coverage">Share of all parts.</param>
/// <param name="Confidence">That at least the coverage lies there.</param>
/// <param name="Factor">Standard deviations from the mean; null without a law of distribution.</param>
/// <param name="PartsNeeded">Fewest readings with which one without a law exists; null where the law is normal: any two do.</param>
public sealed record ToleranceInterval(double? Low, double? High, double Coverage, double Confidence, double? Factor, int? PartsNeeded)
{
    /// <summary>Of normal parts, x̄ ± k·s with the exact factor, which <see cref="ToleranceFactor"/> holds.</summary>
    public static ToleranceInterval Normal(CapabilityIndices indices, SpecificationLimits limits, double coverage, double confidence)
    {
        double factor = limits.IsOneSided
            ? ToleranceFactor.OneSided(coverage, confidence, indices.Count) : ToleranceFactor.TwoSided(coverage, confidence, indices.Count);
        double reach = factor * indices.StandardDeviation;
        return new(
            limits.Lower is null ? null : indices.Mean - reach, limits.Upper is null ? null : indices.Mean + reach, coverage, confidence, factor, null);
    }

    /// <summary>
    /// Of parts of any law, from one sorted reading to another [Wilks 1941]: with m of the n + 1 gaps between readings left outside, the share
    /// inside is Beta(n + 1 − m, m). The most gaps are left out that the confidence allows, half on each side, the odd one below.
    /// </summary>
    public static ToleranceInterval Counted(ReadOnlySpan<double> sorted, SpecificationLimits limits, double coverage, double confidence)
    {
        int n = sorted.Length, least = limits.IsOneSided ? 1 : 2;
        int? needed = CountedPartsNeeded(coverage, confidence, least);
        if (!Holds(n, least)) return new(null, null, coverage, confidence, null, needed);
        int gaps = least, tooMany = n;
        while (tooMany - gaps > 1)
        {
            int middle = (gaps + tooMany) / 2;
            if (Holds(n, middle)) gaps = middle;
            else tooMany = middle;
        }

        int below = limits.Lower is null ? 0 : limits.Upper is null ? gaps : (gaps + 1) / 2, above = gaps - below;
        return new(below == 0 ? null : sorted[below - 1], above == 0 ? null : sorted[n - above], coverage, confidence, null, needed);

        bool Holds(int parts, int outside) => outside <= parts && Beta.CDF(parts + 1 - outside, outside, coverage) <= 1 - confidence;
    }

    private static int? CountedPartsNeeded(double coverage, double confidence, int gaps)
    {
        int tooFew = gaps - 1, enough = gaps;
        while (!Holds(enough))
        {
            if (enough > 100_000_000) return null;
            (tooFew, enough) = (enough, 2 * enough);
        }

        while (enough - tooFew > 1)
        {
            int middle = (tooFew + enough) / 2;
            if (Holds(middle)) enough = middle;
            else tooFew = middle;
        }

        return enough;

        bool Holds(int parts) => Beta.CDF(parts + 1 - gaps, gaps, coverage) <= 1 - confidence;
    }
}
