using System.Numerics;
using Bellowsmith.Physics.Numerics;
using CsCheck;

namespace Bellowsmith.Tests.Physics.Numerics;

public sealed class FourierTests
{
    private static readonly Gen<(double[] Real, double[] Imaginary)> _signals =
        Gen.Int[0, 6].SelectMany(power => Gen.Select(Gen.Double[-1, 1].Array[1 << power], Gen.Double[-1, 1].Array[1 << power]));

    [Fact]
    public void Transform_AnySignal_IsTheSumItStandsFor() => _signals.Sample((real, imaginary) =>
    {
        var sums = Enumerable.Range(0, real.Length).Select(k => Enumerable.Range(0, real.Length).Aggregate(Complex.Zero, (sum, j) =>
            sum + new Complex(real[j], imaginary[j]) * Complex.FromPolarCoordinates(1, -2 * Math.PI * j * k / real.Length))).ToArray();
        Fourier.Transform(real, imaginary);

        Assert.All(sums.Index(), at => Assert.True((at.Item - new Complex(real[at.Index], imaginary[at.Index])).Magnitude < 1e-12));
    });

    [Fact]
    public void Transform_ThereAndBackWithPartsExchanged_IsTheLengthTimesTheSignal() => _signals.Sample((real, imaginary) =>
    {
        double[] x = [.. real], y = [.. imaginary];
        Fourier.Transform(x, y);
        Fourier.Transform(y, x);

        Assert.All(x.Zip(real), pair => Assert.Equal(pair.Second * real.Length, pair.First, 1e-12));
    });

    [Fact] // twenty halvings of an angle have lost nothing
    public void Roots_OfAMillion_AreCosineAndSine()
    {
        var (cos, sin) = Fourier.Roots(1 << 19);
        int[] places = [1, 2, 3, 77_777, 262_143, 262_144, 500_001, 524_287];

        Assert.All(places, j => Assert.Equal(Math.Cos(Math.PI * j / (1 << 19)), cos[j], 5e-15));
        Assert.All(places, j => Assert.Equal(Math.Sin(Math.PI * j / (1 << 19)), sin[j], 5e-15));
    }

    [Fact]
    public void Transform_LengthNoPowerOfTwo_Throws() => Assert.Throws<ArgumentException>(() => Fourier.Transform(new double[12], new double[12]));
}
