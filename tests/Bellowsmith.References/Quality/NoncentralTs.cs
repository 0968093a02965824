using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.References.Quality;

/// <summary>
/// The noncentral t against the integral of its definition computed with mpmath 1.2.1 at 30 digits (reference library), and the
/// exact one-sided 95 % lower bound of a capability index of 4/3 [NIST Handbook 2012, section 6.1.6; exact digits recomputed].
/// </summary>
public sealed class NoncentralTs
{
    [Theory]
    [InlineData(1, 1, 0.5, 0.59274773644002936)]
    [InlineData(-1, 3, 0.5, 0.092121209814359366)]
    [InlineData(2, 4, 3, 0.17701726122231756)]
    [InlineData(10, 29, 7, 0.96374537666040633)]
    [InlineData(-3, 10, -2, 0.22082800102979124)]
    [InlineData(45, 99, 40, 0.92949392574491926)]
    [InlineData(9.5, 42, 8.4, 0.76495344392990859)]
    [InlineData(105, 999, 100, 0.97480442236809284)]
    [InlineData(0.3, 2, 2, 0.042981452803187736)]
    [InlineData(-2, 5, 3, 7.7996360918320379e-6)]
    [InlineData(3.8, 100000, 2, 0.96406380064420079)]
    [InlineData(100, 5, 30, 0.99378298840333615)]
    public void Probability_AndQuantile_AreTheComputed(double t, double degrees, double noncentrality, double probability)
    {
        Assert.Equal(probability, NoncentralT.Cdf(t, degrees, noncentrality), 1e-13);
        Assert.Equal(t, NoncentralT.Quantile(probability, degrees, noncentrality), 1e-10 * Math.Abs(t));
    }

    [Theory]
    [InlineData(30, 1.02420362)]
    [InlineData(50, 1.09587612)]
    public void Cdf_AtTheLowerBoundOfACapability_IsTheConfidence(int count, double bound)
    {
        double root = Math.Sqrt(count);

        Assert.Equal(0.95, NoncentralT.Cdf(3 * root * 4 / 3, count - 1, 3 * root * bound), 1e-7);
    }
}
