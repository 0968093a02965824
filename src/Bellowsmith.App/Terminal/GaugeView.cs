using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.GaugeTrials;
using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.App.Terminal;

/// <summary>A gauge trial as a person reads it.</summary>
internal static class GaugeView
{
    public static void Show(Screen screen, GaugeResult result)
    {
        GaugeWords words = new(result);
        screen.Blank();
        screen.Title($"{Path.GetFileName(result.File)}: how much of what the gauge shows is the gauge?");
        if (result.Judgement is null or { Verdict: GaugeVerdict.Suitable }) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (result.Components is { } c)
            screen.Table(
                ["one standard deviation", $"{result.Unit ?? "as read"}", "% of total"],
                Rows(result, c).Select(r => ((IReadOnlyList<string>)[r.Name, words.Number(r.Deviation), c.Total > 0 ? PlainNumber(100 * r.Deviation / c.Total) : "–"], false)));
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
    }

    private static IEnumerable<(string Name, double Deviation)> Rows(GaugeResult result, GaugeComponents c)
    {
        yield return ("repeatability", c.Repeatability);
        yield return (result.Method == GaugeMethod.Nested ? "days and runs" : "reproducibility", c.Reproducibility);
        yield return ("gauge, both together", c.GaugeRr);
        if (result.Method == GaugeMethod.Nested) yield break;
        yield return ("part to part", c.PartToPart);
        yield return ("total", c.Total);
    }

    private static string PlainNumber(double percent) => percent.ToString("F1", System.Globalization.CultureInfo.InvariantCulture);
}
