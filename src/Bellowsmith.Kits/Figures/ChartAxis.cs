namespace Bellowsmith.Kits.Figures;

/// <summary>
/// One axis. <paramref name="Unit"/> is empty for counts and bare ratios. <paramref name="Decimals"/> is what a value on it
/// deserves.
/// </summary>
public sealed record ChartAxis(string Title, string Unit, double Low, double High, int Decimals)
{
    private const int Steps = 5;
    private static readonly double[] _steps = [1, 2, 5, 10];

    /// <summary>
    /// Ticks with words of their own, such as the shares of a probability plot or the steps of a damper; null for round numbers.
    /// Words that would touch are left out, the tick stays.
    /// </summary>
    public IReadOnlyList<ChartTick>? OwnTicks { get; init; }

    /// <summary>Values are natural logarithms of what is read on it.</summary>
    public bool OfLogarithms { get; init; }

    /// <summary>From round number to round number around all finite values; around 0 to 1 without one.</summary>
    public static ChartAxis Around(string title, string unit, IEnumerable<double> values)
    {
        double[] finite = [.. values.Where(double.IsFinite)];
        (double low, double high) = finite.Length == 0 ? (0, 1) : (finite.Min(), finite.Max());
        if (high - low <= Rounding(low, high)) (low, high) = low == 0 ? (-1, 1) : (low - Math.Abs(low) / 2, high + Math.Abs(high) / 2);
        double step = StepFor((high - low) / (2 * Steps)) / 2;
        int decimals = Places(2 * step);
        return new ChartAxis(title, unit, Even(Math.Floor(low / step + 1e-9)), Even(Math.Ceiling(high / step - 1e-9)), Math.Min(decimals, 9));

        double Even(double count) => Math.Round(count * step, Math.Min(Places(step) + 1, 15)) + 0.0;
    }

    /// <summary>Round values within the axis, at most so many; the one value where both ends are the same but for rounding.</summary>
    public IReadOnlyList<double> Ticks(int most)
    {
        double span = High - Low;
        if (!double.IsFinite(span)) return [];
        if (Math.Abs(span) <= Rounding(Low, High)) return [Low];
        if (span < 0 || most < 1) return [];
        double step = StepFor(span / most);
        int places = Math.Min(Places(step) + 1, 15);
        List<double> ticks = [];
        for (double k = Math.Ceiling(Low / step - 1e-9); k * step <= High + step * 1e-9; k++) ticks.Add(Math.Round(k * step, places) + 0.0);
        return ticks;
    }

    // The next of 1, 2, 5 times a power of ten.
    private static double StepFor(double least)
    {
        double power = Math.Pow(10, Math.Floor(Math.Log10(least)));
        return power * _steps.First(s => s * power >= least * (1 - 1e-9));
    }

    // What two values may differ by and be the same; between such, counting by steps would not move.
    private static double Rounding(double low, double high) => Math.Max(Math.Abs(low), Math.Abs(high)) * 1e-12;

    private static int Places(double step) => Math.Max(0, (int)Math.Ceiling(-Math.Log10(step) - 1e-9));
}

public readonly record struct ChartTick(double At, string Label);
