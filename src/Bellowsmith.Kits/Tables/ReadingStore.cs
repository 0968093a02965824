using System.Buffers.Text;
using System.Globalization;
using System.Text;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>One column's cells as they come: numbers, or codes of labels.</summary>
internal sealed class ReadingStore(MatchedColumn matched, bool optional, DecimalMarks marks, ICollection<Fault> faults, string file)
{
    private const int LongestNumber = 64;

    private readonly List<double> _numbers = [];
    private readonly List<int> _codes = [];
    private readonly List<string> _names = [];
    private readonly Dictionary<string, int> _codeOf = [];

    public string Name => matched.Rule.Name;

    public MatchedColumn Matched => matched;

    public double[] Numbers() => [.. _numbers];

    public LabelColumn Labels() => new(_names, [.. _codes]);

    /// <summary>Takes a cell without its surrounding blanks, from the bytes of the file.</summary>
    public void Take(int line, ReadOnlySpan<byte> cell)
    {
        if (matched.Rule.IsText) _codes.Add(Code(line, cell));
        else _numbers.Add(Number(line, cell));
    }

    private int Code(int line, ReadOnlySpan<byte> cell)
    {
        if (cell.IsEmpty) return Missing(line, "text", -1);
        Span<char> text = cell.Length <= 256 ? stackalloc char[cell.Length] : new char[cell.Length];
        text = text[..Encoding.UTF8.GetChars(cell, text)].Trim();
        var known = _codeOf.GetAlternateLookup<ReadOnlySpan<char>>();
        if (known.TryGetValue(text, out int code)) return code;
        _names.Add(text.ToString());
        return _codeOf[_names[^1]] = _names.Count - 1;
    }

    private double Number(int line, ReadOnlySpan<byte> cell)
    {
        if (cell.IsEmpty) return Missing(line, matched.Range(), double.NaN);
        if (!IsPlain(cell, out int points) || (points > 0 && !marks.IsSettled) || !Utf8Parser.TryParse(cell, out double value, out int read) || read != cell.Length)
            return Written(line, Encoding.UTF8.GetString(cell).Trim());
        return Within(value, out double number) ? number : Outside(line, Encoding.UTF8.GetString(cell));
    }

    // Any other way of writing a number, and what is none.
    private double Written(int line, string text)
    {
        if (!NumberText.TryRead(text, out double value, out char? mark))
        {
            Report(line, text, "one number with one decimal mark", HeaderMatch.NumberFix(text));
            return double.NaN;
        }

        marks.Note(line, matched.Column.Header, text, mark);
        return Within(value, out double number) ? number : Outside(line, text);
    }

    private bool Within(double value, out double number)
    {
        number = matched.Unit?.ToSi(value) ?? value;
        bool unknown = matched.Unit is null && matched.Rule.Dimension is not null;
        return unknown || (number >= matched.Rule.Least_SI && number <= matched.Rule.Greatest_SI);
    }

    private double Outside(int line, string text)
    {
        Report(line, text, matched.Range(), "Check the value, the unit in the header and the decimal mark.");
        return double.NaN;
    }

    private T Missing<T>(int line, string allowed, T nothing)
    {
        if (!optional) Report(line, "nothing", allowed, "Write the value, or take the row out.");
        return nothing;
    }

    private void Report(int line, string found, string allowed, string fix) =>
        faults.Add(new(file, string.Create(CultureInfo.InvariantCulture, $"row {line}, column {matched.Column.Header}"), found, allowed, fix));

    // Digits, at most one point, a sign before them: what the fast parser and NumberText read alike.
    private static bool IsPlain(ReadOnlySpan<byte> cell, out int points)
    {
        points = 0;
        if (cell.Length > LongestNumber || !char.IsAsciiDigit((char)cell[^1])) return false;
        int start = cell[0] is (byte)'-' or (byte)'+' ? 1 : 0;
        foreach (byte letter in cell[start..])
        {
            if (letter == '.') points++;
            else if (!char.IsAsciiDigit((char)letter)) return false;
        }

        return points <= 1;
    }
}
