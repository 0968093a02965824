using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class BoltGroupTests
{
    [Fact] // 10 kN down 46 mm beside two bolts 70 mm apart: 5 kN each, and 460 N·m over 70 mm, 6571.43 N, across
    public void Forces_BesideTwoBolts_AreShareAndCouple()
    {
        double[] forces = new BoltGroup([(0.046, 0.032), (0.046, 0.102)]).Forces_N((0, -10e3), (0, 0));

        Assert.Equal(8257.34, forces[0], 0.01);
        Assert.Equal(8257.34, forces[1], 0.01);
    }

    [Fact] // four at the corners of a square of 80 mm, 100 N·m alone: r = 56.569 mm, 100/(4·r)
    public void Forces_OfACoupleOnFour_AreAlike()
    {
        BoltGroup four = new([(0, 0), (0.08, 0), (0.08, 0.08), (0, 0.08)]);
        double[] far = four.Forces_N((0, 1e-3), (1e5, 0.04)); // 1 mN a long way off

        Assert.All(far, force => Assert.Equal(441.942, force, 0.01));
    }

    [Fact] // through their middle: each its share, whichever way; one bolt lies apart from the others, wherever those are
    public void Forces_ThroughTheMiddle_AreEven() => Gen.Select(Gen.Double[-1e4, 1e4], Gen.Double[-1e4, 1e4], Gen.Select(Gen.Double[-0.1, 0.1], Gen.Double[-0.1, 0.1]).Array[2]).Sample((x, y, others) =>
    {
        (double, double)[] places = [(0.2, 0), .. others];
        double[] forces = new BoltGroup(places).Forces_N((x, y), (places.Average(p => p.Item1), places.Average(p => p.Item2)));

        Assert.All(forces, force => Assert.Equal(Math.Sqrt(x * x + y * y) / 3, force, 1e-6));
    });
}
