using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.DamperClicks;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.App.Terminal;

/// <summary>A clicks answer as a person reads it.</summary>
internal static class ClicksView
{
    public static void Show(Screen screen, DamperClicksResult result, bool unblocked)
    {
        ClicksWords words = new(result);
        ClickResult judged = result.Judged;
        string unit = result.Readings.ForceUnit.Name;
        screen.Blank();
        screen.Title($"{result.Name}: is each click a real change?");
        if (judged.Lack is null && judged.Steps.All(s => s.Verdict == StepVerdict.Distinct)) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (judged.Lack is null)
            screen.Table(
                ["clicks", $"step {unit}", $"low {unit}", $"high {unit}", "verdict"],
                judged.Steps.Select(s => ((IReadOnlyList<string>)
                [
                    string.Create(CultureInfo.InvariantCulture, $"{s.From} to {s.To}"), words.Number(s.Step),
                    s.Low is { } low ? words.Number(low) : "–", s.High is { } high ? words.Number(high) : "–", ClicksWords.Of(s.Verdict),
                ], s.Verdict != StepVerdict.Distinct)));
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        if (unblocked) screen.Point("unblocked", words.Unblocked());
        screen.Blank();
        screen.Quiet(Cautions.DamperGas);
        screen.Quiet(Cautions.Dyno);
        screen.Quiet(Cautions.Local);
    }
}
