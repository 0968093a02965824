using System.Globalization;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A measured motion ratio: strut travel against wheel travel in m, ascending by wheel travel. Wheel travel is bump +,
/// strut travel compression +; wheel travel 0 is drive height.
/// </summary>
public sealed record RatioTable(IReadOnlyList<double> WheelTravel_m, IReadOnlyList<double> StrutTravel_m)
{
    private const int LeastTravels = 4;
    private const double LeastRatio = 0.05, GreatestRatio = 5, TapeStep_m = 0.0011;

    private static readonly ColumnRule
        _wheel = ColumnRule.Of("wheel travel", Dimension.Length, "-500 mm", "500 mm"),
        _strut = ColumnRule.Of("strut travel", Dimension.Length, "-500 mm", "500 mm"),
        _ratio = ColumnRule.Bare("motion ratio", 0.05, 5);

    /// <summary>
    /// Reads wheel travel with strut travel, or with the motion ratio, which is then integrated from wheel travel 0 by
    /// trapezoids. Null, with every fault added, where anything cannot stand.
    /// </summary>
    public static RatioTable? Read(Table table, ICollection<Fault> faults)
    {
        var before = faults.Count;
        var reading = new ColumnReading(table, [_wheel, _strut, _ratio], faults);
        RequireColumns(table, reading, faults);
        var second = reading.Has("strut travel") ? "strut travel" : "motion ratio";
        var rows = table.Rows.Select(row => (Wheel: reading.Needed(row, "wheel travel"), Second: reading.Needed(row, second)))
            .OrderBy(row => row.Wheel).ToList();
        reading.CheckDecimalMarks();
        if (faults.Count == before) CheckRows(table, rows.ConvertAll(row => row.Wheel), faults);
        var (wheel, values) = (rows.ConvertAll(row => row.Wheel), rows.ConvertAll(row => row.Second));
        if (faults.Count == before && second == "strut travel") CheckRises(table, wheel, values, faults);
        if (faults.Count > before) return null;
        return new(wheel, second == "strut travel" ? values : Integrate(wheel, values));
    }

    private static void RequireColumns(Table table, ColumnReading reading, ICollection<Fault> faults)
    {
        reading.Require(_wheel);
        if (reading.Has("strut travel") && reading.Has("motion ratio"))
            faults.Add(new(table.File, "header", "both strut travel and motion ratio", "one of the two", "Take one of the two columns out."));
        else if (!reading.Has("motion ratio"))
            reading.Require(_strut);
    }

    private static void CheckRows(Table table, List<double> wheel, ICollection<Fault> faults)
    {
        var distinct = wheel.Distinct().Count();
        if (distinct < LeastTravels)
            faults.Add(new(table.File, "rows", $"{distinct} wheel travels", $"at least {LeastTravels} wheel travels", "Measure more wheel travels."));
        else if (wheel[0] > 0 || wheel[^1] < 0)
            faults.Add(new(table.File, "column wheel travel", "all wheel travels on one side of 0", "wheel travels on both sides of 0, or 0 itself",
                "Count wheel travel from drive height, bump +."));
    }

    // Rounding may make neighbours equal or turn them by a step of the tape; more than that is a sign or a unit gone wrong.
    private static void CheckRises(Table table, List<double> wheel, List<double> strut, ICollection<Fault> faults)
    {
        var overall = (strut[^1] - strut[0]) / (wheel[^1] - wheel[0]);
        var falls = Enumerable.Range(1, strut.Count - 1).Any(i => strut[i] < strut[i - 1] - TapeStep_m);
        if (overall is < LeastRatio or > GreatestRatio || falls)
            faults.Add(new(table.File, "column strut travel", string.Create(CultureInfo.InvariantCulture, $"{overall:0.###}") + $" of strut travel per wheel travel{(falls ? ", not rising throughout" : "")}",
                "strut travel that rises with wheel travel, 0.05 to 5 overall",
                "Count wheel travel bump + and strut travel compression +, both from drive height."));
    }

    private static List<double> Integrate(List<double> wheel, List<double> ratio)
    {
        var strut = new List<double> { 0 };
        for (var i = 1; i < wheel.Count; i++)
            strut.Add(strut[^1] + (wheel[i] - wheel[i - 1]) * (ratio[i] + ratio[i - 1]) / 2);
        var atDrive = StrutAtDrive(wheel, ratio, strut);
        return strut.ConvertAll(value => value - atDrive);
    }

    private static double StrutAtDrive(List<double> wheel, List<double> ratio, List<double> strut)
    {
        var above = wheel.FindIndex(value => value >= 0);
        if (wheel[above] == 0) return strut[above];
        var share = -wheel[above - 1] / (wheel[above] - wheel[above - 1]);
        var ratioAtDrive = ratio[above - 1] + share * (ratio[above] - ratio[above - 1]);
        return strut[above - 1] - wheel[above - 1] * (ratio[above - 1] + ratioAtDrive) / 2;
    }
}
