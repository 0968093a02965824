using System.Text.Json.Nodes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>What may stand at a place of a document: checks it, says what is allowed, and writes the JSON Schema of it.</summary>
internal abstract class Shape
{
    /// <summary>What may stand here, in words that follow "allowed:".</summary>
    public abstract string Allowed { get; }

    public abstract void Check(Place place);

    public abstract JsonObject Schema();
}

/// <summary>A text that is not empty.</summary>
internal sealed class TextShape : Shape
{
    public override string Allowed => "a text in quotes";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Text || string.IsNullOrWhiteSpace(place.Node.Text))
            place.Report(Allowed, "Write a text in quotes.");
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "\\S" };
}

/// <summary>One of a few words.</summary>
internal sealed class ChoiceShape(params string[] words) : Shape
{
    public override string Allowed => string.Join(" | ", words.Select(word => $"\"{word}\""));

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Text || !words.Contains(place.Node.Text))
            place.Report(Allowed, $"Write \"{Nearest.To(place.Node.Text, words)}\" or another of them.");
    }

    public override JsonObject Schema() => new() { ["enum"] = new JsonArray([.. words.Select(word => JsonValue.Create(word))]) };
}

/// <summary>A path, relative to the document that names it, of a file that is not a document itself.</summary>
internal sealed class FileShape(string what) : Shape
{
    public override string Allowed => $"the relative path of {what}";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Text || string.IsNullOrWhiteSpace(place.Node.Text))
            place.Report(Allowed, "Write the path in quotes, relative to this document.");
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "\\S", ["description"] = $"Relative path of {what}." };
}

/// <summary>A bare JSON number: a ratio, an exponent, a count.</summary>
internal sealed class NumberShape(double least, double greatest, bool whole = false) : Shape
{
    public override string Allowed =>
        FormattableString.Invariant($"a {(whole ? "whole" : "bare")} number from {least} to {greatest}");

    public override void Check(Place place)
    {
        var number = place.Node.Number;
        if (place.Node.Kind != NodeKind.Number)
            place.Report(Allowed, "Write the number bare, without quotes and unit, with a decimal point.");
        else if (!(number >= least && number <= greatest) || (whole && number != Math.Truncate(number)))
            place.Report(Allowed, "Check the number.");
        else
            place.Accept(number);
    }

    public override JsonObject Schema() =>
        new() { ["type"] = whole ? "integer" : "number", ["minimum"] = least, ["maximum"] = greatest };
}

/// <summary>A list of so many values of one shape.</summary>
internal sealed class ListShape(Shape item, int count, string what) : Shape
{
    public override string Allowed => $"a list of {count}: {what}";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.List || place.Node.Items.Count != count)
        {
            place.Report(Allowed, $"Write {count} values in square brackets.");
            return;
        }
        for (var i = 0; i < count; i++) item.Check(place.Item(i));
    }

    public override JsonObject Schema() => new()
    {
        ["type"] = "array",
        ["description"] = what,
        ["items"] = item.Schema(),
        ["minItems"] = count,
        ["maxItems"] = count,
    };
}

/// <summary>A list of as many values of one shape as there are.</summary>
internal sealed class SomeShape(Shape item, string what) : Shape
{
    public override string Allowed => $"a list: {what}";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.List || place.Node.Items.Count == 0)
        {
            place.Report(Allowed, "Write one or more in square brackets.");
            return;
        }
        foreach (var one in place.Items()) item.Check(one);
    }

    public override JsonObject Schema() => new() { ["type"] = "array", ["description"] = what, ["items"] = item.Schema(), ["minItems"] = 1 };
}

/// <summary>Either a bare number or something else.</summary>
internal sealed class NumberOrShape(NumberShape number, Shape other) : Shape
{
    public override string Allowed => $"{number.Allowed}, or {other.Allowed}";

    public override void Check(Place place)
    {
        if (place.Node.Kind == NodeKind.Number) number.Check(place);
        else if (place.Node.Kind == NodeKind.Map) other.Check(place);
        else place.Report(Allowed, "Write the number bare, without quotes and unit, with a decimal point.");
    }

    public override JsonObject Schema() => new() { ["anyOf"] = new JsonArray(number.Schema(), other.Schema()) };
}
