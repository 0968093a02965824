using System.Globalization;
using System.Text;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The line of a file that caused a fault, as it stands there; numbers from 1.</summary>
public sealed record FaultLine(int Number, string Text)
{
    private const int Longest = 160;

    /// <summary>Null where the file cannot be read any more or the fault is about no line of it.</summary>
    public static FaultLine? Of(Fault fault)
    {
        if (InputFile.Read(fault.File, out _) is not { } bytes || NumberOf(fault, bytes) is not { } number) return null;
        var lines = Encoding.UTF8.GetString(bytes).Split('\n');
        if (number < 1 || number > lines.Length) return null;
        var text = lines[number - 1].Trim();
        return new(number, text.Length <= Longest ? text : text[..Longest] + "…");
    }

    // "row 12, column …", "line 3, column 7", "header, …", or a field's path.
    private static int? NumberOf(Fault fault, byte[] bytes)
    {
        foreach (var word in new[] { "row ", "line " })
            if (fault.Where.StartsWith(word, StringComparison.Ordinal)) return Leading(fault.Where.AsSpan(word.Length));
        if (fault.Where is "file" or "rows" || !fault.File.EndsWith(".json", StringComparison.OrdinalIgnoreCase)) return null;
        return JsonSource.Parse(bytes, fault.File, [])?.LineOf(fault.Where);
    }

    private static int? Leading(ReadOnlySpan<char> text)
    {
        var end = text.IndexOfAnyExceptInRange('0', '9');
        return int.TryParse(end < 0 ? text : text[..end], CultureInfo.InvariantCulture, out var number) ? number : null;
    }
}
