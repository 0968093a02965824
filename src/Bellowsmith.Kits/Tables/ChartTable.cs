using System.Globalization;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A file of readings to chart: <c>value</c>, with <c>subgroup</c> for averages, or <c>count</c> and <c>size</c>; beside them
/// <c>phase</c> and <c>note</c>, if any. Successive rows with one label belong together; a label that comes back is a fault.
/// </summary>
public sealed class ChartTable
{
    private const int MostSize = 1_000_000_000;

    private readonly Readings _readings;
    private readonly CappedFaults _faults;
    private readonly string _main;

    private ChartTable(Readings readings, ChartKind kind)
    {
        (_readings, _faults, _main) = (readings, new(readings.File), IsOfCounts(kind) ? "count" : "value");
        Values = readings.Numbers(_main);
        if (readings.Count == 0) _faults.Add(new(readings.File, "rows", "no rows", "at least one row", "Write the readings below the header."));
        if (kind == ChartKind.Averages) SubgroupStarts = Starts("subgroup");
        if (IsOfCounts(kind)) CheckCounts(kind);
        if (readings.Has("phase")) PhaseStarts = InPoints(Starts("phase"));
        _faults.ThrowIfAny();
    }

    public string File => _readings.File;

    /// <summary>The unit of the readings as the header spells it; null where it has none.</summary>
    public string? Unit => _readings.Unit(_main);

    /// <summary>Every row's value, or its count.</summary>
    public double[] Values { get; }

    /// <summary>How much each row's count was looked for in.</summary>
    public double[]? Sizes => _readings.Has("size") ? _readings.Numbers("size") : null;

    /// <summary>The first row of each subgroup; null where every row is a point.</summary>
    public int[]? SubgroupStarts { get; }

    /// <summary>The first point of each phase; null where the file names none.</summary>
    public int[]? PhaseStarts { get; }

    /// <exception cref="FaultsException">Every fault of the file, the first hundred in full.</exception>
    public static ChartTable Read(string path, ChartKind kind)
    {
        ReadingColumn phase = ReadingColumn.Label("phase", optional: true), note = ReadingColumn.Label("note", optional: true);
        ReadingColumn size = ReadingColumn.Number("size", 0, MostSize, optional: kind == ChartKind.Counts);
        return new(
            kind switch
            {
                ChartKind.Averages => Readings.Read(path, ReadingColumn.Number("value"), ReadingColumn.Label("subgroup"), phase, note),
                ChartKind.Counts or ChartKind.Shares => Readings.Read(path, ReadingColumn.Number("count", 0, MostSize), size, phase, note),
                _ => Readings.Read(path, ReadingColumn.Number("value"), phase, note),
            },
            kind);
    }

    /// <summary>The first row of a point.</summary>
    public int Row(int point) => SubgroupStarts?[point] ?? point;

    /// <summary>The line of the file a point begins on.</summary>
    public int Line(int point) => _readings.Line(Row(point));

    public string? Subgroup(int point) => SubgroupStarts is null ? null : Label("subgroup", Row(point));

    public string? Phase(int point) => PhaseStarts is null ? null : Label("phase", Row(point));

    /// <summary>The first note among a point's rows.</summary>
    public string? Note(int point)
    {
        if (!_readings.Has("note")) return null;
        int end = SubgroupStarts is { } s && point + 1 < s.Length ? s[point + 1] : SubgroupStarts is null ? point + 1 : _readings.Count;
        for (int row = Row(point); row < end; row++)
            if (Label("note", row) is { } note) return note;
        return null;
    }

    private static bool IsOfCounts(ChartKind kind) => kind is ChartKind.Counts or ChartKind.Shares;

    private string? Label(string column, int row)
    {
        LabelColumn labels = _readings.Labels(column);
        return labels.Codes[row] < 0 ? null : labels.Names[labels.Codes[row]];
    }

    private int[] Starts(string column)
    {
        LabelColumn labels = _readings.Labels(column);
        bool[] ended = new bool[labels.Names.Count];
        List<int> starts = [];
        for (int row = 0; row < labels.Codes.Length; row++)
        {
            int code = labels.Codes[row];
            if (row > 0 && code == labels.Codes[row - 1]) continue;
            if (row > 0 && labels.Codes[row - 1] is >= 0 and int last) ended[last] = true;
            starts.Add(row);
            if (code < 0) _faults.Add(_readings.Fault(row, column, "nothing", "a label", $"Write the {column} into every row, or leave the column out."));
            else if (ended[code])
                _faults.Add(_readings.Fault(row, column, labels.Names[code], $"a {column} whose rows follow one another", $"\"{labels.Names[code]}\" stood further up already: put its rows together, or give these another label."));
        }

        return [.. starts];
    }

    // Phases begin where a subgroup does.
    private int[] InPoints(int[] rows)
    {
        if (SubgroupStarts is not { } starts) return rows;
        int[] points = [.. rows.Select(row => Array.BinarySearch(starts, row))];
        foreach ((int row, int _) in rows.Zip(points).Where(pair => pair.Second < 0))
            _faults.Add(_readings.Fault(row, "phase", Label("phase", row) ?? "nothing", "one phase within a subgroup", "Begin the phase with a new subgroup."));
        return points;
    }

    private void CheckCounts(ChartKind kind)
    {
        double[]? sizes = Sizes;
        for (int row = 0; row < Values.Length; row++)
        {
            if (Values[row] % 1 != 0) Fault(row, "count", Values[row], "a whole number", "Count pieces or finds; a measured value belongs on another chart.");
            if (sizes is null) continue;
            if (!(sizes[row] > 0)) Fault(row, "size", sizes[row], "more than 0", "Write how much was looked at.");
            if (kind != ChartKind.Shares) continue;
            if (sizes[row] % 1 != 0) Fault(row, "size", sizes[row], "a whole number", "Write how many pieces there were.");
            if (Values[row] > sizes[row]) Fault(row, "count", Values[row], string.Create(CultureInfo.InvariantCulture, $"at most the size {sizes[row]}"), "Of so many pieces no more can fail; where one piece can show several finds, chart counts.");
        }
    }

    private void Fault(int row, string column, double found, string allowed, string fix) => _faults.Add(_readings.Fault(
        row, column, double.IsNaN(found) ? "nothing" : found.ToString(CultureInfo.InvariantCulture), allowed, fix));
}
