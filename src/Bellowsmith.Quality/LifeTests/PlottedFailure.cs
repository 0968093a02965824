using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.LifeTests;

/// <summary>A failure where it stands on the Weibull plot.</summary>
/// <param name="Life">In the unit of the lives.</param>
/// <param name="Rank">Adjusted for the survivors before it; a whole number where there are none.</param>
/// <param name="FailedShare">Median rank: the median of Beta(rank, n + 1 − rank).</param>
public sealed record PlottedFailure(double Life, double Rank, double FailedShare)
{
    /// <summary>
    /// Ascending. Each failure's rank steps on by <c>(n + 1 − rank before)/(1 + parts not yet past)</c> [Johnson 1964]; at equal lives
    /// failures come before survivors. The median rank is exact, not the usual (rank − 0.3)/(n + 0.4).
    /// </summary>
    public static IReadOnlyList<PlottedFailure> Of(ReadOnlySpan<double> lives, ReadOnlySpan<bool> failed)
    {
        (double Life, bool Failed)[] order = new (double, bool)[lives.Length];
        for (int i = 0; i < order.Length; i++) order[i] = (lives[i], failed[i]);
        Array.Sort(order, (a, b) => a.Life != b.Life ? a.Life.CompareTo(b.Life) : b.Failed.CompareTo(a.Failed));
        List<PlottedFailure> plotted = [];
        double rank = 0;
        for (int i = 0; i < order.Length; i++)
        {
            if (!order[i].Failed) continue;
            rank += (order.Length + 1 - rank) / (1 + order.Length - i);
            plotted.Add(new(order[i].Life, rank, Quantiles.BetaOf(0.5, rank, order.Length + 1 - rank)));
        }

        return plotted;
    }
}
