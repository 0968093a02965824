using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>life plan</c>; parts are null where more than a million would be needed.</summary>
public sealed record LifePlanAnswer(
    double Reliability, double Confidence, int AllowedFailures, double LifeRatio, double? Shape, double ReliabilityOverTest, int? Parts,
    IReadOnlyList<LifePlanAnswer.PartsChoice> Choices, LifePlanAnswer.PartsGiven? Given, string Answer, string? Reason, IReadOnlyList<Note> Notes)
{
    public sealed record PartsChoice(int AllowedFailures, int? Parts);

    public sealed record PartsGiven(int Parts, double Reliability, double? LifeRatio);

    public static LifePlanAnswer Of(LifeTestPlan plan)
    {
        LifePlanWords words = new(plan);
        return new LifePlanAnswer(
            plan.Reliability, plan.Confidence, plan.AllowedFailures, plan.LifeRatio, plan.Shape, plan.ReliabilityOverTest, plan.Parts,
            [.. plan.Choices.Select(choice => new PartsChoice(choice.AllowedFailures, choice.Parts))],
            plan.Given is { } given ? new(given.Parts, given.Reliability, given.LifeRatio) : null,
            words.Answer(), plan.Parts is null ? words.Answer() : null, [.. words.Notes()]);
    }
}
