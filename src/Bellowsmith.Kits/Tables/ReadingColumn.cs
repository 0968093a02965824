using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A column wanted from a table of readings. A number keeps the file's unit, whatever it is; a quantity is read in SI; a
/// label is text that many rows share, such as a part or a run. An optional column may be missing, or have empty cells.
/// </summary>
public sealed record ReadingColumn(ColumnRule Rule, bool Optional = false)
{
    /// <summary>The range is there to catch a slip of thousands, not to judge the value.</summary>
    public static ReadingColumn Number(string name, double least = -1e12, double greatest = 1e12, bool optional = false) =>
        new(ColumnRule.Bare(name, least, greatest) with { AnyUnit = true }, optional);

    public static ReadingColumn Quantity(string name, Dimension dimension, string least, string greatest, bool optional = false) =>
        new(ColumnRule.Of(name, dimension, least, greatest), optional);

    public static ReadingColumn Label(string name, bool optional = false) => new(ColumnRule.Text(name), optional);
}

/// <summary>A column of labels: <paramref name="Codes"/> point into <paramref name="Names"/>, which stand in order of first appearance; −1 is an empty cell.</summary>
public sealed record LabelColumn(IReadOnlyList<string> Names, int[] Codes);
