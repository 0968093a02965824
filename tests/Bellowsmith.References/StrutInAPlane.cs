using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A MacPherson strut in one plane, its axis through the ball joint, arm axis along the car: closed form, DERIVED, not published.
/// Tolerance 1e-5 of mm and degrees.
/// </summary>
public sealed class StrutInAPlane
{
    private static readonly Linkage _linkage = new(new MacPherson(new LinkageWheel(At(0, 760, 310), 0.310))
    {
        LowerArmFront = At(150, 370, 215),
        LowerArmRear = At(-150, 370, 215),
        LowerBallJoint = At(0, 715, 200),
        StrutTop = At(0, 580, 880),
        StrutAxisPoint = At(0, 715, 200),
        TieRodInner = At(-120, 370, 215),
        TieRodOuter = At(-120, 715, 200),
    });

    [Theory]
    [InlineData(-60, 1.449633, -4.88954, -12.73197)]
    [InlineData(-30, 0.654324, -1.29730, -4.83746)]
    [InlineData(30, -0.498799, -0.94268, 1.75604)]
    [InlineData(60, -0.819187, -4.11342, 0.31866)]
    public void At_Travel_IsTheClosedForm(double travel_mm, double camber_deg, double centreOut_mm, double contactOut_mm)
    {
        LinkageState state = _linkage.At(travel_mm * 1e-3).State!;

        Assert.Equal(camber_deg, state.Camber_rad * 180 / Math.PI, 1e-5);
        Assert.Equal(centreOut_mm, state.WheelCentre.Y * 1e3 - 760, 1e-5);
        Assert.Equal(contactOut_mm, state.Knuckle.At(At(0, 760, 0)).Y * 1e3 - 760, 1e-5);
        Assert.Equal(0, state.Toe_rad, 1e-12);
    }

    [Fact]
    public void InstantCentre_AtRest_IsTheClosedForm()
    {
        Point centre = 1e3 * _linkage.Rest.FrontInstantCentre;

        Assert.Equal(-2205.5746, centre.Y, 1e-4);
        Assert.Equal(326.9815, centre.Z, 1e-4);
        Assert.Equal(83.797, _linkage.Rest.RollCentreHeight_m * 1e3, 1e-3);
        Assert.Equal(-0.0193203, _linkage.Rest.CamberSlope_rad_per_m * 180 / Math.PI * 1e-3, 1e-7);
    }

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);
}
