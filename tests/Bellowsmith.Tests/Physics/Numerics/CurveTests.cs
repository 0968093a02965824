using Bellowsmith.Physics.Numerics;
using CsCheck;

namespace Bellowsmith.Tests.Physics.Numerics;

public sealed class CurveTests
{
    private static readonly Gen<double[]> _ascending = Gen.Double[0.05, 2].Array[4, 12].Select(Accumulate);

    [Fact]
    public void Through_PointsOfACubic_IsTheCubic() => Gen.Select(_ascending, Gen.Double[-3, 3].Array[4]).Sample((x, c) =>
    {
        var curve = SmoothCurve.Through(x, [.. x.Select(Value)]);

        for (var k = 0; k <= 20; k++)
        {
            var at = x[0] + (x[^1] - x[0]) * k / 20;
            var (value, slope, curvature) = curve.At(at);
            Near(Value(at), value);
            Near(c[1] + 2 * c[2] * at + 3 * c[3] * at * at, slope);
            Near(2 * c[2] + 6 * c[3] * at, curvature);
        }

        double Value(double at) => c[0] + c[1] * at + c[2] * at * at + c[3] * at * at * at;
        static void Near(double expected, double found) => Assert.Equal(expected, found, 1e-6 * (1 + Math.Abs(expected)));
    });

    [Fact]
    public void Through_TwoPoints_IsALine()
    {
        var (value, slope, curvature) = SmoothCurve.Through([1, 3], [10, 20]).At(2.5);

        Assert.Equal(17.5, value, 1e-12);
        Assert.Equal(5, slope, 1e-12);
        Assert.Equal(0, curvature, 1e-12);
    }

    [Theory] // y = 2 − 3x + 4x² through unevenly spaced points
    [InlineData(0.5, 1.5, 1.0)]
    [InlineData(2.5, 19.5, 17.0)]
    public void Through_ThreePoints_IsTheParabola(double x, double value, double slope)
    {
        var at = SmoothCurve.Through([0, 1, 3], [2, 3, 29]).At(x);

        Assert.Equal(value, at.Value, 1e-12);
        Assert.Equal(slope, at.Slope, 1e-12);
        Assert.Equal(8, at.Curvature, 1e-12);
    }

    [Fact]
    public void Through_OnePoint_Throws() => Assert.Throws<ArgumentException>(() => SmoothCurve.Through([1], [1]));

    [Fact]
    public void Integral_OfACubic_IsItsIntegral()
    {
        var integral = SmoothCurve.Through([0, 1, 2, 3], [0, 1, 8, 27]).Integral(atStart: 5); // x³

        Assert.Equal(5, integral.At(0).Value, 1e-12);
        Assert.Equal(5 + 81.0 / 4, integral.At(3).Value, 1e-12);
        Assert.Equal(1.5 * 1.5 * 1.5, integral.At(1.5).Slope, 1e-12);
        Assert.Equal(3 * 1.5 * 1.5, integral.At(1.5).Curvature, 1e-12);
    }

    [Fact]
    public void CubicBasis_AnyPlace_SumsToOne() => Gen.Select(Gen.Int[1, 16], Gen.Double[0, 1]).Sample((segments, share) =>
    {
        CubicBasis basis = new(2, 5, segments);
        Span<double> weights = stackalloc double[4];

        var first = basis.Weights(2 + 3 * share, weights);

        Assert.InRange(first, 0, segments - 1);
        Assert.Equal(1, weights[0] + weights[1] + weights[2] + weights[3], 1e-12);
        foreach (var weight in weights) Assert.InRange(weight, -1e-15, 1);
    });

    [Fact]
    public void CubicBasis_Curve_IsTheSumOfItsFunctions() => Gen.Select(Gen.Int[1, 8], Gen.Double[-2, 2].Array[11], Gen.Double[0, 1]).Sample((segments, c, share) =>
    {
        CubicBasis basis = new(-1, 2, segments);
        var row = new double[basis.Count];
        var x = -1 + 3 * share;
        basis.Scatter(x, 1, row);

        Assert.Equal(row.Zip(c, (w, v) => w * v).Sum(), basis.Curve(c.AsSpan(0, basis.Count)).At(x).Value, 1e-12);
    });

    private static double[] Accumulate(double[] steps)
    {
        var x = new double[steps.Length];
        for (var i = 1; i < x.Length; i++) x[i] = x[i - 1] + steps[i];
        return x;
    }
}
