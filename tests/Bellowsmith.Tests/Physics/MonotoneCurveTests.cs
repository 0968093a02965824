using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class MonotoneCurveTests
{
    private static readonly Gen<(double[] X, double[] Y)> _points = Gen.Select(
        Gen.Double[0.01, 2].Array[2, 12], Gen.OneOf(Gen.Const(0.0), Gen.Double[0, 50]).Array[12],
        (steps, rises) => (Sums(steps), Sums(rises[..steps.Length])));

    [Fact]
    public void Through_RisingPoints_MeetsThemAndNeverFalls() => _points.Sample(points =>
    {
        var (x, y) = points;
        var curve = MonotoneCurve.Through(x, y);

        for (var i = 0; i < x.Length; i++) Assert.Equal(y[i], curve.At(x[i]).Value, 1e-9 * (1 + y[^1]));
        for (var k = -20; k <= 220; k++)
            Assert.InRange(curve.At(x[0] + (x[^1] - x[0]) * k / 200).Slope, -1e-9 * (1 + y[^1]), double.MaxValue);
    });

    [Fact]
    public void At_BothSidesOfAPoint_ValueAndSlopeAreContinuous() => _points.Sample(points =>
    {
        var (x, y) = points;
        var curve = MonotoneCurve.Through(x, y);

        for (var i = 0; i < x.Length; i++)
        {
            var (before, after) = (curve.At(x[i] - 1e-9), curve.At(x[i] + 1e-9));
            Assert.Equal(before.Value, after.Value, 1e-4 * (1 + y[^1]));
            Assert.Equal(before.Slope, after.Slope, 1e-3 * (1 + y[^1]));
            Assert.Equal(curve.Slopes[i], curve.At(x[i]).Slope, 1e-9 * (1 + y[^1]));
        }
    });

    [Theory] // points of 3x + 1, and a straight continuation
    [InlineData(-2, -5, 3)]
    [InlineData(0.7, 3.1, 3)]
    [InlineData(9, 28, 3)]
    public void Through_PointsOfALine_IsTheLine(double x, double value, double slope)
    {
        var at = MonotoneCurve.Through([0, 1, 1.5, 4], [1, 4, 5.5, 13]).At(x);

        Assert.Equal(value, at.Value, 1e-12);
        Assert.Equal(slope, at.Slope, 1e-12);
    }

    [Fact] // a parabola is met exactly where its slopes need no limit
    public void Through_PointsOfAParabola_IsTheParabola()
    {
        var at = MonotoneCurve.Through([1, 2, 4], [1, 4, 16]).At(3);

        Assert.Equal(9, at.Value, 1e-12);
        Assert.Equal(6, at.Slope, 1e-12);
    }

    [Theory]
    [InlineData(-1, -0.5, 0.5)]
    [InlineData(3, 24, 20)]
    public void At_BeyondTheEnds_GoesOnByTheGivenSlope(double x, double value, double slope)
    {
        var curve = MonotoneCurve.Through([0, 1, 2], [0, 1, 4], slopeBelow: 0.5, slopeAbove: 20);

        Assert.Equal((value, slope), curve.At(x));
        Assert.InRange(curve.Slopes[^1], 0, 9.0000001);
    }

    [Theory]
    [InlineData(new double[] { 0 }, new double[] { 0 })]
    [InlineData(new double[] { 0, 0 }, new double[] { 0, 1 })]
    [InlineData(new double[] { 0, 1 }, new double[] { 1, 0 })]
    [InlineData(new double[] { 0, double.NaN }, new double[] { 0, 1 })]
    [InlineData(new double[] { 0, 1 }, new double[] { 0, double.PositiveInfinity })]
    public void Through_PointsThatAreNoCurve_Throws(double[] x, double[] y) =>
        Assert.Throws<ArgumentException>(() => MonotoneCurve.Through(x, y));

    private static double[] Sums(double[] steps)
    {
        var sums = new double[steps.Length];
        for (var i = 1; i < sums.Length; i++) sums[i] = sums[i - 1] + steps[i];
        return sums;
    }
}
