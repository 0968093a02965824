using System.Globalization;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>A column that is wanted and there; the unit is null where the rule has none or, with a fault, it is not known.</summary>
internal sealed record MatchedColumn(Column Column, ColumnRule Rule, Unit? Unit)
{
    /// <summary>What may stand in a cell, in words.</summary>
    public string Range() => Unit is null
        ? string.Create(CultureInfo.InvariantCulture, $"a number from {Rule.Least_SI} to {Rule.Greatest_SI}")
        : $"{Unit.Write(Rule.Least_SI)} to {Unit.Write(Rule.Greatest_SI)}";
}

/// <summary>Finds the wanted columns in a header; likely slips, doubles and wrong units are faults, other columns are free.</summary>
internal sealed class HeaderMatch
{
    private readonly string _file;
    private readonly IReadOnlyList<Column> _header;
    private readonly ICollection<Fault> _faults;
    private readonly Dictionary<string, MatchedColumn> _columns = [];

    public HeaderMatch(string file, IReadOnlyList<Column> header, IReadOnlyList<ColumnRule> rules, ICollection<Fault> faults)
    {
        (_file, _header, _faults) = (file, header, faults);
        foreach (var column in header) Match(column, rules);
    }

    public MatchedColumn? Find(string name) => _columns.GetValueOrDefault(name);

    /// <summary>A fault for every one of these columns that the header does not have.</summary>
    public bool Require(params ReadOnlySpan<ColumnRule> rules)
    {
        var complete = true;
        foreach (var rule in rules)
        {
            if (_columns.ContainsKey(rule.Name)) continue;
            complete = false;
            if (_header.Any(column => Nearest.IsSlip(column.Name, rule.Name))) continue;
            _faults.Add(new(_file, "header", string.Join(", ", _header.Select(column => column.Header)),
                $"a column {rule.Name}", $"Add the column \"{rule.ExampleHeader}\"."));
        }
        return complete;
    }

    /// <summary>How to mend a cell that is no number.</summary>
    public static string NumberFix(string text) => text.Any(char.IsLetter)
        ? "Write the number alone; the unit stands in the header."
        : "Write one decimal mark, comma or point, and no thousands separator.";

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
            _columns[rule.Name] = new(column, rule, UnitOf(column, rule));
        }
    }

    private Unit? UnitOf(Column column, ColumnRule rule)
    {
        if (rule.Dimension is not { } dimension)
        {
            if (column.UnitSpelling is not null && !rule.AnyUnit) AtHeader(column, "no unit", $"Write the header \"{rule.Name}\".");
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

    private void AtHeader(Column column, string allowed, string fix) =>
        _faults.Add(new(_file, $"header, column {column.Header}", column.Header, allowed, fix));
}
