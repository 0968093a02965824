using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A spring on a lever at c, the wheel at b: kw = ks·(c/b)² [Barton Fieldhouse 2018, eqs 3.29–3.33], READ. The strut
/// moves c/b of the wheel's travel.
/// </summary>
public sealed class StraightLever
{
    [Theory]
    [InlineData(2.0, 1.0, 0.25)] // b = 2c: a quarter of the spring rate, exactly
    [InlineData(1.0, 1.0, 1.0)]
    public void WheelRate_OfALever_IsTheSquareOfTheMotionRatio(double wheelArm_m, double springArm_m, double share)
    {
        const double springRate = 40_000;
        var ratio = MotionRatio.Constant(springArm_m / wheelArm_m).At(0);

        Assert.Equal(share * springRate, springRate * ratio * ratio);
    }

    [Theory] // the same as a trailing arm, wheel at b, upright spring at c, and the ratio stands still there: kw = ks·i² + F·di/dzw
    [InlineData(0.8, 0.4, 0.25)]
    [InlineData(0.6, 0.6, 1.0)]
    public void WheelRate_OfATrailingArm_IsTheSquareOfItsArms(double wheelArm_m, double springArm_m, double share)
    {
        const double springRate = 40_000, force = 6000;
        StrutState strut = new Linkage(new TrailingArm(new LinkageWheel(new(-wheelArm_m, 0.7, 0.3), 0.3))
        {
            PivotOuter = new(0, 0.6, 0.3),
            PivotInner = new(0, 0.2, 0.3),
            StrutTop = new(-springArm_m, 0.5, 0.7),
            StrutBottom = new(-springArm_m, 0.5, 0.3),
        }).Rest.Strut;

        Assert.Equal(share * springRate, springRate * strut.MotionRatio * strut.MotionRatio + force * strut.MotionRatioSlope_per_m, 1e-9);
    }
}
