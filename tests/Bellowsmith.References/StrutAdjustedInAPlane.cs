using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// The MacPherson strut in one plane with its adjusters moved and its wheel centre held at its height: the arm turns about its pivot, the
/// strut's line runs from the ball joint to the moved top, one root of the height. DERIVED, not published; solved with 40 digits outside this
/// program. Tolerance 1e-5 of mm and degrees.
/// </summary>
public sealed class StrutAdjustedInAPlane
{
    private static readonly MacPherson _strut = new(new LinkageWheel(At(0, 760, 310), 0.310))
    {
        LowerArmFront = At(150, 370, 215),
        LowerArmRear = At(-150, 370, 215),
        LowerBallJoint = At(0, 715, 200),
        StrutTop = At(0, 580, 880),
        StrutAxisPoint = At(0, 667.75, 438),
        TieRodInner = At(-120, 370, 215),
        TieRodOuter = At(-120, 715, 200),
    };

    [Theory]
    [InlineData(-14, -1.11222932296, -2.18180395641, -0.852763104796, 696.957762667)]
    [InlineData(-7, -0.557482881213, -1.09148538267, -0.432632248474, 695.087870802)]
    [InlineData(6, 0.479980868508, 0.9362546458, 0.380831465023, 691.756772365)]
    [InlineData(20, 1.60741304659, 3.12218864992, 1.30557930264, 688.377517257)]
    public void Adjusted_TopMoved_IsTheClosedForm(double outward_mm, double camber_deg, double centreOut_mm, double jointUp_mm, double jointToTop_mm)
    {
        MacPherson now = Put(new Adjustment { StrutTopOutward_m = outward_mm * 1e-3 });

        Assert.Equal(camber_deg, Degrees(now.Wheel.Camber_rad), 1e-5);
        Assert.Equal(centreOut_mm, now.Wheel.Centre.Y * 1e3 - 760, 1e-5);
        Assert.Equal(jointUp_mm, now.LowerBallJoint.Z * 1e3 - 200, 1e-5);
        Assert.Equal(jointToTop_mm, (now.StrutTop - now.LowerBallJoint).Length * 1e3, 1e-5);
        Assert.Equal(0, now.Wheel.Toe_rad, 1e-12);
    }

    [Theory] // against the strut by the angle, about a bolt at (672, 430)
    [InlineData(-1.5, -0.979453551182, -1.92046865051)]
    [InlineData(1, 0.652150872694, 1.27128506559)]
    [InlineData(2, 1.30373517008, 2.53527270439)]
    public void Adjusted_KnuckleTurned_IsTheClosedForm(double turned_deg, double camber_deg, double centreOut_mm)
    {
        MacPherson now = Put(new Adjustment { KnuckleTurned_rad = turned_deg * Math.PI / 180, KnucklePivot = At(0, 672, 430) });

        Assert.Equal(camber_deg, Degrees(now.Wheel.Camber_rad), 1e-5);
        Assert.Equal(centreOut_mm, now.Wheel.Centre.Y * 1e3 - 760, 1e-5);
    }

    private static MacPherson Put(Adjustment by) => (MacPherson)_strut.Adjusted(by).Suspension!;

    private static double Degrees(double angle_rad) => angle_rad * 180 / Math.PI;

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);
}
