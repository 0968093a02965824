using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// What a column may hold. The range is wide: it is there to catch a slip of ten or a thousand (mm for cm, a thousands
/// separator taken for a decimal mark), not to judge the value. Without a dimension the column is a bare number,
/// without a range it is text.
/// </summary>
public sealed record ColumnRule(string Name, Dimension? Dimension, double Least_SI, double Greatest_SI, string ExampleHeader)
{
    /// <summary>A quantity; least and greatest are written with their unit, the least's unit being the example's.</summary>
    public static ColumnRule Of(string name, Dimension dimension, string least, string greatest)
    {
        var (low, high) = (Quantity.Read(least, dimension, out _)!.Value, Quantity.Read(greatest, dimension, out _)!.Value);
        return new(name, dimension, low.Si, high.Si, $"{name} [{low.Unit.Name}]");
    }

    public static ColumnRule Bare(string name, double least, double greatest) => new(name, null, least, greatest, name);

    public static ColumnRule Text(string name) => new(name, null, double.NaN, double.NaN, name);

    /// <summary>Whether a bare number may carry any unit in its header, which is then kept as written.</summary>
    public bool AnyUnit { get; init; }

    public bool IsText => double.IsNaN(Least_SI);
}
