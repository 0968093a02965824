using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// Rules of ground clearance by market: columns market, rule, clearance, state (drive | aired out), source, read (the day it was read), and
/// optionally over (road | rim) and parts (fixed | flexible). A shop keeps its own copy; none is asserted as law.
/// </summary>
public static class GroundRuleTable
{
    private const string Shipped = "ground-rules.csv";

    private static readonly ColumnRule
        _market = ColumnRule.Text("market"), _rule = ColumnRule.Text("rule"), _clearance = ColumnRule.Of("clearance", Dimension.Length, "-300 mm", "500 mm"),
        _over = ColumnRule.Text("over"), _state = ColumnRule.Text("state"), _parts = ColumnRule.Text("parts"), _source = ColumnRule.Text("source"), _read = ColumnRule.Text("read");

    /// <summary>As read for this program on the day beside each.</summary>
    public static IReadOnlyList<GroundRule> Usual { get; } = Embedded();

    /// <exception cref="FaultsException">Every fault of the file.</exception>
    public static IReadOnlyList<GroundRule> Read(string path)
    {
        List<Fault> faults = [];
        byte[]? bytes = InputFile.Read(Path.GetFullPath(path), out string trouble);
        if (bytes is null) faults.Add(new(path, "file", $"a path that {trouble}", "a CSV file", "Check the path."));
        IReadOnlyList<GroundRule>? rules = bytes is not null && Table.Parse(bytes, path, faults) is { } table ? Rules(table, faults) : null;
        return faults.Count == 0 ? rules! : throw new FaultsException(faults);
    }

    private static GroundRule[] Embedded()
    {
        using Stream stream = typeof(GroundRuleTable).Assembly.GetManifestResourceStream(Shipped)!;
        using MemoryStream bytes = new();
        stream.CopyTo(bytes);
        List<Fault> faults = [];
        return Table.Parse(bytes.ToArray(), Shipped, faults) is { } table ? Rules(table, faults) : throw new System.Diagnostics.UnreachableException();
    }

    private static GroundRule[] Rules(Table table, List<Fault> faults)
    {
        ColumnReading reading = new(table, [_market, _rule, _clearance, _over, _state, _parts, _source, _read], faults);
        reading.Require(_market, _rule, _clearance, _state, _source, _read);
        GroundRule[] rules = [.. table.Rows.Select(row => Rule(reading, row))];
        reading.CheckDecimalMarks();
        if (rules.Length == 0) faults.Add(new(table.File, "rows", "no rows", "at least one rule", "Write the rules below the header."));
        return rules;
    }

    private static GroundRule Rule(ColumnReading reading, Row row)
    {
        GroundState state = reading.Choice(row, "state", ("drive", GroundState.Drive), ("aired out", GroundState.AiredOut)) ?? GroundState.Drive;
        GroundDatum over = reading.Choice(row, "over", ("road", GroundDatum.Road), ("rim", GroundDatum.Rim)) ?? GroundDatum.Road;
        bool flexible = reading.Choice(row, "parts", ("fixed", false), ("flexible", true)) ?? false;
        return new(Words("market"), Words("rule"), reading.Needed(row, "clearance"), over, state, Words("source"), Words("read")) { Flexible = flexible };

        string Words(string name)
        {
            if (reading.Text(row, name) is { } text) return text;
            if (reading.Has(name)) reading.Report(row, name, "nothing", "words", "Say who wrote the rule, where it stands and when it was read.");
            return "";
        }
    }
}
