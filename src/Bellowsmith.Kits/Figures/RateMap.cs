namespace Bellowsmith.Kits.Figures;

/// <summary>
/// The rate over spring height and load. <see cref="Rate"/> runs along heights first: the cell of column c and row r is
/// <c>Rate[r * Heights.Length + c]</c>; NaN where the load takes more than the spring's greatest gauge pressure or cannot be
/// carried. Numbers are in the units shown.
/// </summary>
public sealed record RateMap
{
    public required ChartAxis X { get; init; }
    public required ChartAxis Y { get; init; }
    public required string RateUnit { get; init; }
    public required int RateDecimals { get; init; }
    public required float[] Heights { get; init; }
    public required float[] Loads { get; init; }
    public required float[] Rate { get; init; }

    /// <summary>Least and greatest rate on the map; NaN where nothing can be carried.</summary>
    public required (double Low, double High) Range { get; init; }

    /// <summary>Round rates for contour lines.</summary>
    public required IReadOnlyList<double> Levels { get; init; }

    /// <summary>The wanted rate, a contour of its own; null without a target.</summary>
    public required double? Wanted { get; init; }

    /// <summary>The load the strut carries at drive, drawn as a line across.</summary>
    public required double DriveLoad { get; init; }

    public required double Height { get; init; }
    public required string Summary { get; init; }
}
