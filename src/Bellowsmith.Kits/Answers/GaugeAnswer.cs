using Bellowsmith.Kits.Studies.GaugeTrials;
using Bellowsmith.Quality;
using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>gauge</c>: one standard deviation each, in <c>unit</c>, the file's.</summary>
public sealed record GaugeAnswer(
    double? Repeatability, double? Reproducibility, double? GaugeRr, double? PartToPart, double? Total, double? GaugeRrPercent, int? DistinctCategories,
    string? Unit, string Method, double? Tolerance, double? PercentOfTolerance, string Verdict, bool? InteractionPooled,
    IReadOnlyList<GaugeAnswer.AnovaLine> Anova, IReadOnlyList<GaugeAnswer.Interval> Intervals, IReadOnlyList<GaugeAnswer.Level> Levels,
    string Answer, IReadOnlyList<Note> Notes)
{
    public sealed record AnovaLine(string Source, double SumOfSquares, int Degrees, double? F, double? P);

    public sealed record Interval(string Of, double Low, double High);

    public sealed record Level(int Number, double StandardDeviation, int Degrees);

    public static GaugeAnswer Of(GaugeResult result)
    {
        (GaugeWords words, GaugeComponents? c) = (new(result), result.Components);
        bool crossed = result.Method != GaugeMethod.Nested;
        return new GaugeAnswer(
            c?.Repeatability, c?.Reproducibility, c?.GaugeRr, crossed ? c?.PartToPart : null, crossed ? c?.Total : null,
            crossed ? c?.GaugeRrPercent : null, crossed ? c?.DistinctCategories : null,
            result.Unit, GaugeWords.Of(result.Method), result.Tolerance, result.PercentOfTolerance, GaugeWords.Of(result.Judgement?.Verdict),
            result.Anova is { Interaction: not null } anova ? anova.InteractionPooled : null,
            [.. Lines(result.Anova)], [.. IntervalsOf(result.Anova?.Intervals())], [.. LevelsOf(result.Nested)],
            words.Answer(), [.. words.Notes()]);
    }

    private static IEnumerable<AnovaLine> Lines(CrossedAnova? a)
    {
        if (a is null) yield break;
        yield return Of("part", a.Part);
        if (a.Appraiser is { } appraiser) yield return Of("appraiser", appraiser);
        if (a.Interaction is { } interaction) yield return Of("interaction", interaction);
        yield return Of("repeatability", a.Repeatability);
    }

    private static AnovaLine Of(string source, AnovaRow row) => new(source, row.SumOfSquares, row.Degrees, row.F, row.P);

    private static IEnumerable<Interval> IntervalsOf(GaugeIntervals? i)
    {
        if (i is null) yield break;
        yield return new("repeatability", i.Repeatability.Low, i.Repeatability.High);
        yield return new("reproducibility", i.Reproducibility.Low, i.Reproducibility.High);
        yield return new("gaugeRr", i.GaugeRr.Low, i.GaugeRr.High);
        yield return new("partToPart", i.PartToPart.Low, i.PartToPart.High);
        yield return new("total", i.Total.Low, i.Total.High);
    }

    private static IEnumerable<Level> LevelsOf(NestedTrial? n)
    {
        if (n is null) yield break;
        yield return new(1, n.Repeats.StandardDeviation, n.Repeats.Degrees);
        if (n.Days is { } days) yield return new(2, days.StandardDeviation, days.Degrees);
        if (n.Runs is { } runs) yield return new(3, runs.StandardDeviation, runs.Degrees);
    }
}
