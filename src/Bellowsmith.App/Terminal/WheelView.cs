using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Terminal;

/// <summary>A wheel tried in place of another as a person reads it.</summary>
internal static class WheelView
{
    private const int Every = 2;

    public static void Show(Screen screen, Kit kit, WheelFitResult result, DisplayUnits units)
    {
        WheelWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Corner.End)}: does {WheelText.Of(result.Question.New)} fit in place of {WheelText.Of(result.Question.Old)}?");
        if (result.Verdict is WheelVerdict.Fits) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        screen.Say(words.Change());
        Numbers(screen, result, units);
        if (result.Old.Arch is not null || result.Old.Strut is not null) Gaps(screen, result, units);
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Point("signs", WheelWords.Signs);
        screen.Blank();
        screen.Quiet(Cautions.Wheels);
        screen.Quiet(Cautions.Local);
    }

    private static void Numbers(Screen screen, WheelFitResult result, DisplayUnits units)
    {
        WheelChange change = result.Question.Change;
        string length = units.Symbol(Dimension.Length);
        screen.Table(
            ["", $"old {length}", $"new {length}"],
            [
                Row("section", change.Old.Section_m, change.New.Section_m), Row("free radius", change.Old.FreeRadius_m, change.New.FreeRadius_m),
                Row("loaded radius", result.Corner.LoadedRadius_m(change.Old), result.Corner.LoadedRadius_m(change.New)),
                Row("least at the arch", result.Old.Arch?.Gap_m, result.New?.Arch?.Gap_m), Row("least at the strut", result.Old.Strut?.Gap_m, result.New?.Strut?.Gap_m),
                Row("bellows to tower", result.Old.Tower?.Gap_m, result.New?.Tower?.Gap_m),
            ]);
        screen.Point("road", new WheelWords(result, units).Road());
        (IReadOnlyList<string>, bool) Row(string name, double? old, double? now) => ([name, units.Number(Dimension.Length, old), units.Number(Dimension.Length, now)], false);
    }

    // What camber buys and costs.
    private static void Gaps(Screen screen, WheelFitResult result, DisplayUnits units)
    {
        string length = units.Symbol(Dimension.Length);
        screen.Table(
            ["camber", "adjuster", $"arch {length}", $"strut {length}", $"tower {length}"],
            result.TradeOff.Where((_, k) => k % Every == 0).Select(gaps => ((IReadOnlyList<string>)
            [
                LinkageWords.Angle(gaps.Camber_rad), new WheelWords(result, units).Place(gaps), units.Number(Dimension.Length, gaps.Arch?.Gap_m),
                units.Number(Dimension.Length, gaps.Strut?.Gap_m), units.Number(Dimension.Length, gaps.Tower?.Gap_m),
            ], gaps.Camber_rad == result.Question.Camber_rad)));
    }
}
