using Bellowsmith.Quality.Charts;
using CsCheck;

namespace Bellowsmith.Tests.Quality.Charts;

public sealed class ControlChartTests
{
    private static readonly RunRule[] _default = [RunRule.BeyondThreeSigma];

    [Fact]
    public void Individuals_FrozenBase_DoesNotHearLaterPoints() => Gen.Select(Gen.Double[0, 1].Array[12, 20], Gen.Double[-50, 50].Array[1, 30]).Sample((first, later) =>
    {
        ChartBasis basis = new(Base: first.Length);

        ControlLimits alone = IndividualsChart.Draw(first, basis, _default).Line.At(0);

        Assert.Equal(alone, IndividualsChart.Draw([.. first, .. later], basis, _default).Line.At(first.Length));
    });

    [Fact]
    public void Individuals_TwoPhases_HaveEachTheirOwnLimitsAndForgetTheOther()
    {
        double[] low = [1, 2, 1, 2, 1, 2, 1, 2, 1, 2], high = [11, 12, 11, 12, 11, 12, 11, 12, 11, 12];

        ControlChart chart = IndividualsChart.Draw([.. low, .. high], new(PhaseStarts: [0, 10]), [RunRule.BeyondThreeSigma, RunRule.Alternating(14)]);

        Assert.Empty(chart.Signals); // twenty alternate, but ten in either phase
        Assert.Equal(1.5, chart.Line.At(9).Centre);
        Assert.Equal(11.5, chart.Line.At(10).Centre);
        Assert.Equal(double.NaN, chart.Spread!.Line.Points[10]);
        Assert.Empty(chart.Spread.Signals); // the step of nine is no moving range
        Assert.Equal([0, 10], chart.Phases.Select(p => p.First));
    }

    [Fact] // 3·1.881/√2 above the centre for two, 3·1.881/√5 for five
    public void Averages_OfUnequalSubgroups_FollowEachSize()
    {
        ControlChart chart = AveragesChart.Draw([9, 11, 8, 9, 10, 11, 12, 10], [0, 2, 7], SpreadMeasure.Ranges, new(Centre: 10, Sd: 2), _default);

        Assert.Equal([10, 10, 10], chart.Line.Points);
        Assert.Equal(10 + 6 / Math.Sqrt(2), chart.Line.At(0).Upper, 1e-12);
        Assert.Equal(10 - 6 / Math.Sqrt(5), chart.Line.At(1).Lower, 1e-12);
        Assert.Equal(16, chart.Line.At(2).Upper, 1e-12);
        Assert.Equal(2 * 2.325929, chart.Spread!.Line.At(1).Centre, 2e-6);
        Assert.Equal([2, 4, double.NaN], chart.Spread.Line.Points);
        Assert.False(chart.Line.Steady);
    }

    [Theory] // ten subgroups of two with range 1 and ten of five with range 3: weights d2²/d3² = 1.751938 and 7.245693 of 0.886227 and 1.289807
    [InlineData(SpreadMeasure.Ranges, 1.211228)]
    [InlineData(SpreadMeasure.StandardDeviations, 1.161120)] // √½ and √1.325 over c4, weights c4²/(1 − c4²): 1.751938 and 7.589056
    public void Averages_OfUnequalSubgroups_WeighEachSpreadByItsCertainty(SpreadMeasure measure, double sd)
    {
        double[] values = [.. Enumerable.Repeat((double[])[0, 1], 10).SelectMany(v => v), .. Enumerable.Repeat((double[])[0, 0.5, 1, 1.5, 3], 10).SelectMany(v => v)];
        int[] starts = [.. Enumerable.Range(0, 10).Select(g => 2 * g), .. Enumerable.Range(0, 10).Select(g => 20 + 5 * g)];

        ControlChart chart = AveragesChart.Draw(values, starts, measure, ChartBasis.All, _default);

        Assert.Equal(sd, chart.Phases[0].Sd, 2e-5);
        Assert.Equal(1, chart.Phases[0].Centre, 1e-12); // of all values; the subgroups' means would give 0.85
    }

    [Fact] // p̄ = 0.1: 3·√(0.09/100) = 0.09, 3·√(0.09/25) = 0.18
    public void Shares_OfTwoSizes_HaveLimitsOfEachSizeCutAtZero()
    {
        double[] counts = [10, 10, 10, 10, 10, 10, 10, 2, 3], sizes = [100, 100, 100, 100, 100, 100, 100, 25, 25];

        ControlChart chart = SharesChart.Draw(counts, sizes, ChartBasis.All, _default);

        Assert.Equal(0.1, chart.Line.At(0).Centre, 1e-12);
        Assert.Equal(0.19, chart.Line.At(0).Upper, 1e-12);
        Assert.Equal(0.01, chart.Line.At(6).Lower, 1e-12);
        Assert.Equal(0.28, chart.Line.At(7).Upper, 1e-12);
        Assert.Equal(0, chart.Line.At(8).Lower);
        Assert.Equal(2, chart.Line.Steps.Length);
    }

    [Fact] // ū = 4: 3·√(4/4) = 3
    public void Counts_OfDifferingSizes_AreChartedPerSize()
    {
        ControlChart differing = CountsChart.Draw([4, 4, 4, 4, 4, 4, 4, 4, 32], [1, 1, 1, 1, 1, 1, 1, 1, 4], new(Centre: 4), _default);
        ControlChart same = CountsChart.Draw([4, 5, 4, 5, 4, 5, 4, 5], [3, 3, 3, 3, 3, 3, 3, 3], ChartBasis.All, _default);

        Assert.Equal(ChartStatistic.CountPerSize, differing.Statistic);
        Assert.Equal(8, differing.Line.Points[8]);
        Assert.Equal(7, differing.Line.At(8).Upper, 1e-12);
        Assert.Equal([new Signal(8, 0)], differing.Signals);
        Assert.Equal(ChartStatistic.Count, same.Statistic);
        Assert.Equal([4, 5, 4, 5, 4, 5, 4, 5], same.Line.Points);
    }

    [Fact] // 3·1·0.3 at the first point, 3·√(0.3/1.7) = 1.260252 in the end
    public void Ewma_FromTheStart_WidensToTheSteadyLimits()
    {
        ControlChart chart = EwmaChart.Draw(new double[200], 0.3, 3, fromStart: true, new(Centre: 0, Sd: 1));

        Assert.Equal(0.9, chart.Line.At(0).Upper, 1e-12);
        Assert.Equal(1.260252, chart.Line.At(199).Upper, 1e-6);
        Assert.InRange(chart.Line.Steps.Length, 20, 80); // settled to the last digit
    }

    [Theory]
    [InlineData(7, LimitTrouble.TooFewPoints)]
    [InlineData(8, LimitTrouble.None)]
    public void Individuals_OfFewPoints_AreJudgedFromEight(int points, LimitTrouble trouble)
    {
        ControlChart chart = IndividualsChart.Draw([.. Enumerable.Range(0, points).Select(i => i % 3.0)], ChartBasis.All, _default);

        Assert.Equal(trouble, chart.Phases[0].Trouble);
        Assert.Equal(trouble == LimitTrouble.None, chart.Judged);
    }

    [Fact]
    public void Charts_OfConstantData_SayThereIsNoSpread()
    {
        double[] same = [.. Enumerable.Repeat(0.1 + 0.2, 40)], sizes = [.. Enumerable.Repeat(20.0, 40)];
        int[] starts = [.. Enumerable.Range(0, 10).Select(g => 4 * g)];

        Assert.All(
            [
                IndividualsChart.Draw(same, ChartBasis.All, _default), CusumChart.Draw(same, 0.5, 5, ChartBasis.All), EwmaChart.Draw(same, 0.2, 3, false, ChartBasis.All),
                AveragesChart.Draw(same, starts, SpreadMeasure.Ranges, ChartBasis.All, _default),
                AveragesChart.Draw(same, starts, SpreadMeasure.StandardDeviations, ChartBasis.All, _default),
                CountsChart.Draw(new double[40], null, ChartBasis.All, _default), SharesChart.Draw(new double[40], sizes, ChartBasis.All, _default),
            ],
            chart =>
            {
                Assert.Equal(LimitTrouble.NoSpread, chart.Phases[0].Trouble);
                Assert.Empty(chart.Signals);
                Assert.Empty(chart.Spread?.Signals ?? []);
                Assert.False(chart.Line.At(0).Known);
            });
    }

    [Fact]
    public void Charts_WithLimitsGiven_JudgeASinglePoint()
    {
        ChartBasis given = new(Centre: 10, Sd: 1);

        Assert.Equal([new Signal(0, 0)], IndividualsChart.Draw([14], given, _default).Signals);
        Assert.Equal([new Signal(0, 0)], AveragesChart.Draw([12, 12, 12, 12], [0], SpreadMeasure.Ranges, given, _default).Signals);
        Assert.Equal([new Signal(0, 0)], CusumChart.Draw([16], 0.5, 5, given).Signals);
        Assert.Equal([new Signal(0, 0)], EwmaChart.Draw([16], 0.2, 3, false, given).Signals);
        Assert.Equal([new Signal(0, 0)], CountsChart.Draw([20], null, given, _default).Signals);
        Assert.Equal([new Signal(0, 0)], SharesChart.Draw([7], [10], new(Centre: 0.1), _default).Signals);
    }

    [Fact]
    public void Averages_OfSingleValues_SayThatNothingShowsTheSpread() => Assert.Equal(
        LimitTrouble.NoSubgroups,
        AveragesChart.Draw([1, 2, 3, 4, 5, 6, 7, 8, 9], [0, 1, 2, 3, 4, 5, 6, 7, 8], SpreadMeasure.Ranges, ChartBasis.All, _default).Phases[0].Trouble);

    [Fact] // √(0.8264/(n − 1)) at many points (from memory; rederived): 0.0909 at 101, less the end effect
    public void Individuals_SdError_FallsWithTheRoot() => Assert.Equal(
        0.0906, IndividualsChart.Draw([.. Enumerable.Range(0, 101).Select(i => i % 7.0)], ChartBasis.All, _default).Phases[0].SdError, 2e-4);
}
