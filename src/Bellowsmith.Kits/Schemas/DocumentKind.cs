using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>
/// A kind of document: its one field list, from which come the reader's checks, the fault texts and the JSON Schema.
/// The header line is needed in a file of its own, except beside a key that makes the part complete by itself.
/// </summary>
internal sealed class DocumentKind
{
    private const string HeaderKey = "bellowsmith";

    private readonly string _meaning;
    private readonly string? _headerless;
    private readonly ObjectShape _shape;

    public DocumentKind(string name, string meaning, ObjectShape fields, string? headerless = null)
    {
        (Name, _meaning, _headerless) = (name, meaning, headerless);
        _shape = fields.With(new(HeaderKey, false, new HeaderShape(Header)));
    }

    public string Name { get; }

    public string Header => Name + "/1";

    public string SchemaFile => Name + ".schema.json";

    private string HeaderLine => $"\"{HeaderKey}\": \"{Header}\"";

    /// <summary>Checks the root of a file.</summary>
    public void CheckFile(Place root)
    {
        if (root.Member(HeaderKey) is null && !(_headerless is not null && root.Member(_headerless) is not null))
            root.ReportMissing(HeaderKey, HeaderLine, $"Begin the document with {HeaderLine}.");
        else if (root.Member(HeaderKey) is { } header && root.Node.Members[0].Name != HeaderKey)
            header.ReportKey("the first key of the document", $"Move {HeaderLine} to the top.");
        CheckInline(root);
    }

    /// <summary>Checks a part that stands inside another document; of a different kind only that is said.</summary>
    public void CheckInline(Place place)
    {
        if (IsOther(place)) place.Member(HeaderKey)!.Report($"\"{Header}\"", $"Give a document of kind {Header} here.");
        else _shape.Check(place);
    }

    /// <summary>Whether the object says that it is of another kind.</summary>
    public bool IsOther(Place place) =>
        place.Member(HeaderKey) is { Node: { Kind: NodeKind.Text } header } && header.Text != Header;

    /// <summary>The JSON Schema (draft 2020-12) of a file of this kind; <c>$defs/part</c> is the part inline.</summary>
    public string SchemaText()
    {
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = SchemaFile,
            ["title"] = Header,
            ["description"] = _meaning,
            ["$ref"] = "#/$defs/part",
            ["anyOf"] = new JsonArray([.. new[] { HeaderKey, _headerless }.OfType<string>()
                .Select(key => new JsonObject { ["required"] = new JsonArray(key) })]),
            ["$defs"] = new JsonObject { ["part"] = _shape.Schema() },
        };
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream, options)) schema.WriteTo(writer);
        return System.Text.Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private sealed class HeaderShape(string header) : Shape
    {
        public override string Allowed => $"\"{header}\"";

        public override void Check(Place place)
        {
            if (place.Node.Kind != NodeKind.Text || place.Node.Text != header)
                place.Report(Allowed, $"Give a document of kind {header} here.");
        }

        public override JsonObject Schema() => new() { ["const"] = header };
    }
}
