using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// Groups compared without regard to runs, all pairs at once: the honest significant difference [Tukey 1953], for groups of
/// unequal size in its usual, slightly wide, form. Shown beside the analysis in blocks, because warm-up drift inflates its
/// residual and hides small steps.
/// </summary>
public sealed class OneWay
{
    private OneWay(double[] means, int[] counts, AnovaLine between, AnovaLine within) =>
        (Means, Counts, Between, Within) = (means, counts, between, within);

    public IReadOnlyList<double> Means { get; }

    public IReadOnlyList<int> Counts { get; }

    public AnovaLine Between { get; }

    public AnovaLine Within { get; }

    /// <summary>The analysis of two groups or more, each with a reading or more; null where nothing is left to judge scatter by.</summary>
    public static OneWay? Of(IReadOnlyList<double[]> groups)
    {
        int count = groups.Sum(group => group.Length);
        if (groups.Count < 2 || count <= groups.Count) return null;
        double[] means = [.. groups.Select(group => Sample.Mean(group))];
        double level = groups.Sum(group => group.Sum()) / count;
        AnovaLine within = AnovaLine.Of(groups.Zip(means, (group, mean) => group.Sum(value => (value - mean) * (value - mean))).Sum(), count - groups.Count);
        double between = groups.Zip(means, (group, mean) => group.Length * (mean - level) * (mean - level)).Sum();
        return within.SumOfSquares > 0
            ? new(means, [.. groups.Select(group => group.Length)], AnovaLine.Of(between, groups.Count - 1, within), within)
            : null;
    }

    /// <summary>How far the intervals of all pairs reach to either side, at a simultaneous confidence.</summary>
    public double HalfWidth(int group, int other, double confidence) =>
        StudentizedRange.Quantile(confidence, Means.Count, Within.Degrees) * Spread(group, other);

    /// <summary>How likely a difference as large as the observed would show in any pair, were all groups alike.</summary>
    public double Probability(int group, int other) =>
        1 - StudentizedRange.Cdf(Math.Abs(Means[group] - Means[other]) / Spread(group, other), Means.Count, Within.Degrees);

    private double Spread(int group, int other) =>
        Math.Sqrt(Within.MeanSquare!.Value * (1.0 / Counts[group] + 1.0 / Counts[other]) / 2);
}
