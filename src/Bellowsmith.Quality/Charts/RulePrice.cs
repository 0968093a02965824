using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Points to the first signal, on average; infinite where none can come. <paramref name="StandardError"/> is 0 where it is
/// computed, else that of a simulation.
/// </summary>
public readonly record struct RunLength(double Points, double StandardError)
{
    public bool Simulated => StandardError > 0;
}

/// <summary>
/// What watching costs and buys: how seldom it cries wolf while nothing has changed, and how soon it tells of a mean that has
/// moved by ½, 1 and 2 standard deviations of the plotted points. All for independent normal points about true limits.
/// </summary>
public sealed record RulePrice(RunLength Unchanged, RunLength HalfSigma, RunLength OneSigma, RunLength TwoSigma)
{
    public static IReadOnlyList<double> Shifts_sigma { get; } = [0, 0.5, 1, 2];

    internal static RulePrice Of(Func<double, RunLength> at) => new(at(0), at(0.5), at(1), at(2));

    internal static RulePrice Of(Func<double, double> at) => Of(shift => new RunLength(at(shift), 0));

    /// <summary>Of rules used together: exact by Markov chain where they see zones only, exact by integral equation where one
    /// stands alone that sees order, else simulated from the seed.</summary>
    public static RulePrice Of(IReadOnlyList<RunRule> rules, int seed)
    {
        if (rules is [{ SeesOrder: true } alone])
        {
            double length = OrderRunLength.Of(alone);
            return Of(_ => length);
        }

        return ZoneChain.Of(rules) is { } chain ? Of(chain.RunLength) : Of(shift => SimulatedRunLength.Of(rules, shift, seed));
    }

    /// <summary>
    /// Of rules on a chart of counts or shares, whose points are whole numbers: Poisson or binomial chances of the chart's first
    /// judged phase, at its mean size where sizes differ, the mean moved upwards. Rules that see order are priced as for normal points.
    /// </summary>
    public static RulePrice OfCounts(ControlChart chart, IReadOnlyList<RunRule> rules, int seed)
    {
        if (chart.Phases.FirstOrDefault(p => p is { Judged: true, Sd: > 0 }) is not { } phase || ZoneChain.Of(rules) is not { } chain) return Of(rules, seed);
        double perPoint = phase.Centre / phase.Sd / phase.Sd; // mean size, but for 1 − p of shares
        if (chart.Kind == ChartKind.Counts)
        {
            double mean = phase.Centre * perPoint;
            return Of(shift => chain.RunLength(UpTo(mean + shift * Math.Sqrt(mean)), mean, Math.Sqrt(mean)));
        }

        double share = phase.Centre, size = Math.Max(1, Math.Round(perPoint * (1 - share))), sigma = Math.Sqrt(size * share * (1 - share));
        return Of(shift => chain.RunLength(UpTo(Math.Min(1, share + shift * sigma / size), (int)size), size * share, sigma));
    }

    private static Func<double, double> UpTo(double mean) => count => count < 0 ? 0 : Poisson.CDF(mean, count);

    private static Func<double, double> UpTo(double share, int size) => count => count < 0 ? 0 : count >= size ? 1 : Binomial.CDF(share, size, count);
}
