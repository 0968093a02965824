namespace Bellowsmith.Kits.Units;

/// <summary>
/// A limit or target as a person gives it for a file of readings: a bare number is in the file's unit, a number with a unit
/// is converted to it. Any unit may stand in a file, so one that is not in <see cref="UnitTable"/> must be spelled the same.
/// </summary>
/// <param name="Number">As written.</param>
/// <param name="Unit">The unit as written; null where there is none.</param>
/// <param name="Text">The whole text.</param>
public readonly record struct WrittenValue(double Number, string? Unit, string Text)
{
    /// <summary>Reads <c>12.4</c>, <c>12,4 mm</c>; null where the text does not begin with one finite number.</summary>
    public static WrittenValue? Read(string text)
    {
        ReadOnlySpan<char> trimmed = text.AsSpan().Trim();
        int length = NumberText.Read(trimmed, out double number, out _);
        ReadOnlySpan<char> unit = trimmed[length..].Trim();
        bool grouped = unit is [(>= '0' and <= '9') or '.' or ',' or '\'' or '’' or '_', ..];
        if (length == 0 || grouped || !double.IsFinite(number)) return null;
        return new(number, unit.IsEmpty ? null : unit.ToString(), text);
    }

    /// <summary>The number in a file's unit.</summary>
    /// <param name="fileUnit">The unit in the header; null where it has none.</param>
    /// <param name="file">The file, to say so in a fault.</param>
    /// <param name="option">The option it was given with, to say so in a fault.</param>
    /// <exception cref="FaultsException">The unit cannot be converted to the file's.</exception>
    public double In(string? fileUnit, string file, string option)
    {
        if (Unit is null || Unit == fileUnit) return Number;
        foreach (Dimension dimension in Enum.GetValues<Dimension>())
        {
            if (fileUnit is null || UnitTable.Find(dimension, fileUnit) is not { } wanted) continue;
            if (UnitTable.Find(dimension, Unit) is { } written) return written == wanted ? Number : wanted.FromSi(written.ToSi(Number));
        }

        throw new FaultsException([new(file, option, Text,
            fileUnit is null ? "a number without a unit, as the file's header has none" : $"a number, or a quantity that can be told in {fileUnit}",
            fileUnit is null ? "Leave the unit out, or write it into the header in square brackets." : $"Write it in {fileUnit}.")]);
    }
}
