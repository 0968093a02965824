using Bellowsmith.Kits;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies;

/// <summary>Axles as their documents would have them.</summary>
internal static class SampleSuspension
{
    public static readonly SuspensionPart Strut = new("strut", "strut.json", SuspensionKind.MacPherson, 0.310, -0.012, 0.001, new Dictionary<string, Point>
    {
        ["lowerArmFront"] = At(10, 370, 215),
        ["lowerArmRear"] = At(-300, 380, 220),
        ["lowerBallJoint"] = At(-2, 715, 200),
        ["strutTop"] = At(-25, 580, 880),
        ["strutAxisPoint"] = At(-8, 650, 430),
        ["tieRodInner"] = At(-120, 360, 262),
        ["tieRodOuter"] = At(-135, 690, 250),
        ["wheelCentre"] = At(0, 760, 310),
    });

    public static readonly SuspensionPart Links = new("links", "links.json", SuspensionKind.FiveLink, 0.310, -0.012, 0.001, new Dictionary<string, Point>
    {
        ["lowerFrontInner"] = At(150, 400, 195),
        ["lowerFrontOuter"] = At(40, 705, 180),
        ["lowerRearInner"] = At(-150, 380, 200),
        ["lowerRearOuter"] = At(-45, 710, 190),
        ["upperFrontInner"] = At(110, 450, 455),
        ["upperFrontOuter"] = At(35, 685, 470),
        ["upperRearInner"] = At(-120, 445, 450),
        ["upperRearOuter"] = At(-40, 680, 480),
        ["tieRodInner"] = At(-210, 400, 255),
        ["tieRodOuter"] = At(-150, 700, 260),
        ["strutTop"] = At(-60, 540, 740),
        ["strutBottom"] = At(-90, 590, 210),
        ["wheelCentre"] = At(0, 760, 310),
    });

    /// <summary>Wheel 800 mm behind the axis of a level arm, an upright strut half way.</summary>
    public static readonly SuspensionPart Lever = new("lever", "lever.json", SuspensionKind.TrailingArm, 0.3, 0, 0, new Dictionary<string, Point>
    {
        ["pivotOuter"] = At(0, 600, 300),
        ["pivotInner"] = At(0, 200, 300),
        ["wheelCentre"] = At(-800, 700, 300),
        ["strutTop"] = At(-400, 500, 700),
        ["strutBottom"] = At(-400, 500, 300),
    });

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);
}
