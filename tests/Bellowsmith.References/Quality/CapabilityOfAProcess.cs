using Bellowsmith.Quality.Capability;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Limits 8 and 20, mean 16, standard deviation 2, target 14 [NIST Handbook 2012, section 6.1.6], second-hand, recomputed; intervals by
/// the handbook's formulas; bounds of one side from the noncentral t and the fallout's from the same, computed with SciPy 1.10.1.
/// </summary>
public sealed class CapabilityOfAProcess
{
    private static readonly SpecificationLimits _limits = new(8, 20, 14);

    [Theory]
    [InlineData(30, 0.74387317, 1.25563950, 0.45770712, 0.87562621)]
    [InlineData(50, 0.80248233, 1.19712593, 0.50555131, 0.82778202)]
    [InlineData(100, 0.86082577, 1.13894328, 0.55312773, 0.78020561)]
    public void Indices_OfTheHandbooksProcess_AreTheirs(int count, double cpLow, double cpHigh, double cpkLow, double cpkHigh)
    {
        CapabilityIndices indices = CapabilityIndices.Of(count, 16, 2, _limits);

        Assert.Equal(1, indices.Cp!.Value, 1e-12);
        Assert.Equal(0.66666667, indices.Cpu!.Value, 1e-8);
        Assert.Equal(1.33333333, indices.Cpl!.Value, 1e-8);
        Assert.Equal(0.66666667, indices.Cpk.Value, 1e-8);
        Assert.Equal(0.70710678, indices.Cpm!.Value, 1e-8);
        Assert.Equal(cpLow, indices.Cp.Low, 1e-8);
        Assert.Equal(cpHigh, indices.Cp.High, 1e-8);
        Assert.Equal(cpkLow, indices.Cpk.Low, 1e-8);
        Assert.Equal(cpkHigh, indices.Cpk.High, 1e-8);
        Assert.Equal(0.0227818032, Fallout.Of(indices).Total, 1e-10);
    }

    [Theory]
    [InlineData(30, 0.5535170609007036, 0.8603879965219426)]
    [InlineData(50, 0.587671389098799, 0.8263192515659382)]
    [InlineData(100, 0.6224208809629741, 0.7916669277626661)]
    public void Cpm_AboutATarget_HasItsInterval(int count, double low, double high)
    {
        IndexEstimate cpm = CapabilityIndices.Of(count, 16, 2, _limits).Cpm!;

        Assert.Equal(low, cpm.Low, 1e-9);
        Assert.Equal(high, cpm.High, 1e-9);
    }

    // 30 parts at 1.33 show only 1.02; the normal approximation says 1.02845784 and 1.09861548.
    [Theory]
    [InlineData(30, 1.02420362)]
    [InlineData(50, 1.09587612)]
    [InlineData(100, 1.16665523)]
    public void CpkShown_OfFourThirds_IsTheNoncentralBound(int count, double shown) =>
        Assert.Equal(shown, CapabilityIndices.Of(count, 0, 0.25, new(null, 1)).CpkShown, 1e-8);

    [Theory]
    [InlineData(30, 0.0033347052125517604, 0.10230997587985209, 0.004411893775334965, 0.08545838777604292)]
    [InlineData(50, 0.0053764160412659665, 0.07502457602197674, 0.006591771625780749, 0.06501564949050526)]
    [InlineData(100, 0.008457284607553014, 0.054093636645088414, 0.00968167750654161, 0.048670551027474765)]
    public void Fallout_OfTheHandbooksProcess_HasItsInterval(int count, double low, double high, double oneSidedLow, double oneSidedHigh)
    {
        Fallout both = Fallout.Of(CapabilityIndices.Of(count, 16, 2, _limits)), upper = Fallout.Of(CapabilityIndices.Of(count, 16, 2, new(null, 20)));

        Assert.Equal(low, both.Low, 1e-10);
        Assert.Equal(high, both.High, 1e-10);
        Assert.Equal(oneSidedLow, upper.Low, 1e-10);
        Assert.Equal(oneSidedHigh, upper.High, 1e-10);
    }

    [Theory]
    [InlineData(1.4, 609)]
    [InlineData(1.5, 119)]
    [InlineData(1.67, 38)]
    [InlineData(2, 15)]
    public void PartsNeeded_ToShow133_AreTheNoncentralOnes(double index, int parts) =>
        Assert.Equal(parts, NoncentralBound.PartsNeeded(index, 1.33, 0.95));

    [Theory]
    [InlineData(30, 1.7197953982808516)]
    [InlineData(40, 1.6538877376450893)]
    [InlineData(50, 1.6119855872141005)]
    public void IndexNeeded_ToShow133_IsTheNoncentralQuantile(int count, double index) =>
        Assert.Equal(index, NoncentralBound.IndexNeeded(1.33, count, 0.95), 1e-9);

    // Two of 40 and none of 40, Clopper-Pearson.
    [Theory]
    [InlineData(2, 0.006113646599350838, 0.16919686395941763, 0.346692481007582)]
    [InlineData(0, 0, 0.08809730287880235, 0.48663637746620303)]
    public void Counted_OfForty_HasTheBinomialsInterval(int outside, double low, double high, double shown)
    {
        double[] sorted = [.. Enumerable.Range(1, 40).Select(i => (double)i)];

        CountedCapability counted = CountedCapability.Of(sorted, new(null, 40 - outside));

        Assert.Equal(outside, counted.Outside);
        Assert.Equal(low, counted.ShareLow, 1e-12);
        Assert.Equal(high, counted.ShareHigh, 1e-12);
        Assert.Equal(shown, counted.CpkShown!.Value, 1e-10);
    }
}
