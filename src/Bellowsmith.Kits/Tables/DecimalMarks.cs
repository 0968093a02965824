namespace Bellowsmith.Kits.Tables;

/// <summary>Holds a whole file to one decimal mark: which was seen where, and whether commas may only group thousands.</summary>
internal sealed class DecimalMarks
{
    private (int Line, string Header, string Text)? _comma, _point;
    private bool _onlyGroupsOfThree = true;

    /// <summary>Takes note of a number's mark; null where it had none.</summary>
    public void Note(int line, string header, string text, char? mark)
    {
        if (mark == ',') _comma ??= (line, header, text);
        if (mark == ',') _onlyGroupsOfThree &= IsGroupOfThree(text);
        if (mark == '.') _point ??= (line, header, text);
    }

    /// <summary>Whether a further point, or a number without a mark, could tell nothing new.</summary>
    public bool IsSettled => _point is not null;

    /// <summary>Adds the faults only the whole file shows: both marks, or commas that may group thousands.</summary>
    public void Check(string file, char separator, ICollection<Fault> faults)
    {
        if (_comma is { } comma && _point is { } point)
        {
            var (later, earlier) = comma.Line > point.Line ? (comma, point) : (point, comma);
            faults.Add(new(file, Place(later), later.Text, $"one decimal mark in the whole file; row {earlier.Line} has {earlier.Text}",
                "Write every number with the same decimal mark and without thousands separators."));
        }
        else if (_comma is { } first && separator == ',' && _onlyGroupsOfThree)
        {
            faults.Add(new(file, Place(first), first.Text, "a comma that is plainly a decimal mark",
                "Separate the columns with semicolons if the comma is a decimal mark; leave it out if it groups thousands."));
        }
    }

    private static string Place((int Line, string Header, string Text) cell) => $"row {cell.Line}, column {cell.Header}";

    private static bool IsGroupOfThree(string text) =>
        text.Length - text.IndexOf(',', StringComparison.Ordinal) == 4 && text.TrimStart('+', '-').Length is >= 5 and <= 7;
}
