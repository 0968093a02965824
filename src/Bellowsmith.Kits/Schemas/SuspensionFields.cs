using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The field list of <c>suspension/1</c>: points of the left side in ISO 8855 car axes.</summary>
internal static class SuspensionFields
{
    private static readonly Shape _point = new ListShape(Length("-10 m", "10 m", "120 mm"), 3, "x forward, y left, z up");

    public static readonly DocumentKind Kind = new(
        "suspension",
        "The suspension points of one axle's left side at drive height.",
        new ObjectShape(
            [Need("name", Text), Need("wheelRadius", Length("100 mm", "1000 mm", "318 mm"))],
            [Need("macpherson", Fields(
                [.. Points("lowerArmFront", "lowerArmRear", "lowerBallJoint", "strutTop", "strutAxisPoint", "tieRodInner", "tieRodOuter", "wheelCentre"),
                    May("wheelAxisPoint", _point)]))],
            [Need("doubleWishbone", Fields(
                [.. Points("lowerArmFront", "lowerArmRear", "lowerBallJoint", "upperArmFront", "upperArmRear", "upperBallJoint", "tieRodInner", "tieRodOuter", "wheelCentre", "strutTop", "strutBottom"),
                    Need("strutOn", new ChoiceShape("lowerArm", "upperArm", "upright"))]))]));

    private static IEnumerable<Field> Points(params string[] names) => names.Select(name => Need(name, _point));
}
