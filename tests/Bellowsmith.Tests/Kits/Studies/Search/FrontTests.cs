using Bellowsmith.Kits.Studies.Search;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Studies.Search;

/// <summary>A front is what nothing dominates, whatever the numbers; few of it still reach its ends.</summary>
public sealed class FrontTests
{
    // Few different values, so that ties and equals are many.
    private static readonly Gen<double[][]> _costs = Gen.Select(Gen.Int[0, 6], Gen.Int[0, 6], Gen.Int[0, 3])
        .Select(t => new double[] { t.Item1, t.Item2, t.Item3 }).Array[1, 60];

    [Fact]
    public void Of_AnyCosts_IsDominatedByNone() => _costs.Sample(costs =>
    {
        int[] front = Front.Of(costs);

        Assert.NotEmpty(front);
        Assert.All(front, k => Assert.DoesNotContain(costs, other => Dominates(other, costs[k])));
    });

    [Fact]
    public void Of_WhatIsLeftOut_IsDominatedOrEqualToOneTaken() => _costs.Sample(costs =>
    {
        int[] front = Front.Of(costs);

        Assert.All(Enumerable.Range(0, costs.Length).Except(front), k => Assert.Contains(front, f => Dominates(costs[f], costs[k]) || (costs[f].SequenceEqual(costs[k]) && f < k)));
    });

    [Fact]
    public void Of_ThreePointsByHand_LeavesTheDominatedOne() =>
        Assert.Equal([0, 2], Front.Of([[1.0, 5, 0], [2.0, 5, 0], [3.0, 4, 0], [1.0, 5, 0]]));

    [Fact]
    public void Spread_OfAnyFront_KeepsTheLeastOfEachCost() => Gen.Select(_costs, Gen.Int[3, 12]).Sample((costs, most) =>
    {
        double[][] front = [.. Front.Of(costs).Select(k => costs[k])];
        int[] taken = Front.Spread(front, most);

        Assert.Equal(Math.Min(most, front.Length), taken.Distinct().Count());
        for (int d = 0; d < 3; d++) Assert.Equal(front.Min(c => c[d]), taken.Min(k => front[k][d]));
    });

    [Fact]
    public void Spread_OfElevenOnALine_TakesEndsThenTheMiddle() =>
        Assert.Equal([0, 5, 10], Front.Spread([.. Enumerable.Range(0, 11).Select(k => new double[] { k, 10 - k, 0 })], 3));

    private static bool Dominates(double[] one, double[] other) => one.Zip(other).All(p => p.First <= p.Second) && one.Zip(other).Any(p => p.First < p.Second);
}
