namespace Bellowsmith.Quality.Gauges;

public enum GaugeVerdict
{
    /// <summary>At most <see cref="GaugeJudgement.SuitablePercent"/> of what it is judged by.</summary>
    Suitable,

    /// <summary>Between the two limits: by what the measurement is for and what a better gauge costs.</summary>
    SuitableWithCare,

    /// <summary>More than <see cref="GaugeJudgement.UnsuitablePercent"/>.</summary>
    NotSuitable,

    NotJudged,
}

/// <summary>Why no verdict was given.</summary>
public enum GaugeDoubt
{
    None,

    /// <summary>Fewer than <see cref="GaugeJudgement.FewestCombinations"/> parts times appraisers.</summary>
    TooFewCombinations,

    /// <summary>Every reading is the same.</summary>
    NothingVaried,

    /// <summary>Repeats never differed: the gauge's steps are coarser than its scatter.</summary>
    StepsHideScatter,
}

/// <summary>
/// Whether a gauge is good enough, by the limits of 10 % and 30 % that are common practice: of the tolerance where one is
/// given, else of the total standard deviation of the trial.
/// </summary>
public sealed record GaugeJudgement(GaugeVerdict Verdict, bool OfTolerance, double? Percent, GaugeDoubt Doubt)
{
    /// <summary>Common practice.</summary>
    public const double SuitablePercent = 10, UnsuitablePercent = 30;

    /// <summary>Parts times appraisers from which a verdict is given; common practice.</summary>
    public const int FewestCombinations = 15;

    /// <param name="components">What the trial showed.</param>
    /// <param name="combinations">Parts times appraisers.</param>
    /// <param name="tolerance">Upper less lower limit, in the readings' unit; null where there is none.</param>
    public static GaugeJudgement Of(GaugeComponents components, int combinations, double? tolerance)
    {
        double? percent = tolerance is { } width ? components.PercentOfTolerance(width) : components.GaugeRrPercent;
        GaugeDoubt doubt = components switch
        {
            { Total: 0 } => GaugeDoubt.NothingVaried,
            { GaugeRr: 0 } => GaugeDoubt.StepsHideScatter,
            _ => combinations < FewestCombinations ? GaugeDoubt.TooFewCombinations : GaugeDoubt.None,
        };
        GaugeVerdict verdict = doubt != GaugeDoubt.None ? GaugeVerdict.NotJudged
            : percent <= SuitablePercent ? GaugeVerdict.Suitable
            : percent <= UnsuitablePercent ? GaugeVerdict.SuitableWithCare : GaugeVerdict.NotSuitable;
        return new(verdict, tolerance is not null, percent, doubt);
    }
}
