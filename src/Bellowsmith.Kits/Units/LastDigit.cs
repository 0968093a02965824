using System.Globalization;

namespace Bellowsmith.Kits.Units;

/// <summary>What a written quantity says of its own fineness: one unit of its last written digit.</summary>
public static class LastDigit
{
    /// <summary>
    /// One unit of the last written digit, SI: 0.01 L of <c>1.25 L</c>, 1 psi of <c>150 psi</c>, 100 N of <c>1.2e3 N</c>. Zeros before a
    /// missing decimal mark count as read, for nothing says they are not.
    /// </summary>
    public static double Of(Quantity quantity)
    {
        string text = quantity.Written.Trim();
        string number = text[..NumberText.Read(text, out _, out _)].Replace('−', '-').ToLowerInvariant();
        int exponent = number.IndexOf('e', StringComparison.Ordinal), mark = number.IndexOfAny(['.', ',']);
        int power = exponent < 0 ? 0 : int.Parse(number.AsSpan(exponent + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        int decimals = mark < 0 ? 0 : (exponent < 0 ? number.Length : exponent) - mark - 1;
        // As a parsed decimal, so that 0.01 is the nearest double to 0.01.
        double step = double.Parse(string.Create(CultureInfo.InvariantCulture, $"1e{power - decimals}"), CultureInfo.InvariantCulture);
        return step * quantity.Unit.Numerator / quantity.Unit.Denominator;
    }
}
