namespace Bellowsmith.Quality;

/// <summary>One-way analysis of variance: do groups of readings differ by more than the readings within them?</summary>
/// <param name="Between">Between the groups, tested against within.</param>
/// <param name="Within">Within the groups.</param>
public sealed record OneWayAnova(AnovaRow Between, AnovaRow Within)
{
    /// <summary>Standard deviation within a group.</summary>
    public double ResidualDeviation => Math.Sqrt(Within.MeanSquare);

    /// <summary>Share of the squares that lies between the groups; null where nothing varied.</summary>
    public double? RSquared => Between.SumOfSquares + Within.SumOfSquares is > 0 and var total ? Between.SumOfSquares / total : null;

    /// <param name="groups">At least two, none empty, with more readings than groups.</param>
    /// <exception cref="ArgumentException">Fewer than two groups, an empty one, or one reading in each.</exception>
    public static OneWayAnova Of(IReadOnlyList<double[]> groups)
    {
        double[] all = [.. groups.SelectMany(group => group)];
        if (groups.Count < 2 || groups.Any(group => group.Length == 0) || all.Length == groups.Count)
            throw new ArgumentException("Two groups or more, and somewhere a repeat, are needed.", nameof(groups));
        double grand = Means.Of(all), between = 0, within = 0, nothing = Means.RoundingSquares(all);
        foreach (double[] group in groups)
        {
            double mean = Means.Of(group);
            between += group.Length * (mean - grand) * (mean - grand);
            within += Means.SquaresAbout(group, mean);
        }

        AnovaRow error = new(within <= nothing ? 0 : within, all.Length - groups.Count);
        return new(new AnovaRow(between <= nothing ? 0 : between, groups.Count - 1).Against(error), error);
    }
}
