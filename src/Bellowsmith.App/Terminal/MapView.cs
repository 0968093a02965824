using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Terminal;

/// <summary>A map as a person reads it at a terminal: the sentence and a table of at most nine by nine of its cells.</summary>
internal static class MapView
{
    private const int Most = 9;

    public static void Show(Screen screen, Kit kit, MapRun map, DisplayUnits units, string? file)
    {
        MapWords words = new(map, units);
        MapQuestion question = map.Question;
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(question.Strut.End)}: which setting is best?");
        screen.Answer(words.Answer());
        int[] columns = Few(question.X.Values.Count), rows = Few(question.Y.Values.Count);
        screen.Table(
            ["", .. columns.Select(c => words.Value(question.X.Variable, question.X.Values[c]))],
            rows.Reverse().Select(r => ((IReadOnlyList<string>)[words.Value(question.Y.Variable, question.Y.Values[r]), .. columns.Select(c => Cell(map, words, c, r))],
                words.HereCell() is { } here && rows.MinBy(k => Math.Abs(k - here.Row)) == r)));
        screen.Point("road", RoadWords.Of(question.Road, units));
        foreach ((string reason, int cells) in words.Reasons())
            screen.Point("not driven", string.Create(CultureInfo.InvariantCulture, $"{100.0 * cells / map.Cells:F0} % of the map: {reason}."));
        if (file is not null) screen.Point("written", file);
        screen.Blank();
        screen.Quiet(Cautions.DriveTest);
        screen.Quiet(Cautions.Local);
    }

    private static string Cell(MapRun map, MapWords words, int column, int row) =>
        words.Number(map.Value(column, row)) is { } number ? number.Split(' ')[0] : "·";

    private static int[] Few(int count) => count <= Most ? [.. Enumerable.Range(0, count)]
        : [.. Enumerable.Range(0, Most).Select(k => (int)Math.Round((count - 1.0) * k / (Most - 1)))];
}
