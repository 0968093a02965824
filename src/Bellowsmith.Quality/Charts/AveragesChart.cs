namespace Bellowsmith.Quality.Charts;

/// <summary>How the spread within subgroups is seen.</summary>
public enum SpreadMeasure
{
    Ranges,
    StandardDeviations,
}

/// <summary>
/// Averages of subgroups, limits <c>centre ± 3σ/√n</c>, with the ranges or standard deviations within them
/// [NIST Handbook 2012, sec. 6.3.2.1]. With equal sizes <c>σ = R̄/d2</c> or <c>s̄/c4</c>; where sizes differ each subgroup's
/// <c>R/d2(n)</c> or <c>s/c4(n)</c> is weighted with the inverse of its variance, <c>d2²/d3²</c> or <c>c4²/(1 − c4²)</c>
/// [Burr 1969]. The centre is the mean of all values. Limits follow each subgroup's own size.
/// </summary>
public sealed class AveragesChart
{
    private readonly double[] _values;
    private readonly int[] _starts;
    private readonly bool _ranges;
    private readonly double[] _means, _spreads;
    private readonly Dictionary<int, ChartConstants> _constants = [];

    private AveragesChart(double[] values, int[] starts, SpreadMeasure measure)
    {
        (_values, _starts, _ranges) = (values, starts, measure == SpreadMeasure.Ranges);
        (_means, _spreads) = (new double[starts.Length], new double[starts.Length]);
        for (int g = 0; g < starts.Length; g++)
        {
            ReadOnlySpan<double> group = values.AsSpan(starts[g], Size(g));
            _means[g] = Sample.Mean(group);
            _spreads[g] = group.Length < 2 ? double.NaN : _ranges ? Range(group) : Sample.StandardDeviation(group);
        }
    }

    /// <param name="values">All values, subgroup after subgroup.</param>
    /// <param name="starts">Where each subgroup begins, ascending from 0; a point of the chart is a subgroup.</param>
    /// <param name="measure">Ranges, or standard deviations, which waste less above ten values.</param>
    /// <param name="basis">Where the limits come from; <see cref="ChartBasis.Sd"/> is of a single value.</param>
    /// <param name="rules">What the averages are watched for; the spread is judged by its limits.</param>
    public static ControlChart Draw(double[] values, int[] starts, SpreadMeasure measure, ChartBasis basis, IReadOnlyList<RunRule> rules) =>
        new AveragesChart(values, starts, measure).Draw(basis, rules);

    private ControlChart Draw(ChartBasis basis, IReadOnlyList<RunRule> rules)
    {
        LimitStepList steps = new(), spreadSteps = new();
        List<ChartPhase> phases = [];
        foreach (Stretch stretch in basis.Stretches(_means.Length))
        {
            ChartPhase phase = Phase(stretch, basis);
            phases.Add(phase);
            for (int g = stretch.First; g < stretch.End; g++)
            {
                steps.Add(g, ControlLimits.Around(phase.Centre, phase.Sd / Math.Sqrt(Size(g))), g == stretch.First);
                spreadSteps.Add(g, SpreadLimits(Size(g), phase), g == stretch.First);
            }
        }

        return ControlChart.Of(ChartKind.Averages, ChartStatistic.Mean, steps.Line(_means), phases, rules) with
        {
            Spread = SpreadChart.Of(_ranges ? ChartStatistic.Range : ChartStatistic.StandardDeviation, spreadSteps.Line(_spreads)),
        };
    }

    private ChartPhase Phase(in Stretch stretch, ChartBasis basis)
    {
        int from = _starts[stretch.First], to = stretch.BaseEnd < _starts.Length ? _starts[stretch.BaseEnd] : _values.Length;
        double centre = basis.Centre ?? Sample.Mean(_values.AsSpan(from, to - from));
        return ChartPhase.Of(stretch, centre, basis.Sd is { } sd ? new(sd, 0) : Sd(stretch), given: basis is { Centre: not null, Sd: not null });
    }

    private SdEstimate Sd(in Stretch stretch)
    {
        double weights = 0, sum = 0;
        for (int g = stretch.First; g < stretch.BaseEnd; g++)
        {
            if (Size(g) < 2) continue;
            (double mean, double deviation) = Factors(Size(g));
            double weight = mean * mean / (deviation * deviation);
            weights += weight;
            sum += weight * _spreads[g] / mean;
        }

        return weights > 0 ? new(sum / weights, 1 / Math.Sqrt(weights)) : new(double.NaN, double.NaN, LimitTrouble.NoSubgroups);
    }

    private ControlLimits SpreadLimits(int size, ChartPhase phase)
    {
        if (size < 2) return ControlLimits.None;
        (double mean, double deviation) = Factors(size);
        return ControlLimits.Around(mean * phase.Sd, deviation * phase.Sd, least: 0) with { Origin = phase.Centre };
    }

    private (double Mean, double Deviation) Factors(int size)
    {
        if (!_constants.TryGetValue(size, out ChartConstants? constants)) _constants.Add(size, constants = ChartConstants.Of(size));
        return _ranges ? (constants.RangeMean, constants.RangeDeviation) : (constants.DeviationMean, constants.DeviationDeviation);
    }

    private int Size(int group) => (group + 1 < _starts.Length ? _starts[group + 1] : _values.Length) - _starts[group];

    private static double Range(ReadOnlySpan<double> group)
    {
        double least = double.PositiveInfinity, greatest = double.NegativeInfinity;
        foreach (double value in group) (least, greatest) = (Math.Min(least, value), Math.Max(greatest, value));
        return greatest - least;
    }
}
