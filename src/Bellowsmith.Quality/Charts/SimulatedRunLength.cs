namespace Bellowsmith.Quality.Charts;

/// <summary>
/// The average run length where zones and order are watched together: normal points from a seed go past the very rules that
/// judge a chart, which forget everything at each signal. The same seed gives the same answer.
/// </summary>
internal static class SimulatedRunLength
{
    public const int Points = 2_000_000;
    private const int LeastRuns = 2, FewRuns = 30;

    /// <summary>Points per finished run, and its standard error (standard deviation of the runs over √runs, under 30 runs at
    /// least that of a geometric distribution); infinite, that is over a million points, under two runs.</summary>
    public static RunLength Of(IReadOnlyList<RunRule> rules, double shift_sigma, int seed, int points = Points)
    {
        RuleWatch[] watches = [.. rules.Select(r => new RuleWatch(r))];
        ControlLimits limits = ControlLimits.Around(0, 1);
        for (int r = 0; r < watches.Length; r++) watches[r].Take(limits);
        NormalPoints normal = new(new Random(seed));
        double runs = 0, squares = 0;
        int run = 0, counted = 0;
        for (int i = 0; i < points; i++)
        {
            run++;
            if (!Seen(watches, normal.Next() + shift_sigma)) continue;
            (runs, squares, counted, run) = (runs + 1, squares + (double)run * run, counted + run, 0);
            for (int r = 0; r < watches.Length; r++) watches[r].Forget();
        }

        if (runs < LeastRuns) return new(double.PositiveInfinity, 0);
        double mean = counted / runs;
        double error = Math.Sqrt(Math.Max(0, squares / runs - mean * mean) / runs);
        return new(mean, runs < FewRuns ? Math.Max(error, mean / Math.Sqrt(runs)) : error);
    }

    private static bool Seen(RuleWatch[] watches, double point)
    {
        bool seen = false;
        for (int r = 0; r < watches.Length; r++) seen |= watches[r].Sees(point);
        return seen;
    }

    // The polar method: two normal numbers from a point drawn in the unit circle.
    private sealed class NormalPoints(Random random)
    {
        private double _kept = double.NaN;

        public double Next()
        {
            if (!double.IsNaN(_kept))
            {
                double kept = _kept;
                _kept = double.NaN;
                return kept;
            }

            double x, y, square;
            do
            {
                (x, y) = (2 * random.NextDouble() - 1, 2 * random.NextDouble() - 1);
                square = x * x + y * y;
            }
            while (square is >= 1 or 0);
            double scale = Math.Sqrt(-2 * Math.Log(square) / square);
            _kept = y * scale;
            return x * scale;
        }
    }
}
