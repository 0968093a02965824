using Bellowsmith.Quality;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Four groups of five compared in all pairs [NIST Handbook 2012, section 7.4.7.1], its two printed decimals and the digits
/// recomputed by R 4.2.2 and SciPy 1.10.1. One published transcription has 18.949 for the mean square between; it is 13.9487 of three groups.
/// </summary>
public sealed class AllPairs
{
    private static readonly double[][] _groups =
    [
        [6.9, 5.4, 5.8, 4.6, 4.0], [8.3, 6.8, 7.8, 9.2, 6.5], [8.0, 10.5, 8.1, 6.9, 9.3], [5.8, 3.8, 6.1, 5.6, 6.2],
    ];

    private static readonly OneWay _analysis = OneWay.Of(_groups)!;

    [Fact]
    public void Analysis_OfTheGroups_IsTheComputed()
    {
        Assert.Equal(1.33075, _analysis.Within.MeanSquare, 1e-9);
        Assert.Equal(16, _analysis.Within.Degrees);
        Assert.Equal(9.72384, _analysis.Between.F!.Value, 1e-5);
        Assert.Equal(0.000684454, _analysis.Between.P!.Value, 1e-9);
        Assert.Equal(2.087368379, _analysis.HalfWidth(0, 1, 0.95), 1e-6);
    }

    [Theory]
    [InlineData(2, 1, 0.29, 4.47)]
    [InlineData(3, 1, 1.13, 5.31)]
    [InlineData(1, 4, -2.25, 1.93)]
    [InlineData(2, 3, -2.93, 1.25)]
    [InlineData(2, 4, 0.13, 4.31)]
    [InlineData(3, 4, 0.97, 5.15)]
    public void Interval_OfAPair_IsThePrinted(int group, int other, double low, double high)
    {
        double difference = _analysis.Means[group - 1] - _analysis.Means[other - 1], reach = _analysis.HalfWidth(group - 1, other - 1, 0.95);

        Assert.Equal(low, difference - reach, 0.0051);
        Assert.Equal(high, difference + reach, 0.0051);
    }

    [Theory]
    [InlineData(2, 1, 0.0227933800)]
    [InlineData(2, 3, 0.6644649)]
    [InlineData(2, 4, 0.0351544790)]
    [InlineData(3, 4, 0.0034505562)]
    public void Probability_OfAPair_IsTheComputed(int group, int other, double probability) =>
        Assert.Equal(probability, _analysis.Probability(group - 1, other - 1), 1e-7);

    [Fact]
    public void Analysis_OfTheFirstThreeGroups_IsTheComputed()
    {
        AnovaRow between = OneWay.Of(_groups[..3])!.Between;

        Assert.Equal(13.9487, between.MeanSquare, 5e-5);
        Assert.Equal(9.591107, between.F!.Value, 1e-6);
        Assert.Equal(0.00324822, between.P!.Value, 1e-8);
    }
}
