using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A file of repeats on days in runs: columns run, day and value, or run, day, average, sd and repeats where only each day's
/// summary was kept; beside them standard where several check standards were read.
/// </summary>
public sealed class NestedTable
{
    private readonly Readings _readings;

    private NestedTable(Readings readings)
    {
        _readings = readings;
        CappedFaults faults = new(readings.File);
        if (readings.Count == 0) faults.Add(new(File, "rows", "no rows", "at least one row", "Write the readings below the header."));
        else if (readings.Has("value")) Days = OfValues();
        else if (readings.Has("average") && readings.Has("sd") && readings.Has("repeats")) Days = OfSummaries(faults);
        else faults.Add(new(File, "header", "no column value", "value, or average, sd and repeats", "Add the column \"value\" with one reading in each row."));
        faults.ThrowIfAny();
    }

    public string File => _readings.File;

    /// <summary>The unit of the readings as the header spells it; null where it has none.</summary>
    public string? Unit => _readings.Unit(_readings.Has("value") ? "value" : "average");

    public IReadOnlyList<NestedDay> Days { get; } = [];

    /// <exception cref="FaultsException">Every fault of the file, the first hundred in full.</exception>
    public static NestedTable Read(string path) => new(Readings.Read(
        path, ReadingColumn.Label("standard", optional: true), ReadingColumn.Label("run"), ReadingColumn.Label("day"),
        ReadingColumn.Number("value", optional: true), ReadingColumn.Number("average", optional: true),
        ReadingColumn.Number("sd", 0, optional: true), ReadingColumn.Number("repeats", 1, 1e6, optional: true)));

    private IReadOnlyList<NestedDay> OfValues()
    {
        double[] values = _readings.Numbers("value");
        int[] read = [.. Enumerable.Range(0, values.Length).Where(row => double.IsFinite(values[row]))];
        return NestedTrial.OfReadings(Codes("standard", read), Codes("run", read), Codes("day", read), [.. read.Select(row => values[row])]);
    }

    private NestedDay[] OfSummaries(CappedFaults faults)
    {
        int[] rows = [.. Enumerable.Range(0, _readings.Count)];
        int[] standard = Codes("standard", rows), run = Codes("run", rows), day = Codes("day", rows);
        double[] average = _readings.Numbers("average"), deviation = _readings.Numbers("sd"), repeats = _readings.Numbers("repeats");
        HashSet<(int, int, int)> seen = [];
        foreach (int row in rows)
        {
            if (!double.IsFinite(average[row] + deviation[row]))
                faults.Add(_readings.Fault(row, "average", "an empty cell", "average, sd and repeats in every row", "Write the day's average and standard deviation."));
            if (!double.IsInteger(repeats[row]))
                faults.Add(_readings.Fault(row, "repeats", $"{repeats[row]}", "a whole number from 1", "Write how many readings the average is of."));
            if (!seen.Add((standard[row], run[row], day[row])))
                faults.Add(_readings.Fault(row, "day", "a day of a run a second time", "one row for each day of a run", "Name the days of a run differently."));
        }

        faults.ThrowIfAny();
        return [.. rows.Select(row => new NestedDay(standard[row], run[row], average[row], deviation[row], (int)repeats[row]))
            .OrderBy(of => of.Standard).ThenBy(of => of.Run).ThenBy(of => of.Average)];
    }

    private int[] Codes(string name, int[] rows)
    {
        if (!_readings.Has(name)) return new int[rows.Length];
        int[] codes = LabelOrder.Sorted(_readings.Labels(name)).Codes;
        return [.. rows.Select(row => codes[row])];
    }
}
