using System.Text.Json.Nodes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>
/// An object: common fields, and where there are groups exactly one of them. Unknown keys are faults, except
/// <c>notes</c> and keys that begin with <c>x-</c>.
/// </summary>
internal sealed class ObjectShape(IReadOnlyList<Field> common, params IReadOnlyList<Field>[] groups) : Shape
{
    /// <summary>Keys that are refused with a reason of their own.</summary>
    public IReadOnlyDictionary<string, string> Refused { get; init; } = new Dictionary<string, string>();

    public override string Allowed => groups.Length == 0
        ? "an object { … }"
        : $"an object with exactly one of {string.Join(" | ", groups.Select(Needs))}";

    private IEnumerable<Field> Fields => common.Concat(groups.SelectMany(group => group)).DistinctBy(known => known.Name);

    public static bool IsFree(string key) => key == "notes" || key.StartsWith("x-", StringComparison.Ordinal);

    public ObjectShape With(Field first) => new([first, .. common], groups) { Refused = Refused };

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Map)
        {
            place.Report(Allowed, "Write an object in braces.");
            return;
        }
        place.CheckDuplicates();
        var group = Chosen(place);
        var fields = common.Concat(group ?? []).ToList();
        foreach (var member in place.Members()) CheckMember(member, fields, place);
        foreach (var field in fields.Where(field => field.Required && place.Member(field.Name) is null))
            place.ReportMissing(field.Name, field.Shape.Allowed, $"Add \"{field.Name}\": {field.Shape.Allowed}.");
        if (group is null && groups.Length > 0) place.Report(Allowed, "Give exactly one of them.");
    }

    public override JsonObject Schema()
    {
        var properties = new JsonObject();
        foreach (var field in Fields) properties[field.Name] = Described(field);
        var schema = new JsonObject { ["type"] = "object", ["properties"] = properties };
        AddRequired(schema, common);
        schema["patternProperties"] = new JsonObject { ["^(notes$|x-)"] = true };
        schema["additionalProperties"] = false;
        if (groups.Length > 0) schema["oneOf"] = new JsonArray([.. groups.Select(GroupSchema)]);
        return schema;
    }

    private void CheckMember(Place member, List<Field> fields, Place place)
    {
        if (IsFree(member.Name)) return;
        if (fields.Find(field => field.Name == member.Name) is { } known) known.Shape.Check(member);
        else if (Refused.TryGetValue(member.Name, out var reason)) member.Report("nothing", reason);
        else if (Fields.Any(field => field.Name == member.Name))
            member.Report(Allowed, $"{member.Name} cannot stand beside {Beside(place, fields)}: take one of them out.");
        else
            member.ReportKey($"one of {string.Join(", ", Fields.Select(field => field.Name))}, notes, x-…",
                $"Did you mean {Nearest.To(member.Name, Fields.Select(field => field.Name))}? Free remarks go into notes or a key that begins with x-.");
    }

    /// <summary>The group most of whose keys are there, the first of equals; null where no key of any group is.</summary>
    private IReadOnlyList<Field>? Chosen(Place place)
    {
        int Present(IReadOnlyList<Field> group) => group.Count(field => place.Member(field.Name) is not null);
        return groups.MaxBy(Present) is { } best && Present(best) > 0 ? best : null;
    }

    private string Beside(Place place, List<Field> fields) => string.Join(" and ", fields
        .Where(field => !common.Contains(field) && place.Member(field.Name) is not null).Select(field => field.Name));

    private static string Needs(IReadOnlyList<Field> group) =>
        string.Join(" + ", group.Where(field => field.Required).Select(field => field.Name));

    private static JsonObject Described(Field field)
    {
        var schema = field.Shape.Schema();
        if (field.Meaning.Length == 0) return schema;
        var range = schema["description"]?.GetValue<string>();
        schema["description"] = range is null ? field.Meaning : $"{field.Meaning} {range}";
        return schema;
    }

    private JsonObject GroupSchema(IReadOnlyList<Field> group)
    {
        var schema = new JsonObject();
        AddRequired(schema, group);
        var foreign = groups.SelectMany(other => other).Select(field => field.Name).Distinct()
            .Where(name => group.All(field => field.Name != name))
            .Select(name => (JsonNode)new JsonObject { ["required"] = new JsonArray(name) }).ToArray();
        if (foreign.Length > 0) schema["not"] = new JsonObject { ["anyOf"] = new JsonArray(foreign) };
        return schema;
    }

    private static void AddRequired(JsonObject schema, IReadOnlyList<Field> fields)
    {
        var names = fields.Where(field => field.Required).Select(field => (JsonNode)JsonValue.Create(field.Name)).ToArray();
        if (names.Length > 0) schema["required"] = new JsonArray(names);
    }
}
