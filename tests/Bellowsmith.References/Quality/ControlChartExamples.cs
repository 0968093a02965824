using Bellowsmith.Quality.Charts;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Charts worked through in [NIST Handbook 2012, sec. 6.3]: individuals 6.3.2.2, averages on its wafer-thickness file, tabular
/// cumulative sum 6.3.2.3, weighted average 6.3.2.4 (its data and limits recalled, not read), counts 6.3.3.1. Published errors:
/// one public copy of the individuals' data gives 6.1349 for the upper limit of the moving ranges and 1.8674 for the standard deviation, which are
/// 6.1347 (with d2 = 1.128) and 2.0339; the wafer file's header says 20 observations where there are 100.
/// </summary>
public sealed class ControlChartExamples
{
    private static readonly double[] _flow = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

    private static readonly double[] _wafers =
    [
        24.5, 22.4, 23.7, 23.5, 23.8, 23.6, 23.8, 22.5, 22.5, 23.0, 25.0, 22.6, 23.7, 22.7, 22.9, 24.3, 22.6, 23.2, 23.3, 23.2,
        23.8, 24.9, 23.6, 22.5, 24.8, 24.4, 22.8, 22.6, 22.9, 23.1, 23.7, 22.9, 23.3, 23.2, 23.9, 23.4, 23.7, 23.5, 23.4, 23.3,
        24.9, 23.9, 23.1, 24.5, 23.7, 23.0, 23.8, 22.5, 23.6, 23.4, 24.8, 24.0, 24.1, 23.9, 23.9, 24.4, 23.7, 23.2, 23.0, 23.8,
        24.9, 24.0, 22.2, 23.2, 22.3, 24.3, 23.6, 22.4, 23.2, 23.2, 23.4, 23.7, 24.0, 22.5, 24.0, 25.3, 24.9, 23.1, 22.6, 23.7,
        24.1, 23.6, 23.8, 24.0, 23.3, 25.9, 25.4, 22.4, 24.3, 24.3, 26.4, 24.4, 22.1, 26.4, 23.2, 27.8, 22.7, 25.0, 25.9, 25.4,
    ];

    private static readonly double[] _means =
    [
        324.925, 324.675, 324.725, 324.350, 325.350, 325.225, 324.125, 324.525, 325.225, 324.600,
        324.625, 325.150, 328.325, 327.250, 327.825, 328.500, 326.675, 327.775, 326.875, 328.350,
    ];

    private static readonly double[] _counts = [16, 14, 28, 16, 12, 20, 10, 12, 10, 17, 19, 17, 14, 16, 15, 13, 14, 16, 11, 20, 11, 19, 16, 31, 13];

    private static readonly RunRule[] _default = [RunRule.BeyondThreeSigma];

    [Theory]
    [InlineData(1.1283791670955126, 45.817588, 55.802412, 1e-6)] // exact d2
    [InlineData(1.128, 45.8159, 55.8041, 5e-5)] // as printed, with d2 rounded to three digits
    public void Individuals_OfFlowRates_HaveThePublishedLimits(double rangeMean, double lower, double upper, double tolerance)
    {
        ControlChart chart = IndividualsChart.Draw(_flow, ChartBasis.All, _default);

        ControlLimits limits = Assert.Single(chart.Line.Steps).Limits;
        double width = 3 * limits.Sigma * 1.1283791670955126 / rangeMean;
        Assert.Equal(50.81, limits.Centre, 1e-12);
        Assert.Equal(lower, limits.Centre - width, tolerance);
        Assert.Equal(upper, limits.Centre + width, tolerance);
        Assert.Empty(chart.Signals);
    }

    [Fact]
    public void MovingRanges_OfFlowRates_HaveThePublishedLimits()
    {
        ControlLimits limits = IndividualsChart.Draw(_flow, ChartBasis.All, _default).Spread!.Line.At(5);

        Assert.Equal(16.9 / 9, limits.Centre, 1e-12);
        Assert.Equal(6.133821, limits.Upper, 1e-6);
        Assert.Equal(6.1347, limits.Upper, 1e-3); // as printed, with D4 rounded to 3.267
        Assert.Equal(0, limits.Lower);
    }

    [Theory]
    [InlineData(SpreadMeasure.Ranges, 22.543520, 24.908480, 4.334723, 0.881368, 2.05)]
    [InlineData(SpreadMeasure.StandardDeviations, 22.554675, 24.897325, 1.714353, 0.873054, 0.8206581778)]
    public void Averages_OfWaferThickness_HaveTheseLimits(SpreadMeasure measure, double lower, double upper, double spreadUpper, double sd, double meanSpread)
    {
        ControlChart chart = Wafers(measure);

        Assert.Equal(23.726, chart.Line.At(0).Centre, 1e-12);
        Assert.Equal(lower, chart.Line.At(0).Lower, 1e-6);
        Assert.Equal(upper, chart.Line.At(0).Upper, 1e-6);
        Assert.Equal(meanSpread, chart.Spread!.Line.At(0).Centre, 1e-9);
        Assert.Equal(spreadUpper, chart.Spread.Line.At(0).Upper, 1e-6);
        Assert.Equal(0, chart.Spread.Line.At(0).Lower);
        Assert.Equal(sd, Assert.Single(chart.Phases).Sd, 1e-6);
        Assert.Equal(new Signal(19, 0), Assert.Single(chart.Signals));
        Assert.Equal(25.36, chart.Line.Points[19], 1e-12);
    }

    [Fact]
    public void Spread_OfWaferThickness_SignalsTheLastDays()
    {
        ControlChart ranges = Wafers(SpreadMeasure.Ranges), deviations = Wafers(SpreadMeasure.StandardDeviations);

        Assert.Equal([19], ranges.Spread!.Signals.Select(s => s.Point));
        Assert.Equal(5.1, ranges.Spread.Line.Points[19], 1e-12);
        Assert.Equal([18, 19], deviations.Spread!.Signals.Select(s => s.Point));
        Assert.Equal(1.91572, deviations.Spread.Line.Points[18], 5e-6);
        Assert.Equal(1.83385, deviations.Spread.Line.Points[19], 5e-6);
    }

    [Fact] // decision 4.1959 and allowance 0.3175 in the unit of the means
    public void Cusum_OfSubgroupMeans_SignalsAtTheFourteenth()
    {
        ControlChart chart = CusumChart.Draw(_means, 0.3175 / 0.635, 4.1959 / 0.635, new(Centre: 325, Sd: 0.635));

        double[] high = [0, 0, 0, 0, 0.0325, 0, 0, 0, 0, 0, 0, 0, 3.0075, 4.9400, 7.4475, 10.6300, 11.9875, 14.4450, 16.0025, 19.0350];
        double[] low = [0, 0.0075, 0, 0.3325, 0, 0, 0.5575, 0.7150, 0.1725, 0.2550, 0.3125, 0, 0, 0, 0, 0, 0, 0, 0, 0];
        Assert.All(high.Zip(chart.Sums!.High), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
        Assert.All(low.Zip(chart.Sums.Low), pair => Assert.Equal(pair.First, pair.Second, 1e-9));
        Assert.Equal(13, chart.Signals[0].Point);
        Assert.Equal(4.1959, chart.Line.At(0).Upper, 1e-12);
    }

    [Fact] // recalled, not read
    public void Ewma_OfTwentyValues_HasTheLimitsOfTheHandbook()
    {
        double[] values = [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

        ControlChart chart = EwmaChart.Draw(values, 0.3, 3, fromStart: false, new(Centre: 50, Sd: 2.0539));

        Assert.Equal(52.5884, chart.Line.At(0).Upper, 5e-5);
        Assert.Equal(47.4115, chart.Line.At(0).Lower, 1.5e-4); // 47.41159: the handbook cuts the digit off
        Assert.Equal(50.60, chart.Line.Points[0], 5e-3);
        Assert.Equal(51.99, chart.Line.Points[19], 5e-3);
        Assert.Empty(chart.Signals);
    }

    [Fact] // the 28 of wafer 3 stands exactly on the limit and is inside
    public void Counts_OfWaferDefects_SignalTheTwentyFourthAlone()
    {
        ControlChart chart = CountsChart.Draw(_counts, null, ChartBasis.All, _default);

        ControlLimits limits = Assert.Single(chart.Line.Steps).Limits;
        Assert.Equal(16, limits.Centre, 1e-6);
        Assert.Equal(28, limits.Upper, 1e-6);
        Assert.Equal(4, limits.Lower, 1e-6);
        Assert.Equal(new Signal(23, 0), Assert.Single(chart.Signals));
    }

    private static ControlChart Wafers(SpreadMeasure measure) =>
        AveragesChart.Draw(_wafers, [.. Enumerable.Range(0, 20).Select(g => 5 * g)], measure, ChartBasis.All, _default);
}
