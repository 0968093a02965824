using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// Reads a table's cells by a list of column rules. Every cell that cannot stand is a fault; a needed number that is
/// missing or faulty reads as NaN, so that reading goes on and all faults come out together.
/// </summary>
public sealed class ColumnReading
{
    private readonly Table _table;
    private readonly ICollection<Fault> _faults;
    private readonly HeaderMatch _columns;
    private readonly DecimalMarks _marks = new();

    public ColumnReading(Table table, IReadOnlyList<ColumnRule> rules, ICollection<Fault> faults)
    {
        (_table, _faults) = (table, faults);
        _columns = new(table.File, table.Columns, rules, faults);
    }

    public bool Has(string name) => _columns.Find(name) is not null;

    /// <summary>A fault for every one of these columns that the table does not have.</summary>
    public bool Require(params ReadOnlySpan<ColumnRule> rules) => _columns.Require(rules);

    /// <summary>The number in SI; NaN, with a fault, where the cell is empty or cannot stand.</summary>
    public double Needed(Row row, string name)
    {
        if (_columns.Find(name) is not { } found) return double.NaN;
        if (Text(row, name) is not null) return Optional(row, name) ?? double.NaN;
        Report(row, found.Column, "nothing", found.Range(), "Write the value, or take the row out.");
        return double.NaN;
    }

    /// <summary>The number in SI; null where there is no such column, the cell is empty, or (with a fault) it cannot stand.</summary>
    public double? Optional(Row row, string name)
    {
        if (_columns.Find(name) is not { } found || Text(row, name) is not { } text) return null;
        var (column, rule, unit) = found;
        if (!NumberText.TryRead(text, out var number, out var mark))
        {
            Report(row, column, text, "one number with one decimal mark", HeaderMatch.NumberFix(text));
            return null;
        }
        _marks.Note(row.Line, column.Header, text, mark);
        // Without its unit, already reported at the header, a number says nothing that could be checked.
        if (unit is null && rule.Dimension is not null) return null;
        var si = unit?.ToSi(number) ?? number;
        if (si >= rule.Least_SI && si <= rule.Greatest_SI) return si;
        Report(row, column, text, found.Range(), "Check the value, the unit in the header and the decimal mark.");
        return null;
    }

    /// <summary>The cell's text; null where there is no such column or the cell is empty.</summary>
    public string? Text(Row row, string name) =>
        _columns.Find(name) is { } found && row.Cells[found.Column.Index].Text is { Length: > 0 } text ? text : null;

    /// <summary>One of the given words, any case; null where empty or, with a fault, where it is none of them.</summary>
    public TChoice? Choice<TChoice>(Row row, string name, params ReadOnlySpan<(string Word, TChoice Value)> choices)
        where TChoice : struct
    {
        if (Text(row, name) is not { } text) return null;
        foreach (var (word, value) in choices)
            if (string.Equals(word, SingleBlanks(text), StringComparison.OrdinalIgnoreCase)) return value;
        var words = new List<string>();
        foreach (var (word, _) in choices) words.Add(word);
        Report(row, name, text, string.Join(" | ", words), $"Write {Nearest.To(text, words)}, or leave the cell empty.");
        return null;
    }

    /// <summary>Adds a fault at a cell.</summary>
    public void Report(Row row, string name, string found, string allowed, string fix) =>
        Report(row, _columns.Find(name)!.Column, found, allowed, fix);

    /// <summary>Adds the faults only the whole file shows: both decimal marks, or commas that may group thousands.</summary>
    public void CheckDecimalMarks() => _marks.Check(_table.File, _table.Separator, _faults);

    private void Report(Row row, Column column, string found, string allowed, string fix) =>
        _faults.Add(new(_table.File, $"row {row.Line}, column {column.Header}", found, allowed, fix));

    private static string SingleBlanks(string text) => string.Join(' ', text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
}
