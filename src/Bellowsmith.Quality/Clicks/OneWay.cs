using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// Groups compared without regard to runs, all pairs at once: the honest significant difference [Tukey 1953], for groups of
/// unequal size in its usual, slightly wide, form. Shown beside the analysis in blocks, because warm-up drift inflates its
/// residual and hides small steps.
/// </summary>
public sealed class OneWay
{
    private OneWay(double[] means, int[] counts, OneWayAnova anova) => (Means, Counts, Between, Within) = (means, counts, anova.Between, anova.Within);

    public IReadOnlyList<double> Means { get; }

    public IReadOnlyList<int> Counts { get; }

    public AnovaRow Between { get; }

    public AnovaRow Within { get; }

    /// <summary>The analysis of two groups or more, each with a reading or more; null where nothing is left to judge scatter by.</summary>
    public static OneWay? Of(IReadOnlyList<double[]> groups)
    {
        if (groups.Count < 2 || groups.Sum(group => group.Length) <= groups.Count) return null;
        OneWayAnova anova = OneWayAnova.Of(groups);
        return anova.Within.SumOfSquares > 0
            ? new([.. groups.Select(group => Quality.Means.Of(group))], [.. groups.Select(group => group.Length)], anova) : null;
    }

    /// <summary>How far the intervals of all pairs reach to either side, at a simultaneous confidence.</summary>
    public double HalfWidth(int group, int other, double confidence) =>
        StudentizedRange.Quantile(confidence, Means.Count, Within.Degrees) * Spread(group, other);

    /// <summary>How likely a difference as large as the observed would show in any pair, were all groups alike.</summary>
    public double Probability(int group, int other) =>
        1 - StudentizedRange.Cdf(Math.Abs(Means[group] - Means[other]) / Spread(group, other), Means.Count, Within.Degrees);

    private double Spread(int group, int other) =>
        Math.Sqrt(Within.MeanSquare * (1.0 / Counts[group] + 1.0 / Counts[other]) / 2);
}
