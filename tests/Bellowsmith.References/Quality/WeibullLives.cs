using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Ball bearings, 23 failures in millions of revolutions [Lieblein Zelen 1956]: published β 2.102, η 81.88, from memory. Transcriptions
/// differ in the seventh life: 48.48 gives the published η, 48.40 gives 81.87 and 48.80 gives 81.89 (and β 2.103).
/// Shock absorbers, 11 failures among 38, kilometres [O'Connor 1985], data and published β 3.16, η 27 719 [Meeker Escobar 1998] from
/// memory: one life is 18 450 here, which gives that η; public transcriptions with 18 420 give 27 717.
/// All digits beyond the published, and the likelihood-ratio intervals, computed with SciPy 1.10.1.
/// </summary>
public sealed class WeibullLives
{
    internal static readonly double[] Bearings =
    [
        17.88, 28.92, 33.00, 41.52, 42.12, 45.60, 48.48, 51.84, 51.96, 54.12, 55.56, 67.80,
        68.64, 68.64, 68.88, 84.12, 93.12, 98.64, 105.12, 105.84, 127.92, 128.04, 173.40,
    ];

    private static readonly double[] _absorbers =
    [
        6700, 6950, 7820, 8790, 9120, 9660, 9820, 11310, 11690, 11850, 11880, 12140, 12200, 12870, 13150, 13330, 13470, 14040, 14300,
        17520, 17540, 17890, 18450, 18960, 18980, 19410, 20100, 20100, 20150, 20320, 20900, 22700, 23490, 26510, 27410, 27490, 27890, 28100,
    ];

    private static readonly double[] _absorberFailures = [6700, 9120, 12200, 13150, 14300, 17520, 20900, 22700, 26510, 27490];

    [Fact]
    public void Fit_OfTheBearings_IsTheMostLikely()
    {
        WeibullFit fit = WeibullFit.Of(Bearings, Enumerable.Repeat(true, 23).ToArray())!;

        Assert.Equal(2.102, fit.Shape, 5e-4);
        Assert.Equal(81.88, fit.Scale, 5e-3);
        Assert.Equal(2.102058875194621, fit.Shape, 1e-10);
        Assert.Equal(81.87833405163153, fit.Scale, 1e-8);
        AssertInterval(fit.ShapeInterval(0.95), 2.102058875194621, 1.504146159727674, 2.7915351729008675, 1e-8);
        AssertInterval(fit.ScaleInterval(0.95), 81.87833405163154, 65.69909702594653, 100.87540551506147, 1e-6);
        AssertInterval(fit.LifeInterval(0.1, 0.95), 28.069414010704985, 16.288400264440384, 40.76460653325405, 1e-6);
    }

    [Fact]
    public void Fit_OfTheShockAbsorbers_CountsSurvivors()
    {
        WeibullFit fit = WeibullFit.Of(_absorbers, Failed())!;

        Assert.Equal((11, 27), (fit.Failures, fit.Survivors));
        Assert.Equal(3.16, fit.Shape, 5e-3);
        Assert.Equal(27719, fit.Scale, 0.5);
        AssertInterval(fit.ShapeInterval(0.95), 3.1604703145345767, 1.8985321700061277, 4.771390780640452, 1e-8);
        AssertInterval(fit.ScaleInterval(0.95), 27718.718128515113, 23330.06611332707, 37961.91083583051, 1e-3);
        AssertInterval(fit.LifeInterval(0.1, 0.95), 13600.034715056518, 9371.202394058635, 17291.237935622365, 1e-3);
    }

    [Fact]
    public void Goodness_OfTheBearings_IsTheTables()
    {
        WeibullFit fit = WeibullFit.Of(Bearings, Enumerable.Repeat(true, 23).ToArray())!;

        WeibullGoodness goodness = WeibullGoodness.Of(fit, Bearings)!;

        Assert.Equal(0.34231372693857814, goodness.AndersonDarling, 1e-8);
        Assert.False(goodness.IsDoubted);
    }

    // Three parts at 100, 200 and 300, shape 2: none failed, then one.
    [Fact]
    public void Weibayes_OfThreeSurvivors_ShowsALife() =>
        Assert.Equal(216.17850979536973, new Weibayes([100, 200, 300], [false, false, false], 2).LifeShown(1 - Math.Exp(-1), 0.95), 1e-9);

    [Fact]
    public void Weibayes_OfOneFailure_HasItsInterval()
    {
        Weibayes fit = new([100, 200, 300], [false, true, false], 2);

        AssertInterval(fit.ScaleInterval(0.95), 374.16573867739413, 158.5157288366397, 2351.5324001019017, 1e-6);
        Assert.Equal(171.78999978913788, fit.LifeShown(1 - Math.Exp(-1), 0.95), 1e-8);
    }

    [Fact]
    public void PlottedFailure_OfFive_StandsAtItsMedianRank()
    {
        double[] ranks = [0.12944943670387585, 0.3138101704556974, 0.5, 0.6861898295443025, 0.8705505632961241];

        Assert.All(
            PlottedFailure.Of([1, 2, 3, 4, 5], [true, true, true, true, true]).Zip(ranks),
            pair => Assert.Equal(pair.Second, pair.First.FailedShare, 1e-12));
    }

    // One of the two at 20 100 km failed.
    private static bool[] Failed()
    {
        bool[] failed = Array.ConvertAll(_absorbers, life => _absorberFailures.Contains(life));
        failed[Array.IndexOf(_absorbers, 20100)] = true;
        return failed;
    }

    private static void AssertInterval(LifeInterval interval, double value, double low, double high, double tolerance)
    {
        Assert.Equal(value, interval.Value!.Value, tolerance);
        Assert.Equal(low, interval.Low!.Value, tolerance);
        Assert.Equal(high, interval.High!.Value, tolerance);
    }
}
