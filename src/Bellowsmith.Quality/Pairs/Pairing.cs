namespace Bellowsmith.Quality.Pairs;

/// <summary>Which side of the car a unit is built for.</summary>
public enum Hand { Left, Right }

/// <summary>Why there are no pairs.</summary>
public enum PairingLack { FewerThanTwoUnits, OneHandOnly }

/// <summary>
/// Two units that go together, by their index: with hands <paramref name="A"/> is the left one, else the earlier.
/// <paramref name="Worst"/> is the greatest |a − b|/tolerance of their characteristics, found at <paramref name="Characteristic"/>.
/// </summary>
public sealed record Pair(int A, int B, double Worst, int Characteristic);

/// <summary>
/// A batch in pairs, in the order of their first units. <paramref name="MostWithinTolerance"/> is how many pairs with a worst of 1 or
/// less any pairing of the batch can have, which may leave more units over than this one does.
/// </summary>
public sealed record PairingResult(
    IReadOnlyList<Pair> Pairs, double? Worst, double? Sum, IReadOnlyList<int> Spare, int MostWithinTolerance, PairingLack? Lack);

/// <summary>
/// Pairs a batch so that the worst pair is as alike as it can be: of all pairings with as many pairs as there can be, those with
/// the smallest greatest worst, and of these the one with the smallest sum of worsts. A unit left over is chosen to that end.
/// </summary>
/// <remarks>
/// The smallest worst is exact: bisection over the distinct worsts with the most pairs each leaves possible. The sum is the
/// smallest to within pairs · 2⁻⁴⁹ of the worst, since the second step counts in whole 2⁻⁴⁸ of it. One method serves units with hands
/// and without: the pairs of one hand are left out.
/// </remarks>
public static class Pairing
{
    private const int Bits = 48;

    /// <summary>Pairs a batch.</summary>
    /// <param name="values">A row for each unit, a column for each characteristic; finite.</param>
    /// <param name="tolerances">Of each characteristic, in its unit; above 0.</param>
    /// <param name="hands">Of each unit; null where any two may go together.</param>
    /// <exception cref="ArgumentException">A tolerance is not above 0, a value is not finite, or the lengths differ.</exception>
    public static PairingResult Of(double[,] values, IReadOnlyList<double> tolerances, IReadOnlyList<Hand>? hands = null)
    {
        int units = values.GetLength(0);
        if (tolerances.Count != values.GetLength(1) || tolerances.Any(t => !(t > 0))) throw new ArgumentException("One tolerance above 0 for each characteristic.", nameof(tolerances));
        if (hands is not null && hands.Count != units) throw new ArgumentException("One hand for each unit.", nameof(hands));
        if (values.Cast<double>().Any(v => !double.IsFinite(v))) throw new ArgumentException("Values are finite.", nameof(values));
        int left = hands?.Count(h => h == Hand.Left) ?? units / 2;
        int most = Math.Min(left, units - left);
        if (most == 0)
            return new([], null, null, [.. Enumerable.Range(0, units)], 0, units < 2 ? PairingLack.FewerThanTwoUnits : PairingLack.OneHandOnly);
        double[,] costs = Costs(values, tolerances, hands);
        return Result(values, tolerances, hands, costs, WeightedMatching.Of(Weights(costs, SmallestWorst(costs, most), most)));
    }

    private static double[,] Costs(double[,] values, IReadOnlyList<double> tolerances, IReadOnlyList<Hand>? hands)
    {
        int units = values.GetLength(0);
        double[,] costs = new double[units, units];
        for (int a = 0; a < units; a++)
            for (int b = 0; b < units; b++)
                costs[a, b] = a == b || (hands is not null && hands[a] == hands[b]) ? double.PositiveInfinity : Worst(values, tolerances, a, b).Worst;
        return costs;
    }

    private static (double Worst, int Characteristic) Worst(double[,] values, IReadOnlyList<double> tolerances, int a, int b)
    {
        (double worst, int at) = (0, 0);
        for (int c = 0; c < tolerances.Count; c++)
        {
            double ratio = Math.Abs(values[a, c] - values[b, c]) / tolerances[c];
            if (ratio > worst) (worst, at) = (ratio, c);
        }

        return (worst, at);
    }

    private static double SmallestWorst(double[,] costs, int most)
    {
        double[] distinct = [.. costs.Cast<double>().Where(double.IsFinite).Distinct().Order()];
        int low = 0, high = distinct.Length - 1;
        while (low < high)
        {
            int middle = (low + high) / 2;
            if (CardinalityMatching.Size(costs, distinct[middle]) == most) high = middle;
            else low = middle + 1;
        }

        return distinct[low];
    }

    // The base is more than all costs together, so that a pair more always weighs more.
    private static long[,] Weights(double[,] costs, double worst, int most)
    {
        int units = costs.GetLength(0);
        long whole = 1L << Bits, heavy = (most + 1) * whole;
        long[,] weights = new long[units, units];
        for (int a = 0; a < units; a++)
            for (int b = 0; b < units; b++)
                if (costs[a, b] <= worst) weights[a, b] = heavy - (worst == 0 ? 0 : (long)Math.Round(costs[a, b] / worst * whole));
        return weights;
    }

    private static PairingResult Result(double[,] values, IReadOnlyList<double> tolerances, IReadOnlyList<Hand>? hands, double[,] costs, int[] mates)
    {
        List<Pair> pairs = [];
        for (int a = 0; a < mates.Length; a++)
        {
            int b = mates[a];
            if (b < 0 || (hands is null ? b < a : hands[a] == Hand.Right)) continue;
            (double ratio, int characteristic) = Worst(values, tolerances, a, b);
            pairs.Add(new(a, b, ratio, characteristic));
        }

        double worst = pairs.Max(p => p.Worst);
        return new(
            pairs, worst, pairs.Sum(p => p.Worst), [.. Enumerable.Range(0, mates.Length).Where(u => mates[u] < 0)],
            worst <= 1 ? pairs.Count : CardinalityMatching.Size(costs, 1), null);
    }
}
