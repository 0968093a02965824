namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Single values in the order they were made, with moving ranges. <c>σ = (mean moving range)/d2(2)</c>, d2(2) = 2/√π =
/// 1.128379: two neighbours see the short-term spread and not a drift [NIST Handbook 2012, sec. 6.3.2.2]. Ranges do not reach
/// across a change of phase.
/// </summary>
public static class IndividualsChart
{
    private static readonly double _rangeMean = 2 / Math.Sqrt(Math.PI), _rangeDeviation = Math.Sqrt(2 - 4 / Math.PI);

    public static ControlChart Draw(double[] values, ChartBasis basis, IReadOnlyList<RunRule> rules)
    {
        double[] ranges = new double[values.Length];
        LimitStepList steps = new(), rangeSteps = new();
        List<ChartPhase> phases = [];
        foreach (Stretch stretch in basis.Stretches(values.Length))
        {
            MovingRanges(values, ranges, stretch);
            ChartPhase phase = Phase(values, stretch, basis);
            phases.Add(phase);
            steps.Add(stretch.First, ControlLimits.Around(phase.Centre, phase.Sd), newPhase: true);
            rangeSteps.Add(stretch.First, ControlLimits.Around(_rangeMean * phase.Sd, _rangeDeviation * phase.Sd, least: 0) with { Origin = phase.Centre }, newPhase: true);
        }

        return ControlChart.Of(ChartKind.Individuals, ChartStatistic.Value, steps.Line(values), phases, rules) with
        {
            Spread = SpreadChart.Of(ChartStatistic.MovingRange, rangeSteps.Line(ranges)),
        };
    }

    /// <summary>Centre and spread of a phase of single values, estimated where not given.</summary>
    internal static ChartPhase Phase(double[] values, in Stretch stretch, ChartBasis basis)
    {
        ReadOnlySpan<double> used = values.AsSpan(stretch.First, stretch.BasePoints);
        double centre = basis.Centre ?? Sample.Mean(used);
        return ChartPhase.Of(stretch, centre, basis.Sd is { } sd ? new(sd, 0) : Sd(used), given: basis is { Centre: not null, Sd: not null });
    }

    private static SdEstimate Sd(ReadOnlySpan<double> values)
    {
        if (values.Length < 2) return new(double.NaN, double.NaN, LimitTrouble.TooFewPoints);
        double sum = 0, lost = 0;
        for (int i = 1; i < values.Length; i++)
        {
            double term = Math.Abs(values[i] - values[i - 1]) - lost, next = sum + term; // Kahan
            (lost, sum) = (next - sum - term, next);
        }

        return new(sum / (values.Length - 1) / _rangeMean, RelativeError(values.Length - 1));
    }

    // Neighbouring ranges share a value: cov(|u|, |v|) = (4/π)(√(1 − ρ²) + ρ·asin ρ) − 4/π with ρ = ½, for a variance of 2.
    private static double RelativeError(int ranges)
    {
        double covariance = 4 / Math.PI * (Math.Sqrt(0.75) + 0.5 * Math.Asin(0.5) - 1);
        double variance = (_rangeDeviation * _rangeDeviation + 2 * covariance * (ranges - 1) / ranges) / ranges;
        return Math.Sqrt(variance) / _rangeMean;
    }

    private static void MovingRanges(double[] values, double[] ranges, in Stretch stretch)
    {
        if (stretch.First < stretch.End) ranges[stretch.First] = double.NaN;
        for (int i = stretch.First + 1; i < stretch.End; i++) ranges[i] = Math.Abs(values[i] - values[i - 1]);
    }
}
