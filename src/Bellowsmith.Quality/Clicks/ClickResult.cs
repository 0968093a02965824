namespace Bellowsmith.Quality.Clicks;

/// <summary>What is shown of a step at the simultaneous confidence.</summary>
public enum StepVerdict
{
    /// <summary>It goes the usual way, and by more than the wanted step where one is given.</summary>
    Distinct,

    /// <summary>The readings leave it open.</summary>
    NotShownDistinct,

    /// <summary>It goes against the usual way.</summary>
    Reversed,

    /// <summary>It is less than the wanted step.</summary>
    SmallerThanWanted,
}

/// <summary>Why no verdict can be given.</summary>
public enum ClickLack
{
    /// <summary>A step takes two clicks.</summary>
    OneClick,

    /// <summary>No click was measured in a run that shares clicks with others: nothing shows how well readings repeat.</summary>
    TooFewRuns,

    /// <summary>Clicks fall into groups that no run joins.</summary>
    NotJoined,

    /// <summary>Readings repeat exactly, which says the instrument does not resolve their scatter.</summary>
    NoScatter,
}

/// <summary>
/// From one click to the next, in the unit of the readings: the higher click's less the lower's, its standard error, and its
/// simultaneous interval. <paramref name="AtLeast"/> is the simultaneous one-sided lower bound of the step in the usual sense.
/// <paramref name="RunsToDecide"/> is for an open step: how many runs would settle one of the observed size nine times in ten, null
/// where more than a thousand would not. NaN where it cannot be estimated, null where nothing is known.
/// </summary>
public sealed record ClickStep(
    int From, int To, double Step, double? StandardError, double? Low, double? High, double? AtLeast,
    StepVerdict? Verdict, int? RunsToDecide);

/// <summary>Clicks in a row, both ends included.</summary>
public readonly record struct ClickRange(int From, int To);

/// <summary>
/// A damper's clicks judged step by step. <paramref name="Sense"/> is +1 where values rise with the click number and −1 where
/// they fall, taken from the straight line through all click means. <paramref name="Critical"/> is exact
/// (<paramref name="IsExact"/>) where every click was measured in every run, else the bound that holds whatever the correlation.
/// </summary>
public sealed record ClickResult(
    ClickTable Table, double Confidence, double? Wanted, ClickLack? Lack,
    IReadOnlyList<double> ClickMeans, IReadOnlyList<double> RunEffects, ClickAnova? Anova, double? Deviation,
    double? Critical, double? CriticalOneSided, bool IsExact, int Sense,
    IReadOnlyList<ClickStep> Steps, IReadOnlyList<ClickRange> Usable, int? RunsForWanted,
    OneWay? Unblocked, IReadOnlyList<PairedStep> Paired);
