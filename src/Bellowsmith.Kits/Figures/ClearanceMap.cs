using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// The least room over any pair's margin, over rack (columns) and wheel travel (rows): the cell of column c and row r is
/// <c>Room[r * X.Count + c]</c>, NaN where the parts do not go; the pair that has it stands in <see cref="Pair"/> as an index into
/// <see cref="Pairs"/>, −1 for none. Numbers are in the units shown.
/// </summary>
public sealed record ClearanceMap
{
    private const int MostLevels = 8;

    public required string Title { get; init; }
    public required MapSide X { get; init; }
    public required MapSide Y { get; init; }
    public required float[] Room { get; init; }
    public required int[] Pair { get; init; }

    /// <summary>By name.</summary>
    public required IReadOnlyList<string> Pairs { get; init; }

    /// <summary>"room over the margin, mm".</summary>
    public required string Shown { get; init; }

    public required int Decimals { get; init; }

    /// <summary>Least and greatest.</summary>
    public required (double Low, double High) Range { get; init; }

    /// <summary>Round values, 0 among them where it lies within: there a margin is just kept.</summary>
    public required IReadOnlyList<double> Levels { get; init; }

    /// <summary>Where the least room is, followed between the places of the map.</summary>
    public required MapPoint Worst { get; init; }

    public required string Summary { get; init; }

    /// <summary>Null where nothing was swept.</summary>
    public static ClearanceMap? Of(ClearanceResult result, DisplayUnits units)
    {
        if (result.Pairs.Count == 0) return null;
        ClearanceWords words = new(result, units);
        ClearanceGrid grid = result.Grid;
        float[] room = [.. grid.Room_m.Select(left => (float)Length(left))];
        float[] known = [.. room.Where(float.IsFinite)];
        (double Low, double High) range = (known.Min(), known.Max());
        string unit = units.Symbol(Dimension.Length);
        PairGap worst = result.Pairs[0];
        return new()
        {
            Title = $"Least room over any margin, {Names.Of(result.Case.End)}",
            X = MapSide.Of("rack, to the left +", grid.Racks_m, units),
            Y = MapSide.Of("wheel travel, bump +", grid.Travels_m, units),
            Room = room,
            Pair = [.. grid.Pair],
            Pairs = [.. grid.Pairs.Select(ClearanceWords.Name)],
            Shown = $"room over the margin, {unit}",
            Decimals = units.Decimals(Dimension.Length),
            Range = range,
            Levels = range.Low < range.High ? new ChartAxis("", "", range.Low, range.High, 0).Ticks(MostLevels) : [],
            Worst = new(Length(worst.Rack_m), Length(worst.Travel_m), $"{ClearanceWords.Name(worst.Pair)} {units.Text(Dimension.Length, worst.Gap.Distance_m)}"),
            Summary = words.Answer(),
        };

        double Length(double si) => units.Value(Dimension.Length, si);
    }
}
