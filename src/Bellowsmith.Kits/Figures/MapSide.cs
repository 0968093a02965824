using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>One side of a map: where its columns or rows stand, and the edges between them.</summary>
public sealed record MapSide(ChartAxis Axis, double[] Values, double[] Edges, bool IsChoice)
{
    private const int MostClicks = 26;

    public int Count => Values.Length;

    /// <summary>The value at a place between columns or rows.</summary>
    public double At(double place)
    {
        int below = Math.Clamp((int)place, 0, Math.Max(0, Count - 2));
        return Count == 1 ? Values[0] : Values[below] + (place - below) * (Values[below + 1] - Values[below]);
    }

    internal static MapSide Of(MapAxis axis, MapWords words)
    {
        double[] values = [.. axis.Values.Select(v => words.Shown(axis.Variable, v))];
        double[] edges = [.. Enumerable.Range(0, values.Length + 1).Select(k => Edge(values, k))];
        (string title, string unit) = words.Axis(axis.Variable);
        bool isWhole = axis.IsChoice || axis.Variable == MapVariable.Click && values.Length <= MostClicks;
        return new MapSide(
            new ChartAxis(title, unit, edges[0], edges[^1], 0) { OwnTicks = isWhole ? [.. values.Select((v, k) => new ChartTick(v, words.Tick(axis, k)))] : null },
            values, edges, axis.IsChoice);
    }

    /// <summary>A side of lengths in the unit shown.</summary>
    internal static MapSide Of(string title, IReadOnlyList<double> lengths_m, DisplayUnits units)
    {
        double[] values = [.. lengths_m.Select(length => units.Value(Dimension.Length, length))];
        double[] edges = [.. Enumerable.Range(0, values.Length + 1).Select(k => Edge(values, k))];
        return new(new ChartAxis(title, units.Symbol(Dimension.Length), edges[0], edges[^1], units.Decimals(Dimension.Length)), values, edges, IsChoice: false);
    }

    private static double Edge(double[] values, int k)
    {
        if (values.Length == 1) return values[0] + (k == 0 ? -0.5 : 0.5);
        return k == 0 ? values[0] - (values[1] - values[0]) / 2 : k == values.Length ? values[^1] + (values[^1] - values[^2]) / 2 : (values[k - 1] + values[k]) / 2;
    }
}
