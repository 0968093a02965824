using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The field list of <c>suspension/1</c>: points of the left side in ISO 8855 car axes.</summary>
internal static class SuspensionFields
{
    private static readonly string[] _arm = ["lowerArmFront", "lowerArmRear", "lowerBallJoint"], _tieRod = ["tieRodInner", "tieRodOuter"],
        _strut = ["strutTop", "strutBottom"], _wheel = ["wheelCentre"];

    public static readonly Shape Point = new ListShape(Length("-10 m", "10 m", "120 mm"), 3, "x forward, y left, z up");

    /// <summary>What stands beside the points of any suspension.</summary>
    public static readonly string[] Halfshaft = ["halfshaftInner", "halfshaftOuter"];

    /// <summary>Points measured on the body, for what the wheel and the strut pass by.</summary>
    public static readonly string[] Body = ["archEdge", "liner", "tower"];

    public const string WheelAxisPoint = "wheelAxisPoint", StrutOn = "strutOn";

    /// <summary>Each kind's key, the points it needs and what its strut may stand on.</summary>
    public static readonly IReadOnlyList<(SuspensionKind Kind, string Key, string[] Points, StrutSeat[] Seats)> Kinds =
    [
        (SuspensionKind.MacPherson, "macpherson", [.. _arm, "strutTop", "strutAxisPoint", .. _tieRod, .. _wheel], []),
        (SuspensionKind.DoubleWishbone, "doubleWishbone",
            [.. _arm, "upperArmFront", "upperArmRear", "upperBallJoint", .. _tieRod, .. _wheel, .. _strut],
            [new("lowerArm", StrutCarrier.LowerArm), new("upperArm", StrutCarrier.UpperArm), new("upright", StrutCarrier.Upright)]),
        (SuspensionKind.TrailingArm, "trailingArm", ["pivotOuter", "pivotInner", .. _wheel, .. _strut], []),
        (SuspensionKind.BeamAxle, "beamAxle",
            ["trailingArmFront", "trailingArmRear", "upperLinkFront", "upperLinkRear", "panhardRodFrame", "panhardRodAxle", .. _wheel, .. _strut],
            [new("trailingArm", StrutCarrier.TrailingArm), new("axle", StrutCarrier.Upright)]),
        (SuspensionKind.FiveLink, "fiveLink",
            [
                "lowerFrontInner", "lowerFrontOuter", "lowerRearInner", "lowerRearOuter", "upperFrontInner", "upperFrontOuter", "upperRearInner",
                "upperRearOuter", .. _tieRod, .. _wheel, .. _strut,
            ],
            [new("upright", StrutCarrier.Upright), new("lowerRearLink", StrutCarrier.LowerRearLink)]),
    ];

    public static readonly DocumentKind Kind = new(
        "suspension",
        "The suspension points of one axle's left side at drive height.",
        new ObjectShape(
            [
                Need("name", Text),
                Need("wheelRadius", Length("100 mm", "1000 mm", "318 mm"), "From its centre to the ground, loaded."),
                May("staticCamber", Angle("1.2 deg"), "At drive height, top out +; 0 where not given."),
                May("staticToe", Angle("0.1 deg"), "Per wheel at drive height, in +; 0 where not given."),
                May("loweredBy", Length("0 mm", "300 mm", "45 mm"), "How much lower the car stands at these points than as it left its maker."),
                May("rackTravel", Length("1 mm", "200 mm", "62 mm"), "From the middle to either lock."),
                .. Halfshaft.Select(name => May(name, Point)),
                .. Body.Select(name => May(name, new SomeShape(Point, "points, each x forward, y left, z up"))),
                .. PassingFields.All,
            ],
            [.. Kinds.Select(kind => (IReadOnlyList<Field>)[Need(kind.Key, Points(kind.Kind, kind.Points, kind.Seats))])]));

    private static QuantityShape Angle(string example) => new(Dimension.Angle, "-15 deg", "15 deg", example);

    private static ObjectShape Points(SuspensionKind kind, string[] names, StrutSeat[] seats)
    {
        List<Field> fields = [.. names.Select(name => Need(name, Point))];
        if (kind == SuspensionKind.MacPherson) fields.Add(May(WheelAxisPoint, Point, "On the spin axis: sets static camber and toe."));
        if (seats.Length > 0) fields.Add(Need(StrutOn, new ChoiceShape([.. seats.Select(seat => seat.Word)])));
        return Fields([.. fields]);
    }
}

/// <summary>What a strut may stand on, by the document's word.</summary>
internal sealed record StrutSeat(string Word, StrutCarrier Carrier);
