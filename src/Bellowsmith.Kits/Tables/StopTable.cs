using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>A bump stop's curve: force against compression, from compression 0 upwards.</summary>
public static class StopTable
{
    private const int LeastRows = 2;

    private static readonly ColumnRule
        _compression = ColumnRule.Of("compression", Dimension.Length, "0 mm", "300 mm"),
        _force = ColumnRule.Of("force", Dimension.Force, "0 N", "200000 N");

    /// <summary>Reads the curve; null, with every fault added, where anything cannot stand.</summary>
    public static IReadOnlyList<StopForce>? Read(Table table, ICollection<Fault> faults)
    {
        var before = faults.Count;
        var reading = new ColumnReading(table, [_compression, _force], faults);
        reading.Require(_compression, _force);
        var points = table.Rows.Select(row => new StopForce(reading.Needed(row, "compression"), reading.Needed(row, "force"))).ToList();
        reading.CheckDecimalMarks();
        CheckOrder(table, reading, points);
        if (points.Count < LeastRows)
            faults.Add(new(table.File, "rows", $"{points.Count} rows", $"at least {LeastRows} rows", "Add points of the curve."));
        return faults.Count > before ? null : points;
    }

    private static void CheckOrder(Table table, ColumnReading reading, List<StopForce> points)
    {
        if (points.Count > 0 && points[0].Compression_m > 0)
            reading.Report(table.Rows[0], "compression", reading.Text(table.Rows[0], "compression")!, "0", "Begin the curve at compression 0.");
        for (var i = 1; i < points.Count; i++)
        {
            if (points[i].Compression_m <= points[i - 1].Compression_m)
                reading.Report(table.Rows[i], "compression", reading.Text(table.Rows[i], "compression")!,
                    $"more than {reading.Text(table.Rows[i - 1], "compression")}, the compression above it", "Sort the rows by compression, each once.");
            if (points[i].Force_N < points[i - 1].Force_N)
                reading.Report(table.Rows[i], "force", reading.Text(table.Rows[i], "force")!,
                    $"at least {reading.Text(table.Rows[i - 1], "force")}, the force above it", "A stop pushes back harder the further it is squeezed; check the row.");
        }
    }
}
