namespace Bellowsmith.Quality.Gauges;

/// <summary>95 % intervals of a trial's standard deviations, in the readings' unit. Each holds its estimate.</summary>
public sealed record GaugeIntervals(
    (double Low, double High) Repeatability, (double Low, double High) Reproducibility, (double Low, double High) GaugeRr,
    (double Low, double High) PartToPart, (double Low, double High) Total)
{
    public const double Confidence = 0.95;

    internal static GaugeIntervals Of(CrossedAnova anova)
    {
        (double p, double a, double r) = (anova.Trial.Parts, anova.Trial.Appraisers, anova.Trial.Trials);
        AnovaRow part = anova.Part, within = anova.Repeatability;
        GaugeComponents of = anova.Components;
        if (anova.Appraiser is not { } appraiser)
        {
            (double, double) alone = Interval(of.Repeatability, (1, within));
            return new(alone, (0, 0), alone,
                Interval(of.PartToPart, (1 / r, part), (-1 / r, within)), Interval(of.Total, (1 / r, part), (1 - 1 / r, within)));
        }

        (double byAppraiser, double byPart) = (1 / (p * r), 1 / (a * r));
        if (anova.InteractionPooled)
            return new(
                Interval(of.Repeatability, (1, within)),
                Interval(of.Reproducibility, (byAppraiser, appraiser), (-byAppraiser, within)),
                Interval(of.GaugeRr, (byAppraiser, appraiser), (1 - byAppraiser, within)),
                Interval(of.PartToPart, (byPart, part), (-byPart, within)),
                Interval(of.Total, (byPart, part), (byAppraiser, appraiser), (1 - byAppraiser - byPart, within)));
        AnovaRow interaction = anova.Interaction!;
        return new(
            Interval(of.Repeatability, (1, within)),
            Interval(of.Reproducibility, (byAppraiser, appraiser), (1 / r - byAppraiser, interaction), (-1 / r, within)),
            Interval(of.GaugeRr, (byAppraiser, appraiser), (1 / r - byAppraiser, interaction), (1 - 1 / r, within)),
            Interval(of.PartToPart, (byPart, part), (-byPart, interaction)),
            Interval(of.Total, (byPart, part), (byAppraiser, appraiser), (1 / r - byAppraiser - byPart, interaction), (1 - 1 / r, within)));
    }

    // Widened to its estimate where that was cut at zero and the combination of mean squares was not.
    private static (double Low, double High) Interval(double estimate, params ReadOnlySpan<(double Coefficient, AnovaRow Row)> terms)
    {
        (double low, double high) = MeanSquares.Interval(terms, Confidence);
        return (Math.Min(Math.Sqrt(low), estimate), Math.Max(Math.Sqrt(high), estimate));
    }
}
