using Bellowsmith.Quality.Pairs;
using CsCheck;

namespace Bellowsmith.Tests.Quality.Pairs;

public sealed class PairingTests
{
    private static readonly Gen<double[,]> _batch =
        from units in Gen.Int[2, 9]
        from characteristics in Gen.Int[1, 3]
        from coarse in Gen.Bool
        from values in Gen.Double[0, 10].Array[units * characteristics]
        select Table(values, units, characteristics, coarse);

    [Fact] // nearest first would take 2 with 3 and leave 0 with 9
    public void Of_ABatchWhereGreedFails_KeepsTheWorstSmall()
    {
        PairingResult result = Pairing.Of(new double[,] { { 0 }, { 3 }, { 2 }, { 5 } }, [2]);

        Assert.Equal([(0, 2), (1, 3)], result.Pairs.Select(p => (p.A, p.B)));
        Assert.Equal(1, result.Worst);
        Assert.Equal(2, result.Sum);
        Assert.Empty(result.Spare);
    }

    [Fact] // the worst is 4 either way; 0.5 + 4 beats 1.5 + 4 and 3 + 4
    public void Of_SeveralWithTheSmallestWorst_TakesTheSmallestSum()
    {
        PairingResult result = Pairing.Of(new double[,] { { 0, 0 }, { 0.5, 0 }, { 10, 0 }, { 10, 4 } }, [1, 1]);

        Assert.Equal(4, result.Worst);
        Assert.Equal(4.5, result.Sum);
        Assert.Equal([0, 1], result.Pairs.Select(p => p.Characteristic));
    }

    [Fact]
    public void Of_AnOddBatch_LeavesOutTheUnitThatFitsWorst()
    {
        PairingResult result = Pairing.Of(new double[,] { { 1 }, { 7 }, { 1.5 } }, [1]);

        Assert.Equal([1], result.Spare);
        Assert.Equal(0.5, result.Worst);
    }

    [Fact]
    public void Of_MoreLeftThanRight_LeavesLeftOnesOver()
    {
        PairingResult result = Pairing.Of(new double[,] { { 1 }, { 5 }, { 9 }, { 5.2 } }, [1], [Hand.Left, Hand.Left, Hand.Left, Hand.Right]);

        Assert.Equal((1, 3), (result.Pairs.Single().A, result.Pairs.Single().B));
        Assert.Equal([0, 2], result.Spare);
    }

    [Fact] // 0 and 0.5 go together, but then 3 and 9 must
    public void Of_ABatchOutsideTolerance_SaysHowManyPairsCouldBeWithin()
    {
        PairingResult result = Pairing.Of(new double[,] { { 0 }, { 0.5 }, { 3 }, { 9 } }, [1]);

        Assert.Equal(6, result.Worst);
        Assert.Equal(1, result.MostWithinTolerance);
    }

    [Fact]
    public void Of_AllEqual_PairsThemWithNothingBetween() => Assert.Equal(0, Pairing.Of(new double[6, 2], [1, 1]).Worst);

    [Theory]
    [InlineData(0, PairingLack.FewerThanTwoUnits)]
    [InlineData(1, PairingLack.FewerThanTwoUnits)]
    [InlineData(3, PairingLack.OneHandOnly)]
    public void Of_NothingToPair_SaysWhy(int units, PairingLack lack)
    {
        PairingResult result = Pairing.Of(new double[units, 1], [1], [.. Enumerable.Repeat(Hand.Left, units)]);

        Assert.Equal(lack, result.Lack);
        Assert.Null(result.Worst);
        Assert.Equal(units, result.Spare.Count);
    }

    [Fact]
    public void Of_AToleranceOfNothing_Throws() => Assert.Throws<ArgumentException>(() => Pairing.Of(new double[2, 1], [0]));

    [Fact] // every pairing tried
    public void Of_AnyBatch_IsTheBestOfAllPairings() => _batch.Sample(values => Check(values, null), iter: 2000);

    [Fact]
    public void Of_AnyBatchWithHands_IsTheBestOfAllPairings() => _batch.SelectMany(
        values => Gen.Bool.Array[values.GetLength(0)], (values, left) => (values, left)).Sample(
        batch => Check(batch.values, [.. batch.left.Select(l => l ? Hand.Left : Hand.Right)]), iter: 2000);

    [Fact]
    public void Of_AnotherOrder_HasTheSameWorstAndSum() => Gen.Double[0, 10].Array[60].Sample(numbers =>
    {
        PairingResult one = Pairing.Of(Table(numbers, 30, 2, false), [1, 2]);
        PairingResult other = Pairing.Of(Table([.. numbers.Chunk(2).Reverse().SelectMany(n => n)], 30, 2, false), [1, 2]);

        Assert.Equal(one.Worst, other.Worst);
        Assert.Equal(one.Sum!.Value, other.Sum!.Value, 1e-9);
    }, iter: 200);

    [Fact] // powers of two, so that every ratio is the same double
    public void Of_AnotherUnit_HasTheSamePairs() => Gen.Double[0, 10].Array[40].Sample(numbers =>
    {
        PairingResult one = Pairing.Of(Table(numbers, 20, 2, false), [1, 2]);
        PairingResult other = Pairing.Of(Table([.. numbers.Select(n => n * 8)], 20, 2, false), [8, 16]);

        Assert.Equal(one.Pairs, other.Pairs);
    }, iter: 200);

    private static double[,] Table(double[] numbers, int units, int characteristics, bool coarse)
    {
        double[,] values = new double[units, characteristics];
        for (int i = 0; i < numbers.Length; i++) values[i / characteristics, i % characteristics] = coarse ? Math.Round(numbers[i]) : numbers[i];
        return values;
    }

    private static void Check(double[,] values, Hand[]? hands)
    {
        double[] tolerances = [.. new double[] { 1, 0.5, 3 }.Take(values.GetLength(1))];
        PairingResult result = Pairing.Of(values, tolerances, hands);
        (int pairs, double worst, double sum) = All(values, tolerances, hands, [.. Enumerable.Range(0, values.GetLength(0))])
            .OrderByDescending(p => p.Pairs).ThenBy(p => p.Worst).ThenBy(p => p.Sum).First();

        Assert.Equal(pairs, result.Pairs.Count);
        if (pairs == 0) return;
        Assert.Equal(worst, result.Worst);
        Assert.Equal(sum, result.Sum!.Value, 1e-9);
        Assert.Equal(
            Enumerable.Range(0, values.GetLength(0)), result.Pairs.SelectMany(p => new[] { p.A, p.B }).Concat(result.Spare).Order());
        Assert.All(result.Pairs, p => Assert.True(hands is null || (hands[p.A] == Hand.Left && hands[p.B] == Hand.Right)));
    }

    // Every pairing there is: the first unit alone, or with each of the others.
    private static IEnumerable<(int Pairs, double Worst, double Sum)> All(double[,] values, double[] tolerances, Hand[]? hands, int[] units)
    {
        if (units.Length < 2) return [(0, 0, 0)];
        IEnumerable<(int, double, double)> all = All(values, tolerances, hands, units[1..]);
        foreach (int other in units[1..])
        {
            if (hands is not null && hands[units[0]] == hands[other]) continue;
            double cost = Enumerable.Range(0, tolerances.Length).Max(c => Math.Abs(values[units[0], c] - values[other, c]) / tolerances[c]);
            all = all.Concat(All(values, tolerances, hands, [.. units[1..].Where(u => u != other)])
                .Select(rest => (rest.Pairs + 1, Math.Max(rest.Worst, cost), rest.Sum + cost)));
        }

        return all;
    }
}
