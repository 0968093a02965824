using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>What touches what, as a person reads it.</summary>
internal static class ClearanceView
{
    // The rest is far away; the machine answer has them all.
    private const int Most = 10;

    public static void Show(Screen screen, Kit kit, IReadOnlyList<ClearanceResult> results, DisplayUnits units)
    {
        foreach (ClearanceResult result in results) Show(screen, kit, result, units);
        foreach (string end in kit.Struts().Select(strut => Names.Of(strut.End)).Except(results.Select(result => Names.Of(result.Case.End))))
            screen.Point(end, "The car names no points, or no wheel, of this axle: not asked.");
        screen.Point("signs", ClearanceWords.Signs);
        screen.Blank();
        screen.Quiet(Cautions.Wheels);
        screen.Quiet(Cautions.AiredOut);
        screen.Quiet(Cautions.Local);
    }

    private static void Show(Screen screen, Kit kit, ClearanceResult result, DisplayUnits units)
    {
        ClearanceWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Case.End)}: does anything touch with {WheelText.Of(result.Question.Wheel ?? result.Case.Corner.MeasuredWheel)}?");
        if (result.Misses.Any() || result.Set is null || result.Findings.Any(finding => finding is { Holds: false, CanBeWaived: false })) screen.Warn(words.Answer());
        else screen.Answer(words.Answer());
        if (words.Camber() is { } camber) screen.Say(camber);
        Pairs(screen, result, words, units);
        foreach (ClearanceFinding finding in result.Findings.Where(finding => finding is not { Rule: ClearanceRule.LineNearTaut, Holds: true })) screen.Point(Verdict(finding.Holds), $"{words.Finding(finding)}{(finding is { Holds: false, CanBeWaived: false } ? ": never waived" : "")}.");
        foreach (LoadStance load in result.Loads) screen.Point("load", $"{load.Load}: {words.Load(load)}.");
        if (result.Ground.Count > 0) screen.Point("ground", $"{words.GroundHeights()}.");
        foreach (GroundFinding finding in result.GroundFindings.Where(_ => result.Ground.Count > 0)) screen.Point(Verdict(finding.Holds), $"{words.Ground(finding)}.");
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
    }

    private static void Pairs(Screen screen, ClearanceResult result, ClearanceWords words, DisplayUnits units)
    {
        if (result.Pairs.Count == 0) return;
        string length = units.Symbol(Dimension.Length);
        screen.Table(
            ["", $"gap {length}", $"asked {length}", $"wheel {length}", $"rack {length}", .. result.Sensitivities.Select(words.Change)],
            result.Pairs.Take(Most).Select((pair, k) => ((IReadOnlyList<string>)
            [
                ClearanceWords.Name(pair.Pair), units.Number(Dimension.Length, pair.Gap.Distance_m), units.Number(Dimension.Length, pair.Margin_m), units.Change(Dimension.Length, pair.Travel_m, 0).Split(' ')[0], units.Change(Dimension.Length, pair.Rack_m, 0).Split(' ')[0],
                .. result.Sensitivities.Select(change => units.Change(Dimension.Length, change.Gaps_m[k], 0).Split(' ')[0]),
            ], !pair.Holds)));
    }

    private static string Verdict(bool? holds) => holds switch { true => "holds", false => "missed", _ => "not checked" };
}
