using Bellowsmith.Quality.Distributions;
using Bellowsmith.Quality.Numerics;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Capability;

/// <summary>
/// What n normal readings show of one side's index C = (U − μ)/3σ: <c>3·Ĉ·√n</c> is noncentral t with n − 1 degrees of freedom and
/// noncentrality <c>3·C·√n</c> [Kushler Hurley 1992], so bounds are exact.
/// </summary>
public static class NoncentralBound
{
    /// <summary>A search for more parts than this ends.</summary>
    public const int MostParts = 100_000;

    /// <summary>The index that is shown: the true one is greater with this confidence.</summary>
    public static double IndexShown(double index, int count, double confidence) => Bound(index, count, confidence);

    /// <summary>Two-sided interval of the share beyond the limit, from the same bounds: <c>Φ(−3C)</c>.</summary>
    public static (double Low, double High) ShareBeyond(double index, int count, double confidence)
    {
        double miss = (1 - confidence) / 2;
        return (Normal.CDF(0, 1, -3 * Bound(index, count, miss)), Normal.CDF(0, 1, -3 * Bound(index, count, 1 - miss)));
    }

    /// <summary>The index that so many parts would have to give for the wanted one to be shown.</summary>
    public static double IndexNeeded(double wanted, int count, double confidence) =>
        NoncentralT.Quantile(confidence, count - 1, 3 * wanted * Math.Sqrt(count)) / (3 * Math.Sqrt(count));

    /// <summary>
    /// The fewest parts that would show the wanted index if they gave this one again; null where that is more than
    /// <see cref="MostParts"/>, as it always is for an index that is not above the wanted.
    /// </summary>
    public static int? PartsNeeded(double index, double wanted, double confidence)
    {
        if (index <= wanted || !Shows(MostParts)) return null;
        int tooFew = 1, enough = MostParts;
        while (enough - tooFew > 1)
        {
            int middle = tooFew < enough / 4 ? 2 * tooFew : (tooFew + enough) / 2;
            if (Shows(middle)) enough = middle;
            else tooFew = middle;
        }

        return enough;

        bool Shows(int count) => NoncentralT.Cdf(3 * index * Math.Sqrt(count), count - 1, 3 * wanted * Math.Sqrt(count)) >= confidence;
    }

    // The index whose distribution puts this share below what was seen.
    private static double Bound(double index, int count, double below)
    {
        double root = Math.Sqrt(count), seen = 3 * index * root;
        double step = 1 + Math.Sqrt(1 + seen * seen / (2.0 * count));
        double? noncentrality = Excess(seen) > 0 ? BracketedRoot.Beyond(Excess, seen, step) : BracketedRoot.Beyond(x => -Excess(x), seen, -step);
        return (noncentrality ?? seen) / (3 * root);

        double Excess(double x) => NoncentralT.Cdf(seen, count - 1, x) - below;
    }
}
