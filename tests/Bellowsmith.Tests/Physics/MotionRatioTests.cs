using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class MotionRatioTests
{
    private static readonly double[] _wheel = [.. Enumerable.Range(-8, 17).Select(k => k * 0.01)];

    [Fact] // s = 0.65·z − 0.8·z²: i = 0.65 − 1.6·z, di/dz = −1.6 1/m
    public void FromTable_QuadraticTable_GivesRatioAndItsSlope()
    {
        var ratio = MotionRatio.FromTable(_wheel, [.. _wheel.Select(Quadratic)]);

        foreach (var z in new[] { -0.08, -0.033, 0, 0.05, 0.08 })
        {
            Assert.Equal(0.65 - 1.6 * z, ratio.At(z), 1e-6);
            Assert.Equal(-1.6, ratio.SlopeAt(z), 1e-4);
            Assert.Equal(Quadratic(z), ratio.StrutTravel_m(z), 1e-8);
        }
    }

    [Fact] // read to 0.1 mm
    public void FromTable_ReadToATenthOfAMillimetre_StaysSmooth()
    {
        var ratio = MotionRatio.FromTable(_wheel, [.. _wheel.Select(z => Math.Round(Quadratic(z), 4))]);

        foreach (var z in new[] { -0.05, 0, 0.05 })
        {
            Assert.Equal(0.65 - 1.6 * z, ratio.At(z), 0.003);
            Assert.Equal(-1.6, ratio.SlopeAt(z), 0.15);
        }
    }

    [Fact]
    public void FromTable_OffsetAndAnyOrder_CountsFromWheelTravelZero()
    {
        double[] shuffled = [.. _wheel];
        new Random(1).Shuffle(shuffled);

        var ratio = MotionRatio.FromTable(shuffled, [.. shuffled.Select(z => Quadratic(z) + 0.012)]);

        Assert.Equal(0, ratio.StrutTravel_m(0), 1e-12);
        Assert.Equal(Quadratic(0.06), ratio.StrutTravel_m(0.06), 1e-7);
    }

    [Fact]
    public void WheelTravel_OfStrutTravel_IsTheInverse() => Gen.Double[-0.3, 0.3].Sample(z =>
    {
        foreach (var ratio in new[] { MotionRatio.Constant(0.62), MotionRatio.FromTable(_wheel, [.. _wheel.Select(Quadratic)]) })
            Assert.Equal(z, ratio.WheelTravel_m(ratio.StrutTravel_m(z)), 1e-9);
    });

    [Fact] // beyond the table the ratio stays as it was there: 0.65 − 1.6·0.08 = 0.522
    public void At_BeyondTheTable_StaysAsAtItsEnd()
    {
        var ratio = MotionRatio.FromTable(_wheel, [.. _wheel.Select(Quadratic)]);

        Assert.Equal(0.522, ratio.At(0.2), 1e-6);
        Assert.Equal(0, ratio.SlopeAt(0.2));
        Assert.Equal(Quadratic(0.08) + 0.522 * 0.12, ratio.StrutTravel_m(0.2), 1e-6);
        Assert.False(ratio.Covers(0.2));
        Assert.True(ratio.Covers(0.08));
    }

    [Fact]
    public void WheelTravel_OutOfReach_IsNotANumber() =>
        Assert.Equal(double.NaN, MotionRatio.FromTable(_wheel, [.. _wheel.Select(Quadratic)]).WheelTravel_m(2));

    [Fact]
    public void FromTable_ThreeWheelTravels_Throws()
    {
        Assert.Throws<ArgumentException>(() => MotionRatio.FromTable([-0.05, 0, 0.05], [-0.03, 0, 0.03]));
        Assert.Throws<ArgumentException>(() => MotionRatio.FromTable([-0.05, -0.05, 0.05, 0.05], [-0.03, -0.03, 0.03, 0.03]));
    }

    [Fact]
    public void FromTable_DriveHeightOutside_Throws() =>
        Assert.Throws<ArgumentException>(() => MotionRatio.FromTable([0.01, 0.02, 0.03, 0.04], [0.01, 0.02, 0.03, 0.04]));

    private static double Quadratic(double z) => 0.65 * z - 0.8 * z * z;
}
