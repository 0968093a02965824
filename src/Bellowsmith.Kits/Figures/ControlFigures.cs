using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Charting;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A control chart as a figure: points in order, centre and limits as steps, the zones its rules look at, signals marked. A long
/// line is thinned to the least and the greatest of each column of the picture, in their order, so that nothing that stands
/// out is lost.
/// </summary>
public sealed class ControlFigures
{
    private const int Columns = 500, MostDots = 400, MostSentences = 3, MostNumbers = 12;

    private readonly ChartResult _result;
    private readonly ChartWords _words;

    private ControlFigures(ChartResult result) => (_result, _words) = (result, new(result));

    /// <summary>The main chart and, where there is one, the chart of the spread.</summary>
    public static IReadOnlyList<Chart> Of(ChartResult result)
    {
        ControlFigures figures = new(result);
        ControlChart c = result.Chart;
        Chart main = figures.Figure(c.Kind.ToString().ToLowerInvariant(), c.Statistic, c.Line, c.Signals, c.Rules, figures._words.Answer());
        return c.Spread is not { } s ? [main]
            : [main, figures.Figure("spread", s.Statistic, s.Line, s.Signals, [RunRule.BeyondLimit], $"{s.Signals.Length} of the {ChartWords.Statistic(s.Statistic)}s signal.")];
    }

    private Chart Figure(string id, ChartStatistic statistic, ChartLine line, Signal[] signals, IReadOnlyList<RunRule> rules, string summary)
    {
        string name = ChartWords.Statistic(statistic);
        bool perSize = statistic is ChartStatistic.Share or ChartStatistic.CountPerSize;
        (double[] x, double[] y) = Thinned(line.Points);
        ChartCurve[] limits = [Steps("upper", line, l => l.Upper), Steps("lower", line, l => l.Lower)];
        bool dotted = line.Points.Length <= MostDots;
        return new Chart
        {
            Id = id,
            Title = $"{char.ToUpperInvariant(name[0])}{name[1..]} of {Path.GetFileName(_result.Table.File)}",
            Summary = line.Points.Length <= 2 * Columns ? summary : $"{summary} Drawn: the least and the greatest of each of {Columns} columns.",
            X = new ChartAxis("point", "", 0, line.Points.Length + 1, 0),
            Y = ChartAxis.Around(name, perSize ? "" : _result.Table.Unit ?? "", [.. y, .. limits.SelectMany(l => l.Y)]) with { Decimals = _words.Decimals },
            Zones = [.. Zones(line, rules)],
            Limits = limits,
            Centres = [Steps("centre", line, l => l.Centre)],
            Measured = dotted ? [new ChartPoints("", x, y) { Joined = true }] : [],
            Curves = dotted ? [] : [ChartCurve.Solid("", x, y)],
            Uprights = [.. Phases()],
            Marks = [.. Marks(line, signals, rules)],
        };
    }

    // From each distance that a rule looks at out to 3 σ, so that the further zones lie deeper.
    private IEnumerable<ChartBand> Zones(ChartLine line, IReadOnlyList<RunRule> rules)
    {
        foreach (double distance in rules.Select(r => r.Distance_sigma).Where(d => d is > 0 and < 3).Distinct().Order())
        {
            foreach (int side in (int[])[-1, 1])
            {
                ChartCurve near = Steps("", line, l => l.Centre + side * distance * l.Sigma), far = Steps("", line, l => l.Centre + side * 3 * l.Sigma);
                yield return side > 0 ? new(near.X, near.Y, far.Y) : new(near.X, far.Y, near.Y);
            }
        }
    }

    // From half a point before to half a point after; broken where a phase begins.
    private ChartCurve Steps(string label, ChartLine line, Func<ControlLimits, double> of)
    {
        List<double> x = [], y = [];
        foreach (int s in ShownSteps(line))
        {
            if (line.Steps[s].NewPhase && x.Count > 0) Add(line.Steps[s].First + 0.5, double.NaN);
            double level = of(line.Steps[s].Limits);
            Add(line.Steps[s].First + 0.5, level);
            Add(line.StepEnd(s) + 0.5, level);
        }

        double last = of(line.Steps[^1].Limits);
        string text = label.Length == 0 || !double.IsFinite(last) ? "" : $"{label} {_words.Number(last)}";
        return ChartCurve.Solid(text, [.. x], [.. y]);

        void Add(double at, double value)
        {
            x.Add(at);
            y.Add(value);
        }
    }

    // Of more steps than columns the narrowest and the widest of each column.
    private static int[] ShownSteps(ChartLine line)
    {
        int steps = line.Steps.Length;
        if (steps <= 2 * Columns) return [.. Enumerable.Range(0, steps)];
        return [.. Enumerable.Range(0, Columns).SelectMany(c =>
        {
            var column = Enumerable.Range((int)((long)steps * c / Columns), (int)((long)steps * (c + 1) / Columns - (long)steps * c / Columns));
            int narrow = column.MinBy(s => line.Steps[s].Limits.Sigma), wide = column.MaxBy(s => line.Steps[s].Limits.Sigma);
            return (int[])[Math.Min(narrow, wide), Math.Max(narrow, wide)];
        }).Distinct()];
    }

    private IEnumerable<ChartUpright> Phases() =>
        from phase in _result.Chart.Phases
        let name = phase.First < phase.End ? _result.Table.Phase(phase.First) : null
        where name is not null
        select new ChartUpright(UprightKind.Phase, phase.First + 0.5, name);

    // One mark for each column and side, the furthest out; the first of a run names its rule while there is room.
    private static IEnumerable<ChartMark> Marks(ChartLine line, Signal[] signals, IReadOnlyList<RunRule> rules)
    {
        IReadOnlyList<SignalRun> runs = ChartWords.Runs(signals);
        ILookup<int, int> begun = (runs.Count <= MostNumbers ? runs : []).ToLookup(r => r.First.Point, r => r.First.Rule);
        return signals.Select(s => s.Point).Distinct()
            .GroupBy(p => ((long)p * Columns / Math.Max(line.Points.Length, Columns), line.Points[p] > line.At(p).Centre))
            .Select(g => g.MaxBy(p => Math.Abs(line.Points[p] - line.At(p).Centre)))
            .Select(p => new ChartMark(MarkKind.Signal, p + 1, line.Points[p], !begun.Contains(p) ? ""
                : runs.Count > MostSentences ? $"{p + 1}" : $"{p + 1}: {string.Join("; ", begun[p].Select(r => RuleSentence.Of(rules[r])))}"));
    }

    private static (double[] X, double[] Y) Thinned(double[] points)
    {
        if (points.Length <= 2 * Columns) return ([.. points.Select((_, i) => i + 1.0)], points);
        List<double> x = [], y = [];
        for (int c = 0; c < Columns; c++)
        {
            int from = (int)((long)points.Length * c / Columns), to = (int)((long)points.Length * (c + 1) / Columns), least = from, greatest = from;
            for (int i = from; i < to; i++)
            {
                if (!(points[i] >= points[least])) least = i;
                if (!(points[i] <= points[greatest])) greatest = i;
            }

            foreach (int i in least == greatest ? (int[])[least] : [Math.Min(least, greatest), Math.Max(least, greatest)])
            {
                x.Add(i + 1);
                y.Add(points[i]);
            }
        }

        return ([.. x], [.. y]);
    }
}
