using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class RoadProfileTests
{
    private const double ThirdOfAnOctave = 1.2599210498948732;

    [Theory] // Gd(n) = 256e-6·(0.1/n)² for class C: in every third of an octave within 1 dB, the whole falling with −2 ± 0.1
    [InlineData(RoadClass.A, 16e-6, 1)]
    [InlineData(RoadClass.C, 256e-6, 1)]
    [InlineData(RoadClass.C, 256e-6, 99)]
    [InlineData(RoadClass.H, 262144e-6, 7)]
    public void Fill_OfAClass_HasItsSpectrum(RoadClass roadClass, double reference, ulong seed)
    {
        const double spacing_m = 0.02;
        var road = new double[1 << 20]; // 21 km
        RoadProfile.Fill(road, spacing_m, roadClass, seed);
        const int segment = 1 << 15;
        var density = Spectrum.Density(road, spacing_m, segment);
        List<(double Frequency, double Excess_dB)> bands = [];
        for (var n = 0.0115; n * ThirdOfAnOctave < 9.9; n *= ThirdOfAnOctave)
        {
            var (first, last) = ((int)Math.Ceiling(n * segment * spacing_m), (int)(n * ThirdOfAnOctave * segment * spacing_m));
            var excess = Enumerable.Range(first, last - first + 1).Average(k => density[k] / (reference * Math.Pow(0.1 * segment * spacing_m / k, 2)));
            bands.Add((Math.Log10(n), 10 * Math.Log10(excess)));
        }

        Assert.Equal(29, bands.Count);
        Assert.All(bands, band => Assert.InRange(band.Excess_dB, -1, 1));
        var centre = bands.Average(band => band.Frequency);
        var slope = bands.Sum(band => (band.Frequency - centre) * band.Excess_dB / 10) / bands.Sum(band => Math.Pow(band.Frequency - centre, 2));
        Assert.InRange(slope, -0.1, 0.1);
        Assert.True(density[(int)(12 * segment * spacing_m)] < 0.01 * reference * Math.Pow(0.1 / 12, 2), "Nothing beyond the band.");
    }

    [Fact] // variance of the band: Gd(n0)·n0²·(1/0.01 − 1/10) = 256e-6·0.01·99.9 m², for class C
    public void Fill_OfAClass_IsGaussianWithTheBandsVariance()
    {
        var road = new double[50_000]; // 5 km
        RoadProfile.Fill(road, 0.1, RoadClass.C, 5);
        var variance = road.Average(z => z * z);

        Assert.Equal(0, road.Average(), 1e-6);
        Assert.Equal(2.557e-4, variance, 0.03 * 2.557e-4);
        Assert.Equal(0, road.Average(z => z * z * z) / Math.Pow(variance, 1.5), 0.25);
        Assert.Equal(3, road.Average(z => z * z * z * z) / (variance * variance), 0.35);
    }

    [Fact] // the same 1200 m, read coarsely and finely
    public void Fill_SameSeedOtherSpacing_IsTheSameRoad()
    {
        double[] coarse = new double[1200], fine = new double[48_000];
        RoadProfile.Fill(coarse, 1, RoadClass.B, 11);
        RoadProfile.Fill(fine, 0.025, RoadClass.B, 11);

        Assert.All(coarse.Index(), at => Assert.Equal(at.Item, fine[40 * at.Index], 1e-12));
    }

    [Fact]
    public void Fill_OtherSeed_IsAnotherRoad()
    {
        double[] one = new double[4000], other = new double[4000];
        RoadProfile.Fill(one, 0.5, RoadClass.B, 1);
        RoadProfile.Fill(other, 0.5, RoadClass.B, 2);

        Assert.InRange(Correlation(one, other), -0.6, 0.6);
    }

    [Fact] // no shift from 100 m to half of its length lays the road on itself
    public void Fill_WithinItsLength_DoesNotRepeat()
    {
        var road = new double[8000];
        RoadProfile.Fill(road, 0.5, RoadClass.B, 1);

        Assert.All(Enumerable.Range(4, 76).Select(i => 50 * i), shift => Assert.True(Correlation(road[shift..], road[..^shift]) < 0.7));
    }

    [Fact] // the next class is twice as high, wave for wave
    public void Fill_NextClass_IsTwiceAsHigh() => Gen.ULong.Sample(seed =>
    {
        double[] a = new double[300], b = new double[300];
        RoadProfile.Fill(a, 0.3, RoadClass.A, seed);
        RoadProfile.Fill(b, 0.3, RoadClass.B, seed);
        Assert.All(a.Zip(b), pair => Assert.Equal(2 * pair.First, pair.Second, 1e-14));
    }, iter: 20);

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(1000)]
    public void Fill_SpacingOutOfRange_Throws(double spacing_m) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RoadProfile.Fill(new double[1000], spacing_m, RoadClass.A, 1));

    [Fact] // velocity of 2e-3 (m/s)²/Hz; 2 ms steps hold it level within 1 % to 27 Hz. 2343 averages scatter by 2.3 %
    public void FillWhiteVelocity_Spectrum_IsLevel()
    {
        var road = new double[600_001];
        RoadProfile.FillWhiteVelocity(road, 0.002, 2e-3, 4);
        double[] velocity = [.. road.Zip(road.Skip(1)).Select(pair => (pair.Second - pair.First) / 0.002)];
        var density = Spectrum.Density(velocity, 0.002, 512);

        Assert.Equal(2e-3, density[4..250].Average(), 1.5e-5);
        Assert.All(density[4..250], at => Assert.InRange(at, 1.75e-3, 2.25e-3));
        Assert.Equal(0, road[0]);
    }

    [Fact] // a wave of 1 m under a patch of 0.1 m keeps sin(0.1π)/(0.1π) = 0.983632 of its height, one of 0.1 m nothing
    public void Envelop_OfWaves_IsTheSinc()
    {
        double[] longWave = [.. Enumerable.Range(0, 20_000).Select(i => Math.Sin(2 * Math.PI * i / 1000))];
        double[] shortWave = [.. Enumerable.Range(0, 20_000).Select(i => Math.Sin(2 * Math.PI * i / 100))];
        RoadProfile.Envelop(longWave, 0.001);
        RoadProfile.Envelop(shortWave, 0.001);

        Assert.Equal(0.983632, longWave[10_250], 1e-5);
        Assert.All(shortWave[100..^100], z => Assert.Equal(0, z, 1e-5));
    }

    [Fact] // a step between 10.00 and 10.01 m becomes a ramp of the patch's length about it
    public void Envelop_OfAStep_IsARamp()
    {
        var road = new double[2000];
        Obstacle.Step(0.05).AddTo(road, 0.01, 10.005);
        RoadProfile.Envelop(road, 0.01, 0.2);

        Assert.Equal([0, 0.02375, 0.02625, 0.05], [Near(road[980]), Near(road[1000]), Near(road[1001]), Near(road[1020])]);
    }

    [Fact]
    public void Envelop_LevelRoad_StaysLevel() => Gen.Select(Gen.Double[-1, 1], Gen.Double[0.001, 3], Gen.Double[0.01, 2]).Sample((z, spacing, patch) =>
    {
        double[] road = [z, z, z, z, z];
        RoadProfile.Envelop(road, spacing, patch);
        Assert.All(road, at => Assert.Equal(z, at, 1e-12));
    });

    private static double Near(double value) => Math.Round(value, 12);

    private static double Correlation(double[] a, double[] b)
    {
        double meanA = a.Average(), meanB = b.Average();
        return a.Zip(b, (x, y) => (x - meanA) * (y - meanB)).Sum()
            / Math.Sqrt(a.Sum(x => (x - meanA) * (x - meanA)) * b.Sum(y => (y - meanB) * (y - meanB)));
    }
}
