using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Charting;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.App.Terminal;

/// <summary>A control chart's answer as a person reads it: the signals and the last points, however long the file is.</summary>
internal static class ChartView
{
    private const int MostSignals = 12, LastPoints = 8;

    public static void Show(Screen screen, ChartResult result, string? figure)
    {
        ChartWords words = new(result);
        ControlChart chart = result.Chart;
        screen.Blank();
        screen.Title($"{result.Table.File}: are its {words.Title} steady?");
        if (!chart.Judged) screen.Warn(words.Answer());
        else screen.Answer(words.Answer());
        if (chart.Judged) screen.Point("limits", words.Limits(chart.Line));
        foreach (ChartPhase phase in chart.Phases.Take(MostSignals))
            if (chart.Judged) screen.Point(result.Table.Phase(phase.First) is { } name ? $"phase {name}" : "", words.Basis(phase));
        if (chart is { Spread: { } spread, Judged: true }) screen.Point(ChartWords.Statistic(spread.Statistic), words.Limits(spread.Line));
        Signals(screen, result, words);
        if (chart.Judged) Points(screen, result, words);
        if (chart.Judged) Prices(screen, result);
        foreach (Note note in words.Notes().Where(_ => chart.Judged)) screen.Point(note.About, note.Text);
        if (figure is not null) screen.Point("figure", figure);
    }

    private static void Signals(Screen screen, ChartResult result, ChartWords words)
    {
        Show(screen, "signals", ChartWords.Runs(result.Chart.Signals), words.Signal, result);
        if (result.Chart.Spread is { } spread) Show(screen, "", ChartWords.Runs(spread.Signals), words.SpreadSignal, result);
    }

    private static void Show(Screen screen, string about, IReadOnlyList<SignalRun> runs, Func<SignalRun, string> say, ChartResult result)
    {
        foreach (SignalRun run in runs.Take(MostSignals))
        {
            string note = result.Table.Note(run.First.Point) is { } text ? $" {text}." : "";
            screen.Point(about, $"{say(run)} (line {result.Table.Line(run.First.Point)}).{note}");
            about = "";
        }

        if (runs.Count > MostSignals) screen.Point("", $"and {runs.Count - MostSignals} more; --json gives all.");
    }

    private static void Points(Screen screen, ChartResult result, ChartWords words)
    {
        ControlChart chart = result.Chart;
        int first = Math.Max(0, chart.Points - LastPoints);
        string statistic = ChartWords.Statistic(chart.Statistic);
        string[] headings = ["point", statistic, "lower", "centre", "upper", .. chart.Spread is { } s ? [ChartWords.Statistic(s.Statistic)] : Array.Empty<string>()];
        HashSet<int> marked = [.. chart.Signals.Select(signal => signal.Point).Where(p => p >= first)];
        screen.Table(headings, Enumerable.Range(first, chart.Points - first).Select(i =>
        {
            ControlLimits l = chart.Line.At(i);
            string[] cells = [Name(result, i), words.Cell(chart.Line.Points[i]), words.Cell(l.Lower), words.Cell(l.Centre), words.Cell(l.Upper)];
            return ((IReadOnlyList<string>)[.. cells, .. chart.Spread is { } spread ? [words.Cell(spread.Line.Points[i])] : Array.Empty<string>()], marked.Contains(i));
        }));
    }

    private static string Name(ChartResult result, int point) =>
        (point + 1).ToString(CultureInfo.InvariantCulture) + (result.Table.Subgroup(point) is { } subgroup ? $" ({subgroup})" : "");

    private static void Prices(Screen screen, ChartResult result)
    {
        IReadOnlyList<RunRule> rules = result.Chart.Rules;
        var rows = rules.Zip(result.Alone).Select(r => (Row(RuleSentence.Of(r.First), r.Second), Marked: false));
        if (rules.Count > 1) rows = rows.Append((Row("all together", result.Together), Marked: true));
        screen.Table(["points to a signal, on average", "nothing changed", "shifted 0.5 σ", "1 σ", "2 σ"], rows);
    }

    private static IReadOnlyList<string> Row(string name, RulePrice price) =>
        [name, .. ((RunLength[])[price.Unchanged, price.HalfSigma, price.OneSigma, price.TwoSigma]).Select(ChartWords.Length)];
}
