using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>What a <c>suspension/1</c> says of bars, lines and the car's underside, beside its points.</summary>
internal static class PassingFields
{
    private static readonly Shape _diameter = Length("1 mm", "200 mm", "16 mm"), _points = new SomeShape(SuspensionFields.Point, "points, each x forward, y left, z up");

    private static readonly Shape _line = new ObjectShape(
        [
            Need("name", Text),
            Need("body", SuspensionFields.Point, "Where it leaves the body."),
            May("via", _points, "Holders on the body on its way, in order."),
            Need("wheel", SuspensionFields.Point, "Where it is held on knuckle or strut, and moves with the wheel."),
            Need("length", Length("10 mm", "5 m", "410 mm"), "Along it, from the first to the last of these points."),
        ])
    {
        Refused = NeverWaived.Keys,
    };

    public static readonly Field[] All =
    [
        May("diameters", Fields(
            May("tieRod", _diameter), May("lowerArm", _diameter, "Of each leg."), May("upperArm", _diameter), May("links", _diameter, "Of all others."), May("halfshaft", _diameter)),
            "Of arms and shafts; usual ones where not given."),
        May("lines", new SomeShape(_line, "brake hoses and sensor lines")),
        May("underbody", _points, "The body's lowest fixed parts, at drive height."),
    ];
}
