using Bellowsmith.Physics.Numerics;
using CsCheck;

namespace Bellowsmith.Tests.Physics.Numerics;

public sealed class CholeskyTests
{
    [Fact]
    public void Factor_OfAKnownMatrix_IsItsFactor()
    {
        double[] matrix = [4, 0, 0, 12, 37, 0, -16, -43, 98]; // a textbook matrix: L = 2; 6 1; −8 5 3

        Assert.True(Cholesky.Factor(matrix, 3));

        Assert.Equal([2, 6, 1, -8, 5, 3], new[] { matrix[0], matrix[3], matrix[4], matrix[6], matrix[7], matrix[8] });
    }

    [Fact]
    public void Inverse_TimesTheMatrix_IsTheUnit() => Positive().Sample(matrix =>
    {
        var n = (int)Math.Sqrt(matrix.Length);
        double[] factor = [.. matrix], inverse = new double[n * n];
        Assert.True(Cholesky.Factor(factor, n));

        Cholesky.Inverse(factor, n, inverse);

        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
                Assert.Equal(i == j ? 1 : 0, Enumerable.Range(0, n).Sum(k => matrix[i * n + k] * inverse[k * n + j]), 1e-8);
    });

    [Fact]
    public void Solve_OfAProduct_IsTheVector() => Gen.Select(Positive(), Gen.Double[-3, 3].Array[12]).Sample((matrix, x) =>
    {
        var n = (int)Math.Sqrt(matrix.Length);
        var right = Enumerable.Range(0, n).Select(i => Enumerable.Range(0, n).Sum(k => matrix[i * n + k] * x[k])).ToArray();
        Cholesky.Factor(matrix, n);

        Cholesky.Solve(matrix, n, right);

        for (var i = 0; i < n; i++) Assert.Equal(x[i], right[i], 1e-8);
    });

    [Theory]
    [InlineData(1, 2, 1)] // indefinite
    [InlineData(1, 1, 1)] // singular
    [InlineData(-1, 0, 1)]
    public void Factor_NotPositiveDefinite_IsRefused(double a, double b, double c) =>
        Assert.False(Cholesky.Factor(new double[] { a, 0, b, c }, 2));

    [Fact]
    public void Dot_AnyLength_IsTheSum() => Gen.Double[-2, 2].Array[0, 19].Sample(a =>
        Assert.Equal(a.Sum(v => v * (v + 1)), Cholesky.Dot(a, [.. a.Select(v => v + 1)]), 1e-10));

    // BᵀB + I of a random B, both triangles.
    private static Gen<double[]> Positive() => Gen.Int[1, 12].SelectMany(n => Gen.Double[-2, 2].Array[n * n].Select(b =>
    {
        var matrix = new double[n * n];
        for (var i = 0; i < n; i++)
            for (var j = 0; j < n; j++)
                matrix[i * n + j] = (i == j ? 1 : 0) + Enumerable.Range(0, n).Sum(k => b[k * n + i] * b[k * n + j]);
        return matrix;
    }));
}
