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
}
