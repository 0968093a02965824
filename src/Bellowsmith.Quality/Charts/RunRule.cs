namespace Bellowsmith.Quality.Charts;

public enum RuleKind
{
    /// <summary>A point beyond one of its limits, wherever they stand.</summary>
    BeyondLimit,

    /// <summary>So many of so many successive points beyond a distance from the centre, all on one side.</summary>
    BeyondOnOneSide,

    /// <summary>The same, either side counting.</summary>
    BeyondOnEitherSide,

    /// <summary>So many of so many successive points within a distance of the centre.</summary>
    Within,

    /// <summary>Successive points that each lie above, or each below, the one before.</summary>
    RisingOrFalling,

    /// <summary>Successive points that go up and down in turn.</summary>
    Alternating,
}

/// <summary>
/// A pattern that is rare while nothing changes. It signals at the point that completes it and at each further point that
/// still does. Distances are in standard deviations of the plotted points; "beyond" is strict, a point on the line is within.
/// </summary>
/// <param name="Kind">What is looked for.</param>
/// <param name="Count">How many points must show it, 1 to <see cref="LongestWindow"/>.</param>
/// <param name="Window">Among how many successive points.</param>
/// <param name="Distance_sigma">The distance from the centre line, 0 and up; nothing where order alone counts.</param>
public sealed record RunRule(RuleKind Kind, int Count, int Window, double Distance_sigma)
{
    /// <summary>A history is kept as the bits of one word.</summary>
    public const int LongestWindow = 64;

    /// <summary>One point beyond a limit.</summary>
    public static RunRule BeyondLimit { get; } = new(RuleKind.BeyondLimit, 1, 1, 0);

    /// <summary>One point beyond 3σ: the rule every chart of single values, averages, counts and shares begins with.</summary>
    public static RunRule BeyondThreeSigma { get; } = Beyond(1, 1, 3);

    public bool SeesOrder => Kind is RuleKind.RisingOrFalling or RuleKind.Alternating;

    /// <summary>So many of so many beyond a distance; on one side unless said otherwise.</summary>
    public static RunRule Beyond(int count, int window, double distance_sigma, bool eitherSide = false) =>
        new(eitherSide ? RuleKind.BeyondOnEitherSide : RuleKind.BeyondOnOneSide, count, window, distance_sigma);

    /// <summary>So many in a row on one side of the centre line.</summary>
    public static RunRule OnOneSide(int count) => Beyond(count, count, 0);

    public static RunRule Within(int count, double distance_sigma) => new(RuleKind.Within, count, count, distance_sigma);

    public static RunRule RisingOrFalling(int count) => new(RuleKind.RisingOrFalling, count, count, 0);

    public static RunRule Alternating(int count) => new(RuleKind.Alternating, count, count, 0);
}

/// <summary>A point, counted from 0, that completes a rule, by its place in the chart's rules.</summary>
public readonly record struct Signal(int Point, int Rule);
