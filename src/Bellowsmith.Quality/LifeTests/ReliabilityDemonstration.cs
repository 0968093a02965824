using Bellowsmith.Quality.Distributions;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.LifeTests;

/// <summary>
/// What parts that survive a test show of the reliability R (the share of all such parts that would survive it), exact from the
/// binomial: n parts with at most f failures show R with confidence C where <c>Σ(k ≤ f) C(n,k)(1−R)^k R^(n−k) ≤ 1 − C</c>
/// [Clopper Pearson 1934]. Without failures this is the success run, <c>R^n = 1 − C</c>.
/// </summary>
public static class ReliabilityDemonstration
{
    /// <summary>No bench tests more parts than this.</summary>
    public const int MostParts = 1_000_000;

    // Where R^n meets 1 − C exactly, the last digits of a power must not ask for one part more.
    private const double Slack = 1 + 1e-12;

    /// <summary>The fewest parts, tested with no more than the allowed failures; null where that is more than <see cref="MostParts"/>.</summary>
    public static int? PartsNeeded(double reliability, double confidence, int allowedFailures = 0)
    {
        Check(reliability, confidence);
        if (!Shows(MostParts)) return null;
        int tooFew = allowedFailures, enough = MostParts;
        while (enough - tooFew > 1)
        {
            int middle = (enough + tooFew) / 2;
            if (Shows(middle)) enough = middle;
            else tooFew = middle;
        }

        return enough;

        bool Shows(int parts) => Binomial.CDF(1 - reliability, parts, allowedFailures) <= (1 - confidence) * Slack;
    }

    /// <summary>The reliability that so many parts, so many of them failed, show with this confidence; 0 where all failed.</summary>
    public static double Shown(int parts, int failures, double confidence)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(parts, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(failures, parts);
        if (failures == parts) return 0;
        return failures == 0 ? Math.Pow(1 - confidence, 1.0 / parts) : Quantiles.BetaOf(1 - confidence, parts - failures, failures + 1);
    }

    /// <summary>
    /// The reliability over a life longer or shorter by a ratio L, for a Weibull life of known shape β: <c>R^(L^β)</c>. Testing
    /// longer makes fewer parts do, <c>n = ln(1−C)/(L^β·ln R)</c> [Nelson 1985]; the whole gain rests on β.
    /// </summary>
    public static double OverLife(double reliability, double lifeRatio, double shape) => Math.Pow(reliability, Math.Pow(lifeRatio, shape));

    /// <summary>How many times the wanted life so many parts must run, with so many failures, to show R: <see cref="OverLife"/> turned round.</summary>
    public static double LifeRatioNeeded(double reliability, double confidence, int parts, int failures, double shape) =>
        Math.Pow(Math.Log(Shown(parts, failures, confidence)) / Math.Log(reliability), 1 / shape);

    private static void Check(double reliability, double confidence)
    {
        if (!(reliability is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(reliability), reliability, "A reliability lies between 0 and 1.");
        if (!(confidence is > 0 and < 1)) throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "A confidence lies between 0 and 1.");
    }
}
