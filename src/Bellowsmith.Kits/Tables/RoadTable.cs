using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Tables;

/// <summary>A measured road profile: height (up +) against distance, rising.</summary>
public sealed record RoadTable(IReadOnlyList<double> Distance_m, IReadOnlyList<double> Height_m)
{
    private const int LeastRows = 2;

    private static readonly ColumnRule
        _distance = ColumnRule.Of("distance", Dimension.Length, "-100000 m", "100000 m"),
        _height = ColumnRule.Of("height", Dimension.Length, "-100000 mm", "100000 mm");

    /// <exception cref="FaultsException">Every fault of the file.</exception>
    public static MeasuredRoad ReadFile(string path)
    {
        List<Fault> faults = [];
        RoadTable? road = Read(Table.Read(path), faults);
        return road is null ? throw new FaultsException(faults) : new MeasuredRoad([.. road.Distance_m], [.. road.Height_m]);
    }

    /// <summary>Reads the profile; null, with every fault added, where anything cannot stand.</summary>
    public static RoadTable? Read(Table table, ICollection<Fault> faults)
    {
        var before = faults.Count;
        var reading = new ColumnReading(table, [_distance, _height], faults);
        reading.Require(_distance, _height);
        var distance = table.Rows.Select(row => reading.Needed(row, "distance")).ToList();
        var height = table.Rows.Select(row => reading.Needed(row, "height")).ToList();
        reading.CheckDecimalMarks();
        for (var i = 1; i < distance.Count; i++)
        {
            if (distance[i] <= distance[i - 1])
                reading.Report(table.Rows[i], "distance", reading.Text(table.Rows[i], "distance")!,
                    $"more than {reading.Text(table.Rows[i - 1], "distance")}, the distance above it", "Sort the rows by distance, each once.");
        }

        if (distance.Count < LeastRows)
            faults.Add(new(table.File, "rows", $"{distance.Count} rows", $"at least {LeastRows} rows", "Add points of the profile."));
        return faults.Count > before ? null : new(distance, height);
    }
}
