using Bellowsmith.Quality.Capability;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Endurance of 23 ball bearings, millions of revolutions [Lieblein Zelen 1956], looked at as if they were readings; A², skewness,
/// kurtosis, λ and its interval computed with SciPy 1.10.1, the chance by the formula of [D'Agostino Stephens 1986] there.
/// </summary>
public sealed class NormalityOfReadings
{
    [Fact]
    public void Normality_OfTheBearings_IsTheOneComputed()
    {
        Normality normality = Normality.Of(WeibullLives.Bearings);

        Assert.Equal(0.6262797431129002, normality.AndersonDarling, 1e-11);
        Assert.Equal(0.10285493886666132, normality.Chance!.Value, 1e-11);
        Assert.Equal(1.0082570311779582, normality.Skewness, 1e-11);
        Assert.Equal(0.48133666148028004, normality.SkewnessError, 1e-12);
        Assert.Equal(0.9261659079000113, normality.Kurtosis, 1e-11);
    }

    // The usual upper points of A² for normal readings with both parameters estimated, 10, 5, 2.5 and 1 %, from memory; 0.005 of the chance.
    [Theory]
    [InlineData(0.631, 0.10)]
    [InlineData(0.752, 0.05)]
    [InlineData(0.873, 0.025)]
    [InlineData(1.035, 0.01)]
    public void Chance_OfAnUpperPoint_IsItsLevel(double point, double level) => Assert.Equal(level, Normality.ChanceOf(point), 5e-3 * level + 5e-4);

    [Fact]
    public void Power_OfTheBearings_IsTheMostLikely()
    {
        PowerTransform transform = PowerTransform.Of(WeibullLives.Bearings)!;
        double[] bent = Array.ConvertAll(WeibullLives.Bearings, transform.Apply);

        Assert.Equal(0.19049353300008182, transform.Power, 2e-6);
        Assert.Equal(-0.4708346987974974, transform.Low, 1e-7);
        Assert.Equal(0.8954465611504077, transform.High, 1e-7);
        Assert.Equal(0.19048071631031724, Normality.Of(bent).AndersonDarling, 1e-6);
    }
}
