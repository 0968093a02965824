using Bellowsmith.Quality.Distributions;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Capability;

/// <summary>
/// Capability without any law of distribution. The share beyond the limits is counted, its 95 % interval exact from the binomial
/// [Clopper Pearson 1934]; the index shown is that of normal parts with the greatest share the count still allows (95 % one-sided),
/// all at one limit. The quantile index is <c>min((U − Q₅₀)/(Q₉₉.₈₆₅ − Q₅₀), (Q₅₀ − L)/(Q₅₀ − Q₀.₁₃₅))</c> [ISO 22514-2 2017], quantiles
/// at (n + 1)p between the sorted readings.
/// </summary>
/// <param name="Outside">Readings strictly beyond a limit.</param>
/// <param name="Share">Outside over all.</param>
/// <param name="ShareLow">Least share the count allows.</param>
/// <param name="ShareHigh">Greatest share the count allows.</param>
/// <param name="CpkShown">Equivalent index, 95 % one-sided; null where every part is beyond a limit.</param>
/// <param name="QuantileIndex">Null with fewer than <see cref="QuantileNeeds"/> readings: the outer quantiles would lie beyond all of them.</param>
public sealed record CountedCapability(int Outside, double Share, double ShareLow, double ShareHigh, double? CpkShown, double? QuantileIndex)
{
    /// <summary>Readings from which the 0.135 % quantile lies among them.</summary>
    public const int QuantileNeeds = 740;

    private const double Outer = 0.00135;

    /// <summary>Of readings in ascending order.</summary>
    public static CountedCapability Of(ReadOnlySpan<double> sorted, SpecificationLimits limits)
    {
        int outside = 0;
        foreach (double value in sorted) outside += limits.IsOutside(value) ? 1 : 0;
        const double miss = (1 - CapabilityIndices.Confidence) / 2;
        int n = sorted.Length;
        return new(
            outside, (double)outside / n,
            outside == 0 ? 0 : Quantiles.BetaOf(miss, outside, n - outside + 1), Greatest(outside, n, miss),
            outside == n ? null : -Normal.InvCDF(0, 1, Greatest(outside, n, 2 * miss)) / 3,
            n < QuantileNeeds ? null : OfQuantiles(sorted, limits));
    }

    /// <summary>How many parts, none of them beyond a limit, would show the wanted index.</summary>
    public static int? PartsNeeded(double wanted)
    {
        double parts = Math.Ceiling(Math.Log(1 - CapabilityIndices.Confidence) / Math.Log(1 - Normal.CDF(0, 1, -3 * wanted)));
        return parts < int.MaxValue ? (int)parts : null;
    }

    private static double Greatest(int outside, int count, double miss) => outside == count ? 1
        : outside == 0 ? 1 - Math.Pow(miss, 1.0 / count) : Quantiles.BetaOf(1 - miss, outside + 1, count - outside);

    private static double? OfQuantiles(ReadOnlySpan<double> sorted, SpecificationLimits limits)
    {
        double low = Quantile(sorted, Outer), middle = Quantile(sorted, 0.5), high = Quantile(sorted, 1 - Outer);
        double? upper = (limits.Upper - middle) / (high - middle), lower = (middle - limits.Lower) / (middle - low);
        double index = Math.Min(upper ?? double.PositiveInfinity, lower ?? double.PositiveInfinity);
        return double.IsFinite(index) ? index : null;
    }

    private static double Quantile(ReadOnlySpan<double> sorted, double share)
    {
        double place = (sorted.Length + 1) * share - 1;
        int before = Math.Clamp((int)place, 0, sorted.Length - 2);
        return sorted[before] + (place - before) * (sorted[before + 1] - sorted[before]);
    }
}
