using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies.Mount;

/// <summary>
/// A MacPherson strut in one plane, its axis through the ball joint, 4000 N upward at the contact point, a rod of 22 mm led 250 mm below the
/// mount and 180 mm on. How far it goes the kit does not say: 60 mm either way.
/// </summary>
internal static class SampleMount
{
    private const double Unsprung_kg = 40;

    public static readonly SuspensionPart Plane = new("plane", "plane.json", SuspensionKind.MacPherson, 0.310, 0, 0, new Dictionary<string, Point>
    {
        ["lowerArmFront"] = At(150, 370, 215),
        ["lowerArmRear"] = At(-150, 370, 215),
        ["lowerBallJoint"] = At(0, 715, 200),
        ["strutTop"] = At(0, 580, 880),
        ["strutAxisPoint"] = At(0, 715, 200),
        ["tieRodInner"] = At(-120, 370, 215),
        ["tieRodOuter"] = At(-120, 715, 200),
        ["wheelCentre"] = At(0, 760, 310),
    })
    {
        RackTravel_m = 0.060,
    };

    public static readonly SphericalPlainBearing Bearing = new(48e3, 100e6, 0.0355, SlidingSurface.SteelOnSteel, 12 * Math.PI / 180);

    public static MountResult Answer(
        double load_N = 4000, AxleEnd end = AxleEnd.Front, SuspensionPart? part = null, MountQuestion? question = null, TopMount? mount = null,
        Func<StrutDesign, StrutDesign>? change = null) =>
        MountStudy.Answer(Case(load_N, end, part, mount, change), question ?? new());

    public static MountCase Case(double load_N, AxleEnd end, SuspensionPart? part, TopMount? mount, Func<StrutDesign, StrutDesign>? change)
    {
        StrutDesign design = Design with { TopMount = mount ?? new() { SphericalBearing = Bearing } };
        return MountCase.Of(Kit(load_N, end, part ?? Plane, change?.Invoke(design) ?? design), new());
    }

    /// <summary>A strut without a top mount.</summary>
    public static StrutDesign Design { get; } = new(
        new LinearSpringPart(25e3), new TelescopicDamperPart("sample", 0.022, 0.26, 0.39, null, null, null, null), null, null, null, null, null, null, null, null, null, null, null, new())
    {
        Guides = new(0.250, 0.180),
    };

    public static Kit Kit(double load_N, AxleEnd end, SuspensionPart? part, StrutDesign design)
    {
        double reading = load_N / 9.80665 + Unsprung_kg;
        Axle axle = new(Unsprung_kg, MotionRatio.Constant(1), MotionRatio.Constant(1), TyreRate_N_per_m: 200e3) { Suspension = part };
        (Axle? front, Axle? rear) = end == AxleEnd.Front ? (axle, (Axle?)null) : (null, axle);
        return new("sample", "kit.json", new("car", [new("empty", reading, reading, reading, reading)], front, rear),
            end == AxleEnd.Front ? design : null, end == AxleEnd.Front ? null : design);
    }

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);
}
