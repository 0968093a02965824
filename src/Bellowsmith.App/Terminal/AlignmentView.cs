using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Alignment;

namespace Bellowsmith.App.Terminal;

/// <summary>An alignment as a person at the rack reads it.</summary>
internal static class AlignmentView
{
    public static void Show(Screen screen, Kit kit, AlignmentResult result, DisplayUnits units)
    {
        AlignmentWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Case.End)}: how is it aligned?");
        if (words.Reason() is { } reason) screen.Warn(reason);
        screen.Answer(words.Answer());
        screen.Table(["", "as measured", "aligned"], words.Changes().Select(row => ((IReadOnlyList<string>)[row.Name, row.Before, row.After], false)));
        foreach (AdjusterSetting adjuster in result.Adjusters) screen.Point(AlignmentWords.Name(adjuster.Kind), words.Adjuster(adjuster));
        screen.Point("thread", words.Thread());
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.ChassisParts);
        screen.Quiet(Cautions.RaisedCar);
        screen.Quiet(Cautions.Local);
    }
}
