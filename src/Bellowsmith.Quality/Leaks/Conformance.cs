using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Leaks;

/// <summary>
/// How probable it is that a true value keeps its limits, from an estimate and its standard uncertainty [JCGM 106 2012, sec. 7]: the
/// truth is normal about the estimate, or, where the uncertainty stands on few readings, t with their degrees of freedom. No
/// uncertainty (0) leaves 1 or 0.
/// </summary>
public static class Conformance
{
    /// <summary>P(truth ≤ limit).</summary>
    public static double Below(double estimate, double uncertainty, double limit, double degrees = double.PositiveInfinity) =>
        uncertainty == 0 ? (estimate <= limit ? 1 : 0) : Share((limit - estimate) / uncertainty, degrees);

    /// <summary>P(truth ≥ limit).</summary>
    public static double Above(double estimate, double uncertainty, double limit, double degrees = double.PositiveInfinity) =>
        Below(-estimate, uncertainty, -limit, degrees);

    /// <summary>P(lower ≤ truth ≤ upper).</summary>
    public static double Between(double estimate, double uncertainty, double lower, double upper, double degrees = double.PositiveInfinity) =>
        uncertainty == 0 ? (estimate >= lower && estimate <= upper ? 1 : 0)
            : 1 - Share((lower - estimate) / uncertainty, degrees) - Share((estimate - upper) / uncertainty, degrees);

    /// <summary>How many standard uncertainties an estimate must keep from a one-sided limit for this probability: 1.645 for 95 %.</summary>
    public static double Factor(double probability, double degrees = double.PositiveInfinity) =>
        double.IsInfinity(degrees) ? Normal.InvCDF(0, 1, probability) : StudentT.InvCDF(0, 1, degrees, probability);

    /// <summary>
    /// The guard band inside both limits so that an estimate on its edge conforms with the probability; the one-sided band where
    /// the uncertainty is small beside the tolerance. Null where not even the middle conforms so surely.
    /// </summary>
    public static double? GuardBand(double uncertainty, double lower, double upper, double probability, double degrees = double.PositiveInfinity)
    {
        double low = 0, high = (upper - lower) / 2;
        if (Between(lower + high, uncertainty, lower, upper, degrees) < probability) return null;
        if (Between(lower, uncertainty, lower, upper, degrees) >= probability) return 0;
        for (int halving = 0; halving < 100; halving++)
        {
            double middle = (low + high) / 2;
            if (Between(lower + middle, uncertainty, lower, upper, degrees) < probability) low = middle;
            else high = middle;
        }

        return high;
    }

    /// <summary>
    /// The same factor where the truth is rectangular about the estimate: <c>√3·(1 − 2·risk)</c>, so that √3 leaves no risk at all;
    /// derived from the rectangle's half-width √3·u. Risk from 0 to 0.5.
    /// </summary>
    public static double RectangularFactor(double risk) => Math.Sqrt(3) * (1 - 2 * risk);

    private static double Share(double deviations, double degrees) =>
        double.IsInfinity(degrees) ? Normal.CDF(0, 1, deviations) : StudentT.CDF(0, 1, degrees, deviations);
}
