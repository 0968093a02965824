using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Ride;

namespace Bellowsmith.App.Terminal;

/// <summary>A ride as a person reads it.</summary>
internal static class RideView
{
    public static void Show(Screen screen, Kit kit, IEnumerable<RideResult> results, DisplayUnits units)
    {
        foreach (RideResult result in results) Show(screen, kit, result, units);
        screen.Blank();
        screen.Quiet(Cautions.DriveTest);
        screen.Quiet(Cautions.Local);
    }

    private static void Show(Screen screen, Kit kit, RideResult result, DisplayUnits units)
    {
        RideWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Strut.End)}: how does it ride?");
        if (result.Figures is null)
        {
            screen.Warn(words.Answer());
            return;
        }

        screen.Answer(words.Answer());
        screen.Point("set to", words.Setting());
        foreach ((string about, string text) in words.Points()) screen.Point(about, text);
        if (result.Response is { } response)
        {
            ResponseWords waves = new(response, units);
            screen.Point("waves", waves.Answer());
            screen.Point("", waves.Beside());
        }

        foreach ((string change, string text) in words.Neighbours()) screen.Point(change, text);
        foreach (Note note in Notes.Of(result)) screen.Point(note.About, note.Text);
    }
}
