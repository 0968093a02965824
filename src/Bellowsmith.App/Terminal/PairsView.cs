using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Pairs;

namespace Bellowsmith.App.Terminal;

/// <summary>A batch in pairs as a person reads it.</summary>
internal static class PairsView
{
    public static void Show(Screen screen, PairTable table, PairingResult result)
    {
        PairWords words = new(table, result);
        screen.Blank();
        screen.Title($"{table.File}: which units go together?");
        if (result.Lack is null) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (result.Pairs.Count > 0)
            screen.Table(
                [table.Hands is null ? "a" : "left", table.Hands is null ? "b" : "right", "differ by, in tolerances", "most in", ""],
                result.Pairs.Select(p => ((IReadOnlyList<string>)
                [
                    table.Units[p.A], table.Units[p.B], p.Worst.ToString("0.00", CultureInfo.InvariantCulture), words.Deciding(p),
                    p.Worst > 1 ? "outside tolerance" : p.Worst == result.Worst ? "the worst" : "",
                ], p.Worst == result.Worst)));
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
    }
}
