namespace Bellowsmith.Kits.Tables;

/// <summary>
/// Readings of an instrument on known references, columns reference and reading; of later checks also day, counted steadily
/// from anywhere.
/// </summary>
public sealed class CalibrationTable
{
    private readonly Readings _readings;

    private CalibrationTable(Readings readings)
    {
        _readings = readings;
        if (readings.Count == 0)
            throw new FaultsException([new(File, "rows", "no rows", "at least one row", "Write the readings below the header.")]);
        double[]? days = readings.Has("day") ? readings.Numbers("day") : null;
        // Sorted, so that the order of the rows changes no last digit.
        int[] order = [.. Enumerable.Range(0, readings.Count)
            .OrderBy(row => days?[row] ?? 0).ThenBy(row => readings.Numbers("reference")[row]).ThenBy(row => readings.Numbers("reading")[row])];
        (References, Values) = (At("reference"), At("reading"));
        if (days is not null) Days = At("day");

        double[] At(string name) => [.. order.Select(row => readings.Numbers(name)[row])];
    }

    public string File => _readings.File;

    /// <summary>The unit of what is true, as the header spells it; null where it has none.</summary>
    public string? ReferenceUnit => _readings.Unit("reference");

    /// <summary>The unit of what was read.</summary>
    public string? ReadingUnit => _readings.Unit("reading");

    public double[] References { get; }

    public double[] Values { get; }

    /// <summary>Of checks; null in a calibration.</summary>
    public double[]? Days { get; }

    /// <exception cref="FaultsException">Every fault of the file, the first hundred in full.</exception>
    public static CalibrationTable Read(string path) =>
        new(Readings.Read(path, ReadingColumn.Number("reference"), ReadingColumn.Number("reading")));

    /// <summary>Later checks, in the units of the calibration.</summary>
    /// <exception cref="FaultsException">Every fault of the file, the first hundred in full; units that are not the calibration's.</exception>
    public static CalibrationTable ReadChecks(string path, CalibrationTable calibration)
    {
        CalibrationTable checks = new(Readings.Read(
            path, ReadingColumn.Number("day"), ReadingColumn.Number("reference"), ReadingColumn.Number("reading")));
        CappedFaults faults = new(checks.File);
        Compare("reference", checks.ReferenceUnit, calibration.ReferenceUnit);
        Compare("reading", checks.ReadingUnit, calibration.ReadingUnit);
        faults.ThrowIfAny();
        return checks;

        void Compare(string name, string? unit, string? wanted)
        {
            if (unit != wanted)
                faults.Add(new(checks.File, $"header, column {name}", unit ?? "no unit", $"{wanted ?? "no unit"}, as in {calibration.File}", "Write both files in the same units."));
        }
    }
}
