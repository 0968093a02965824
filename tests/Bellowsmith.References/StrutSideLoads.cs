using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// What bends a MacPherson strut's rod, in one plane under 4000 N, the spring along the strut: DERIVED, not published (no worked example was
/// found). That the side force vanishes where the spring's line meets arm and load is [Barton Fieldhouse 2018, p. 185].
/// Tolerance 1e-4 of each value.
/// </summary>
public sealed class StrutSideLoads
{
    private static readonly LinkageState _rest = new Linkage(new MacPherson(new LinkageWheel(At(0, 760, 310), 0.310))
    {
        LowerArmFront = At(150, 370, 215),
        LowerArmRear = At(-150, 370, 215),
        LowerBallJoint = At(0, 715, 200),
        StrutTop = At(0, 580, 880),
        StrutAxisPoint = At(0, 715, 200),
        TieRodInner = At(-120, 370, 215),
        TieRodOuter = At(-120, 715, 200),
    }).Rest;

    private static readonly StrutSideLoad _load = StrutSideLoad.Of(_rest, 4000 * Point.Up)!;

    [Fact]
    public void Of_LoadInAPlane_IsTheClosedForm()
    {
        Near(1069.05, _load.LowerArm_N.Length);
        Near(-1068.04, _load.LowerArm_N.Y); // pulls inboard
        Near(4185.02, _load.Top_N.Length);
        Near(1068.04, _load.Top_N.Y);
        Near(-4046.44, _load.Top_N.Z);
        Near(4176.95, _load.Spring_N);
        Near(259.64, _load.Side_N.Length);
        Near(3.5569, _load.FreeTilt_rad!.Value * 180 / Math.PI);
        Assert.Equal(0, _load.TieRod_N, 1e-9);
        Assert.Equal(0, _load.Top_N.X, 1e-9);
    }

    [Fact] // arm line and wheel load meet at (760, 198.043); the free line runs from the top through there
    public void FreeDirection_InAPlane_RunsThroughTheMeetingOfArmAndLoad()
    {
        Point free = _load.FreeDirection!.Value;
        double along = (0.760 - 0.580) / free.Y;

        Near(198.043, (0.880 + along * free.Z) * 1e3);
    }

    [Fact]
    public void Of_SpringTiltedOntoTheFreeLine_LeavesNoSideLoad()
    {
        StrutSideLoad free = StrutSideLoad.Of(_rest, 4000 * Point.Up, line: new(At(0, 580, 880), _load.FreeDirection!.Value))!;

        Assert.Equal(0, free.Side_N.Length, 1e-9);
        Near(4185.02, free.Spring_N);
    }

    [Fact] // 250 mm from the mount to the guide, 180 mm on to the piston, rod of 22 mm
    public void Under_TheSideLoad_IsTheExample()
    {
        RodLoad rod = new StrutRod(0.022, 0.250, 0.180).Under(_load.Side_N.Length);

        Near(360.61, rod.Piston_N);
        Near(620.25, rod.Guide_N);
        Near(98.09, rod.Friction_N(0.1));
        Near(64.910, rod.Moment_Nm);
        Near(62.09, rod.Stress_Pa / 1e6);
    }

    [Fact] // DERIVED by hand: 259.64·0.25²·0.43/(3·206e9·1.14990e-8); half the diameter moves 16 times as far
    public void Deflection_OfTheExample_IsTheBeams()
    {
        Near(0.98191, new StrutRod(0.022, 0.250, 0.180).Deflection_m(259.64) * 1e3);
        Near(16 * 0.98191, new StrutRod(0.011, 0.250, 0.180).Deflection_m(259.64) * 1e3);
    }

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-4 * Math.Abs(expected));

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);
}
