using System.Text.Json.Nodes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>An object whose keys a person names (load cases), at least one; all values have one shape.</summary>
internal sealed class MapShape(string what, Shape value) : Shape
{
    public override string Allowed => $"an object of at least one {what}";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Map || place.Named().Count == 0)
        {
            place.Report(Allowed, $"Name at least one {what}.");
            return;
        }
        place.CheckDuplicates();
        foreach (var member in place.Named()) value.Check(member);
    }

    public override JsonObject Schema() => new()
    {
        ["type"] = "object",
        ["minProperties"] = 1,
        ["patternProperties"] = new JsonObject { ["^(notes$|x-)"] = true, ["^(?!notes$|x-)"] = value.Schema() },
    };
}
