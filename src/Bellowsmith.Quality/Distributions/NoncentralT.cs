using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Distributions;

/// <summary>
/// The noncentral t: <c>T = (Z + δ)/S</c> with <c>Z</c> standard normal and <c>S² = χ²ν/ν</c> independent of it
/// [Johnson Welch 1940], as <c>P(T ≤ t) = E Φ(tS − δ)</c>. Probabilities are within 1e-12 for degrees of 1 to 1e6 (infinite
/// allowed) and noncentralities of −100 to 100, quantiles to a relative 1e-10 for probabilities of 1e-4 to 1 − 1e-4.
/// </summary>
public static class NoncentralT
{
    /// <summary><c>P(T ≤ t)</c>.</summary>
    public static double Cdf(double t, double degrees, double noncentrality)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degrees);
        if (t == 0) return Normal.CDF(0, 1, -noncentrality);
        double sign = Math.Sign(t);
        return Mixture(x => Normal.CDF(0, 1, sign * x - noncentrality), degrees, noncentrality).At(Math.Abs(t));
    }

    /// <summary>The t that <c>T</c> stays below with a probability between 0 and 1, both excluded.</summary>
    public static double Quantile(double probability, double degrees, double noncentrality)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degrees);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(probability);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(probability, 1);
        double negative = Normal.CDF(0, 1, -noncentrality);
        if (probability == negative) return 0;
        if (probability < negative) return -Quantile(1 - probability, degrees, -noncentrality);

        // Only values above zero are left; their share is what the mixture is asked for.
        double guess = Math.Max(0.1, noncentrality + Normal.InvCDF(0, 1, probability));
        return Mixture(x => Normal.CDF(0, 1, x - noncentrality), degrees, noncentrality).Quantile(probability, guess);
    }

    // Φ(x − δ) turns within 1/δ of ln x = ln δ, and the trapezoid has to see it.
    private static ScaleMixture Mixture(Func<double, double> atKnownDeviation, double degrees, double noncentrality) =>
        new(atKnownDeviation, degrees, 0.5 / Math.Sqrt(degrees + 25 + noncentrality * noncentrality));
}
