using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>life fit</c>: unrounded, lives in <c>unit</c>, the file's.</summary>
public sealed record LifeAnswer(
    string? Unit, int Failures, int Survivors, string? Method, LifeAnswer.LifeRange? Shape, LifeAnswer.LifeRange? Scale,
    double FailedShare, LifeAnswer.LifeRange? Life, double? LifeShown, double Confidence,
    LifeAnswer.LifeRange? OwnShape, LifeAnswer.LawFit? Goodness, double? ReliabilityShown, double? ShortestLife,
    IReadOnlyList<LifeAnswer.FailurePoint> Plotted, string Answer, string? Reason, IReadOnlyList<Note> Notes)
{
    public sealed record LifeRange(double? Value, double? Low, double? High);

    public sealed record LawFit(double AndersonDarling, double ChanceAtMost, bool Doubted);

    public sealed record FailurePoint(double Life, double Rank, double FailedShare);

    public static LifeAnswer Of(LifeAnalysis r, string? unit)
    {
        LifeWords words = new(r, unit);
        return new LifeAnswer(
            unit, r.Failures, r.Survivors, r.Reason is not null ? null : r.Question.Shape is null ? "maximum likelihood" : "shape given", Of(r.Shape), Of(r.Scale),
            r.Question.FailedShare, Of(r.Life), r.LifeShown, r.Question.Confidence,
            Of(r.OwnShape), r.Goodness is { } g ? new(g.AndersonDarling, g.Chance, g.IsDoubted) : null, r.ReliabilityShown, r.ShortestLife,
            [.. r.Plotted.Select(p => new FailurePoint(p.Life, p.Rank, p.FailedShare))],
            words.Answer(), r.Reason is null ? null : words.Answer(), [.. words.Notes()]);
    }

    private static LifeRange? Of(LifeInterval? i) => i is null ? null : new(i.Value, i.Low, i.High);
}
