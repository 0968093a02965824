using Bellowsmith.Quality.Charts;
using CsCheck;

namespace Bellowsmith.Tests.Quality.Charts;

/// <summary>What no chart may depend on: the unit, the zero, which way is up. Values on a coarse grid, so that many stand on a line.</summary>
public sealed class RunRuleTests
{
    private static readonly RunRule[] _rules =
    [
        RunRule.BeyondThreeSigma, RunRule.Beyond(2, 3, 2), RunRule.Beyond(4, 5, 1), RunRule.OnOneSide(6), RunRule.RisingOrFalling(4),
        RunRule.Alternating(5), RunRule.Within(7, 1), RunRule.Beyond(4, 4, 1, eitherSide: true),
    ];

    private static readonly Gen<int[]> _grid = Gen.OneOf(Gen.Int[0, 12].Array[10, 80], Gen.Int[0, 40].Array[10, 80]);

    [Theory]
    [InlineData(0.1, 0)]
    [InlineData(25.4, 0)]
    [InlineData(1 / 25.4, 0)]
    [InlineData(1e-3, 0)]
    [InlineData(1, 118.4)]
    [InlineData(0.1, -7.3)]
    [InlineData(-1, 0)] // upside down
    [InlineData(-0.1, 3.3)]
    public void Signals_InAnotherUnitOrUpsideDown_AreTheSame(double scale, double shift) => _grid.Sample(grid =>
    {
        double[] values = [.. grid.Select(k => (double)k)], other = [.. values.Select(v => scale * v + shift)];
        ChartBasis given = new(Centre: 6, Sd: 1.5), moved = new(Centre: scale * 6 + shift, Sd: Math.Abs(scale) * 1.5);

        Assert.Equal(IndividualsChart.Draw(values, ChartBasis.All, _rules).Signals, IndividualsChart.Draw(other, ChartBasis.All, _rules).Signals);
        Assert.Equal(IndividualsChart.Draw(values, given, _rules).Signals, IndividualsChart.Draw(other, moved, _rules).Signals);
        Assert.Equal(CusumChart.Draw(values, 0.5, 4, given).Signals, CusumChart.Draw(other, 0.5, 4, moved).Signals);
        Assert.Equal(EwmaChart.Draw(values, 0.25, 2, true, given).Signals, EwmaChart.Draw(other, 0.25, 2, true, moved).Signals);
        int[] starts = [.. Enumerable.Range(0, values.Length / 5).Select(g => 5 * g)];
        Assert.Equal(
            AveragesChart.Draw(values, starts, SpreadMeasure.Ranges, given, _rules).Signals,
            AveragesChart.Draw(other, starts, SpreadMeasure.Ranges, moved, _rules).Signals);
    }, iter: 100);

    [Fact]
    public void Signals_OfOneRule_DoNotDependOnTheOthers() => _grid.Sample(grid =>
    {
        double[] values = [.. grid.Select(k => (double)k)];
        Signal[] together = IndividualsChart.Draw(values, ChartBasis.All, _rules).Signals;
        for (int r = 0; r < _rules.Length; r++)
            Assert.Equal(
                IndividualsChart.Draw(values, ChartBasis.All, [_rules[r]]).Signals.Select(s => s.Point),
                together.Where(s => s.Rule == r).Select(s => s.Point));
    }, iter: 100);

    [Theory] // 28 = 16 + 3·4 in any unit
    [InlineData(1)]
    [InlineData(0.1)]
    [InlineData(25.4)]
    [InlineData(1 / 3.0)]
    public void Point_OnALimit_IsInsideAndOneBeyondIsNot(double unit)
    {
        double[] on = [28 * unit, 4 * unit], beyond = [28.001 * unit, 3.999 * unit];

        Assert.Empty(IndividualsChart.Draw(on, new(Centre: 16 * unit, Sd: 4 * unit), [RunRule.BeyondThreeSigma]).Signals);
        Assert.Equal(2, IndividualsChart.Draw(beyond, new(Centre: 16 * unit, Sd: 4 * unit), [RunRule.BeyondThreeSigma]).Signals.Length);
    }

    [Fact] // the third point is not beyond, so it completes nothing
    public void Signal_StandsOnlyWhereThePointItselfCounts() => Assert.Equal(
        [new Signal(1, 0)], IndividualsChart.Draw([2.1, 2.2, 0.1], new(Centre: 0, Sd: 1), [RunRule.Beyond(2, 3, 2)]).Signals);

    [Fact]
    public void Window_OfSixtyFour_IsSeenWhole() => Assert.Equal(
        [new Signal(63, 0)], IndividualsChart.Draw([.. Enumerable.Repeat(1.0, 64)], new(Centre: 0, Sd: 1), [RunRule.OnOneSide(64)]).Signals);
}
