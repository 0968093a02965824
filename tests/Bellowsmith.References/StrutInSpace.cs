using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A MacPherson strut in space, solved twice by independent programs, in closed form and by Newton, which agree to 2e-13: DERIVED, not
/// published. Tolerance 1e-5 of mm and degrees.
/// </summary>
public sealed class StrutInSpace
{
    private static readonly Linkage _linkage = new(new MacPherson(new LinkageWheel(At(0, 760, 310), 0.310))
    {
        LowerArmFront = At(10, 370, 215),
        LowerArmRear = At(-300, 380, 220),
        LowerBallJoint = At(-2, 715, 200),
        StrutTop = At(-25, 580, 880),
        StrutAxisPoint = At(-8, 650, 430),
        TieRodInner = At(-120, 360, 262),
        TieRodOuter = At(-135, 690, 250),
    });

    [Theory]
    [InlineData(-40, 0.789555, -0.177274, 10.320158, 1.770470, -6.76140, -0.63626, 493.63930)]
    [InlineData(-20, 0.360012, -0.072695, 10.806846, 1.852875, -2.69096, -0.27961, 474.79818)]
    [InlineData(0, 0, 0, 11.228892, 1.937207, 0, 0, 455.72909)]
    [InlineData(20, -0.285112, 0.037912, 11.581628, 2.023678, 1.29762, 0.19841, 436.40982)]
    [InlineData(40, -0.488154, 0.037261, 11.858731, 2.112505, 1.16982, 0.30995, 416.81729)]
    public void At_Travel_IsTheIndependentSolution(
        double travel_mm, double camber_deg, double toe_deg, double inclination_deg, double caster_deg, double contactOut_mm,
        double centreForward_mm, double strut_mm)
    {
        LinkageState state = _linkage.At(travel_mm * 1e-3).State!;

        Assert.Equal(camber_deg, Degrees(state.Camber_rad), 1e-5);
        Assert.Equal(toe_deg, Degrees(state.Toe_rad), 1e-5);
        Assert.Equal(inclination_deg, Degrees(state.Steering!.KingpinInclination_rad), 1e-5);
        Assert.Equal(caster_deg, Degrees(state.Steering.Caster_rad), 1e-5);
        Assert.Equal(contactOut_mm, state.TrackChange_m * 1e3, 1e-5);
        Assert.Equal(centreForward_mm, state.WheelForward_m * 1e3, 1e-5);
        Assert.Equal(strut_mm, state.Strut.Length_m * 1e3, 1e-5);
    }

    [Fact]
    public void Rest_SlopesAndSteering_AreTheIndependentSolution()
    {
        LinkageState rest = _linkage.Rest;

        Assert.Equal(5.2941, rest.Steering!.ScrubRadius_m * 1e3, 1e-4);
        Assert.Equal(4.7647, rest.Steering.MechanicalTrail_m * 1e3, 1e-4);
        Assert.Equal(-0.0161798, Degrees(rest.CamberSlope_rad_per_m) * 1e-3, 1e-7);
        Assert.Equal(0.0027927, Degrees(rest.ToeSlope_rad_per_m) * 1e-3, 1e-7);
        Assert.Equal(0.0999032, rest.TrackSlope, 1e-7);
        Assert.Equal(0.959521, rest.Strut.MotionRatio, 1e-6);
    }

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);

    private static double Degrees(double angle_rad) => angle_rad * 180 / Math.PI;
}
