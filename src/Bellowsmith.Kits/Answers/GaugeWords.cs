using Bellowsmith.Kits.Studies.GaugeTrials;
using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a gauge trial, standard deviations in the file's unit.</summary>
public sealed class GaugeWords(GaugeResult result)
{
    private readonly int _decimals = PlainNumbers.Decimals(result.Components?.GaugeRr is > 0 and { } gauge ? gauge : 1);

    /// <summary>"The gauge takes 27.9 % of the spread seen: usable with care."</summary>
    public string Answer()
    {
        if (result.Components is not { } of) return "No day was repeated in, so nothing is known of repeatability: read each standard at least twice a day.";
        if (result.Method == GaugeMethod.Nested)
            return $"One reading on any day of any run scatters by {Value(of.GaugeRr)} (one standard deviation).";
        return result.Judgement switch
        {
            { Doubt: GaugeDoubt.NothingVaried } => "Every reading is the same: the gauge reads too coarsely to be judged. Record more digits.",
            { Doubt: GaugeDoubt.StepsHideScatter } => "Repeats never differ: the gauge's steps hide its scatter. Record more digits.",
            { Doubt: GaugeDoubt.TooFewCombinations } => $"{Share()} Too few for a verdict: {result.Crossed!.Parts.Count} parts by {result.Crossed.Appraisers.Count} appraisers make "
                + $"{result.Crossed.Parts.Count * result.Crossed.Appraisers.Count} combinations, {GaugeJudgement.FewestCombinations} are needed, such as 5 parts by 3 appraisers (common practice).",
            { } j => $"{Share()} {Verdict(j)}",
            null => "",
        };
    }

    public static string Of(GaugeVerdict? verdict) => verdict switch
    {
        GaugeVerdict.Suitable => "suitable",
        GaugeVerdict.SuitableWithCare => "suitable with care",
        GaugeVerdict.NotSuitable => "not suitable",
        _ => "not judged",
    };

    public static string Of(GaugeMethod method) => method switch { GaugeMethod.Anova => "anova", GaugeMethod.Range => "range", _ => "nested" };

    public string Value(double deviation) => $"{Number(deviation)}{PlainNumbers.Unit(result.Unit)}";

    public string Number(double deviation) => PlainNumbers.Fixed(deviation, _decimals);

    /// <summary>What stands behind the numbers.</summary>
    public IEnumerable<Note> Notes()
    {
        if (result.Components is { DistinctCategories: { } groups } && result.Method != GaugeMethod.Nested)
            yield return new("groups", $"it tells {groups} {(groups == 1 ? "group" : "groups")} of parts apart; 5 or more are wanted for control, common practice.");
        if (result.PercentOfTolerance is { } share)
            yield return new("tolerance", $"six standard deviations of the gauge take {PlainNumbers.Fixed(share, 1)} % of the tolerance.");
        foreach (Note note in result.Anova is { } anova ? OfAnova(anova) : result.Ranges is { } ranges ? OfRanges(ranges) : result.Nested is { } nested ? OfNested(nested) : [])
            yield return note;
        if (result.Judgement is { Doubt: GaugeDoubt.None })
            yield return new("limits", $"{GaugeJudgement.SuitablePercent:0} % and {GaugeJudgement.UnsuitablePercent:0} % are common practice; judged by {(result.Judgement.OfTolerance ? "the tolerance" : "the total spread of these parts")}.");
    }

    private IEnumerable<Note> OfAnova(CrossedAnova a)
    {
        if (a.Interaction is { P: { } p })
            yield return new("interaction", $"part by appraiser has p = {PlainNumbers.Rounded(p)}: {(a.InteractionPooled ? $"pooled with repeatability, being above {CrossedAnova.PoolingP}" : "kept, inside reproducibility")}.");
        if (result.Crossed!.Appraisers.Count == 1) yield return new("appraisers", "Only one took part: reproducibility is unknown and counts as 0.");
        if (a.SetToZero != NegativeEstimates.None) yield return new("set to zero", $"The variance of {a.SetToZero.ToString().ToLowerInvariant()} came out below zero, too small to see beside the scatter above it.");
        if (a.Intervals() is { } i)
            yield return new("95 %", $"gauge {Number(i.GaugeRr.Low)} to {Number(i.GaugeRr.High)}, parts {Number(i.PartToPart.Low)} to {Number(i.PartToPart.High)} (modified large-sample intervals).");
    }

    private static IEnumerable<Note> OfRanges(CrossedRanges r)
    {
        yield return new("constants", $"K1 {PlainNumbers.Rounded(r.Repeatability.Value, 4)}{(r.Repeatability.Printed ? " as printed" : " exact")}, "
            + (r.Reproducibility is { } k2 ? $"K2 {PlainNumbers.Rounded(k2.Value, 4)}{(k2.Printed ? " as printed" : " exact")}, " : "")
            + $"K3 {PlainNumbers.Rounded(r.Parts.Value, 4)}{(r.Parts.Printed ? " as printed" : " exact")}: printed four-digit handbook constants where there are any, else 1/d2*.");
        yield return new("method", "Ranges see no interaction and give no interval; --method anova does both.");
    }

    private IEnumerable<Note> OfNested(NestedTrial n)
    {
        yield return new("repeats", $"level 1, within a day: {Value(n.Repeats.StandardDeviation)}, {n.Repeats.Degrees} degrees of freedom.");
        if (n.Days is { } days) yield return new("days", $"level 2, day averages within a run: {Value(days.StandardDeviation)}, {days.Degrees} degrees of freedom.");
        if (n.Runs is { } runs) yield return new("runs", $"level 3, run averages: {Value(runs.StandardDeviation)}, {runs.Degrees} degrees of freedom.");
        if (n.DaysSetToZero || n.RunsSetToZero) yield return new("set to zero", "A variance between days or runs came out below zero and counts as 0.");
    }

    private string Share() => result.Judgement is not { Percent: { } percent } j ? ""
        : $"The gauge takes {PlainNumbers.Fixed(percent, 1)} % of {(j.OfTolerance ? "the tolerance" : "the spread seen")}.";

    private static string Verdict(GaugeJudgement judgement) => judgement.Verdict switch
    {
        GaugeVerdict.Suitable => "It is suitable.",
        GaugeVerdict.SuitableWithCare => "Suitable with care: whether that will do depends on what hangs on the reading.",
        _ => "It is not suitable: mend the gauge, its fixture or the way it is read before judging parts by it.",
    };
}
