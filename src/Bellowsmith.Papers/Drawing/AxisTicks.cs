using System.Globalization;
using Bellowsmith.Kits.Figures;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Ticks of an axis with their words; the power of ten of very large or small numbers stands in the title, not in each.</summary>
internal sealed class AxisTicks
{
    private const double Large = 1e7, Small = 1e-3, Finest = 1e-5;
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹", Group = "\u00a0";

    /// <param name="axis">The axis.</param>
    /// <param name="room">How many ticks have room on it.</param>
    public AxisTicks(ChartAxis axis, float room)
    {
        string unit = axis.Unit;
        if (axis.OwnTicks is { } own) Ticks = [.. own.Where(t => t.At >= Math.Min(axis.Low, axis.High) && t.At <= Math.Max(axis.Low, axis.High))];
        else
        {
            IReadOnlyList<double> round = axis.Ticks(Math.Max(2, (int)room));
            double largest = round.Select(Math.Abs).DefaultIfEmpty(0).Max(), step = round.Count > 1 ? round[1] - round[0] : largest;
            int exponent = largest > 0 && (largest >= Large || largest < Small) && step > largest * Finest ? 3 * (int)Math.Floor(Math.Log10(largest) / 3 + 1e-9) : 0;
            double power = Math.Pow(10, exponent);
            int decimals = Decimals(step / power);
            Ticks = [.. round.Select(t => new ChartTick(t, Number(t / power, decimals)))];
            if (exponent != 0) unit = $"10{(exponent < 0 ? "⁻" : "")}{string.Concat(Math.Abs(exponent).ToString(CultureInfo.InvariantCulture).Select(d => Raised[d - '0']))} {unit}".TrimEnd();
        }

        Title = unit.Length == 0 ? axis.Title : $"{axis.Title}, {unit}";
    }

    public IReadOnlyList<ChartTick> Ticks { get; }

    /// <summary>Title and unit.</summary>
    public string Title { get; }

    // As many as the ticks differ by.
    private static int Decimals(double step)
    {
        if (!(step > 0) || !double.IsFinite(step)) return 0;
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 14);
        return Math.Abs(Math.Round(step, decimals) - step) > 1e-6 * step ? decimals + 1 : decimals;
    }

    private static string Number(double value, int decimals)
    {
        string text = (Math.Round(value, decimals) + 0.0).ToString((Math.Abs(value) >= 1e4 ? "N" : "F") + decimals, CultureInfo.InvariantCulture);
        return text.Replace(",", Group, StringComparison.Ordinal).Replace('-', '−');
    }
}
