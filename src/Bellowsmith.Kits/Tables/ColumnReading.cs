using System.Globalization;
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
    private readonly Dictionary<string, (Column Column, ColumnRule Rule, Unit? Unit)> _columns = [];
    private (Row Row, Column Column, string Text)? _comma, _point;
    private bool _onlyGroupsOfThree = true;

    public ColumnReading(Table table, IReadOnlyList<ColumnRule> rules, ICollection<Fault> faults)
    {
        (_table, _faults) = (table, faults);
        foreach (var column in table.Columns) Match(column, rules);
    }

    public bool Has(string name) => _columns.ContainsKey(name);

    /// <summary>A fault for every one of these columns that the table does not have.</summary>
    public bool Require(params ReadOnlySpan<ColumnRule> rules)
    {
        var complete = true;
        foreach (var rule in rules)
        {
            if (Has(rule.Name)) continue;
            complete = false;
            if (_table.Columns.Any(column => Nearest.IsSlip(column.Name, rule.Name))) continue;
            _faults.Add(new(_table.File, "header", string.Join(", ", _table.Columns.Select(column => column.Header)),
                $"a column {rule.Name}", $"Add the column \"{rule.ExampleHeader}\"."));
        }
        return complete;
    }

    /// <summary>The number in SI; NaN, with a fault, where the cell is empty or cannot stand.</summary>
    public double Needed(Row row, string name)
    {
        if (!_columns.TryGetValue(name, out var found)) return double.NaN;
        if (Text(row, name) is not null) return Optional(row, name) ?? double.NaN;
        Report(row, found.Column, "nothing", Range(found.Rule, found.Unit), "Write the value, or take the row out.");
        return double.NaN;
    }

    /// <summary>The number in SI; null where there is no such column, the cell is empty, or (with a fault) it cannot stand.</summary>
    public double? Optional(Row row, string name)
    {
        if (!_columns.TryGetValue(name, out var found) || Text(row, name) is not { } text) return null;
        var (column, rule, unit) = found;
        if (!NumberText.TryRead(text, out var number, out var mark))
        {
            Report(row, column, text, "one number with one decimal mark", NumberFix(text));
            return null;
        }
        Note(row, column, text, mark);
        // Without its unit, already reported at the header, a number says nothing that could be checked.
        if (unit is null && rule.Dimension is not null) return null;
        var si = unit?.ToSi(number) ?? number;
        if (si >= rule.Least_SI && si <= rule.Greatest_SI) return si;
        Report(row, column, text, Range(rule, unit), "Check the value, the unit in the header and the decimal mark.");
        return null;
    }

    /// <summary>The cell's text; null where there is no such column or the cell is empty.</summary>
    public string? Text(Row row, string name) =>
        _columns.TryGetValue(name, out var found) && row.Cells[found.Column.Index].Text is { Length: > 0 } text ? text : null;

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
        Report(row, _columns[name].Column, found, allowed, fix);

    /// <summary>Adds the faults only the whole file shows: both decimal marks, or commas that may group thousands.</summary>
    public void CheckDecimalMarks()
    {
        if (_comma is { } comma && _point is { } point)
        {
            var (later, earlier) = comma.Row.Line > point.Row.Line ? (comma, point) : (point, comma);
            Report(later.Row, later.Column, later.Text, $"one decimal mark in the whole file; row {earlier.Row.Line} has {earlier.Text}",
                "Write every number with the same decimal mark and without thousands separators.");
        }
        else if (_comma is { } first && _table.Separator == ',' && _onlyGroupsOfThree)
        {
            Report(first.Row, first.Column, first.Text, "a comma that is plainly a decimal mark",
                "Separate the columns with semicolons if the comma is a decimal mark; leave it out if it groups thousands.");
        }
    }

    private void Match(Column column, IReadOnlyList<ColumnRule> rules)
    {
        if (rules.FirstOrDefault(rule => rule.Name == column.Name) is not { } rule)
        {
            if (column.Name is not ("note" or "notes") && rules.FirstOrDefault(rule => Nearest.IsSlip(column.Name, rule.Name)) is { } near)
                AtHeader(column, $"a known column, or one that does not look like one", $"Did you mean \"{near.Name}\"? If not, name the column otherwise.");
        }
        else if (_columns.ContainsKey(rule.Name))
        {
            AtHeader(column, $"one column {rule.Name}", "Take one of the two out or rename it.");
        }
        else
        {
            _columns[rule.Name] = (column, rule, UnitOf(column, rule));
        }
    }

    private Unit? UnitOf(Column column, ColumnRule rule)
    {
        if (rule.Dimension is not { } dimension)
        {
            if (column.UnitSpelling is not null) AtHeader(column, "no unit", $"Write the header \"{rule.Name}\".");
            return null;
        }
        var unit = column.UnitSpelling is { } spelling ? UnitTable.Find(dimension, spelling) : null;
        if (unit is null)
        {
            var names = string.Join(", ", UnitTable.Of(dimension).Select(known => known.Name));
            AtHeader(column, $"{dimension.Words()} in {names}", $"Write the unit in square brackets, \"{rule.ExampleHeader}\".");
        }
        return unit;
    }

    private void Note(Row row, Column column, string text, char? mark)
    {
        if (mark == ',') _comma ??= (row, column, text);
        if (mark == ',') _onlyGroupsOfThree &= IsGroupOfThree(text);
        if (mark == '.') _point ??= (row, column, text);
    }

    private void Report(Row row, Column column, string found, string allowed, string fix) =>
        _faults.Add(new(_table.File, $"row {row.Line}, column {column.Header}", found, allowed, fix));

    private void AtHeader(Column column, string allowed, string fix) =>
        _faults.Add(new(_table.File, $"header, column {column.Header}", column.Header, allowed, fix));

    private static string Range(ColumnRule rule, Unit? unit) => unit is null
        ? string.Create(CultureInfo.InvariantCulture, $"a number from {rule.Least_SI} to {rule.Greatest_SI}")
        : $"{unit.Write(rule.Least_SI)} to {unit.Write(rule.Greatest_SI)}";

    private static string NumberFix(string text) => text.Any(char.IsLetter)
        ? "Write the number alone; the unit stands in the header."
        : "Write one decimal mark, comma or point, and no thousands separator.";

    private static bool IsGroupOfThree(string text) =>
        text.Length - text.IndexOf(',', StringComparison.Ordinal) == 4 && text.TrimStart('+', '-').Length is >= 5 and <= 7;

    private static string SingleBlanks(string text) => string.Join(' ', text.Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
}
