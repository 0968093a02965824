using System.Globalization;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.Kits.Answers;

/// <summary>What defends the present setting: what one cell aside would make of it.</summary>
public sealed class MapNeighbours(MapRun map, DisplayUnits units)
{
    private readonly MapWords _words = new(map, units);

    private MapQuestion Question => map.Question;

    /// <summary>
    /// Along, up and all round: "One click aside: 0.99 m/s² (+2 %) at click 7; 0.97 m/s² at click 9." Empty where the setting is off
    /// the map or cannot be driven.
    /// </summary>
    public IReadOnlyList<string> Sentences()
    {
        if (_words.HereCell() is not { } here || double.IsNaN(map.Value(here.Column, here.Row))) return [];
        return
        [
            .. Aside(Question.X, [(here.Column - 1, here.Row), (here.Column + 1, here.Row)], cell => cell.Column),
            .. Aside(Question.Y, [(here.Column, here.Row - 1), (here.Column, here.Row + 1)], cell => cell.Row),
            Around(here),
        ];

        IEnumerable<string> Aside(MapAxis axis, (int Column, int Row)[] cells, Func<(int Column, int Row), int> at)
        {
            string[] beside = [.. cells.Where(IsOn).Select(c => Beside(c, _words.Value(axis.Variable, axis.Values[at(c)]), map.Value(here.Column, here.Row)))];
            string step = axis.Variable == MapVariable.Click ? "One click" : $"One step of {MapWords.Title(axis.Variable)}";
            if (beside.Length > 0) yield return $"{step} aside: {string.Join("; ", beside)}.";
        }
    }

    private string Beside((int Column, int Row) cell, string place, double here)
    {
        double value = map.Value(cell.Column, cell.Row), change = 100 * (value - here) / here;
        string share = here != 0 && Math.Abs(change) >= 0.5 ? string.Create(CultureInfo.InvariantCulture, $" ({change:+0;−0} %)") : "";
        return _words.Number(value) is { } number ? $"{number}{share} at {place}" : $"none at {place}, {map.Reason(cell.Column, cell.Row) ?? "not driven yet"}";
    }

    // One cell off in any direction, corners among them.
    private string Around((int Column, int Row) here)
    {
        double[] around = [.. from row in Enumerable.Range(here.Row - 1, 3) from column in Enumerable.Range(here.Column - 1, 3)
            where IsOn((column, row)) && (column, row) != here select map.Value(column, row)];
        double[] driven = [.. around.Where(v => !double.IsNaN(v)).Append(map.Value(here.Column, here.Row))];
        if (driven.Length == 1) return "No neighbour can be driven.";
        string cannot = driven.Length > around.Length ? "" : $"; {around.Length + 1 - driven.Length} of {around.Length} neighbours cannot be driven";
        return $"Over all its neighbours it lies from {_words.Number(driven.Min())} to {_words.Number(driven.Max())}{cannot}.";
    }

    private bool IsOn((int Column, int Row) cell) =>
        cell.Column >= 0 && cell.Row >= 0 && cell.Column < Question.X.Values.Count && cell.Row < Question.Y.Values.Count;
}
