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

    /// <summary>Clicks from the first to the last, so that curves end at its edge.</summary>
    public static ChartAxis Clicks(double[] clicks)
    {
        (double low, double high) = (clicks.Min(), clicks.Max());
        return low < high ? ChartAxis.Around("click from closed", "", clicks) with { Low = low, High = high, Decimals = 0 }
            : new ChartAxis("click from closed", "", low - 1, high + 1, 0);
    }

    /// <summary>Whole clicks upward, one beyond either end.</summary>
    public static ChartAxis WholeClicks(double[] clicks)
    {
        (int low, int high) = ((int)Math.Floor(clicks.Min()) - 1, (int)Math.Ceiling(clicks.Max()) + 1);
        return new ChartAxis("click from closed", "", low, high, 0)
        {
            OwnTicks = [.. Enumerable.Range(low, high - low + 1).Where(click => click >= 0).Select(click => new ChartTick(click, PlainNumbers.Fixed(click, 0)))],
        };
    }

    /// <summary>Around natural logarithms, with ticks at 1, 2 and 5 times powers of ten, at the powers alone where those are many.</summary>
    public static ChartAxis Logarithms(string title, string unit, double[] logs)
    {
        const double Room = 0.05, ManyPowers = 3.5;
        double[] finite = [.. logs.Where(double.IsFinite).DefaultIfEmpty(0)];
        double low = finite.Min() - Room, high = finite.Max() + Room;
        double[] digits = high - low > ManyPowers * Math.Log(10) ? [1] : [1, 2, 5];
        List<ChartTick> ticks = [];
        for (int power = (int)Math.Floor(low / Math.Log(10)); power <= high / Math.Log(10); power++)
            foreach (double value in digits.Select(digit => digit * Math.Pow(10, power)))
                if (Math.Log(value) is var at && at >= low && at <= high) ticks.Add(new(at, PlainNumbers.Chosen(value)));
        return new ChartAxis(title, unit, low, high, 2) { OwnTicks = ticks, OfLogarithms = true };
    }
}
