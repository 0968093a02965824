using System.Text.Json.Nodes;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>
/// A quantity: text with a unit, within a range that is wide enough never to judge a sound design. Where force is
/// allowed beside mass it is divided by g = 9.80665 m/s², so the value is always that of the first dimension.
/// </summary>
internal sealed class QuantityShape : Shape
{
    private const string NumberPattern = @"^\s*[+\-−]?(\d+([.,]\d+)?|[.,]\d+)([eE][+\-−]?\d+)?\s*";

    private readonly Dimension[] _dimensions;
    private readonly Quantity _least, _greatest;
    private readonly string _example;

    public QuantityShape(Dimension dimension, string least, string greatest, string example, bool orForce = false)
    {
        _dimensions = orForce ? [dimension, Dimension.Force] : [dimension];
        (_least, _greatest, _example) = (Literal(least), Literal(greatest), example);
    }

    /// <summary>False where people write another unit than they read answers in, such as kN of a bearing's rating.</summary>
    public bool SetsUnit { get; init; } = true;

    public override string Allowed => $"{Words} from {_least.Written} to {_greatest.Written}, such as \"{_example}\"";

    private string Words => string.Join(" or ", _dimensions.Select(dimension => dimension.Words()));

    private string UnitNames => string.Join(", ", Units.Select(unit => unit.Name));

    private IEnumerable<Unit> Units => _dimensions.SelectMany(UnitTable.Of);

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Text)
        {
            place.Report(Allowed, $"Write the value with its unit in quotes, for example write \"{_example}\".");
            return;
        }
        if (Quantity.Read(place.Node.Text, _dimensions, out var misreading) is not { } quantity)
        {
            place.Report($"{Words} in {UnitNames}", Fix(misreading!.Value, place.Node.Text));
            return;
        }
        place.Saw(quantity, SetsUnit);
        var si = quantity.Dimension == _dimensions[0] ? quantity.Si : quantity.Si / StandardGravity.Value_m_per_s2;
        if (si >= _least.Si && si <= _greatest.Si) place.Accept(si);
        else place.Report($"{Words} from {_least.Written} to {_greatest.Written}", "Check the number, its decimal mark and its unit.");
    }

    public override JsonObject Schema() => new()
    {
        ["type"] = "string",
        ["description"] = char.ToUpperInvariant(Words[0]) + Words[1..] + $" from {_least.Written} to {_greatest.Written}.",
        ["pattern"] = NumberPattern + "(" + string.Join('|', Units.Select(UnitPattern)) + @")\s*$",
        ["examples"] = new JsonArray(_example),
    };

    private string Fix(Misreading misreading, string text) => misreading switch
    {
        Misreading.NoUnit => $"Write the unit too, for example write \"{_example}\".",
        Misreading.Grouped => $"Write one decimal mark, comma or point, and no thousands separator: \"{_example}\".",
        Misreading.OtherDimension => $"Write a {Words}, for example write \"{_example}\".",
        Misreading.UnknownUnit when NearUnit(text) is { } unit => $"Did you mean {unit}? Write for example \"{_example}\".",
        _ => $"Write a number and a unit, for example write \"{_example}\".",
    };

    private string? NearUnit(string text)
    {
        var spelling = text.AsSpan().TrimStart()[NumberText.Read(text.AsSpan().TrimStart(), out _, out _)..].Trim().ToString();
        return Units.Select(unit => unit.Name).FirstOrDefault(name => name.Equals(spelling, StringComparison.OrdinalIgnoreCase))
            ?? Units.Select(unit => unit.Name).FirstOrDefault(name => name.Length > 1 && Nearest.IsSlip(spelling, name));
    }

    private Quantity Literal(string text) => Quantity.Read(text, _dimensions[0], out _)!.Value;

    private static string UnitPattern(Unit unit) => unit.Name
        .Replace("2", @"\^?[2²]", StringComparison.Ordinal)
        .Replace("3", @"\^?[3³]", StringComparison.Ordinal)
        .Replace("*", "[*·⋅]", StringComparison.Ordinal)
        .Replace("deg", "(deg|°)", StringComparison.Ordinal);
}
