using Bellowsmith.Quality.Capability;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a capability answer: what the parts show, how many would show more, and which number to believe.</summary>
public sealed class CapabilityWords(ProcessCapability result, string? unit)
{
    // An index that is looked for with a margin of a quarter, to tell someone with too few parts how many to measure.
    private const double Margin = 1.25;

    private readonly int _decimals = PlainNumbers.Decimals(result.StandardDeviation is > 0 ? result.StandardDeviation.Value : result.Mean ?? 1);

    private string Wanted => PlainNumbers.Index(result.Question.Wanted);

    /// <summary>The answer in a sentence: "30 parts at Cpk 1.33 prove only 1.02."</summary>
    public string Answer() => result.Reason switch
    {
        NoCapability.TooFew => $"{Parts(result.Count)} {(result.Count == 1 ? "is" : "are")} too few for a verdict: at least {ProcessCapability.FewestReadings} are needed, "
            + $"because the true spread may be half or four times what fewer show. To prove Cpk {Wanted} measure {Enough()}.",
        NoCapability.AllEqual => $"All {Parts(result.Count)} read {Value(result.Mean!.Value)}: without a spread there is no index. "
            + "Either the gauge reads too coarsely or it was not the parts that were measured; take a gauge that reads a tenth of the tolerance or finer.",
        _ => $"{Seen()} {(result.IsShown == true ? "prove" : "prove only")} {Index(result.CpkShown)} with 95 % confidence: "
            + $"the wanted {Wanted} is {(result.IsShown == true ? "proved" : "not proved")}.",
    };

    /// <summary>What it would take; empty where the wanted index is shown or there is no answer.</summary>
    public string WhatItTakes()
    {
        if (result.IsShown != false) return "";
        if (result.Basis == CapabilityBasis.Counted)
            return $"By counting alone it takes {Parts(result.PartsNeeded ?? int.MaxValue)}, none of them beyond a limit. Find out why the readings are not normal first.";
        double index = result.Believed!.Cpk.Value;
        if (result.PartsNeeded is { } parts)
            return $"It takes {Parts(parts)} that give {PlainNumbers.Index(index)} again, or {Parts(result.Count)} that give {PlainNumbers.Index(result.IndexNeeded!.Value)}.";
        return index > result.Question.Wanted
            ? $"{PlainNumbers.Index(index)} lies so little above {Wanted} that more than {NoncentralBound.MostParts} parts would be needed. {Mend()}"
            : $"No number of parts proves {Wanted} of a process at {PlainNumbers.Index(index)}. {Mend()}";
    }

    /// <summary>Everything behind the answer, most important first.</summary>
    public IEnumerable<Note> Notes()
    {
        yield return new("stability", "An index speaks for a process only while the process is stable; an unstable one has no capability. Look at these readings with `chart` first.");
        if (result.Reason is not null) yield break;
        if (result.IsAutocorrelated)
            yield return new("order", $"Each reading resembles the one before it (lag-1 autocorrelation {PlainNumbers.Index(result.Autocorrelation!.Value)}, beyond ±2/√n = {PlainNumbers.Index(result.AutocorrelationLimit)}): "
                + "the process drifts or swings, and every interval here is too narrow.");
        yield return new("indices", Indices(result.Indices!) + $", if the parts are normal; s is that of all {result.Count} readings together (n − 1).");
        yield return new("readings", $"mean {Value(result.Mean!.Value)}, standard deviation {Value(result.StandardDeviation!.Value)}; {Outside()}; no reading was left out.");
        yield return new("expected out", $"{Fallout(result.Fallout!)} if the parts are normal.");
        yield return new("tolerance", Tolerance());
        yield return new("normality", Normality());
        if (result.Normality!.IsDoubted)
        {
            yield return new("transformed", Transformed());
            yield return new("counted", Counted());
        }

        yield return new("believe", Believe());
        if (result.Normality.Step > result.StandardDeviation / 2)
            yield return new("gauge", $"The readings come in steps of {Value(result.Normality.Step)}, more than half a standard deviation: a finer gauge would tell more, and the steps alone can make normality look wrong.");
    }

    private string Enough() =>
        NoncentralBound.PartsNeeded(result.Question.Wanted * Margin, result.Question.Wanted, CapabilityQuestion.Confidence) is { } parts
            ? $"{parts}, if they give {PlainNumbers.Index(result.Question.Wanted * Margin)}" : "many more";

    private string Seen() => result.Basis switch
    {
        CapabilityBasis.Normal => $"{Parts(result.Count)} at Cpk {PlainNumbers.Index(result.Indices!.Cpk.Value)}",
        CapabilityBasis.Transformed => $"The readings are not normal; bent until they are, {Parts(result.Count)} at Cpk {PlainNumbers.Index(result.Transformed!.Cpk.Value)}",
        _ => $"The readings are not normal, however bent; {Parts(result.Count)} with {(result.Counted!.Outside == 0 ? "none" : result.Counted.Outside)} beyond the limits",
    };

    private string Mend() => result.Indices!.Cp?.Value > result.Question.Wanted
        ? $"Cp {PlainNumbers.Index(result.Indices.Cp.Value)} says the spread would do: move the mean, now {Value(result.Mean!.Value)}, towards {Value((result.Question.Limits.Lower!.Value + result.Question.Limits.Upper!.Value) / 2)}."
        : "The spread itself must become smaller, or the limit wider.";

    private static string Indices(CapabilityIndices i)
    {
        string[] all =
        [
            .. i.Cp is { } cp ? [$"Cp {Estimate(cp)}"] : Array.Empty<string>(), $"Cpk {Estimate(i.Cpk)}",
            .. i.Cpm is { } cpm ? [$"Cpm {Estimate(cpm)}"] : Array.Empty<string>(),
        ];
        return string.Join(", ", all) + $", 95 % two-sided; at least {PlainNumbers.Index(i.CpkShown)} by the noncentral t, 95 % one-sided";
    }

    private static string Estimate(IndexEstimate e) => $"{PlainNumbers.Index(e.Value)} ({PlainNumbers.Index(e.Low)} to {PlainNumbers.Index(e.High)})";

    private static string Fallout(Fallout f) => $"{PlainNumbers.Share(f.Total)} beyond the limits ({PlainNumbers.Share(f.Low)} to {PlainNumbers.Share(f.High)})";

    private string Outside() => result.Counted!.Outside switch { 0 => "none beyond a limit", 1 => "1 beyond a limit", var n => $"{n} beyond a limit" };

    private string Tolerance()
    {
        ToleranceInterval normal = result.Tolerance!, counted = result.CountedTolerance!;
        string coverage = PlainNumbers.Share(normal.Coverage), confidence = PlainNumbers.Share(normal.Confidence);
        string bare = counted.Low is null && counted.High is null
            ? counted.PartsNeeded is { } needed ? $"it takes {Parts(needed)}" : "it takes more parts than anyone measures" : Between(counted);
        return $"{coverage} of all parts lie {Between(normal)} with {confidence} confidence if they are normal (k = {PlainNumbers.Fixed(normal.Factor!.Value, 3)}, exact); without that, {bare}.";
    }

    private string Between(ToleranceInterval i) => (i.Low, i.High) switch
    {
        ({ } low, { } high) => $"between {Value(low)} and {Value(high)}",
        ({ } low, null) => $"above {Value(low)}",
        _ => $"below {Value(i.High!.Value)}",
    };

    private string Normality()
    {
        Normality n = result.Normality!;
        string test = n.Chance is not { } chance ? $"{Parts(result.Count)} are too few to test it ({Quality.Capability.Normality.FewestReadings} are needed)"
            : n.IsDoubted ? $"the readings do not look normal: such parts would stray this far in {PlainNumbers.Share(chance)} of samples"
            : $"nothing speaks against it: normal parts stray this far in {PlainNumbers.Share(chance)} of samples";
        string small = n.Chance is not null && !n.IsDoubted && result.Count < 30 ? " So few readings show only gross departures." : "";
        return $"Anderson–Darling {PlainNumbers.Fixed(n.AndersonDarling, 3)}; {test}. {Tails(n)}{small}";
    }

    private static string Tails(Normality n)
    {
        string skew = Math.Abs(n.Skewness) <= 2 * n.SkewnessError ? "Both sides are alike within chance"
            : n.Skewness > 0 ? "The long tail is on the high side" : "The long tail is on the low side";
        string tails = Math.Abs(n.Kurtosis) <= 2 * n.KurtosisError ? "tails are as heavy as normal ones within chance"
            : n.Kurtosis > 0 ? "tails are heavier than normal: look for mixed lots or stray readings" : "tails are lighter than normal: look for sorted or mixed parts";
        return $"{skew} (skewness {PlainNumbers.Index(n.Skewness)} ± {PlainNumbers.Index(2 * n.SkewnessError)}); {tails} (excess kurtosis {PlainNumbers.Index(n.Kurtosis)} ± {PlainNumbers.Index(2 * n.KurtosisError)}).";
    }

    private string Transformed() => result switch
    {
        { Transform: null } => "No power of the readings (Box–Cox, λ from −5 to 5) is called for: they stand too far from zero to be bent, or are not all positive.",
        { Transform: { } t, Transformed: null } => $"Box–Cox λ = {Power(t)}, but no limit above zero is left to compare with.",
        { Transform: { } t, Transformed: { } indices, TransformedNormality: { } normality, TransformedFallout: { } fallout } =>
            $"Box–Cox λ = {Power(t)}, limits bent with the readings: {Indices(indices)}; {Fallout(fallout)}. "
            + (normality.IsDoubted ? $"Still not normal ({PlainNumbers.Share(normality.Chance!.Value)})." : $"They look normal then ({PlainNumbers.Share(normality.Chance!.Value)})."),
        _ => "",
    };

    private static string Power(PowerTransform t) => $"{PlainNumbers.Index(t.Power)} ({PlainNumbers.Index(t.Low)} to {PlainNumbers.Index(t.High)})";

    private string Counted()
    {
        CountedCapability c = result.Counted!;
        string quantiles = c.QuantileIndex is { } q ? $"Quantile index {PlainNumbers.Index(q)} (0.135 %, 50 %, 99.865 % of the readings)."
            : $"A quantile index takes {CountedCapability.QuantileNeeds} readings.";
        return $"{c.Outside} of {result.Count} beyond the limits, so at most {PlainNumbers.Share(c.ShareHigh)} of all parts (95 % two-sided, exact); "
            + $"worth Cpk {Index(c.CpkShown)} (95 % one-sided), whatever their law. {quantiles}";
    }

    private string Believe() => result.Basis switch
    {
        CapabilityBasis.Normal => "The usual indices, as far as normality can be seen here.",
        CapabilityBasis.Transformed => "The transformed indices: the readings follow the normal law on that scale and not on their own, and an index rests on the far tail, where the two part.",
        _ => "Only what was counted: neither the readings nor a power of them follow the normal law, so nothing says how far their tails reach.",
    };

    private string Value(double value) => PlainNumbers.Fixed(value, _decimals) + PlainNumbers.Unit(unit);

    private static string Index(double? value) => value is { } index ? PlainNumbers.Index(index) : "nothing";

    private static string Parts(int count) => count == 1 ? "1 part" : $"{count} parts";
}
