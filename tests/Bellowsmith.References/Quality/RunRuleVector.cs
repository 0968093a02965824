using Bellowsmith.Quality.Charts;

namespace Bellowsmith.References.Quality;

/// <summary>
/// One row of 49 standardised points that sets off every rule of the older handbooks at known places; strict inequalities,
/// windows of successive points (made for this project; the rules as recalled from [Champ Woodall 1987]).
/// </summary>
public sealed class RunRuleVector
{
    private static readonly double[] _points =
    [
        0.2, -0.4, 3.2, -0.1, 0.3, 0.5, 0.2, 0.9, 0.4, 0.1, 0.6, 0.3, 0.7, -0.5, -0.3, -0.1, 0.0, 0.4, 0.8, 2.3, 0.5, 2.4, 1.6, 1.2, 0.4,
        -1.4, 1.3, -1.2, -1.6, 1.9, 1.1, -1.5, 1.7, 0.2, -0.6, 0.5, -0.2, 0.3, -0.7, 0.6, -0.1, 0.9, -0.3, 0.1, -0.8, 0.7, -0.4, 0.2, -0.5,
    ];

    public static TheoryData<RunRule, int[]> Rules => new()
    {
        { RunRule.BeyondThreeSigma, [3] },
        { RunRule.OnOneSide(9), [13] },
        { RunRule.RisingOrFalling(6), [19, 20] },
        { RunRule.Alternating(14), [47, 48, 49] },
        { RunRule.Beyond(2, 3, 2), [22] },
        { RunRule.Beyond(4, 5, 1), [24] },
        { RunRule.Within(15, 1), [18, 19, 48, 49] },
        { RunRule.Beyond(8, 8, 1, eitherSide: true), [33] },
    };

    [Theory]
    [MemberData(nameof(Rules))]
    public void Signals_OfOneRule_StandAtThesePoints(RunRule rule, int[] points) =>
        Assert.Equal(points, IndividualsChart.Draw(_points, new(Centre: 0, Sd: 1), [rule]).Signals.Select(s => s.Point + 1));

    [Fact]
    public void Signals_OfAllRulesAtOnce_AreThoseOfEach()
    {
        RunRule[] rules = [.. Rules.Select(row => row.Data.Item1)];

        ControlChart chart = IndividualsChart.Draw(_points, new(Centre: 0, Sd: 1), rules);

        Assert.Equal(
            Rules.SelectMany((row, rule) => row.Data.Item2.Select(p => new Signal(p - 1, rule))).OrderBy(s => s.Point).ThenBy(s => s.Rule),
            chart.Signals);
    }
}
