using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// An answer of a ride over two variables. The cell of column c and row r is <c>Values[r * X.Count + c]</c>; NaN where it is
/// infeasible. A map still being driven shows each cell still to come as the coarser one it lies beside. Numbers are in the units
/// shown; choices such as road classes stand at 0, 1, 2.
/// </summary>
public sealed record SettingMap
{
    public required string Title { get; init; }

    /// <summary>What is shown, with its unit.</summary>
    public required string Shown { get; init; }

    public required MapSide X { get; init; }
    public required MapSide Y { get; init; }
    public required float[] Values { get; init; }
    public required int Decimals { get; init; }

    /// <summary>Least and greatest value; NaN where nothing was driven.</summary>
    public required (double Low, double High) Range { get; init; }

    /// <summary>Round values: between two of them the shade is one, and on them lies a line.</summary>
    public required IReadOnlyList<double> Levels { get; init; }

    /// <summary>Why cells are infeasible, most first.</summary>
    public required IReadOnlyList<MapReason> Reasons { get; init; }

    /// <summary>The present setting; null where that is off the map.</summary>
    public required MapPoint? Here { get; init; }

    /// <summary>The least; null where nothing was driven or the present setting is the least.</summary>
    public required MapPoint? Least { get; init; }

    /// <summary>Every so many columns and rows are driven.</summary>
    public required int Stride { get; init; }

    public required string Summary { get; init; }

    /// <summary>Choices have nothing between them, so no lines.</summary>
    public bool HasLines => !X.IsChoice && !Y.IsChoice;

    public static SettingMap Of(MapRun map, DisplayUnits units)
    {
        MapWords words = new(map, units);
        MapQuestion question = map.Question;
        (MapSide x, MapSide y) = (MapSide.Of(question.X, words), MapSide.Of(question.Y, words));
        int[] sources = Sources(map, out int stride);
        float[] values = [.. sources.Select(s => (float)words.Shown(map.Value(s % x.Count, s / x.Count)))];
        float[] known = [.. values.Where(float.IsFinite)];
        (double Low, double High) range = known.Length == 0 ? (double.NaN, double.NaN) : (known.Min(), known.Max());
        (MapPoint? here, MapPoint? least) = Points(map, words);
        string shown = words.Unit() is { Length: > 0 } unit ? $"{question.Show.Title}, {unit}" : question.Show.Title;
        return new SettingMap
        {
            Title = $"{char.ToUpperInvariant(question.Show.Title[0])}{question.Show.Title[1..]} over {x.Axis.Title} and {y.Axis.Title}",
            Shown = shown,
            X = x,
            Y = y,
            Values = values,
            Decimals = words.Decimals(),
            Range = range,
            Levels = LevelsWithin(range.Low, range.High),
            Reasons = ReasonsOf(map, sources),
            Here = here,
            Least = least,
            Stride = stride,
            Summary = $"{words.Answer()} {words.Shared()}",
        };
    }

    /// <summary>Lines of a level in the units of the axes, through every <see cref="Stride"/>th cell.</summary>
    public IEnumerable<(double X, double Y)[]> Lines(double level)
    {
        if (!HasLines) return [];
        int columns = (X.Count + Stride - 1) / Stride, rows = (Y.Count + Stride - 1) / Stride;
        float[] lattice = [.. from row in Enumerable.Range(0, rows) from column in Enumerable.Range(0, columns) select Values[row * Stride * X.Count + column * Stride]];
        return Contours.Of(lattice, columns, level).Select(line => Array.ConvertAll(line, p => (X.At(p.Column * Stride), Y.At(p.Row * Stride))));
    }

    /// <summary>A level in words: as many decimals as levels differ by.</summary>
    public string Level(double level)
    {
        double least = Levels.Zip(Levels.Skip(1), (low, high) => high - low).DefaultIfEmpty(1).Min();
        return PlainNumbers.Fixed(level, Math.Max(0, (int)Math.Ceiling(-Math.Log10(least) - 1e-9)));
    }

    /// <summary>How dark a value is, 0 to 1 in steps between the levels; darker is more.</summary>
    public double Darkness(double value) => Levels.Count == 0 ? 0 : (double)Levels.Count(level => level <= value) / Levels.Count;

    private const int MostLevels = 9, CoarsestStride = 8;

    private const double ManyTimes = 12;

    // Even steps; where the greatest is many times the least 1, 2 and 5 times powers of ten.
    private static IReadOnlyList<double> LevelsWithin(double low, double high)
    {
        if (!(low < high)) return [];
        if (!(low > 0 && high > ManyTimes * low)) return new ChartAxis("", "", low, high, 0).Ticks(MostLevels);
        int first = (int)Math.Floor(Math.Log10(low)), last = (int)Math.Ceiling(Math.Log10(high));
        return [.. from power in Enumerable.Range(first, last - first + 1) from digit in (double[])[1, 2, 5] let level = digit * Math.Pow(10, power) where level >= low && level <= high select Math.Round(level, 9)];
    }

    // Which cell each cell shows: itself once it is settled, else the nearest before it on the finest grid that is.
    private static int[] Sources(MapRun map, out int stride)
    {
        (int columns, int rows) = (map.Question.X.Values.Count, map.Question.Y.Values.Count);
        stride = 1;
        while (stride < CoarsestStride && Places(columns, stride) * Places(rows, stride) > map.Driven) stride *= 2;
        int[] sources = new int[map.Cells];
        for (int cell = 0; cell < sources.Length; cell++)
            for (int s = 1; s <= CoarsestStride; s *= 2)
            {
                (int column, int row) = (cell % columns / s * s, cell / columns / s * s);
                sources[cell] = row * columns + column;
                if (map.At(column, row) is not null || map.Reason(column, row) is not null) break;
            }

        return sources;
    }

    private static int Places(int count, int stride) => (count + stride - 1) / stride;

    private static (MapPoint? Here, MapPoint? Least) Points(MapRun map, MapWords words)
    {
        MapQuestion question = map.Question;
        (int Column, int Row)? cell = words.HereCell(), least = words.Least();
        MapPoint? here = cell is not { } at ? null : new MapPoint(
            words.Shown(question.X.Variable, question.Here(question.X.Variable)!.Value), words.Shown(question.Y.Variable, question.Here(question.Y.Variable)!.Value),
            Said(cell == least ? "this setting, the least" : "this setting", at));
        return (here, least is not { } best || best == cell ? null : new MapPoint(
            words.Shown(question.X.Variable, question.X.Values[best.Column]), words.Shown(question.Y.Variable, question.Y.Values[best.Row]), Said("least", best)));

        string Said(string name, (int Column, int Row) at) => words.Number(map.Value(at.Column, at.Row)) is { } number ? $"{name} · {number}" : name;
    }

    private static MapReason[] ReasonsOf(MapRun map, int[] sources)
    {
        int columns = map.Question.X.Values.Count;
        return [.. sources.Select((source, cell) => (Reason: map.Reason(source % columns, source / columns), Cell: cell)).Where(c => c.Reason is not null)
            .GroupBy(c => c.Reason!, c => c.Cell).Select(g => new MapReason(MapHints.Word(g.Key), MapHints.Sentence(g.Key, g.Count(), map.Cells), [.. g]))
            .OrderByDescending(r => r.Cells.Length)];
    }
}

/// <summary>A place on the map and what to write beside it.</summary>
public sealed record MapPoint(double X, double Y, string Label);
