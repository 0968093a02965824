using System.Text;
using System.Text.Json;

namespace Bellowsmith.Kits.Schemas;

/// <summary>A JSON file as it stands, comments and order included: what it says, and which bytes say it.</summary>
public sealed class JsonSource
{
    private const int LongestExcerpt = 60;

    private readonly byte[] _bytes;

    private JsonSource(string fullPath, string file, byte[] bytes, Node root) =>
        (FullPath, File, _bytes, Root) = (fullPath, file, bytes, root);

    public string FullPath { get; }

    /// <summary>The file's path as the caller would write it.</summary>
    public string File { get; }

    public Node Root { get; }

    /// <summary>Reads a file's bytes; null, with a fault that names line and column, where they are not JSON.</summary>
    public static JsonSource? Parse(byte[] bytes, string fullPath, ICollection<Fault> faults)
    {
        var file = InputFile.Readable(fullPath);
        if (InputFile.TextStart(bytes, file, faults) is not { } start) return null;
        var options = new JsonReaderOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
        try
        {
            var reader = new Utf8JsonReader(bytes.AsSpan(start), options);
            reader.Read();
            var root = ReadNode(ref reader, start);
            while (reader.Read()) { }
            return new(fullPath, file, bytes, root);
        }
        catch (JsonException exception)
        {
            var (line, column) = ((int)(exception.LineNumber ?? 0), (int)(exception.BytePositionInLine ?? 0));
            faults.Add(new(file, $"line {line + 1}, column {column + 1}", Rest(bytes.AsSpan(start), line, column),
                "JSON with // comments and trailing commas", "Check the commas, quotes and brackets just before it."));
        }
        catch (InvalidOperationException)
        {
            faults.Add(new(file, "file", "half of a \\u surrogate pair", "complete characters", "Write the character itself instead of \\u escapes."));
        }
        return null;
    }

    /// <summary>A value as written, shortened where it is long.</summary>
    public string Excerpt(Node node)
    {
        var text = Encoding.UTF8.GetString(_bytes, node.Start, node.Length).ReplaceLineEndings(" ");
        return text.Length <= LongestExcerpt ? text : text[..LongestExcerpt] + "…";
    }

    /// <summary>
    /// The file's bytes with the value at a place (<c>struts.front.thread.pitch</c>, <c>heightRange[0]</c>) replaced by
    /// the given JSON; every other byte stays.
    /// </summary>
    /// <exception cref="ArgumentException">The file has no value at that place.</exception>
    public byte[] WithValue(string path, string json) => Find(Root, path) is { } node
        ? JsonEdit.Replace(_bytes, node.Start, node.Length, json)
        : throw new ArgumentException($"{File} has no value at {path}.", nameof(path));

    /// <summary>As <see cref="WithValue"/>; a key its object does not have yet is added behind the others, indented as they are.</summary>
    /// <exception cref="ArgumentException">The file has no object to add the key to.</exception>
    public byte[] WithKey(string path, string json)
    {
        if (Has(path)) return WithValue(path, json);
        var (parent, name) = Parted(path);
        return parent is { Kind: NodeKind.Map }
            ? JsonEdit.Add(_bytes, parent, name, json)
            : throw new ArgumentException($"{File} has no object to hold {path}.", nameof(path));
    }

    /// <summary>The file's bytes without the key at a place, its comma and the line it had to itself.</summary>
    /// <exception cref="ArgumentException">The file has no such key.</exception>
    public byte[] WithoutValue(string path)
    {
        var (parent, name) = Parted(path);
        return parent?.Members.Where(m => m.Name == name).Cast<Member?>().FirstOrDefault() is { } member
            ? JsonEdit.Remove(_bytes, member)
            : throw new ArgumentException($"{File} has no value at {path}.", nameof(path));
    }

    public bool Has(string path) => Find(Root, path) is not null;

    /// <summary>The decimal mark the document's texts are written with; a point where none has one.</summary>
    public char DecimalMark() => Marks(Root).FirstOrDefault('.');

    /// <summary>The line, from 1, on which the value at a place stands, else the nearest object around it.</summary>
    public int LineOf(string path)
    {
        for (; ; path = path[..Math.Max(0, path.LastIndexOfAny(['.', '[']))])
            if (Find(Root, path) is { } node) return _bytes.AsSpan(0, node.Start).Count((byte)'\n') + 1;
    }

    // The object a key stands in, and the key.
    private (Node? Parent, string Name) Parted(string path)
    {
        var dot = path.LastIndexOf('.');
        return (Find(Root, dot < 0 ? "" : path[..dot]), path[(dot + 1)..]);
    }

    private static IEnumerable<char> Marks(Node node)
    {
        if (node.Kind == NodeKind.Text && Units.NumberText.Read(node.Text.AsSpan().TrimStart(), out _, out var mark) > 0 && mark is { } found)
            yield return found;
        foreach (var below in node.Members.Select(m => m.Value).Concat(node.Items).SelectMany(Marks)) yield return below;
    }

    private static Node? Find(Node node, string path)
    {
        if (path.Length == 0) return node;
        for (var i = 0; i < node.Items.Count; i++)
            if (Below(path, $"[{i}]") is { } rest && Find(node.Items[i], rest) is { } found) return found;
        foreach (var member in node.Members)
            if (Below(path, member.Name) is { } rest && Find(member.Value, rest) is { } found) return found;
        return null;
    }

    private static string? Below(string path, string step)
    {
        if (!path.StartsWith(step, StringComparison.Ordinal)) return null;
        var rest = path[step.Length..];
        return rest.Length == 0 || rest[0] == '[' ? rest : rest[0] == '.' ? rest[1..] : null;
    }

    private static Node ReadNode(ref Utf8JsonReader reader, int offset)
    {
        var node = new Node(KindOf(reader.TokenType), offset + (int)reader.TokenStartIndex);
        if (node.Kind == NodeKind.Text) node.Text = reader.GetString()!;
        if (node.Kind == NodeKind.Number) node.Number = reader.TryGetDouble(out var number) ? number : double.PositiveInfinity;
        while (node.Kind == NodeKind.List && Advance(ref reader, JsonTokenType.EndArray))
            node.Items.Add(ReadNode(ref reader, offset));
        while (node.Kind == NodeKind.Map && Advance(ref reader, JsonTokenType.EndObject))
        {
            var (name, start) = (reader.GetString()!, offset + (int)reader.TokenStartIndex);
            reader.Read();
            node.Members.Add(new(name, ReadNode(ref reader, offset), start));
        }
        node.Length = offset + (int)reader.BytesConsumed - node.Start;
        return node;
    }

    private static bool Advance(ref Utf8JsonReader reader, JsonTokenType end) => reader.Read() && reader.TokenType != end;

    private static NodeKind KindOf(JsonTokenType token) => token switch
    {
        JsonTokenType.StartObject => NodeKind.Map,
        JsonTokenType.StartArray => NodeKind.List,
        JsonTokenType.String => NodeKind.Text,
        JsonTokenType.Number => NodeKind.Number,
        _ => NodeKind.Other,
    };

    /// <summary>What stands from a column (in bytes, from 0) to the end of its line.</summary>
    private static string Rest(ReadOnlySpan<byte> text, int line, int column)
    {
        for (; line > 0; line--) text = text[(text.IndexOf((byte)'\n') + 1)..];
        text = text[Math.Min(column, text.Length)..];
        var end = text.IndexOfAny((byte)'\n', (byte)'\r');
        var rest = Encoding.UTF8.GetString(end < 0 ? text : text[..end]).Trim();
        return rest.Length == 0 ? "the end of the line" : rest.Length <= LongestExcerpt ? rest : rest[..LongestExcerpt] + "…";
    }
}
