namespace Bellowsmith.Kits.Studies.Search;

/// <summary>
/// What cannot be bettered in one cost without being worsened in another, and few of it that show it all.
/// </summary>
internal static class Front
{
    /// <summary>Those that none of the others dominates, in their order; of equals the first.</summary>
    public static int[] Of(IReadOnlyList<double[]> costs)
    {
        List<int> front = [];
        for (int k = 0; k < costs.Count; k++)
        {
            double[] cost = costs[k];
            if (front.Exists(other => IsNoWorse(costs[other], cost))) continue;
            front.RemoveAll(other => IsNoWorse(cost, costs[other]));
            front.Add(k);
        }

        return [.. front.Order()];
    }

    /// <summary>
    /// At most so many, spread over all: first the least of each cost, then again and again the one farthest from all taken,
    /// each cost counted from its least (0) to its greatest (1).
    /// </summary>
    public static int[] Spread(IReadOnlyList<double[]> costs, int most)
    {
        if (costs.Count <= most) return [.. Enumerable.Range(0, costs.Count)];
        int dimensions = costs[0].Length;
        double[] least = [.. Enumerable.Range(0, dimensions).Select(d => costs.Min(c => c[d]))];
        double[] reach = [.. Enumerable.Range(0, dimensions).Select(d => costs.Max(c => c[d]) - least[d])];
        List<int> taken = [.. Enumerable.Range(0, dimensions).Select(d => LeastAt(costs, d)).Distinct().Take(most)];
        while (taken.Count < most) taken.Add(Enumerable.Range(0, costs.Count).Except(taken).MaxBy(k => taken.Min(other => Distance(costs[k], costs[other]))));
        return [.. taken.Order()];

        double Distance(double[] a, double[] b) => Enumerable.Range(0, dimensions).Sum(d => reach[d] > 0 ? Math.Pow((a[d] - b[d]) / reach[d], 2) : 0);
    }

    // The first of equals.
    private static int LeastAt(IReadOnlyList<double[]> costs, int dimension) => Enumerable.Range(0, costs.Count).MinBy(k => costs[k][dimension]);

    private static bool IsNoWorse(double[] one, double[] other)
    {
        for (int d = 0; d < one.Length; d++)
            if (one[d] > other[d]) return false;
        return true;
    }
}
