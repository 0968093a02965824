using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// Spring data: measured rows (height, gauge or absolute pressure, force, and what else was noted) or a characteristic
/// (height, effective area, volume). A file with a force column is measured; its effective area, if any, is passed over.
/// </summary>
public static class SpringTable
{
    private const int LeastMeasuredRows = 8;
    private const int LeastCharacteristicRows = 2;

    private static readonly ColumnRule
        _height = ColumnRule.Of("height", Dimension.Length, "1 mm", "1000 mm"),
        _gauge = ColumnRule.Of("gauge pressure", Dimension.GaugePressure, "-0.5 bar", "30 bar"),
        _absolute = ColumnRule.Of("absolute pressure", Dimension.AbsolutePressure, "0.4 bar", "31.1 bar"),
        _force = ColumnRule.Of("force", Dimension.Force, "-50000 N", "200000 N"),
        _volume = ColumnRule.Of("volume", Dimension.Volume, "1 cm3", "100 L"),
        _area = ColumnRule.Of("effective area", Dimension.Area, "1 cm2", "1 m2");

    private static readonly ColumnRule[] _rules =
    [
        _height, _gauge, _absolute, _force, _volume, _area,
        ColumnRule.Of("temperature", Dimension.Temperature, "-60 degC", "120 degC"),
        ColumnRule.Text("mode"),
        ColumnRule.Text("direction"),
        ColumnRule.Of("amplitude", Dimension.Length, "0 mm", "500 mm"),
        ColumnRule.Text("sweep"),
    ];

    /// <summary>
    /// Reads the table; null, with every fault added, where anything cannot stand. The ambient (absolute, at the test)
    /// is taken off where the file has absolute pressures.
    /// </summary>
    public static SpringData? Read(Table table, double ambient_Pa, ICollection<Fault> faults)
    {
        var before = faults.Count;
        RefuseBarePressure(table, faults);
        var reading = new ColumnReading(table, _rules, faults);
        SpringData data = IsCharacteristic(reading) ? Characteristic(table, reading, faults) : Measured(table, reading, ambient_Pa, faults);
        reading.CheckDecimalMarks();
        return faults.Count > before ? null : data;
    }

    private static bool IsCharacteristic(ColumnReading reading) => reading.Has("effective area") && !reading.Has("force");

    private static MeasuredSpring Measured(Table table, ColumnReading reading, double ambient_Pa, ICollection<Fault> faults)
    {
        reading.Require(_height, _force);
        RequireOnePressure(table, reading, faults);
        RequireRows(table, LeastMeasuredRows, faults);
        return new([.. table.Rows.Select(row => Measured(row, reading, ambient_Pa))]);
    }

    private static SpringRow Measured(Row row, ColumnReading reading, double ambient_Pa) => new(
        reading.Needed(row, "height"),
        reading.Has("gauge pressure") ? reading.Needed(row, "gauge pressure") : reading.Needed(row, "absolute pressure") - ambient_Pa,
        reading.Needed(row, "force"),
        reading.Optional(row, "volume"),
        reading.Optional(row, "temperature"),
        reading.Choice(row, "mode", ("regulated", AirMode.Regulated), ("sealed slow", AirMode.SealedSlow), ("sealed fast", AirMode.SealedFast)) ?? AirMode.Regulated,
        reading.Choice(row, "direction", ("compressing", SweepDirection.Compressing), ("extending", SweepDirection.Extending)),
        reading.Optional(row, "amplitude"),
        reading.Text(row, "sweep"),
        row.Line);

    private static CharacteristicSpring Characteristic(Table table, ColumnReading reading, ICollection<Fault> faults)
    {
        reading.Require(_height, _area, _volume);
        RequireRows(table, LeastCharacteristicRows, faults);
        var rows = table.Rows.Select(row => (Row: row, Read: new CharacteristicRow(
                reading.Needed(row, "height"), reading.Needed(row, "effective area"), reading.Needed(row, "volume"))))
            .OrderBy(row => row.Read.Height_m).ToList();
        for (var i = 1; i < rows.Count; i++)
        {
            if (rows[i].Read.Height_m == rows[i - 1].Read.Height_m)
                reading.Report(rows[i].Row, "height", reading.Text(rows[i].Row, "height")!,
                    $"a height that no other row has; row {rows[i - 1].Row.Line} has it too", "Keep one row for each height.");
        }
        return new(rows.ConvertAll(row => row.Read));
    }

    private static void RefuseBarePressure(Table table, ICollection<Fault> faults)
    {
        foreach (var column in table.Columns.Where(column => column.Name == "pressure"))
            faults.Add(new(table.File, $"header, column {column.Header}", column.Header, "gauge pressure or absolute pressure",
                "Say gauge pressure or absolute pressure in the header: they differ by the ambient, about 1 bar."));
    }

    private static void RequireOnePressure(Table table, ColumnReading reading, ICollection<Fault> faults)
    {
        var both = reading.Has("gauge pressure") && reading.Has("absolute pressure");
        if (both)
            faults.Add(new(table.File, "header", "both gauge pressure and absolute pressure", "one of the two", "Take one of the two columns out."));
        else if (!reading.Has("absolute pressure") && !table.Columns.Any(column => column.Name == "pressure"))
            reading.Require(_gauge);
    }

    private static void RequireRows(Table table, int least, ICollection<Fault> faults)
    {
        if (table.Rows.Count < least)
            faults.Add(new(table.File, "rows", $"{table.Rows.Count} rows", $"at least {least} rows", "Measure more heights, or take the rows in that were left out."));
    }
}
