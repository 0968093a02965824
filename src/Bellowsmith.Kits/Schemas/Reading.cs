using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Schemas;

/// <summary>One reading of a document and of every file it names: collects all faults, opens each file once.</summary>
internal sealed class Reading
{
    private readonly List<Fault> _faults = [];
    private readonly Dictionary<Node, double> _accepted = [];
    private readonly Dictionary<(string Path, DocumentKind Kind), Place?> _documents = [];
    private readonly Dictionary<JsonSource, (char Mark, string Place)> _marks = [];
    private readonly Dictionary<Dimension, string> _units = [];
    private readonly Dictionary<string, FileBytes> _inputs = [];

    /// <summary>The unit first written for each dimension, the document's own before its parts'.</summary>
    public IReadOnlyDictionary<Dimension, string> WrittenUnits => _units;

    /// <summary>Every file read, in the order of reading.</summary>
    public IReadOnlyList<FileBytes> Inputs => [.. _inputs.Values];

    /// <summary>Reads a document of one kind into its model.</summary>
    /// <exception cref="FaultsException">Anything in it or in the files it names cannot be used.</exception>
    public static T Run<T>(string path, DocumentKind kind, Func<Place, Reading, T?> build)
        where T : class
    {
        var reading = new Reading();
        var model = reading.Open(path, kind, null) is { } root ? build(root, reading) : null;
        if (reading._faults.Count > 0) throw new FaultsException([.. reading._faults.Distinct()]);
        return model ?? throw new System.Diagnostics.UnreachableException();
    }

    /// <summary>The checked root of a document; null, with a fault at the place that names it, where there is none.</summary>
    public Place? Open(string path, DocumentKind kind, Place? namedAt)
    {
        var full = Path.GetFullPath(path.Replace("\0", "", StringComparison.Ordinal) is { Length: > 0 } named ? named : ".");
        if (_documents.TryGetValue((full, kind), out var known)) return known;
        return _documents[(full, kind)] = OpenNew(full, kind, namedAt);
    }

    /// <summary>What a table reader makes of a named CSV file; null, with faults, where it cannot be used.</summary>
    public T? Table<T>(Place named, Func<Tables.Table, ICollection<Fault>, T?> read)
        where T : class
    {
        if (Bytes(named.FullPath, named) is not { } bytes) return null;
        return Tables.Table.Parse(bytes, InputFile.Readable(named.FullPath), _faults) is { } table ? read(table, _faults) : null;
    }

    public void Report(Fault fault) => _faults.Add(fault);

    public void Accept(Node node, double value) => _accepted[node] = value;

    public double? Accepted(Node node) => _accepted.TryGetValue(node, out var value) ? value : null;

    /// <summary>Notes a quantity's unit, and holds each document to the decimal mark it wrote first.</summary>
    public void Saw(JsonSource source, Place place, Quantity quantity, bool setsUnit)
    {
        if (setsUnit) _units.TryAdd(quantity.Dimension, quantity.Unit.Name);
        if (quantity.DecimalMark is not { } mark || _marks.TryAdd(source, (mark, place.ToString()))) return;
        var first = _marks[source];
        if (first.Mark != mark)
            place.Report($"the decimal {(first.Mark == ',' ? "comma" : "point")} that {first.Place} has",
                "Write every quantity of a document with the same decimal mark.");
    }

    private Place? OpenNew(string full, DocumentKind kind, Place? namedAt)
    {
        if (Bytes(full, namedAt) is not { } bytes || JsonSource.Parse(bytes, full, _faults) is not { } source) return null;
        var root = new Place(this, source, source.Root, "", "");
        kind.CheckFile(root);
        return kind.IsOther(root) ? null : root;
    }

    private byte[]? Bytes(string full, Place? namedAt)
    {
        var bytes = InputFile.Read(full, out var trouble);
        if (bytes is null && namedAt is not null)
            namedAt.Report($"a file; {InputFile.Readable(full)} {trouble}", "Check the path; it is relative to this document.");
        else if (bytes is null)
            Report(new(InputFile.Readable(full), "file", $"a path that {trouble}", "a document", "Check the path."));
        else
            _inputs.TryAdd(full, new FileBytes(InputFile.Readable(full), bytes!));
        return bytes;
    }
}
