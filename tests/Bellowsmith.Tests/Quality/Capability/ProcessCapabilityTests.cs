using Bellowsmith.Quality.Capability;
using CsCheck;

namespace Bellowsmith.Tests.Quality.Capability;

public sealed class ProcessCapabilityTests
{
    private static readonly Gen<double[]> _readings = Gen.Double[9, 11].Array[5, 60].Where(values => values.Max() - values.Min() > 1e-3);

    // Lognormal quantiles, median 10 and 0.6 of logarithm: skewed, and normal on the scale of λ = 0.
    private static readonly double[] _skewed = [.. Enumerable.Range(1, 60)
        .Select(i => 10 * Math.Exp(0.6 * MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (i - 0.5) / 60)))];

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(4)]
    public void Of_FewerThanFive_GivesAReasonAndNoIndex(int count)
    {
        ProcessCapability result = ProcessCapability.Of(new double[] { 1, 2, 3, 4 }.AsSpan(0, count), new(new(0, 5)));

        Assert.Equal(NoCapability.TooFew, result.Reason);
        Assert.Null(result.Indices);
        Assert.Null(result.IsShown);
    }

    [Fact]
    public void Of_EqualReadings_GivesAReason()
    {
        ProcessCapability result = ProcessCapability.Of([2, 2, 2, 2, 2, 2], new(new(0, 5)));

        Assert.Equal(NoCapability.AllEqual, result.Reason);
        Assert.Equal(2, result.Mean);
        Assert.Null(result.PartsNeeded);
    }

    [Fact]
    public void Of_OneLimit_HasNoCp()
    {
        ProcessCapability result = ProcessCapability.Of([1, 2, 3, 4, 5, 6], new(new(null, 9)));

        Assert.Null(result.Indices!.Cp);
        Assert.Null(result.Indices.Cpl);
        Assert.Equal(result.Indices.Cpu!.Value, result.Indices.Cpk.Value);
        Assert.Null(result.Tolerance!.Low);
    }

    [Fact]
    public void Of_SkewedReadings_BelievesThePowerScale()
    {
        ProcessCapability result = ProcessCapability.Of(_skewed, new(new(null, 60)));

        Assert.Equal(CapabilityBasis.Transformed, result.Basis);
        Assert.InRange(result.Transform!.Power, -0.1, 0.1);
        // ln 60 lies (ln 60 − ln 10)/0.6 = 2.99 deviations out, a good third of what normal parts would have.
        Assert.InRange(result.Transformed!.Cpk.Value, 0.95, 1.05);
        Assert.True(result.Indices!.Cpk.Value > 2 * result.Transformed.Cpk.Value);
    }

    [Fact]
    public void Of_SkewedReadingsFarFromZero_BelievesTheCount()
    {
        ProcessCapability result = ProcessCapability.Of(Array.ConvertAll(_skewed, value => value + 5000), new(new(null, 5060)));

        Assert.Equal(CapabilityBasis.Counted, result.Basis);
        Assert.Null(result.Transformed);
        Assert.Equal(result.Counted!.CpkShown, result.CpkShown);
        Assert.Equal(90678, result.PartsNeeded);
    }

    [Fact]
    public void Of_SkewedReadingsAllBeyond_ShowsNothingAndStaysFinite()
    {
        ProcessCapability result = ProcessCapability.Of(Array.ConvertAll(_skewed, value => value + 5000), new(new(null, 4000)));

        Assert.Null(result.CpkShown);
        Assert.False(result.IsShown);
        Assert.Equal(1, result.Counted!.ShareHigh);
    }

    [Fact]
    public void Of_ADriftingProcess_SaysThatReadingsDepend()
    {
        double[] drift = [.. Enumerable.Range(0, 30).Select(i => i + 0.5 * (i % 3))];

        Assert.True(ProcessCapability.Of(drift, new(new(-100, 100))).IsAutocorrelated);
        Assert.False(ProcessCapability.Of([.. drift.Select((_, i) => drift[i * 7 % 30])], new(new(-100, 100))).IsAutocorrelated);
    }

    [Fact]
    public void PartsNeeded_OfAProcessBelowTheWanted_IsNone()
    {
        ProcessCapability result = ProcessCapability.Of([1, 2, 3, 4, 5, 6, 7], new(new(0, 8)));

        Assert.True(result.Indices!.Cpk.Value < 1);
        Assert.Null(result.PartsNeeded);
        Assert.False(result.IsShown);
    }

    [Fact]
    public void Of_AnyOrder_GivesTheSameIndices() => Gen.Select(_readings, Gen.Int).Sample((values, seed) =>
    {
        double[] shuffled = [.. values];
        new Random(seed).Shuffle(shuffled);
        ProcessCapability one = ProcessCapability.Of(values, new(new(8, 12))), other = ProcessCapability.Of(shuffled, new(new(8, 12)));

        Assert.Equal(one.Indices!.Cpk.Value, other.Indices!.Cpk.Value, 1e-9 * Math.Abs(one.Indices.Cpk.Value));
        Assert.Equal(one.Basis, other.Basis);
        Assert.Equal(one.IsShown, other.IsShown);
    }, iter: 50);

    // 25.4 and 0: inches to millimetres; a power only stretches the scale.
    [Fact]
    public void Of_AnotherUnit_GivesTheSameVerdict() => _readings.Sample(values =>
    {
        ProcessCapability one = ProcessCapability.Of(values, new(new(8, 12, 10)));
        ProcessCapability other = ProcessCapability.Of(Array.ConvertAll(values, value => value * 25.4), new(new(8 * 25.4, 12 * 25.4, 254)));

        Assert.Equal(one.Indices!.Cpk.Value, other.Indices!.Cpk.Value, 1e-9 * Math.Abs(one.Indices.Cpk.Value));
        Assert.Equal(one.Indices.Cpm!.High, other.Indices.Cpm!.High, 1e-9 * one.Indices.Cpm.High);
        Assert.Equal(one.Basis, other.Basis);
        Assert.Equal(one.PartsNeeded, other.PartsNeeded);
    }, iter: 50);

    // A batch of 10 normal parts whose true index is 1.33 is to prove more than that in 5 of 100; 1000 batches put that within 1.4 (two deviations).
    [Fact]
    public void CpkShown_OverManyBatches_HoldsItsConfidence()
    {
        Random random = new(11);
        int held = 0;
        for (int batch = 0; batch < 1000; batch++)
        {
            double[] parts = [.. Enumerable.Range(0, 10).Select(_ => MathNet.Numerics.Distributions.Normal.Sample(random, 0, 1))];
            ProcessCapability result = ProcessCapability.Of(parts, new(new(null, 3.99)));
            if (result.Indices!.CpkShown <= 1.33) held++;
        }

        Assert.InRange(held, 936, 964);
    }

    // What a bound says of itself: putting the index it shows back asks for the one that was seen.
    [Fact]
    public void IndexNeeded_ForTheIndexShown_IsTheOneSeen() => Gen.Select(Gen.Double[-1, 4], Gen.Int[2, 300]).Sample((index, count) =>
        Assert.Equal(index, NoncentralBound.IndexNeeded(NoncentralBound.IndexShown(index, count, 0.95), count, 0.95), 1e-8 * (1 + Math.Abs(index))), iter: 100);
}
