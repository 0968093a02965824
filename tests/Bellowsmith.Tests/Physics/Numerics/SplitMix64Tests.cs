using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Tests.Physics.Numerics;

public sealed class SplitMix64Tests
{
    [Fact] // the first values of seed 1234567 as the public-domain C version prints them (from memory)
    public void Next_OfAKnownSeed_GivesThePublishedValues()
    {
        SplitMix64 random = new(1_234_567);
        ulong[] first = [random.Next(), random.Next(), random.Next(), random.Next(), random.Next()];

        Assert.Equal(
            [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821], first);
    }

    [Fact] // four standard errors of 100 000 draws
    public void Normal_ManyDraws_HaveTheMomentsOfANormal()
    {
        SplitMix64 random = new(1);
        double[] draws = [.. Enumerable.Range(0, 100_000).Select(_ => random.Normal())];

        Assert.Equal(0, draws.Average(), 0.0127);
        Assert.Equal(1, draws.Average(x => x * x), 0.018);
        Assert.Equal(2.9, draws.Average(x => x * x * x * x), 0.12);
    }

    [Fact] // on the rim, and even over the turn: first and second harmonics of the angle vanish
    public void Direction_ManyDraws_LieEvenOnTheCircle()
    {
        SplitMix64 random = new(2);
        (double Cos, double Sin)[] draws = [.. Enumerable.Range(0, 100_000).Select(_ => random.Direction())];

        Assert.All(draws, d => Assert.Equal(1, d.Cos * d.Cos + d.Sin * d.Sin, 1e-15));
        Assert.Equal([0, 0, 0, 0], [draws.Average(d => d.Cos), draws.Average(d => d.Sin), draws.Average(d => d.Cos * d.Sin), draws.Average(d => d.Cos * d.Cos - 0.5)],
            (a, b) => Math.Abs(a - b) < 0.01);
    }
}
