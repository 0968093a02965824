using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Schemas;

/// <summary>
/// One value of a document being read, and where it stands. After its shape has checked it the typed readers take
/// what they need by name; what was faulty or missing reads as null, NaN or "", and the reading then ends in faults.
/// </summary>
internal sealed class Place(Reading reading, JsonSource source, Node node, string path, string name)
{
    public Node Node => node;

    public string Name => name;

    public string File => source.File;

    public Place? Member(string key)
    {
        foreach (var member in node.Members)
            if (member.Name == key) return At(member);
        return null;
    }

    public IEnumerable<Place> Members() => node.Members.Select(At);

    /// <summary>The members a person named, without the free ones.</summary>
    public List<Place> Named() => [.. Members().Where(member => !ObjectShape.IsFree(member.Name))];

    public IEnumerable<Place> Items() => Enumerable.Range(0, node.Items.Count).Select(Item);

    public Place Item(int index) => new(reading, source, node.Items[index], $"{path}[{index}]", name);

    /// <summary>The accepted value in SI, or the accepted bare number; null where there is none.</summary>
    public double? Value => reading.Accepted(node);

    public double? Optional(string key) => Member(key)?.Value;

    public double Needed(string key) => Optional(key) ?? double.NaN;

    public string? OptionalText(string key) => Member(key) is { Node: { Kind: NodeKind.Text } text } ? text.Text : null;

    public string Text(string key) => OptionalText(key) ?? "";

    /// <summary>A part's checked object, inline or from its file; null where there is none.</summary>
    public Place? Part(string key, DocumentKind kind) => Member(key) switch
    {
        { Node.Kind: NodeKind.Map } inline => kind.IsOther(inline) ? null : inline,
        { Node: { Kind: NodeKind.Text, Text: not "" } } named => reading.Open(named.FullPath, kind, named),
        _ => null,
    };

    /// <summary>A CSV file named by a key, read by the reader given; null where there is none.</summary>
    public T? Table<T>(string key, Func<Tables.Table, ICollection<Fault>, T?> read)
        where T : class => Member(key) is { Node.Kind: NodeKind.Text } named ? reading.Table(named, read) : null;

    /// <summary>The path of a file named by a key, as the caller would write it; a fault where there is no such file.</summary>
    public string? FileAt(string key)
    {
        if (Member(key) is not { Node.Kind: NodeKind.Text } named) return null;
        if (!System.IO.File.Exists(named.FullPath)) named.Report("a file that exists", "Check the path; it is relative to this document.");
        return InputFile.Readable(named.FullPath);
    }

    /// <summary>The path a text names, relative to the document it stands in.</summary>
    public string FullPath => Path.GetFullPath(Path.Combine(
        Path.GetDirectoryName(source.FullPath)!, node.Text.Replace('\\', '/').Replace("\0", "", StringComparison.Ordinal)));

    public void Accept(double value) => reading.Accept(node, value);

    public void Saw(Quantity quantity, bool setsUnit) => reading.Saw(source, this, quantity, setsUnit);

    public void Report(string allowed, string fix) => Report(source.Excerpt(node), allowed, fix);

    public void Report(string found, string allowed, string fix) =>
        reading.Report(new(source.File, path.Length == 0 ? "document" : path, found, allowed, fix));

    public void ReportKey(string allowed, string fix) => Report($"the key \"{name}\"", allowed, fix);

    public void ReportMissing(string key, string allowed, string fix) =>
        reading.Report(new(source.File, Below(key), "nothing", allowed, fix));

    public void CheckDuplicates()
    {
        foreach (var twice in node.Members.GroupBy(member => member.Name).Where(group => group.Skip(1).Any()))
            At(twice.Last()).ReportKey("each key once", $"\"{twice.Key}\" stands here {twice.Count()} times; keep one.");
    }

    private Place At(Member member) => new(reading, source, member.Value, Below(member.Name), member.Name);

    private string Below(string key) => path.Length == 0 ? key : $"{path}.{key}";

    public override string ToString() => path;
}
