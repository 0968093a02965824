using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>Axes and curves in the units shown.</summary>
internal static class Axes
{
    public static double[] Shown(Dimension dimension, DisplayUnits units, double[] si) => [.. si.Select(v => units.Value(dimension, v))];

    public static double[] Nothing(int count) => [.. Enumerable.Repeat(double.NaN, count)];

    /// <summary>From round number to round number around all values, in SI.</summary>
    public static ChartAxis Around(string title, Dimension dimension, DisplayUnits units, double[] si) =>
        ChartAxis.Around(title, units.Symbol(dimension), si.Select(v => units.Value(dimension, v))) with { Decimals = units.Decimals(dimension) };

    /// <summary>
    /// Around what matters at the setting: a curve that rises steeply at one end leaves the figure there rather than flatten
    /// the rest of it.
    /// </summary>
    public static ChartAxis Focused(string title, Dimension dimension, DisplayUnits units, double[] curve, double[] wanted)
    {
        double[] finite = [.. curve.Where(double.IsFinite).Order()], must = [.. wanted.Where(double.IsFinite)];
        if (finite.Length == 0) return Around(title, dimension, units, must);
        double least = Math.Min(finite[0], must.DefaultIfEmpty(finite[0]).Min());
        double middle = Math.Max(finite[finite.Length * 3 / 4], must.DefaultIfEmpty(finite[0]).Max());
        return Around(title, dimension, units, [least, Math.Min(Math.Max(finite[^1], middle), least + 2 * (middle - least))]);
    }

    /// <summary>A curve in two parts, solid where <paramref name="inside"/> holds; they meet at a shared point.</summary>
    public static ChartCurve Curve(string label, double[] x, double[] y, bool[] inside)
    {
        double[] solid = Nothing(x.Length), dashed = Nothing(x.Length);
        for (int k = 0; k < x.Length; k++)
        {
            if (inside[k]) solid[k] = y[k];
            bool atEdge = k > 0 && !inside[k - 1] || k + 1 < x.Length && !inside[k + 1];
            if (!inside[k] || atEdge) dashed[k] = y[k];
        }

        return new ChartCurve(label, x, solid, dashed, label.Length > 0 ? x.Length - 1 : -1);
    }
}
