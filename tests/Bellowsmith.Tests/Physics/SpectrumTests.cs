using Bellowsmith.Physics;
using Bellowsmith.Physics.Numerics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class SpectrumTests
{
    [Fact] // variance 1 spread evenly to 50 Hz is 0.02 per hertz; 511 averages scatter by 5 %, their mean over 120 entries by 0.5 %
    public void Density_OfWhiteNoise_IsLevel()
    {
        SplitMix64 random = new(3);
        double[] noise = [.. Enumerable.Range(0, 65_536).Select(_ => random.Normal())];
        var density = Spectrum.Density(noise, 0.01, 256);

        Assert.Equal(129, density.Length);
        Assert.Equal(0.02, density[4..124].Average(), 0.0005);
        Assert.All(density[4..124], at => Assert.InRange(at, 0.015, 0.025));
    }

    [Fact] // a sine of amplitude 3 has variance 4.5, all of it at its own frequency and the two beside it
    public void Density_OfASine_HoldsItsVariance()
    {
        double[] sine = [.. Enumerable.Range(0, 4096).Select(i => 7 + 3 * Math.Sin(2 * Math.PI * i / 16))];
        var density = Spectrum.Density(sine, 0.01, 512);

        Assert.Equal(4.5, density.Sum() / (512 * 0.01), 1e-9);
        Assert.Equal(4.5, density[31..34].Sum() / (512 * 0.01), 1e-9);
    }

    [Fact] // the same readings called ten times as far apart: a tenth of the frequency, ten times the density; twice as large: four times
    public void Density_OtherUnits_Scales() => Gen.Double[-1, 1].Array[64, 200].Sample(readings =>
    {
        var (near, far) = (Spectrum.Density(readings, 1, 32), Spectrum.Density([.. readings.Select(x => 2 * x)], 10, 32));
        Assert.All(near.Zip(far), pair => Assert.Equal(40 * pair.First, pair.Second, 1e-12 * (1 + pair.Second)));
    });

    [Fact]
    public void Density_AllEqual_IsZero() => Assert.All(Spectrum.Density(Enumerable.Repeat(5.0, 64).ToArray(), 1, 32), at => Assert.Equal(0, at, 1e-25));

    [Theory]
    [InlineData(31, 32)]
    [InlineData(100, 30)]
    [InlineData(100, 2)]
    public void Density_TooFewOrNoPowerOfTwo_Throws(int readings, int segment) =>
        Assert.Throws<ArgumentException>(() => Spectrum.Density(new double[readings], 1, segment));
}
