using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>A top mount and a strut's side load as a person reads them.</summary>
internal static class MountView
{
    public static void Show(Screen screen, Kit kit, MountResult result, DisplayUnits units)
    {
        MountWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Case.Corner.End)}: does the top mount last, and what does the side load do?");
        screen.Answer(words.Answer());
        if (result.Findings.Any(finding => finding.Holds == false)) screen.Warn(words.Summary());
        else screen.Say(words.Summary());
        if (result.SideLoad is { } side) Loads(screen, side, units);
        screen.Point("tilt", words.Tilt());
        if (words.Turning() is { } turning) screen.Point("turning", turning);
        if (words.Sliding() is { } sliding) screen.Point("wear", sliding);
        if (words.Friction() is { } friction) screen.Point("friction", friction);
        if (words.Free() is { } free) screen.Point("spring line", free);
        foreach (MountFinding finding in result.Findings) Rule(screen, finding, words);
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.ChassisParts);
        screen.Quiet(Cautions.Local);
    }

    private static void Loads(Screen screen, SideLoads side, DisplayUnits units)
    {
        string force = units.Symbol(Dimension.Force), length = units.Symbol(Dimension.Length), stress = units.Symbol(Dimension.Stress);
        screen.Table(
            ["", $"wheel {length}", $"side {force}", $"guide {force}", $"piston {force}", $"friction {force}", $"rod {stress}", $"freed {force}"],
            [Row("drive", side.Drive, 0), Row("full bump", side.FullBump, side.FreedFullBump.Side_N), Row("full droop", side.FullDroop, side.FreedFullDroop.Side_N)]);
        screen.Table(
            [$"rod {length}", $"bending {stress}", $"top moves {length}"],
            side.Rods.Select(rod => ((IReadOnlyList<string>)
            [
                units.Number(Dimension.Length, rod.Diameter_m), units.Number(Dimension.Stress, rod.Stress_Pa), units.Number(Dimension.Length, rod.Deflection_m, 2),
            ], rod.Diameter_m == side.Rods[side.Rods.Count > 2 ? 1 : 0].Diameter_m)));

        (IReadOnlyList<string>, bool) Row(string name, SideLoadPlace place, double freed_N) => (
        [
            name, units.Number(Dimension.Length, place.Travel_m), units.Number(Dimension.Force, place.Side_N), units.Number(Dimension.Force, place.Rod?.Guide_N),
            units.Number(Dimension.Force, place.Rod?.Piston_N), units.Number(Dimension.Force, place.Friction_N), units.Number(Dimension.Stress, place.Rod?.Stress_Pa),
            units.Number(Dimension.Force, freed_N),
        ], place == side.Drive);
    }

    private static void Rule(Screen screen, MountFinding finding, MountWords words)
    {
        string verdict = finding.Holds switch { true => "holds", false => "missed", _ => "not checked" }, numbers = words.Numbers(finding);
        screen.Point(verdict, $"{MountWords.Rule(finding.Rule)}{(numbers.Length == 0 ? "" : ": " + numbers)} ({MountWords.Source(finding.Rule)})");
        if (words.Mend(finding) is { } mend) screen.Point("", mend);
    }
}
