using System.Globalization;

namespace Bellowsmith.Kits.Units;

/// <summary>
/// Numbers as people write them: sign, digits, at most one decimal mark (comma or point), exponent. No thousands
/// separator of any kind, so a second mark or a gap between digits ends the number and shows up as what follows it.
/// </summary>
internal static class NumberText
{
    /// <summary>Reads the number at the start of the text; the length read is 0 where none stands there.</summary>
    public static int Read(ReadOnlySpan<char> text, out double value, out char? mark)
    {
        value = double.NaN;
        var length = Match(text, out mark);
        if (length == 0) return 0;
        Span<char> plain = length <= 128 ? stackalloc char[length] : new char[length];
        text[..length].Replace(plain, ',', '.');
        plain.Replace('−', '-');
        value = double.Parse(plain, NumberStyles.Float, CultureInfo.InvariantCulture);
        return length;
    }

    /// <summary>Whether the whole text is one finite number.</summary>
    public static bool TryRead(ReadOnlySpan<char> text, out double value, out char? mark) =>
        Read(text, out value, out mark) is var length && length > 0 && length == text.Length && double.IsFinite(value);

    private static int Match(ReadOnlySpan<char> text, out char? mark)
    {
        mark = null;
        var sign = text.Length > 0 && text[0] is '+' or '-' or '−' ? 1 : 0;
        var whole = Digits(text, sign);
        var end = sign + whole;
        if (end < text.Length && text[end] is '.' or ',' && Digits(text, end + 1) is > 0 and var fraction)
        {
            mark = text[end];
            end += 1 + fraction;
        }
        return end == sign ? 0 : end + Exponent(text[end..]);
    }

    private static int Exponent(ReadOnlySpan<char> text)
    {
        if (text.Length < 2 || text[0] is not ('e' or 'E')) return 0;
        var start = text[1] is '+' or '-' or '−' ? 2 : 1;
        return Digits(text, start) is > 0 and var digits ? start + digits : 0;
    }

    private static int Digits(ReadOnlySpan<char> text, int start)
    {
        var end = start;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        return end - start;
    }
}
