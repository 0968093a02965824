using System.Text.RegularExpressions;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// Labels in an order of their own, so that the order of a file's rows changes no last digit of an answer: digits in them
/// count as numbers, R2 before R10.
/// </summary>
internal static partial class LabelOrder
{
    private const int Widest = 24;

    /// <summary>The names in order, and the column's codes into them.</summary>
    public static LabelColumn Sorted(LabelColumn labels)
    {
        string[] keys = [.. labels.Names.Select(name => Digits().Replace(name, digits => digits.Value.PadLeft(Widest, '0')))];
        int[] order = [.. Enumerable.Range(0, keys.Length)
            .OrderBy(i => keys[i], StringComparer.Ordinal).ThenBy(i => labels.Names[i], StringComparer.Ordinal)];
        int[] place = new int[order.Length];
        for (int k = 0; k < order.Length; k++) place[order[k]] = k;
        return new([.. order.Select(i => labels.Names[i])], [.. labels.Codes.Select(code => code < 0 ? code : place[code])]);
    }

    [GeneratedRegex("[0-9]+")]
    private static partial Regex Digits();
}
