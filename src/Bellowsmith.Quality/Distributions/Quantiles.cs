using Bellowsmith.Quality.Numerics;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Distributions;

/// <summary>
/// Quantiles where the package's own lose digits or do not converge: t in the far tail (Bonferroni shares) and at few degrees,
/// beta and F where the answer is small. Solved on the logarithm of the smaller tail; within a relative 1e-10 for tails down
/// to 1e-12. The package's normal and χ² quantiles and all its distribution functions are within 1e-11 and used as they are.
/// </summary>
public static class Quantiles
{
    /// <summary>Student's t: what it stays below with a probability between 0 and 1, both excluded; degrees above 0, or infinite.</summary>
    public static double StudentT(double probability, double degrees)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(degrees);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(probability);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(probability, 1);
        if (double.IsPositiveInfinity(degrees)) return Normal.InvCDF(0, 1, probability);
        if (probability == 0.5) return 0;
        double tail = Math.Min(probability, 1 - probability);
        double size = Math.Exp(RisingRoot.Find(
            Distance, double.NegativeInfinity, double.PositiveInfinity, Math.Log(-Normal.InvCDF(0, 1, tail))));
        return probability < 0.5 ? -size : size;

        (double, double) Distance(double logSize)
        {
            double t = Math.Exp(logSize), beyond = Beta.CDF(degrees / 2, 0.5, degrees / (degrees + t * t)) / 2;
            return (Math.Log(tail / beyond), t * MathNet.Numerics.Distributions.StudentT.PDF(0, 1, degrees, t) / beyond);
        }
    }

    /// <summary>Beta on 0 to 1 with two shapes above 0: what it stays below with a probability between 0 and 1, both excluded.</summary>
    public static double BetaOf(double probability, double shapeA, double shapeB)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(probability);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(probability, 1);
        return 1 / (1 + Math.Exp(-LogOdds(probability, shapeA, shapeB)));
    }

    /// <summary>Fisher's F with two degrees above 0: what it stays below with a probability between 0 and 1, both excluded.</summary>
    public static double F(double probability, double numeratorDegrees, double denominatorDegrees) =>
        denominatorDegrees / numeratorDegrees * Math.Exp(LogOdds(probability, numeratorDegrees / 2, denominatorDegrees / 2));

    // In the log odds of x and of the probability the beta is close to a straight line from end to end.
    private static double LogOdds(double probability, double a, double b)
    {
        double wanted = Math.Log(probability / (1 - probability));
        return RisingRoot.Find(Distance, double.NegativeInfinity, double.PositiveInfinity, Math.Log(a / b));

        (double, double) Distance(double odds)
        {
            double x = 1 / (1 + Math.Exp(-odds)), rest = 1 / (1 + Math.Exp(odds));
            double below = Beta.CDF(a, b, x), above = Beta.CDF(b, a, rest);
            return (Math.Log(below / above) - wanted, x * rest * Beta.PDF(a, b, x) * (1 / below + 1 / above));
        }
    }
}
