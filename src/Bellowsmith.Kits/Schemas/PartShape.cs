using System.Text.Json.Nodes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>A part: inline as an object, or the path of its document relative to the one that names it.</summary>
internal sealed class PartShape(DocumentKind kind) : Shape
{
    public override string Allowed => $"{(kind.Name.StartsWith('a') ? "an" : "a")} {kind.Name} inline, or the relative path of its document";

    public override void Check(Place place)
    {
        if (place.Node.Kind == NodeKind.Map) kind.CheckInline(place);
        else if (place.Node.Kind != NodeKind.Text || string.IsNullOrWhiteSpace(place.Node.Text))
            place.Report(Allowed, "Write the part as an object, or its path in quotes, relative to this document.");
    }

    public override JsonObject Schema() => new()
    {
        ["anyOf"] = new JsonArray(
            new JsonObject { ["type"] = "string", ["pattern"] = "\\S", ["description"] = $"Relative path of a {kind.Header} document." },
            new JsonObject { ["$ref"] = $"{kind.SchemaFile}#/$defs/part" }),
    };
}
