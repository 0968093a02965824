using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a life test planned.</summary>
public sealed class LifePlanWords(LifeTestPlan plan)
{
    public string Answer() => plan.Parts is { } parts
        ? $"Run {parts} {(parts == 1 ? "part" : "parts")} for {Life()} with {Allowed(plan.AllowedFailures)}: that shows that {Percent(plan.Reliability)} last the wanted life, with {Percent(plan.Confidence)} confidence."
        : $"No bench shows that: it takes more than {ReliabilityDemonstration.MostParts} parts. Test longer (--life-ratio with --shape), or ask for less.";

    public IEnumerable<Note> Notes()
    {
        yield return new("why", $"Exact binomial: if only {Percent(plan.ReliabilityOverTest)} lasted the test, so few failures among so many parts would come by chance in no more than {Percent(1 - plan.Confidence)} of tests.");
        if (plan.Given is { } given)
            yield return new("parts given", Given(given));
        if (plan.Shape is { } shape)
            yield return new("longer life", $"{PlainNumbers.Chosen(plan.LifeRatio)} lives trade for parts by R^(L^β), β = {PlainNumbers.Chosen(shape)}: n = ln(1 − C)/(L^β·ln R) without failures. The whole gain rests on that shape; take one from parts that failed the same way, the lowest you can defend.");
        yield return new("before", "Choose the failures allowed before the test: a plan changed after a failure shows less than it says.");
    }

    public static string Allowed(int failures) => failures switch { 0 => "no failure", 1 => "at most 1 failure", _ => $"at most {failures} failures" };

    private string Given(LifeTestShown given)
    {
        string longer = given.LifeRatio is { } ratio ? $" Run for {PlainNumbers.Rounded(ratio)} times the wanted life, they show {Percent(plan.Reliability)}." : "";
        return given.Reliability == 0 ? $"{given.Parts} parts of which {plan.AllowedFailures} may fail show nothing."
            : $"{given.Parts} parts with {Allowed(plan.AllowedFailures)} over {Life()} show that {Percent(given.Reliability)} last the wanted life, with {Percent(plan.Confidence)} confidence.{longer}";
    }

    private string Life() => plan.LifeRatio == 1 ? "the wanted life" : $"{PlainNumbers.Chosen(plan.LifeRatio)} times the wanted life";

    private static string Percent(double share) => PlainNumbers.Chosen(share * 100) + " %";
}
