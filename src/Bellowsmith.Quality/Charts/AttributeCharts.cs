namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Counts of something found: blemishes on a bellows, say. With one size throughout the counts themselves with limits
/// <c>c̄ ± 3√c̄</c>; where sizes differ counts per size, <c>ū ± 3√(ū/size)</c>, for each point by its own size; never below 0.
/// A count is taken for Poisson [NIST Handbook 2012, sec. 6.3.3.1].
/// </summary>
public static class CountsChart
{
    /// <param name="counts">Whole numbers from 0.</param>
    /// <param name="sizes">How much was looked at for each, above 0; null where always the same.</param>
    /// <param name="basis">Where limits come from; the centre given is a count per point, or per unit of size where sizes differ.</param>
    /// <param name="rules">What the points are watched for.</param>
    public static ControlChart Draw(double[] counts, double[]? sizes, ChartBasis basis, IReadOnlyList<RunRule> rules)
    {
        double[]? differing = sizes is not null && sizes.Any(s => s != sizes[0]) ? sizes : null;
        return AttributeLine.Draw(
            ChartKind.Counts, differing is null ? ChartStatistic.Count : ChartStatistic.CountPerSize, counts, differing,
            Math.Sqrt, double.PositiveInfinity, basis, rules);
    }
}

/// <summary>
/// Shares of pieces that fail: <c>p = count/size</c> with limits <c>p̄ ± 3√(p̄(1 − p̄)/size)</c>, for each point by its own
/// size, within 0 and 1. Each piece is taken to fail by itself [NIST Handbook 2012, sec. 6.3.3.2].
/// </summary>
public static class SharesChart
{
    /// <param name="counts">How many failed, whole numbers from 0 to the size.</param>
    /// <param name="sizes">How many there were, from 1.</param>
    /// <param name="basis">Where limits come from; the centre given is a share.</param>
    /// <param name="rules">What the points are watched for.</param>
    public static ControlChart Draw(double[] counts, double[] sizes, ChartBasis basis, IReadOnlyList<RunRule> rules) =>
        AttributeLine.Draw(ChartKind.Shares, ChartStatistic.Share, counts, sizes, p => Math.Sqrt(p * (1 - p)), 1, basis, rules);
}

internal static class AttributeLine
{
    public static ControlChart Draw(
        ChartKind kind, ChartStatistic statistic, double[] counts, double[]? sizes, Func<double, double> deviation, double greatest,
        ChartBasis basis, IReadOnlyList<RunRule> rules)
    {
        double[] points = sizes is null ? counts : new double[counts.Length];
        for (int i = 0; i < points.Length && sizes is not null; i++) points[i] = counts[i] / sizes[i];
        LimitStepList steps = new();
        List<ChartPhase> phases = [];
        foreach (Stretch stretch in basis.Stretches(counts.Length))
        {
            (ChartPhase phase, double ofOne) = Phase(counts, sizes, stretch, basis, deviation);
            phases.Add(phase);
            for (int i = stretch.First; i < (sizes is null ? stretch.First + 1 : stretch.End); i++)
                steps.Add(i, ControlLimits.Around(phase.Centre, sizes is null ? ofOne : ofOne / Math.Sqrt(sizes[i]), 3, 0, greatest), i == stretch.First);
        }

        return ControlChart.Of(kind, statistic, steps.Line(points), phases, rules);
    }

    // Pooled over the stretch: all counts over all sizes. The deviation of a point follows from the mean; so does its error.
    private static (ChartPhase Phase, double OfOne) Phase(
        double[] counts, double[]? sizes, in Stretch stretch, ChartBasis basis, Func<double, double> deviation)
    {
        double found = Sum(counts, stretch);
        double size = sizes is null ? stretch.BasePoints : Sum(sizes, stretch);
        double centre = basis.Centre ?? found / size, ofOne = deviation(centre);
        SdEstimate sd = new(ofOne / Math.Sqrt(size / stretch.BasePoints), basis.Centre is null ? ofOne / Math.Sqrt(size) / (2 * centre) : 0);
        ChartPhase phase = ChartPhase.Of(stretch, centre, sd, given: basis.Centre is not null);
        return (phase, phase.Judged ? ofOne : double.NaN);
    }

    private static double Sum(double[] numbers, in Stretch stretch)
    {
        double sum = 0;
        for (int i = stretch.First; i < stretch.BaseEnd; i++) sum += numbers[i];
        return sum;
    }
}
