namespace Bellowsmith.Quality.Charts;

public enum ChartKind
{
    Individuals,
    Averages,
    Ewma,
    Cusum,
    Counts,
    Shares,
}

/// <summary>What a line of points shows.</summary>
public enum ChartStatistic
{
    Value,
    Mean,
    MovingRange,
    Range,
    StandardDeviation,
    WeightedAverage,
    CumulativeSum,
    Count,
    CountPerSize,
    Share,
}

/// <summary>A chart drawn and judged: its points, what their limits stand on, and every signal.</summary>
public sealed record ControlChart
{
    public required ChartKind Kind { get; init; }
    public required ChartStatistic Statistic { get; init; }
    public required ChartLine Line { get; init; }
    public required IReadOnlyList<ChartPhase> Phases { get; init; }
    public required IReadOnlyList<RunRule> Rules { get; init; }
    public required Signal[] Signals { get; init; }

    /// <summary>The chart of the spread beside it, judged by its limits alone; null where the kind has none.</summary>
    public SpreadChart? Spread { get; init; }

    /// <summary>The two sums of a cumulative-sum chart, both 0 and up.</summary>
    public CusumSums? Sums { get; init; }

    public int Points => Line.Points.Length;

    /// <summary>Whether at least one phase has limits.</summary>
    public bool Judged => Phases.Any(p => p.Judged);

    internal static ControlChart Of(
        ChartKind kind, ChartStatistic statistic, ChartLine line, IReadOnlyList<ChartPhase> phases, IReadOnlyList<RunRule> rules) => new()
        {
            Kind = kind,
            Statistic = statistic,
            Line = line,
            Phases = phases,
            Rules = rules,
            Signals = RuleWatch.Over(line, rules),
        };
}

/// <summary>Spread beside the main chart: moving ranges, ranges or standard deviations with limits of their own.</summary>
public sealed record SpreadChart(ChartStatistic Statistic, ChartLine Line, Signal[] Signals)
{
    internal static SpreadChart Of(ChartStatistic statistic, ChartLine line) =>
        new(statistic, line, RuleWatch.Over(line, [RunRule.BeyondLimit]));
}

public sealed record CusumSums(double[] High, double[] Low);
