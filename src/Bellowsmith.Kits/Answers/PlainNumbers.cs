using System.Globalization;

namespace Bellowsmith.Kits.Answers;

/// <summary>Numbers of readings in words: any unit may stand in a file, so decimals follow the numbers themselves.</summary>
internal static class PlainNumbers
{
    private const int MostDecimals = 12;

    /// <summary>The decimals at which a number of this size has so many digits that count.</summary>
    public static int Decimals(double size, int digits = 3) => size == 0 || !double.IsFinite(size)
        ? 0 : Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(size))), 0, MostDecimals);

    /// <summary>With a true minus sign and no sign before a zero.</summary>
    public static string Fixed(double value, int decimals)
    {
        string text = value.ToString("F" + decimals, CultureInfo.InvariantCulture);
        return text.StartsWith('-') ? text.AsSpan(1).ContainsAnyInRange('1', '9') ? "−" + text[1..] : text[1..] : text;
    }

    /// <summary>So many digits that count, <c>16900</c> or <c>0.0204</c>.</summary>
    public static string Rounded(double value, int digits = 3)
    {
        if (value == 0 || !double.IsFinite(value)) return Fixed(0, 0);
        double last = Math.Pow(10, Math.Floor(Math.Log10(Math.Abs(value))) - digits + 1);
        return last > 1 ? Fixed(Math.Round(value / last) * last, 0) : Fixed(value, Decimals(value, digits));
    }

    /// <summary>The same without zeros at the end, for numbers a person chose: <c>95</c>, <c>0.5</c>.</summary>
    public static string Chosen(double value, int digits = 4)
    {
        string text = Rounded(value, digits);
        return text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text;
    }

    /// <summary>An index, two decimals.</summary>
    public static string Index(double value) => Fixed(value, 2);

    /// <summary>A share in per cent, or in a million where it is small.</summary>
    public static string Share(double share) => share switch
    {
        < 1e-9 => "less than 0.001 in a million",
        < 1e-3 => $"{Rounded(share * 1e6, 2)} in a million",
        _ => $"{Chosen(share * 100, 2)} %",
    };

    /// <summary>The unit after a blank; nothing where there is none.</summary>
    public static string Unit(string? unit) => unit is null ? "" : " " + unit;
}
