using Bellowsmith.Quality.Charts;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Average run lengths. Zone rules: Markov chain, agreeing with the table of [Champ Woodall 1987] as recalled (370.40, 91.75,
/// 225.44, 166.05, 152.73); the handbook quotes 91.75 [NIST Handbook 2012, sec. 6.3.2]. Sums and averages: integral equations,
/// agreeing with [Lucas Crosier 1982] and [Lucas Saccucci 1990] as recalled. Order rules of three points: closed forms from the
/// number of alternating permutations [Andre 1879].
/// </summary>
public sealed class RunLengths
{
    private static readonly RunRule _one = RunRule.BeyondThreeSigma, _two = RunRule.Beyond(2, 3, 2), _four = RunRule.Beyond(4, 5, 1);

    public static TheoryData<string, RunRule[], double, double> Zones => new()
    {
        { "1", [_one], 0, 370.3983 },
        { "1", [_one], 1, 43.8947 },
        { "1+2", [_one, _two], 0, 225.4384 },
        { "1+2", [_one, _two], 1, 20.0050 },
        { "1+3", [_one, _four], 0, 166.0545 },
        { "1+3", [_one, _four], 1, 12.6644 },
        { "1+4", [_one, RunRule.OnOneSide(8)], 0, 152.7301 },
        { "1+4", [_one, RunRule.OnOneSide(8)], 1, 14.5781 },
        { "1 and nine in a row", [_one, RunRule.OnOneSide(9)], 0, 216.6955 },
        { "1 and nine in a row", [_one, RunRule.OnOneSide(9)], 1, 17.0527 },
        { "1+2+3+4", [_one, _two, _four, RunRule.OnOneSide(8)], 0, 91.7508 },
        { "1+2+3+4", [_one, _two, _four, RunRule.OnOneSide(8)], 0.5, 27.3251 },
        { "1+2+3+4", [_one, _two, _four, RunRule.OnOneSide(8)], 1, 9.2219 },
        { "1+2+3+4", [_one, _two, _four, RunRule.OnOneSide(8)], 2, 3.1276 },
    };

    [Theory]
    [MemberData(nameof(Zones))]
    public void ZoneRules_Together_HaveTheExactRunLength(string rules, RunRule[] together, double shift, double length) =>
        Assert.True(Math.Abs(ZoneChain.Of(together)!.RunLength(shift) - length) <= 1e-4, rules);

    [Theory]
    [InlineData(0.5, 4, 0, 167.684)]
    [InlineData(0.5, 4, 0.5, 26.630)]
    [InlineData(0.5, 4, 1, 8.383)]
    [InlineData(0.5, 4, 2, 3.343)]
    [InlineData(0.5, 5, 0, 465.444)]
    [InlineData(0.5, 5, 0.5, 37.996)]
    [InlineData(0.5, 5, 1, 10.376)]
    [InlineData(0.5, 5, 2, 4.009)]
    public void Cusum_TwoSided_HasTheRunLengthOfItsIntegralEquation(double allowance, double decision, double shift, double length) =>
        Assert.Equal(length, SmoothedRunLength.Cusum(allowance, decision, shift), 6e-4);

    [Theory]
    [InlineData(0.2, 2.962, 0, 499.735)]
    [InlineData(0.2, 2.962, 0.5, 41.764)]
    [InlineData(0.2, 2.962, 1, 10.542)]
    [InlineData(0.2, 2.962, 2, 3.743)]
    [InlineData(0.1, 2.814, 0, 499.580)]
    [InlineData(0.1, 2.814, 0.5, 31.297)]
    [InlineData(0.1, 2.814, 1, 10.331)]
    [InlineData(0.1, 2.814, 2, 4.362)]
    [InlineData(0.3, 3, 0, 465.553)]
    [InlineData(0.3, 3, 0.5, 53.160)]
    [InlineData(0.3, 3, 1, 11.699)]
    [InlineData(0.3, 3, 2, 3.506)]
    public void Ewma_WithSteadyLimits_HasTheRunLengthOfItsIntegralEquation(double weight, double width, double shift, double length) =>
        Assert.Equal(length, SmoothedRunLength.Ewma(weight, width, shift), 6e-4);

    [Fact] // not yet signalled after m points: 2·(alternating permutations of m)/m!, whose sum is sec 1 + tan 1; 2/m!, which sum to e
    public void OrderRules_OfThreePoints_HaveTheClosedForms()
    {
        Assert.Equal(4.816446884671656, OrderRunLength.Of(RunRule.RisingOrFalling(3)), 1e-13);
        Assert.Equal(3.43656365691809, OrderRunLength.Of(RunRule.Alternating(3)), 1e-13);
    }

    [Fact] // 200 000 runs and more from seed 7 past the rules that judge a chart: 91.75 within 1 %
    public void RuleWatch_OnNormalPoints_CriesWolfAsOftenAsTheChainSays()
    {
        RunLength length = SimulatedRunLength.Of([_one, _two, _four, RunRule.OnOneSide(8)], 0, seed: 7, points: 20_000_000);

        Assert.InRange(length.Points, 91.75 * 0.99, 91.75 * 1.01);
        Assert.InRange(length.StandardError, 0.1, 0.25);
    }
}
