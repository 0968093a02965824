using Bellowsmith.Quality;

namespace Bellowsmith.References.Quality;

/// <summary>
/// One-way analysis of variance: the certified set SiRstv [NIST StRD 1998], five instruments read five times (SciPy's own
/// routine loses the last two digits of its F to cancellation), and the four groups of [NIST Handbook 2012, 7.4.7.1]. A public
/// test file gives 18.949 for the mean square between the first three of those groups; it is 13.9487.
/// </summary>
public sealed class Groups
{
    private static readonly double[][] _siRstv =
    [
        [196.3052, 196.1240, 196.1890, 196.2569, 196.3403],
        [196.3042, 196.3825, 196.1669, 196.3257, 196.0422],
        [196.1303, 196.2005, 196.2889, 196.0343, 196.1811],
        [196.2795, 196.1748, 196.1494, 196.1485, 195.9885],
        [196.2119, 196.1051, 196.1850, 196.0052, 196.2090],
    ];

    private static readonly double[][] _four =
    [
        [6.9, 5.4, 5.8, 4.6, 4.0], [8.3, 6.8, 7.8, 9.2, 6.5], [8.0, 10.5, 8.1, 6.9, 9.3], [5.8, 3.8, 6.1, 5.6, 6.2],
    ];

    [Fact]
    public void OneWay_OfSiRstv_IsTheCertified()
    {
        OneWayAnova anova = OneWayAnova.Of(_siRstv);

        Near(5.11462616e-2, anova.Between.SumOfSquares, 1e-8);
        Near(2.16636560e-1, anova.Within.SumOfSquares, 1e-8);
        Near(1.18046237440255, anova.Between.F!.Value, 1e-11);
        Near(0.104076068334656, anova.ResidualDeviation, 1e-11);
        Near(0.190999039051129, anova.RSquared!.Value, 1e-11);
        Assert.Equal((4, 20), (anova.Between.Degrees, anova.Within.Degrees));
    }

    [Fact]
    public void OneWay_OfFourGroups_IsThePublished()
    {
        OneWayAnova four = OneWayAnova.Of(_four), three = OneWayAnova.Of(_four[..3]);

        Assert.Equal(1.33075, four.Within.MeanSquare, 1e-10);
        Assert.Equal(9.72384, four.Between.F!.Value, 5e-6);
        Assert.Equal(0.000684454, four.Between.P!.Value, 5e-10);
        Assert.Equal(9.591107, three.Between.F!.Value, 5e-7);
        Assert.Equal(0.00324822, three.Between.P!.Value, 5e-9);
        Assert.Equal(13.9487, three.Between.MeanSquare, 5e-5);
    }

    private static void Near(double published, double answer, double relative) =>
        Assert.True(Math.Abs(answer - published) <= relative * published, $"{answer} for {published}");
}
