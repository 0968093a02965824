using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a map: what it shows here, where it is least, and what one cell aside changes.</summary>
public sealed class MapWords(MapRun map, DisplayUnits units)
{
    private MapQuestion Question => map.Question;

    /// <summary>"Weighted acceleration is 0.99 m/s² at this setting. It is least, 0.86 m/s², at click 15 and a spring height of 92.0 mm."</summary>
    public string Answer()
    {
        string start = Upper(Question.Show.Title);
        string here = HereCell() is { } cell && Number(map.Value(cell.Column, cell.Row)) is { } value ? $"{start} is {value} at this setting." : "This setting is not on the map.";
        if (Least() is not { } least) return "No setting on the map can be driven.";
        string where = Alike(map.Value(least.Column, least.Row)) is var share and > 0.01
            ? string.Create(CultureInfo.InvariantCulture, $"over {100 * share:F0} % of the map, {Place(least.Column, least.Row)} among them") : $"at {Place(least.Column, least.Row)}";
        return $"{here} It is least, {Number(map.Value(least.Column, least.Row))}, {where}.";
    }

    /// <summary>The feasible cell with the least value, the first of several; null where none is feasible.</summary>
    public (int Column, int Row)? Least()
    {
        (int Column, int Row)? found = null;
        for (int row = 0; row < Question.Y.Values.Count; row++)
            for (int column = 0; column < Question.X.Values.Count; column++)
                if (map.Value(column, row) is var value && !double.IsNaN(value) && (found is not { } best || value < map.Value(best.Column, best.Row))) found = (column, row);
        return found;
    }

    /// <summary>The cell nearest the present setting; null where that lies off the map.</summary>
    public (int Column, int Row)? HereCell() => Nearest(Question.X) is { } column && Nearest(Question.Y) is { } row ? (column, row) : null;

    /// <summary>How many cells are infeasible for each reason, most first.</summary>
    public IEnumerable<(string Reason, int Cells)> Reasons() => Enumerable.Range(0, map.Cells)
        .Select(k => map.Reason(k % Question.X.Values.Count, k / Question.X.Values.Count)).OfType<string>()
        .GroupBy(r => r).Select(g => (g.Key, g.Count())).OrderByDescending(g => g.Item2);

    /// <summary>"click 15 and a spring height of 92.0 mm".</summary>
    public string Place(int column, int row) => $"{Words(Question.X, column)} and {Words(Question.Y, row)}";

    /// <summary>The value shown with its unit; null for none.</summary>
    public string? Number(double si)
    {
        if (double.IsNaN(si)) return null;
        if (Question.Show.Dimension is { } dimension) return units.Text(dimension, si);
        string number = Shown(si).ToString("F" + Decimals(), CultureInfo.InvariantCulture);
        return Unit().Length > 0 ? $"{number} {Unit()}" : number;
    }

    /// <summary>The value shown as a number in the unit shown.</summary>
    public double Shown(double si) => Question.Show.Dimension is { } dimension ? units.Value(dimension, si) : si * Question.Show.Scale;

    /// <summary>The unit it is shown in; empty for a bare number.</summary>
    public string Unit() => Question.Show.Dimension is { } dimension ? units.Symbol(dimension) : Question.Show.Unit;

    public int Decimals() => Question.Show.Dimension is { } dimension ? units.Decimals(dimension) : Question.Show.Decimals;

    /// <summary>"Click 8 and a spring height of 73.5 mm: 0.95 m/s².", or why there is none; empty off the map.</summary>
    public string Cell(int column, int row)
    {
        if (column < 0 || row < 0 || column >= Question.X.Values.Count || row >= Question.Y.Values.Count) return "";
        string place = Place(column, row), said = Number(map.Value(column, row)) ?? map.Reason(column, row) ?? "not driven yet";
        return $"{Upper(place)}: {said}.";
    }

    /// <summary>What every cell has in common: "Everywhere a C road, 80 km/h and "driver".".</summary>
    public string Shared()
    {
        List<string> shared = [];
        if (Question.Road.Surface is not RoadOfClass)
            shared.Add(Lower(RoadWords.Surface(Question.Road.Surface, units)));
        foreach (MapVariable held in (MapVariable[])[MapVariable.Road, MapVariable.Speed, MapVariable.Click, MapVariable.Height, MapVariable.Load])
            if (held != Question.X.Variable && held != Question.Y.Variable && Question.Here(held) is { } here && !(held == MapVariable.Click && Question.Strut.Damper.Clicks.Count < 2))
                shared.Add(Words(held, here));
        return $"Everywhere {string.Join(", ", shared)}, driven {Question.Road.Time_s.ToString("0.#", CultureInfo.InvariantCulture)} s.";
    }

    /// <summary>What an axis is called.</summary>
    public static string Title(MapVariable variable) => variable switch
    {
        MapVariable.Click => "click from closed",
        MapVariable.Height => "spring height at drive",
        MapVariable.GaugePressure => "gauge pressure at load",
        MapVariable.Stop => "free length of the stop",
        MapVariable.Speed => "speed",
        MapVariable.Road => "road class",
        _ => "load",
    };

    /// <summary>What stands at a column or row: "8", "C", "driver".</summary>
    public string Tick(MapAxis axis, int at) => axis.Variable == MapVariable.Click
        ? axis.Values[at].ToString("0.#", CultureInfo.InvariantCulture) : Value(axis.Variable, axis.Values[at]);

    /// <summary>What an axis is called, with the unit its values are shown in; no unit for choices and clicks.</summary>
    public (string Title, string Unit) Axis(MapVariable variable) => (Title(variable), variable switch
    {
        MapVariable.Height or MapVariable.Stop => units.Symbol(Dimension.Length),
        MapVariable.GaugePressure => units.Symbol(Dimension.GaugePressure),
        MapVariable.Speed => BumpWords.SpeedUnit(units).Name,
        _ => "",
    });

    /// <summary>A value along an axis as a number in the unit shown.</summary>
    public double Shown(MapVariable variable, double value) => variable switch
    {
        MapVariable.Height or MapVariable.Stop => units.Value(Dimension.Length, value),
        MapVariable.GaugePressure => units.Value(Dimension.GaugePressure, value),
        MapVariable.Speed => BumpWords.SpeedUnit(units).FromSi(value),
        _ => value,
    };

    /// <summary>A value along an axis in words: "click 8", "C", "73.5 mm".</summary>
    public string Value(MapVariable variable, double value) => variable switch
    {
        MapVariable.Click => "click " + value.ToString("0.#", CultureInfo.InvariantCulture),
        MapVariable.Height or MapVariable.Stop => units.Text(Dimension.Length, value),
        MapVariable.GaugePressure => units.Text(Dimension.GaugePressure, value) + " gauge",
        MapVariable.Speed => BumpWords.Speed(value, units),
        MapVariable.Road => ((RoadClass)(int)value).ToString(),
        _ => Question.Loads[(int)value]?.Load ?? "",
    };

    // The share of cells with the very same value; 0 where the least stands alone.
    private double Alike(double value)
    {
        int columns = Question.X.Values.Count, alike = Enumerable.Range(0, map.Cells).Count(k => map.Value(k % columns, k / columns) == value);
        return alike < 2 ? 0 : (double)alike / map.Cells;
    }

    private static string Lower(string words) => char.ToLowerInvariant(words[0]) + words[1..];

    internal static string Upper(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private string Words(MapAxis axis, int at) => Words(axis.Variable, axis.Values[at]);

    private string Words(MapVariable variable, double at)
    {
        string value = Value(variable, at);
        return variable switch
        {
            MapVariable.Height => $"a spring height of {value}",
            MapVariable.Stop => $"a stop of {value}",
            MapVariable.Road => RoadWords.Class((RoadClass)(int)at),
            MapVariable.Load => $"\"{value}\"",
            _ => value,
        };
    }

    private int? Nearest(MapAxis axis)
    {
        if (Question.Here(axis.Variable) is not { } here || here < axis.Values[0] - 1e-9 || here > axis.Values[^1] + 1e-9) return null;
        int nearest = 0;
        for (int k = 1; k < axis.Values.Count; k++)
            if (Math.Abs(axis.Values[k] - here) < Math.Abs(axis.Values[nearest] - here)) nearest = k;
        return nearest;
    }
}
