using System.Text.Json.Nodes;
using Bellowsmith.Kits.Units;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>A strut's <c>lowerMount</c>: what joins its foot to the car's knuckle.</summary>
internal static class LowerMountFields
{
    private const int MostBolts = 8;

    private static readonly Shape _place = new ListShape(Length("-500 mm", "500 mm", "44 mm"), 2, "x outward, y up");
    private static readonly Shape _measured = new ListShape(Length("-1 m", "1 m", "31.2 mm"), 2, "any two directions square to each other");
    private static readonly Shape _hole = Length("4 mm", "40 mm", "12.5 mm");
    private static readonly Shape _position = Length("0 mm", "5 mm", "0.3 mm");
    private static readonly Shape _friction = new NumberShape(0.02, 1);

    private static readonly Field[] _bolt = [Need("size", new BoltSizeShape()), Need("strengthClass", new ChoiceShape([.. MetricBolt.Strengths_Pa.Keys]))];

    public static readonly Shape Mount = Fields(
        Need("bracket", Fields(
            Need("thickness", Length("1 mm", "60 mm", "8 mm"), "Of one plate."),
            May("material", Text, "As it is ordered, for the drawing."),
            Need("holes", new SomeShape(_place, "places, each x from the strut's axis outward, y from the lower datum up")),
            Need("holeDiameter", _hole),
            May("tolerance", _position, "How far a hole may be made from its place, ±; 0.1 mm where not given."),
            May("width", Length("10 mm", "500 mm", "48 mm"), "Outward from the tube's surface, or the strut's axis without a clamp."),
            May("height", Length("10 mm", "500 mm", "110 mm"), "Up from the lower datum."),
            May("slot", Length("4 mm", "100 mm", "20 mm"), "The uppermost hole is a slot along x, so long over its ends."),
            May("allowedBearing", new QuantityShape(Dimension.Stress, "1 MPa", "3000 MPa", "240 MPa"), "Pressure allowed on a hole's wall."))),
        Need("knuckle", Fields(
            Need("holes", new SomeShape(_measured, "places as measured on the car, in the order of the bracket's and seen from the same side")),
            Need("holeDiameter", _hole, "The bolt's where they are tapped."),
            Need("tolerance", _position, "How far a true hole may stand from its measured place, ±."))),
        Need("bolts", Fields([
            .. _bolt,
            May("count", new NumberShape(2, MostBolts, whole: true), "One for each hole."),
            May("friction", _friction, "μ of the faying surfaces; 0.2 where not given."),
            May("shearPlanes", new NumberShape(1, 2, whole: true), "1 where not given."),
        ])),
        May("clamp", Fields(
            Need("diameter", Length("20 mm", "120 mm", "52 mm"), "Of the tube."),
            Need("height", Length("5 mm", "300 mm", "60 mm"), "Along the tube."),
            Need("bolts", Fields([.. _bolt, Need("count", new NumberShape(1, MostBolts, whole: true)), May("friction", _friction, "μ of clamp and tube; 0.15 where not given.")])))),
        May("hoseBracket", _place, "Of the brake hose."),
        May("sensorBracket", _place, "Of the wheel-speed sensor's wire."));
}

/// <summary>A bolt's size as one writes it.</summary>
internal sealed class BoltSizeShape : Shape
{
    public override string Allowed => $"a size such as \"{MetricBolt.Example}\" or \"M12x1.25\"";

    public override void Check(Place place)
    {
        if (place.Node.Kind != NodeKind.Text || MetricBolt.Read(place.Node.Text, MetricBolt.Strengths_Pa.Keys.First()) is null)
            place.Report(Allowed, "Write M and the diameter in mm, M6 to M24, and x with the pitch where the thread is fine.");
    }

    public override JsonObject Schema() => new() { ["type"] = "string", ["pattern"] = "^M[0-9]+([x×][0-9.]+)?$" };
}
