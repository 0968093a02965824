namespace Bellowsmith.Physics.Bolts;

/// <summary>
/// The placement that leaves the tightest bolt the most room. The greatest g = |offset| − room is smoothed, ε·ln Σ exp(g/ε), whose
/// excess is at most ε·ln n, and followed by Newton as ε falls. Turns count as arcs at the holes' mean distance.
/// </summary>
internal static class MostRoom
{
    private const double Sharpest_m = 1e-7, Sharpen = 0.25, Damping = 1e-9, Enough = 1e-4;
    private const int MostSteps = 30, MostHalvings = 30;

    public static Placement For(ReadOnlySpan<BoltPair> pairs, Placement placement) => Follow(pairs, placement, untilAllGoIn: false);

    public static bool GoIn(ReadOnlySpan<BoltPair> pairs, in Placement placement) =>
        Worst(pairs, Follow(pairs, placement, untilAllGoIn: true)) <= 0;

    private static Placement Follow(ReadOnlySpan<BoltPair> pairs, Placement placement, bool untilAllGoIn)
    {
        double arm = Arm(pairs, placement), soft = Math.Max(Spread(pairs, placement), Sharpest_m);
        while (true)
        {
            for (int step = 0; step < MostSteps; step++)
            {
                if (untilAllGoIn && Worst(pairs, placement) <= 0) return placement;
                if (!Stride(pairs, ref placement, arm, soft)) break;
            }

            if (!(soft > Sharpest_m)) return placement;
            soft = Math.Max(Sharpen * soft, Sharpest_m);
        }
    }

    // One step of Newton, halved until it gains; false where there is nothing left to gain.
    private static bool Stride(ReadOnlySpan<BoltPair> pairs, ref Placement at, double arm, double soft)
    {
        Slopes slopes = Slopes.Of(pairs, at, arm, soft);
        (double x, double y, double turn) = slopes.Newton(Damping / soft);
        double expected = -(x * slopes.X + y * slopes.Y + turn * slopes.Turn);
        for (int halving = 0; expected > Enough * soft && halving < MostHalvings; halving++)
        {
            Placement next = at with { X = at.X + x, Y = at.Y + y, Turn_rad = at.Turn_rad + turn / arm };
            if (Smoothed(pairs, next, soft) < slopes.Value - expected / 4)
            {
                at = next;
                return true;
            }

            (x, y, turn, expected) = (x / 2, y / 2, turn / 2, expected / 2);
        }

        return false;
    }

    private static double Smoothed(ReadOnlySpan<BoltPair> pairs, in Placement at, double soft)
    {
        (double greatest, double sum) = Slopes.Parts(pairs, at, soft);
        return greatest + soft * Math.Log(sum);
    }

    private static double Worst(ReadOnlySpan<BoltPair> pairs, in Placement at)
    {
        double worst = double.NegativeInfinity;
        foreach (BoltPair pair in pairs) worst = Math.Max(worst, -at.Of(pair).Margin_m);
        return worst;
    }

    private static double Spread(ReadOnlySpan<BoltPair> pairs, in Placement at)
    {
        double least = double.PositiveInfinity;
        foreach (BoltPair pair in pairs) least = Math.Min(least, -at.Of(pair).Margin_m);
        return Worst(pairs, at) - least;
    }

    private static double Arm(ReadOnlySpan<BoltPair> pairs, in Placement at)
    {
        double sum = 0;
        foreach (BoltPair pair in pairs)
        {
            (double x, double y) = at.Arm(pair, 0, 1);
            sum += Math.Sqrt(x * x + y * y);
        }

        return sum > 0 ? sum / pairs.Length : 1;
    }
}
