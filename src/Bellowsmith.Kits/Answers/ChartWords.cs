using System.Globalization;
using Bellowsmith.Kits.Studies.Charting;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a control chart.</summary>
public sealed class ChartWords(ChartResult result)
{
    private const double Countable = 1e6;

    private readonly ControlChart _chart = result.Chart;
    private readonly string _unit = Unit(result);

    // Three digits of the finest spread on the chart; the limits and points deserve no more.
    private readonly string _format = "0." + new string('#', DecimalsOf(result.Chart));

    /// <summary>The decimals a number of this chart deserves.</summary>
    public int Decimals => DecimalsOf(result.Chart);

    public string Title => _chart.Kind switch
    {
        ChartKind.Individuals => "single values",
        ChartKind.Averages => "averages of subgroups",
        ChartKind.Ewma => "exponentially weighted averages",
        ChartKind.Cusum => "cumulative sums",
        ChartKind.Counts => "counts",
        _ => "shares",
    };

    public string Answer()
    {
        if (Reason() is { } reason) return reason;
        int signals = _chart.Signals.Select(s => s.Point).Distinct().Count(), spread = _chart.Spread?.Signals.Length ?? 0;
        string wolf = $"{(_chart.Rules.Count == 1 ? "this rule" : "this set of rules")} cries wolf once in {Length(result.Together.Unchanged)} points on average";
        string beside = (spread == 0 ? "" : $" {Capital(Statistic(_chart.Spread!.Statistic))}s give {Many(spread, "signal")}.")
            + (Judged() == _chart.Points ? "" : $" {Many(_chart.Points - Judged(), "point")} could not be judged.");
        if (signals == 0) return $"No signal in {Many(Judged(), "point")}; {wolf}.{beside}";
        string first = Signal(_chart.Signals[0]);
        return signals == 1 ? $"{first}. It is the only signal in {Many(Judged(), "point")}; {wolf}.{beside}"
            : $"{signals} of {Many(Judged(), "point")} signal. The first: {Lower(first)}; {wolf}.{beside}";
    }

    /// <summary>Why there is no verdict; null where there is one.</summary>
    public string? Reason() => _chart.Judged ? null : Reason(_chart.Phases[0]);

    /// <summary>Why a phase has no limits; null where it has.</summary>
    public string? Reason(ChartPhase phase) => phase.Trouble switch
    {
        LimitTrouble.None => null,
        LimitTrouble.TooFewPoints => $"No verdict: {Many(phase.BasePoints, "point")} {(phase.BasePoints == 1 ? "is" : "are")} too few to estimate limits from; at least {ChartBasis.LeastPoints} are needed, "
            + $"and with fewer than {ChartBasis.AmplePoints} the limits themselves are uncertain. With centre and standard deviation given, any number can be judged.",
        LimitTrouble.NoSubgroups => "No verdict: every subgroup holds a single value, so nothing shows the spread within one. Chart them as individuals, or give centre and standard deviation.",
        _ when result.Question.IsOfCounts => "No verdict: nothing was found in any point, or in every piece; limits need some of both. Give the centre that is expected.",
        _ => "No verdict: the values do not differ, so there is no spread to set limits by. The instrument may be too coarse, or stuck.",
    };

    /// <summary><c>Point 24 (31 holes) lies above the upper limit 28</c>.</summary>
    public string Signal(Signal signal)
    {
        RunRule rule = _chart.Rules[signal.Rule];
        ControlLimits limits = _chart.Line.At(signal.Point);
        double value = _chart.Line.Points[signal.Point];
        string point = $"{Point(signal.Point)} ({Value(value)})";
        if (rule.Kind == RuleKind.BeyondLimit || rule is { Count: 1, Window: 1, Distance_sigma: 3 }) return $"{point} lies {Side(value, limits)}";
        string where = rule.SeesOrder || rule.Kind == RuleKind.Within ? "" : $", {(value > limits.Centre ? "above" : "below")} the centre {Number(limits.Centre)}";
        return $"{point} completes {RuleSentence.Of(rule)}{where}";
    }

    /// <summary>Signals as told: one rule at successive points is one sentence, <c>…, and so do the points to 31</c>.</summary>
    public static IReadOnlyList<SignalRun> Runs(Signal[] signals) => SignalRun.Of(signals);

    public string Signal(SignalRun run) => Signal(run.First) + Further(run);

    public string SpreadSignal(SignalRun run) => SpreadSignal(run.First) + Further(run);

    public string SpreadSignal(Signal signal)
    {
        double value = _chart.Spread!.Line.Points[signal.Point];
        return $"{Point(signal.Point)}: its {Statistic(_chart.Spread.Statistic)} ({Value(value)}) lies {Side(value, _chart.Spread.Line.At(signal.Point))}";
    }

    /// <summary>Where the limits of a phase come from and how far they can be trusted.</summary>
    public string Basis(ChartPhase phase)
    {
        if (!phase.Judged) return Reason(phase)!;
        if (phase.BasePoints == 0) return $"given: centre {Value(phase.Centre)}{(result.Question.IsOfCounts ? "" : $", standard deviation {Value(phase.Sd)}")}.";
        string from = phase.BasePoints < phase.End - phase.First ? $"the first {phase.BasePoints} points, then held" : $"all {phase.BasePoints} points";
        string given = result.Question.Centre is not null ? "; the centre was given" : result.Question.Sd is not null ? "; the standard deviation was given" : "";
        string limits = !_chart.Line.Steady && _chart.Line.Steps.Count(s => s.First >= phase.First && s.First < phase.End) == 1 && _chart.Line.At(phase.First) is var l
            ? $"; {Number(l.Lower)} to {Value(l.Upper)}" : "";
        return $"from {from}: centre {Value(phase.Centre)}, {Estimator(phase)}{given}{limits}.";
    }

    /// <summary>The limits where they are the same for every point, else that they vary.</summary>
    public string Limits(ChartLine line)
    {
        if (!line.Steady) return "vary from point to point or phase to phase.";
        ControlLimits l = line.At(0);
        return $"{Number(l.Lower)} to {Value(l.Upper)} about {Value(l.Centre)}; a point on a limit is inside.";
    }

    /// <summary>What is worth knowing about the limits and the rules' prices.</summary>
    public IEnumerable<Note> Notes()
    {
        foreach (ChartPhase phase in _chart.Phases.Where(p => p.Judged && p.BasePoints is > 0 and < ChartBasis.AmplePoints && p.SdError > 0))
            yield return new("limits", string.Create(CultureInfo.InvariantCulture,
                $"{phase.BasePoints} points leave the width of the limits uncertain by about ±{1.96 * phase.SdError:0 %} (95 %); {ChartBasis.AmplePoints} and more are usual."));
        if (_chart.Spread is { Signals.Length: > 0 })
            yield return new("spread", "The limits lean on the spread, and that is not steady: look at it first.");
        string points = result.Question.IsOfCounts
            ? $"{(_chart.Kind == ChartKind.Counts ? "Poisson counts" : "shares of pieces that fail each by itself")} at the mean size, shifted upwards; rules that see order for normal points" : "independent, normally distributed points";
        yield return new("run lengths", $"{Method()} They hold for {points} about true limits; estimated limits cry wolf more often.");
        if (_chart.Rules.Any(r => r.SeesOrder))
            yield return new("run lengths", "Rising, falling and alternating see order only: a shift that lasts leaves them as they were.");
        if (result.Question is { Kind: ChartKind.Ewma, FromStart: true })
            yield return new("run lengths", "Those of the weighted average are for its steady limits; the narrower ones at the start cry wolf a little sooner.");
    }

    /// <summary>What the points are: value, mean, moving range.</summary>
    public static string Statistic(ChartStatistic statistic) => statistic switch
    {
        ChartStatistic.MovingRange => "moving range",
        ChartStatistic.StandardDeviation => "standard deviation",
        ChartStatistic.WeightedAverage => "weighted average",
        ChartStatistic.CumulativeSum => "cumulative sum",
        ChartStatistic.CountPerSize => "count per size",
        _ => statistic.ToString().ToLowerInvariant(),
    };

    public string Number(double value) => double.IsNaN(value) ? "–"
        : value.ToString(_format, CultureInfo.InvariantCulture).Replace('-', '−');

    /// <summary>With all its decimals, for a column of numbers.</summary>
    public string Cell(double value) => double.IsNaN(value) ? "–" : value.ToString("F" + Decimals, CultureInfo.InvariantCulture).Replace('-', '−');

    public string Value(double value) => _unit.Length == 0 ? Number(value) : $"{Number(value)} {_unit}";

    private string Point(int point) => result.Table.Subgroup(point) is { } subgroup ? $"Point {point + 1}, subgroup {subgroup}" : $"Point {point + 1}";

    private string Side(double value, ControlLimits limits) =>
        value > limits.Centre ? $"above the upper limit {Number(limits.Upper)}" : $"below the lower limit {Number(limits.Lower)}";

    private int Judged() => _chart.Phases.Where(p => p.Judged).Sum(p => p.End - p.First);

    private string Estimator(ChartPhase phase) => _chart.Kind switch
    {
        ChartKind.Averages when result.Question.Measure == SpreadMeasure.Ranges => $"standard deviation of a single value {Value(phase.Sd)} from the ranges (mean range / d2)",
        ChartKind.Averages => $"standard deviation of a single value {Value(phase.Sd)} from the standard deviations (mean / c4)",
        ChartKind.Counts => "the spread being that of counts, the square root of their mean",
        ChartKind.Shares => "the spread being that of shares, √(p(1 − p)/size)",
        _ => $"standard deviation {Value(phase.Sd)} (mean moving range / 1.128379)",
    };

    private string Method()
    {
        if (result.Question.CarriesPast) return "Solved from their integral equation.";
        bool order = _chart.Rules.Any(r => r.SeesOrder);
        if (!result.Together.Unchanged.Simulated) return order ? "Exact by integral equation." : "Exact by Markov chain over the zones.";
        string why = order ? "Rules that see zones alone are exact by Markov chain, those that see order by integral equation; both together are simulated"
            : "Exact by Markov chain over the zones, but this set remembers too much for one and is simulated";
        return string.Create(CultureInfo.InvariantCulture,
            $"{why} (seed {result.Question.Seed}, standard error {result.Together.Unchanged.StandardError:0.##} of {Length(result.Together.Unchanged)}).");
    }

    /// <summary>A run length in points: <c>9.2</c>, <c>370</c>.</summary>
    public static string Length(RunLength length) => !(length.Points <= Countable) ? "over a million"
        : length.Points.ToString(length.Points < 20 ? "0.#" : "0", CultureInfo.InvariantCulture);

    private static string Many(int count, string of) => $"{count.ToString(CultureInfo.InvariantCulture)} {of}{(count == 1 ? "" : "s")}";

    private static string Further(SignalRun run) => run.LastPoint > run.First.Point ? $", and so do the points to {run.LastPoint + 1}" : "";

    private static string Lower(string text) => char.ToLowerInvariant(text[0]) + text[1..];

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Unit(ChartResult result) => result.Chart.Statistic is ChartStatistic.Share or ChartStatistic.CountPerSize ? "" : result.Table.Unit ?? "";

    private static int DecimalsOf(ControlChart chart)
    {
        double finest = chart.Line.Steps.Select(s => s.Limits.Sigma).Where(s => s > 0).DefaultIfEmpty(1).Min();
        return Math.Clamp(2 - (int)Math.Floor(Math.Log10(finest)), 0, 15);
    }
}

/// <summary>A rule that signals at successive points, from its first to the last (counted from 0).</summary>
public readonly record struct SignalRun(Signal First, int LastPoint)
{
    internal static IReadOnlyList<SignalRun> Of(Signal[] signals)
    {
        Dictionary<int, int> open = []; // the run each rule is in
        List<SignalRun> runs = [];
        foreach (Signal signal in signals)
        {
            if (open.TryGetValue(signal.Rule, out int at) && runs[at].LastPoint == signal.Point - 1) runs[at] = runs[at] with { LastPoint = signal.Point };
            else
            {
                open[signal.Rule] = runs.Count;
                runs.Add(new(signal, signal.Point));
            }
        }

        return runs;
    }
}
