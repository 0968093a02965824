namespace Bellowsmith.Quality.Distributions;

/// <summary>
/// The k − 1 steps between neighbours among k independent normal means of equal weight, each divided by its estimated standard
/// error (pooled deviation, ν degrees): the multivariate t with correlation −1/2 between neighbouring steps and 0 between all
/// others [Hochberg Tamhane 1987]. The probability that all steps stay within a bound gives exact simultaneous limits.
/// <para>
/// Known deviation: with means <c>zᵢ</c> the steps are <c>(zᵢ₊₁ − zᵢ)/√2</c>, a chain, so the density of the last mean
/// with all steps so far within the bound follows by
/// <c>fᵢ₊₁(z) = φ(z)·∫fᵢ(y)dy</c> over <c>|z − y| ≤ √2·x</c> (one-sided: <c>y ≥ z − √2·x</c>). Estimated deviation: averaged
/// over it. Probabilities are within 1e-10 for 2 to 100 means and 1 degree to 1e6 (infinite allowed), quantiles to a relative 1e-8
/// for probabilities of 0.5 to 0.9999.
/// </para>
/// </summary>
public static class AdjacentSteps
{
    /// <summary>The probability that every step is within ±<paramref name="critical"/> standard errors of what it estimates.</summary>
    public static double TwoSidedCdf(double critical, int means, double degrees) =>
        critical <= 0 ? 0 : Mixture(means, degrees, twoSided: true).At(critical);

    /// <summary>The probability that every step is at most <paramref name="critical"/> ≥ 0 standard errors above what it estimates.</summary>
    public static double OneSidedCdf(double critical, int means, double degrees)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(critical);
        return critical == 0 ? new StepChain(means).Below(0) : Mixture(means, degrees, twoSided: false).At(critical);
    }

    /// <summary>The critical value at which <see cref="TwoSidedCdf"/> is a probability between 0 and 1, both excluded.</summary>
    public static double TwoSidedQuantile(double probability, int means, double degrees) =>
        Mixture(means, degrees, twoSided: true).Quantile(probability, Bonferroni((1 - probability) / 2, means, degrees));

    /// <summary>The critical value at which <see cref="OneSidedCdf"/> is a probability of at least a half and below 1.</summary>
    public static double OneSidedQuantile(double probability, int means, double degrees)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(probability, 0.5);
        return Mixture(means, degrees, twoSided: false).Quantile(probability, Bonferroni(1 - probability, means, degrees));
    }

    private static ScaleMixture Mixture(int means, double degrees, bool twoSided)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degrees);
        StepChain chain = new(means);
        return new(twoSided ? chain.Within : chain.Below, degrees, 0.5 / Math.Sqrt(degrees + 25));
    }

    // The limits that would hold whatever the correlation: a little too wide, and the place to start from.
    private static double Bonferroni(double tail, int means, double degrees) =>
        Math.Max(0.1, -Quantiles.StudentT(Math.Min(0.49, tail / (means - 1)), degrees));
}
