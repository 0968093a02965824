using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Bellowsmith.Tests.Kits.Schemas;

/// <summary>The part of JSON Schema (draft 2020-12) that the documents' schemas use; an unknown keyword is an error.</summary>
internal sealed class SchemaValidator(IReadOnlyDictionary<string, JsonObject> schemas)
{
    public bool Accepts(string kind, string document)
    {
        var options = new JsonDocumentOptions { CommentHandling = JsonCommentHandling.Skip, AllowTrailingCommas = true };
        return Valid(schemas[kind], schemas[kind], JsonNode.Parse(document, documentOptions: options));
    }

    private bool Valid(JsonNode schema, JsonObject root, JsonNode? value) =>
        schema is JsonValue always ? always.GetValue<bool>() : schema.AsObject().All(keyword => Holds(keyword.Key, keyword.Value!, schema.AsObject(), root, value));

    private bool Holds(string keyword, JsonNode argument, JsonObject schema, JsonObject root, JsonNode? value) => keyword switch
    {
        "$schema" or "$id" or "$defs" or "title" or "description" or "examples" => true,
        "$ref" => Referred(argument.GetValue<string>(), root, value),
        "type" => OfType(argument.GetValue<string>(), value),
        "const" => JsonNode.DeepEquals(argument, value),
        "enum" => argument.AsArray().Any(choice => JsonNode.DeepEquals(choice, value)),
        "anyOf" => argument.AsArray().Any(choice => Valid(choice!, root, value)),
        "oneOf" => argument.AsArray().Count(choice => Valid(choice!, root, value)) == 1,
        "not" => !Valid(argument, root, value),
        "pattern" => OfType("string", value) == false || Regex.IsMatch(value!.GetValue<string>(), argument.GetValue<string>()),
        "minimum" => OfType("number", value) == false || value!.GetValue<double>() >= argument.GetValue<double>(),
        "maximum" => OfType("number", value) == false || value!.GetValue<double>() <= argument.GetValue<double>(),
        "minItems" => value is not JsonArray least || least.Count >= argument.GetValue<int>(),
        "maxItems" => value is not JsonArray most || most.Count <= argument.GetValue<int>(),
        "minProperties" => value is not JsonObject few || few.Count >= argument.GetValue<int>(),
        "items" => value is not JsonArray list || list.All(item => Valid(argument, root, item)),
        "required" => value is not JsonObject whole || argument.AsArray().All(name => whole.ContainsKey(name!.GetValue<string>())),
        "properties" => value is not JsonObject known || known.All(member => argument[member.Key] is not { } inner || Valid(inner, root, member.Value)),
        "patternProperties" => value is not JsonObject free || free.All(member => argument.AsObject().All(pattern =>
            !Regex.IsMatch(member.Key, pattern.Key) || Valid(pattern.Value!, root, member.Value))),
        "additionalProperties" => value is not JsonObject rest || rest.All(member => IsNamed(member.Key, schema) || Valid(argument, root, member.Value)),
        _ => throw new NotSupportedException(keyword),
    };

    private bool Referred(string reference, JsonObject root, JsonNode? value)
    {
        var (file, place) = (reference[..reference.IndexOf('#', StringComparison.Ordinal)], reference[(reference.IndexOf('#', StringComparison.Ordinal) + 2)..]);
        var target = file.Length == 0 ? root : schemas[file.Replace(".schema.json", "", StringComparison.Ordinal)];
        return Valid(place.Split('/').Aggregate((JsonNode)target, (node, step) => node[step]!), target, value);
    }

    private static bool IsNamed(string key, JsonObject schema) =>
        schema["properties"]?.AsObject().ContainsKey(key) == true
        || schema["patternProperties"]?.AsObject().Any(pattern => Regex.IsMatch(key, pattern.Key)) == true;

    private static bool OfType(string type, JsonNode? value) => (type, value?.GetValueKind()) switch
    {
        ("string", JsonValueKind.String) or ("object", JsonValueKind.Object) or ("array", JsonValueKind.Array) or ("number", JsonValueKind.Number) => true,
        ("integer", JsonValueKind.Number) => double.IsInteger(value!.GetValue<double>()),
        _ => false,
    };
}
