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
}
