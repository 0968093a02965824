using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Lowering;

namespace Bellowsmith.App.Terminal;

/// <summary>What lowering did to a geometry, as a person reads it.</summary>
internal static class LoweringView
{
    public static void Show(Screen screen, Kit kit, AxleEnd end, LoweringResult result, DisplayUnits units)
    {
        LoweringWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(end)}: what has lowering done to the geometry?");
        screen.Answer(words.Answer());
        if (words.Limit() is { } limit) screen.Warn(limit);
        screen.Table(
            ["", .. words.Headings()],
            words.Heights().Select(height => ((IReadOnlyList<string>)[height.Name, .. height.Cells], height.State.Travel_m == 0)));
        screen.Point("toe", words.Toe());
        screen.Point("roll centre", words.RollCentre());
        foreach (JointMend mend in words.Mends()) screen.Point(LoweringWords.About(mend.Kind), words.Mend(mend));
        if (words.Ratio() is { } ratio) screen.Point("motion ratio", ratio);
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.ChassisParts);
        screen.Quiet(Cautions.RaisedCar);
        screen.Quiet(Cautions.Local);
    }
}
