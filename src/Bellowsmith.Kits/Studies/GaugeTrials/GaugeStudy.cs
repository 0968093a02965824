using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.Kits.Studies.GaugeTrials;

public enum GaugeMethod
{
    Anova,
    Range,
    Nested,
}

/// <summary>
/// What a gauge trial showed, in the file's unit; the tolerance is upper less lower limit, null where none was given. One of
/// Anova, Ranges and Nested stands; none where a nested trial repeats nothing.
/// </summary>
public sealed record GaugeResult(string File, string? Unit, GaugeMethod Method, double? Tolerance)
{
    /// <summary>The readings of a crossed trial.</summary>
    public GaugeTable? Crossed { get; init; }

    public CrossedAnova? Anova { get; init; }
    public CrossedRanges? Ranges { get; init; }
    public NestedTrial? Nested { get; init; }

    public GaugeComponents? Components => Anova?.Components ?? Ranges?.Components ?? Nested?.Components;

    /// <summary>Null for a nested trial: check standards are no sample of what is made.</summary>
    public GaugeJudgement? Judgement => Crossed is { } crossed && Components is { } components
        ? GaugeJudgement.Of(components, crossed.Parts.Count * crossed.Appraisers.Count, Tolerance) : null;

    public double? PercentOfTolerance => Tolerance is { } tolerance ? Components?.PercentOfTolerance(tolerance) : null;

    /// <summary>Whether every number that was asked for has a value.</summary>
    public bool IsAnswered => Nested is not null || Judgement is { Doubt: GaugeDoubt.None or GaugeDoubt.TooFewCombinations };
}

/// <summary>How much of what a gauge shows is the gauge?</summary>
public static class GaugeStudy
{
    /// <param name="table">A crossed trial.</param>
    /// <param name="byRanges">By ranges as by hand, else by analysis of variance.</param>
    /// <param name="tolerance">Upper less lower limit, in the file's unit.</param>
    public static GaugeResult Answer(GaugeTable table, bool byRanges, double? tolerance) => byRanges
        ? new(table.File, table.Unit, GaugeMethod.Range, tolerance) { Crossed = table, Ranges = CrossedRanges.Of(table.Trial) }
        : new(table.File, table.Unit, GaugeMethod.Anova, tolerance) { Crossed = table, Anova = CrossedAnova.Of(table.Trial) };

    /// <param name="table">Repeats on days in runs.</param>
    /// <param name="tolerance">Upper less lower limit, in the file's unit.</param>
    public static GaugeResult Answer(NestedTable table, double? tolerance) =>
        new(table.File, table.Unit, GaugeMethod.Nested, tolerance) { Nested = NestedTrial.Of(table.Days) };
}
