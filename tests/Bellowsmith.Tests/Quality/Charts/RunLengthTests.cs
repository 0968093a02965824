using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Tests.Quality.Charts;

/// <summary>The chain and the integral equation against the rules themselves on random points: two ways that share no code.</summary>
public sealed class RunLengthTests
{
    public static TheoryData<string, RunRule[]> Sets => new()
    {
        { "within", [RunRule.Within(6, 1)] },
        { "either side", [RunRule.Beyond(4, 4, 1, eitherSide: true)] },
        { "one of two sorts", [RunRule.Beyond(3, 7, 1.5), RunRule.Within(9, 1.2)] },
        { "many", [RunRule.BeyondThreeSigma, RunRule.Beyond(2, 3, 2), RunRule.Beyond(4, 5, 1), RunRule.OnOneSide(9), RunRule.Within(15, 1), RunRule.Beyond(8, 8, 1, eitherSide: true)] },
    };

    [Theory]
    [MemberData(nameof(Sets))]
    public void ZoneChain_OfAnySet_AgreesWithTheRulesOnRandomPoints(string set, RunRule[] rules)
    {
        foreach (double shift in (double[])[0, 0.5, 1])
        {
            RunLength simulated = SimulatedRunLength.Of(rules, shift, seed: 11);
            double exact = ZoneChain.Of(rules)!.RunLength(shift);
            Assert.True(Math.Abs(exact - simulated.Points) < 4 * simulated.StandardError, $"{set}, shift {shift}: {exact} and {simulated}");
        }
    }

    [Theory]
    [InlineData(RuleKind.RisingOrFalling, 4)]
    [InlineData(RuleKind.RisingOrFalling, 6)]
    [InlineData(RuleKind.Alternating, 5)]
    [InlineData(RuleKind.Alternating, 14)]
    public void OrderRunLength_OfARule_AgreesWithItOnRandomPointsAtAnyShift(RuleKind kind, int count)
    {
        RunRule rule = new(kind, count, count, 0);
        double exact = OrderRunLength.Of(rule);

        Assert.All((double[])[0, 1], shift =>
        {
            RunLength simulated = SimulatedRunLength.Of([rule], shift, seed: 5);
            Assert.InRange(exact, simulated.Points - 4 * simulated.StandardError, simulated.Points + 4 * simulated.StandardError);
        });
    }

    [Theory] // the error bound that is stated
    [InlineData(RuleKind.RisingOrFalling, 6)]
    [InlineData(RuleKind.Alternating, 14)]
    [InlineData(RuleKind.RisingOrFalling, 10)]
    [InlineData(RuleKind.Alternating, 40)]
    public void OrderRunLength_OnTwiceTheNodes_IsTheSame(RuleKind kind, int count)
    {
        RunRule rule = new(kind, count, count, 0);

        double length = OrderRunLength.Of(rule);
        Assert.Equal(1, OrderRunLength.Of(rule, 128) / length, 1e-14 * length);
    }

    [Fact]
    public void ZoneChain_OfTheFourRules_IsSmall() => Assert.InRange(
        ZoneChain.Of([RunRule.BeyondThreeSigma, RunRule.Beyond(2, 3, 2), RunRule.Beyond(4, 5, 1), RunRule.OnOneSide(8)])!.States, 50, 500);

    [Fact] // 1/(1 − Φ(…)) of one point: 1/0.0027 and far beyond
    public void ZoneChain_OfOnePoint_IsTheInverseOfItsChance()
    {
        Assert.Equal(370.39834734495, ZoneChain.Of([RunRule.BeyondThreeSigma])!.RunLength(0), 1e-9);
        Assert.Equal(1, ZoneChain.Of([RunRule.Beyond(1, 1, 8)])!.RunLength(0) * 1.2441921148543568e-15, 1e-8);
        Assert.Equal(double.PositiveInfinity, ZoneChain.Of([RunRule.Beyond(1, 1, 60)])!.RunLength(0));
    }

    [Fact]
    public void RulePrice_OfOrderWithZones_IsSimulatedAlikeFromOneSeed()
    {
        RunRule[] rules = [RunRule.BeyondThreeSigma, RunRule.RisingOrFalling(6)];

        RulePrice price = RulePrice.Of(rules, seed: 3);

        Assert.Equal(price, RulePrice.Of(rules, seed: 3));
        Assert.NotEqual(price, RulePrice.Of(rules, seed: 4));
        Assert.True(price.Unchanged.Simulated);
        Assert.InRange(price.Unchanged.Points, 150, 260); // fewer than either alone: 370 and 409
    }

    [Fact]
    public void RulePrice_OfAMemoryTooLargeToWalk_IsSimulated() =>
        Assert.True(RulePrice.Of([RunRule.Beyond(20, 40, 0.5)], seed: 1).OneSigma.Simulated);

    [Fact] // no garbage where rounding would be the answer
    public void SmoothedRunLength_FarOut_IsInfinite()
    {
        Assert.Equal(double.PositiveInfinity, SmoothedRunLength.Cusum(0.5, 60, 0));
        Assert.Equal(double.PositiveInfinity, SmoothedRunLength.Ewma(0.1, 9, 0));
        Assert.InRange(SmoothedRunLength.Cusum(0.5, 60, 2), 40, 42); // (h + 1.166)/(δ − k), a known approximation
    }

    [Fact] // a weight of 1 is a chart of single values
    public void Ewma_OfWeightOne_IsThatOfSinglePoints() => Assert.Equal(370.39834734495, SmoothedRunLength.Ewma(1, 3, 0), 1e-6);

    [Theory] // Poisson: 1/P(X > 4) of mean 1; 1/P(X > 1) of 0.2; 1/(P(X > 28) + P(X < 4)) of 16, the 28 itself being on the limit
    [InlineData(1, 273.2354787)]
    [InlineData(0.2, 57.06754003)]
    [InlineData(16, 438.2674455)]
    public void OfCounts_OnePointBeyond_IsTheInverseOfItsChance(double mean, double length)
    {
        ControlChart chart = CountsChart.Draw([0], null, new(Centre: mean), [RunRule.BeyondThreeSigma]);

        Assert.Equal(length, RulePrice.OfCounts(chart, chart.Rules, seed: 1).Unchanged.Points, 1e-8 * length);
    }

    [Fact] // binomial of 50 pieces at 0.1: 1/P(X > 11), 11.36 being the limit
    public void OfCounts_OfShares_IsBinomial()
    {
        ControlChart chart = SharesChart.Draw([0], [50], new(Centre: 0.1), [RunRule.BeyondThreeSigma]);

        Assert.Equal(310.5666125942, RulePrice.OfCounts(chart, chart.Rules, seed: 1).Unchanged.Points, 1e-6);
    }

    [Fact] // Poisson of mean 4: above with 0.371163, below with 0.433470; a 4 stands on the centre line and breaks a run
    public void OfCounts_OnTheCentreLine_BreaksARun()
    {
        ControlChart chart = CountsChart.Draw([4], null, new(Centre: 4), [RunRule.OnOneSide(8)]);

        Assert.Equal(1071.116533, RulePrice.OfCounts(chart, chart.Rules, seed: 1).Unchanged.Points, 1e-4);
    }
}
