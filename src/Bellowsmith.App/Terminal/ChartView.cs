using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Charting;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.App.Terminal;

/// <summary>A control chart's answer as a person reads it: the signals and the last points, however long the file is.</summary>
internal static class ChartView
{
    private const int MostSignals = 12, LastPoints = 8;

    public static void Show(Screen screen, ChartResult result)
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
            string[] cells = [Name(result, i), words.Number(chart.Line.Points[i]), words.Number(l.Lower), words.Number(l.Centre), words.Number(l.Upper)];
            return ((IReadOnlyList<string>)[.. cells, .. chart.Spread is { } spread ? [words.Number(spread.Line.Points[i])] : Array.Empty<string>()], marked.Contains(i));
        }));
    }

    private static string Name(ChartResult result, int point) =>
        (point + 1).ToString(CultureInfo.InvariantCulture) + (result.Table.Subgroup(point) is { } subgroup ? $" ({subgroup})" : "");

    private static void Prices(Screen screen, ChartResult result)
    {
        ControlChart chart = result.Chart;
        for (int r = 0; r < chart.Rules.Count && chart.Rules.Count > 1; r++)
            screen.Point(r == 0 ? "each rule" : "", $"{RuleSentence.Of(chart.Rules[r])}: {ChartWords.Price(result.Alone[r])}");
        screen.Point(chart.Rules.Count > 1 ? "together" : "rule", $"{(chart.Rules.Count > 1 ? "" : RuleSentence.Of(chart.Rules[0]) + ": ")}{ChartWords.Price(result.Together)}");
    }
}
