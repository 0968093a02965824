using System.Globalization;

namespace Bellowsmith.Kits.Units;

/// <summary>
/// A unit as documents spell it: SI value = number · numerator / denominator + offset. Two whole numbers, because
/// dividing by 1000 rounds once where multiplying by 0.001 rounds twice: "80 mm" is 0.08 m and comes back as 80 mm.
/// </summary>
public sealed record Unit(string Name, double Numerator = 1, double Denominator = 1, double Offset = 0)
{
    public double ToSi(double number) => number * Numerator / Denominator + Offset;

    public double FromSi(double si) => (si - Offset) * Denominator / Numerator;

    /// <summary>The SI value in this unit, <c>24.13 bar</c>: decimal point, trailing zeros dropped, whole digits kept.</summary>
    public string Write(double si, int significantDigits = 4)
    {
        var number = FromSi(si);
        var magnitude = number == 0 ? 0 : (int)Math.Floor(Math.Log10(Math.Abs(number)));
        var rounded = Math.Round(number, Math.Clamp(significantDigits - 1 - magnitude, 0, 15));
        return rounded.ToString("0.###############", CultureInfo.InvariantCulture) + " " + Name;
    }
}
