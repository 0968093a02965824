using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

/// <summary>Linkages of every kind; the random ones move each point of a sound car by up to 40 mm along each axis.</summary>
internal static class LinkageSamples
{
    private const double Camber_rad = -0.012, Toe_rad = 0.002;

    public static readonly MacPherson Strut = new(Wheel())
    {
        LowerArmFront = At(10, 370, 215),
        LowerArmRear = At(-300, 380, 220),
        LowerBallJoint = At(-2, 715, 200),
        StrutTop = At(-25, 580, 880),
        StrutAxisPoint = At(-8, 650, 430),
        TieRodInner = At(-120, 360, 262),
        TieRodOuter = At(-135, 690, 250),
    };

    public static readonly DoubleWishbone Wishbones = new(Wheel())
    {
        LowerArmFront = At(140, 390, 190),
        LowerArmRear = At(-160, 380, 195),
        LowerBallJoint = At(5, 710, 190),
        UpperArmFront = At(90, 450, 460),
        UpperArmRear = At(-130, 450, 452),
        UpperBallJoint = At(-15, 680, 480),
        TieRodInner = At(-130, 400, 255),
        TieRodOuter = At(-140, 700, 260),
        StrutTop = At(-10, 520, 740),
        StrutBottom = At(0, 600, 210),
        StrutOn = StrutCarrier.LowerArm,
    };

    public static readonly FiveLink Links = new(Wheel())
    {
        LowerFrontInner = At(150, 400, 195),
        LowerFrontOuter = At(40, 705, 180),
        LowerRearInner = At(-150, 380, 200),
        LowerRearOuter = At(-45, 710, 190),
        UpperFrontInner = At(110, 450, 455),
        UpperFrontOuter = At(35, 685, 470),
        UpperRearInner = At(-120, 445, 450),
        UpperRearOuter = At(-40, 680, 480),
        TieRodInner = At(-210, 400, 255),
        TieRodOuter = At(-150, 700, 260),
        StrutTop = At(-60, 540, 740),
        StrutBottom = At(-90, 590, 210),
        StrutOn = StrutCarrier.LowerRearLink,
    };

    public static readonly TrailingArm SemiTrailing = new(Wheel())
    {
        PivotOuter = At(420, 610, 290),
        PivotInner = At(330, 280, 300),
        StrutTop = At(-40, 560, 720),
        StrutBottom = At(-60, 580, 250),
    };

    public static readonly BeamAxle Beam = new(Wheel())
    {
        TrailingArmFront = At(520, 520, 280),
        TrailingArmRear = At(10, 540, 240),
        UpperLinkFront = At(420, 60, 420),
        UpperLinkRear = At(30, 60, 430),
        PanhardRodFrame = At(-90, 480, 360),
        PanhardRodAxle = At(-90, -470, 330),
        StrutTop = At(200, 530, 620),
        StrutBottom = At(190, 530, 265),
        StrutOn = StrutCarrier.TrailingArm,
    };

    private static readonly Gen<Point> _off = Gen.Select(Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[-40, 40], At);

    public static readonly Gen<Suspension> Any = Gen.Select(_off.Array[13], Gen.Int[0, 4]).Select(Moved);

    public static IEnumerable<Suspension> All => [Strut, Wishbones, Links, SemiTrailing, Beam];

    public static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);

    private static LinkageWheel Wheel() => new(At(0, 760, 310), 0.310, Camber_rad, Toe_rad);

    public static Suspension Mirrored(Suspension suspension) => Each(
        suspension with { Wheel = new(suspension.Wheel.Centre.Mirrored, suspension.Wheel.Radius_m, Camber_rad, Toe_rad) }, (point, _) => point.Mirrored);

    private static Suspension Moved(Point[] by, int kind)
    {
        Suspension moved = Each(All.ElementAt(kind), (point, k) => point + by[k]);
        StrutCarrier carrier = by[12].X > 0 ? StrutCarrier.UpperArm : by[12].Y > 0 ? StrutCarrier.LowerArm : StrutCarrier.Upright;
        return moved is DoubleWishbone wishbones ? wishbones with { StrutOn = carrier } : moved;
    }

    private static Suspension Each(Suspension suspension, Func<Point, int, Point> change)
    {
        Suspension changed = suspension with { };
        var properties = suspension.GetType().GetProperties().Where(known => known.PropertyType == typeof(Point) && known.CanWrite);
        foreach (var (k, property) in properties.Index()) property.SetValue(changed, change((Point)property.GetValue(suspension)!, k));
        return changed;
    }
}
