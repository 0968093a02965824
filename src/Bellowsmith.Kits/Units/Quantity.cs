namespace Bellowsmith.Kits.Units;

/// <summary>A number with its unit, as written and in SI.</summary>
/// <param name="Si">The value in the SI unit of its dimension (temperatures in K, angles in rad).</param>
/// <param name="Dimension">Which of the dimensions asked for it is.</param>
/// <param name="Unit">The unit it was written in.</param>
/// <param name="DecimalMark">Comma or point; null where the number has none.</param>
/// <param name="Written">The text it was read from.</param>
public readonly record struct Quantity(double Si, Dimension Dimension, Unit Unit, char? DecimalMark, string Written)
{
    /// <summary>
    /// Reads <c>24 bar</c>, <c>1,5 mm</c>, <c>1.2e5 N</c>: one decimal mark, no thousands separator, blank optional.
    /// Null, with the reason, where the text is not a finite quantity of one of the dimensions.
    /// </summary>
    public static Quantity? Read(string text, ReadOnlySpan<Dimension> dimensions, out Misreading? misreading)
    {
        var trimmed = text.AsSpan().Trim();
        var length = NumberText.Read(trimmed, out var number, out var mark);
        var spelling = trimmed[length..].Trim().ToString();
        misreading = length == 0 ? Misreading.NoNumber
            : spelling.Length == 0 ? Misreading.NoUnit
            : spelling[0] is >= '0' and <= '9' or '.' or ',' or '\'' or '’' or '_' ? Misreading.Grouped
            : null;
        if (misreading is not null) return null;
        foreach (var dimension in dimensions)
        {
            if (UnitTable.Find(dimension, spelling) is not { } unit) continue;
            if (double.IsFinite(unit.ToSi(number))) return new(unit.ToSi(number), dimension, unit, mark, text);
            misreading = Misreading.NoNumber;
            return null;
        }
        misreading = UnitTable.Knows(spelling) ? Misreading.OtherDimension : Misreading.UnknownUnit;
        return null;
    }

    /// <inheritdoc cref="Read(string, ReadOnlySpan{Dimension}, out Misreading?)"/>
    public static Quantity? Read(string text, Dimension dimension, out Misreading? misreading) =>
        Read(text, [dimension], out misreading);
}

/// <summary>Why a text is not the quantity asked for.</summary>
public enum Misreading { NoNumber, NoUnit, Grouped, UnknownUnit, OtherDimension }
