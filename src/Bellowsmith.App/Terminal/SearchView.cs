using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Search;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>A search as a person reads it at a terminal: the choices in a table, then each in a sentence.</summary>
internal static class SearchView
{
    public static void Show(Screen screen, Kit kit, SearchResult result, DisplayUnits units)
    {
        SearchWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Question.Strut.End)}: which parts, and how set?");
        if (result.Front.Count > 0) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (result.Front.Count > 0) Table(screen, result, words, units);
        for (int k = 0; k < result.Front.Count; k++) screen.Point((k + 1).ToString(CultureInfo.InvariantCulture), words.Sentence(result.Front[k]));
        if (words.Order() is { Length: > 0 } order) screen.Say(order);
        foreach (string force in words.OrderedForces()) screen.Point("damper force", force);
        screen.Blank();
        if (words.Present() is { Length: > 0 } present) screen.Point("set now", present);
        screen.Point("road", words.Road());
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.DriveTest);
        screen.Quiet(Cautions.CompressedAir);
        screen.Quiet(Cautions.Local);
    }

    private static void Table(Screen screen, SearchResult result, SearchWords words, DisplayUnits units) => screen.Table(
        ["", "spring", "damper", "height", "gauge", "weighted", "tyre load", words.MetHeading],
        result.Front.Select((p, k) => ((IReadOnlyList<string>)
            [
                (k + 1).ToString(CultureInfo.InvariantCulture), p.Pair.Spring, $"{p.Pair.Damper} {SearchWords.Click(p)}".Trim(), units.Text(Dimension.Length, p.Setting.Height_m),
                units.Text(Dimension.GaugePressure, p.Setting.GaugePressure_Pa), p.Figures.WeightedRms_m_per_s2.ToString("F2", CultureInfo.InvariantCulture),
                units.Text(Dimension.Force, p.Figures.TyreLoadRms_N), words.Met(p.Figures),
            ], false)));
}
