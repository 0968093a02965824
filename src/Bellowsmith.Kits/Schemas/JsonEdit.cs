using System.Text;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Changes to a JSON file that leave every byte they do not mean as it stands.</summary>
internal static class JsonEdit
{
    public static byte[] Replace(byte[] bytes, int start, int length, string text) =>
        [.. bytes.AsSpan(0, start), .. Encoding.UTF8.GetBytes(text), .. bytes.AsSpan(start + length)];

    /// <summary>A key behind the last one of an object: on a line of its own where the others have theirs.</summary>
    public static byte[] Add(byte[] bytes, Node map, string name, string json)
    {
        var entry = $"\"{name}\": {json}";
        if (map.Members.Count == 0) return Replace(bytes, map.Start, map.Length, $"{{ {entry} }}");
        var last = map.Members[^1];
        int end = last.Value.Start + last.Value.Length, comma = Past(bytes, end, ' ', '\t');
        var hasComma = comma < bytes.Length && bytes[comma] == ',';
        if (Indent(bytes, last.Start) is not { } indent) return Replace(bytes, end, 0, $", {entry}");
        // Behind a remark on the last key's line, so that the remark stays with its key.
        var rest = Past(bytes, hasComma ? comma + 1 : end, ' ', '\t');
        var behind = IsRemark(bytes, rest) ? LineEnd(bytes, rest) : hasComma ? comma + 1 : end;
        var added = Replace(bytes, behind, 0, $"{indent}{entry}{(hasComma ? "," : "")}");
        return hasComma ? added : Replace(added, end, 0, ",");
    }

    public static byte[] Remove(byte[] bytes, Member member)
    {
        int start = member.Start, end = member.Value.Start + member.Value.Length, comma = Past(bytes, end, ' ', '\t');
        if (comma < bytes.Length && bytes[comma] == ',') end = comma + 1;
        else if (CommaBefore(bytes, start) is { } before) return Replace(Line(bytes, start, end), before, 1, "");
        return Line(bytes, start, end);
    }

    // Takes the whole line where nothing else stands on it.
    private static byte[] Line(byte[] bytes, int start, int end)
    {
        var (from, to) = (start, Past(bytes, end, ' ', '\t', '\r'));
        while (from > 0 && bytes[from - 1] is (byte)' ' or (byte)'\t') from--;
        var alone = (from == 0 || bytes[from - 1] == '\n') && to < bytes.Length && bytes[to] == '\n';
        return alone ? Replace(bytes, from, to + 1 - from, "") : Replace(bytes, start, end - start, "");
    }

    private static int? CommaBefore(byte[] bytes, int start)
    {
        var at = start - 1;
        while (at >= 0 && bytes[at] is (byte)' ' or (byte)'\t' or (byte)'\r' or (byte)'\n') at--;
        return at >= 0 && bytes[at] == ',' ? at : null;
    }

    // The line break and blanks before a key that begins its line; null where it does not.
    private static string? Indent(byte[] bytes, int start)
    {
        var at = start;
        while (at > 0 && bytes[at - 1] is (byte)' ' or (byte)'\t') at--;
        if (at == 0 || bytes[at - 1] != '\n') return null;
        var from = at > 1 && bytes[at - 2] == '\r' ? at - 2 : at - 1;
        return Encoding.UTF8.GetString(bytes, from, start - from);
    }

    private static bool IsRemark(byte[] bytes, int at) => at + 1 < bytes.Length && bytes[at] == '/' && bytes[at + 1] == '/';

    private static int LineEnd(byte[] bytes, int at)
    {
        while (at < bytes.Length && bytes[at] is not ((byte)'\n' or (byte)'\r')) at++;
        return at;
    }

    private static int Past(byte[] bytes, int at, params ReadOnlySpan<char> blanks)
    {
        while (at < bytes.Length && blanks.Contains((char)bytes[at])) at++;
        return at;
    }
}
