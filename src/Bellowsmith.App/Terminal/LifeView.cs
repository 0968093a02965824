using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.App.Terminal;

/// <summary>Life tests, planned and read, as a person reads them.</summary>
internal static class LifeView
{
    public static void Show(Screen screen, LifeTestPlan plan)
    {
        LifePlanWords words = new(plan);
        screen.Blank();
        screen.Title("How many parts must run, and how long?");
        if (plan.Parts is null) screen.Warn(words.Answer());
        else screen.Answer(words.Answer());
        screen.Table(["failures allowed", "parts"], plan.Choices.Select(choice => ((IReadOnlyList<string>)
        [
            choice.AllowedFailures.ToString(CultureInfo.InvariantCulture), choice.Parts?.ToString(CultureInfo.InvariantCulture) ?? "too many",
        ], choice.AllowedFailures == plan.AllowedFailures)));
        Close(screen, words.Notes());
    }

    public static void Show(Screen screen, LifeAnalysis result, string? unit, string file)
    {
        LifeWords words = new(result, unit);
        screen.Blank();
        screen.Title($"{Path.GetFileName(file)}: how long do the parts last?");
        if (result.Reason is null) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        Close(screen, words.Notes());
    }

    private static void Close(Screen screen, IEnumerable<Note> notes)
    {
        foreach (Note note in notes) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.BurstTest);
        screen.Quiet(Cautions.Local);
    }
}
