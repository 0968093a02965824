using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of lives analysed.</summary>
public sealed class LifeWords(LifeAnalysis result, string? unit)
{
    private const int FewFailures = 10;

    private string Share => PlainNumbers.Chosen(result.Question.FailedShare * 100);

    private string Confidence => PlainNumbers.Chosen(result.Question.Confidence * 100) + " %";

    /// <summary>The name of the life asked for, B10 for a tenth.</summary>
    public string Name => "B" + Share;

    public string Answer() => result.Reason switch
    {
        NoLife.TooFewFailures => $"{Counts()}: a spread of lives takes at least {LifeAnalysis.FewestFailures} failures. "
            + (Together == 0 ? "There is nothing to judge. " : "")
            + "Test on until parts fail, or give a shape known from parts that fail the same way (--shape).",
        NoLife.AllAtOnce => $"{Counts()}, every failure at the longest life: no spread is seen, so no shape can be told. "
            + "Note the lives more finely, or give a shape known from elsewhere (--shape).",
        _ => (result.Life!.Value is { } life ? $"{Share} % have failed by {Length(life)}: these parts show" : "None failed: these parts show")
            + $" {Name} of {Shown()} with {Confidence} confidence.",
    };

    /// <summary>Everything behind the answer.</summary>
    public IEnumerable<Note> Notes()
    {
        if (result.ReliabilityShown is { } reliability)
            yield return new("survivors", $"Without any law: {Counts()}, each for at least {Length(result.ShortestLife!.Value)}. That shows that {PlainNumbers.Rounded(reliability * 100)} % of all parts last so long, with {Confidence} confidence (R = (1 − C)^(1/n)).");
        if (result.Reason is not null) yield break;
        yield return new("test", Counts() + ".");
        yield return new("law", Law());
        yield return new(Name, Interval(result.Life!) + Method());
        if (Doubt() is { } doubt) yield return doubt;
        if (result.Question.Shape is null && result.Failures < FewFailures)
            yield return new("few failures", $"From {result.Failures} failures the fitted shape reads too steep on average and the intervals are narrow: what is called 95 % holds in 90 to 94 of 100 such tests. A shape known from many parts (--shape) is better evidence.");
    }

    private int Together => result.Failures + result.Survivors;

    private string Law()
    {
        double shape = result.Shape!.Value!.Value;
        string scale = $"63.2 % have failed by {Interval(result.Scale!)}";
        if (result.Question.Shape is not null) return $"Weibull with the shape given, β = {PlainNumbers.Chosen(shape)}; {scale}. All of it stands on that shape.";
        string meaning = result.Shape.High < 1 ? "parts fail young: look at how they are made" : result.Shape.Low > 1 ? "parts wear out" : "whether parts fail young, at random or by wear is not told";
        return $"Weibull by maximum likelihood, β = {Span(result.Shape, PlainNumbers.Rounded(shape))}: {meaning}; {scale}.";
    }

    private Note? Doubt()
    {
        if (result.OwnShape is { } own && (result.Question.Shape < own.Low || result.Question.Shape > own.High))
            return new("shape", $"These failures themselves give β = {Span(own, PlainNumbers.Rounded(own.Value!.Value))}, {Confidence}: the shape given does not agree with them.");
        if (result.Question.Shape is not null) return null;
        return result.Goodness switch
        {
            null => new("fit", "With survivors no exact test of the law is made here: see in the figure whether the failures follow a straight line."),
            { IsDoubted: true } g => new("fit", $"The lives do not follow one Weibull law (Anderson–Darling {PlainNumbers.Fixed(g.AndersonDarling, 3)}, chance at most {PlainNumbers.Share(g.Chance)}): look for two ways of failing, and fit each by itself with the other counted as survived."),
            { } g => new("fit", $"Nothing speaks against the Weibull law (Anderson–Darling {PlainNumbers.Fixed(g.AndersonDarling, 3)}, chance above {(g.Chance < 1 ? "5 %" : "25 %")})."),
        };
    }

    private string Method() => result.Question.Shape is null
        ? $", {Confidence} two-sided by likelihood ratio." : $", {Confidence} two-sided by χ² of the test time raised to β.";

    private string Shown() => result.LifeShown is { } shown ? Length(shown) : "nothing that can be told";

    private string Interval(LifeInterval i) => i.Value is { } value ? Span(i, Length(value))
        : $"{Length(i.Low!.Value)} at the soonest";

    private static string Span(LifeInterval i, string value) =>
        $"{value} ({(i.Low is { } low ? PlainNumbers.Rounded(low) : "no lower end")} to {(i.High is { } high ? PlainNumbers.Rounded(high) : "no upper end")})";

    private string Length(double life) => PlainNumbers.Rounded(life) + PlainNumbers.Unit(unit);

    private string Counts() => result.Failures == 0 ? $"{result.Survivors} survived and none failed"
        : result.Survivors == 0 ? $"{result.Failures} failed and none survived" : $"{result.Failures} failed and {result.Survivors} survived";
}
