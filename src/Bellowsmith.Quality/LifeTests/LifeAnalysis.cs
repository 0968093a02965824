namespace Bellowsmith.Quality.LifeTests;

/// <summary>What is asked of lives.</summary>
/// <param name="FailedShare">By which life has this share failed: 0.1 asks for B10.</param>
/// <param name="Shape">A shape known from elsewhere; null where the failures are to tell it.</param>
/// <param name="Confidence">Of two-sided intervals and of the one-sided life that is shown.</param>
public sealed record LifeQuestion(double FailedShare = 0.1, double? Shape = null, double Confidence = 0.95);

/// <summary>Why lives give no answer.</summary>
public enum NoLife
{
    /// <summary>Fewer than two failures and no shape given.</summary>
    TooFewFailures,

    /// <summary>Every failure came at the longest life: no shape is too steep.</summary>
    AllAtOnce,
}

/// <summary>How long do parts last? Lives of parts that failed and of parts that had not when they were taken off.</summary>
public sealed record LifeAnalysis
{
    /// <summary>Failures that a shape needs at least.</summary>
    public const int FewestFailures = 2;

    private readonly WeibullFit? _fit;
    private readonly Weibayes? _known;

    private LifeAnalysis(LifeQuestion question, WeibullFit? fit, Weibayes? known) => (Question, _fit, _known) = (question, fit, known);

    public LifeQuestion Question { get; }

    public int Failures { get; private init; }

    public int Survivors { get; private init; }

    /// <summary>No part stopped before this life, whether it failed or not; null of no parts.</summary>
    public double? ShortestLife { get; private init; }

    /// <summary>Null where there is an answer.</summary>
    public NoLife? Reason { get; private init; }

    /// <summary>The shape given, or the fitted one with its interval; null where there is no answer.</summary>
    public LifeInterval? Shape { get; private init; }

    /// <summary>The shape the failures tell by themselves, where they can, though another was given.</summary>
    public LifeInterval? OwnShape { get; private init; }

    /// <summary>The characteristic life: 63.2 % have failed.</summary>
    public LifeInterval? Scale { get; private init; }

    /// <summary>The life by which the share asked for has failed.</summary>
    public LifeInterval? Life { get; private init; }

    /// <summary>The life that is shown, one-sided: with the confidence asked for no more than the share has failed before it.</summary>
    public double? LifeShown { get; private init; }

    /// <summary>Null where parts survived, where a shape was given or where there is no answer.</summary>
    public WeibullGoodness? Goodness { get; private init; }

    public IReadOnlyList<PlottedFailure> Plotted { get; private init; } = [];

    /// <summary>What the parts show of any law over the shortest life; null where one failed.</summary>
    public double? ReliabilityShown { get; private init; }

    /// <summary>The life by which another share has failed, with its interval; null where there is no answer.</summary>
    public LifeInterval? LifeAt(double failedShare) =>
        _known?.LifeInterval(failedShare, Question.Confidence) ?? _fit?.LifeInterval(failedShare, Question.Confidence);

    public static LifeAnalysis Of(ReadOnlySpan<double> lives, ReadOnlySpan<bool> failed, LifeQuestion question)
    {
        WeibullFit? fit = WeibullFit.Of(lives, failed);
        LifeInterval? own = fit?.ShapeInterval(question.Confidence);
        Weibayes? known = question.Shape is { } shape && lives.Length > 0 ? new(lives, failed, shape) : null;
        LifeAnalysis answer = new(question, known is null ? fit : null, known)
        {
            Failures = failed.Count(true),
            Survivors = failed.Count(false),
            ShortestLife = lives.Length > 0 ? Shortest(lives) : null,
            Reason = known is not null || fit is not null ? null : failed.Count(true) < FewestFailures ? NoLife.TooFewFailures : NoLife.AllAtOnce,
            OwnShape = known is null ? null : own,
            Plotted = PlottedFailure.Of(lives, failed),
            ReliabilityShown = lives.Length == 0 || failed.Contains(true) ? null : ReliabilityDemonstration.Shown(lives.Length, 0, question.Confidence),
        };
        if (answer.Reason is not null) return answer;
        return answer with
        {
            Shape = known is null ? own : new(known.Shape, null, null),
            Scale = known?.ScaleInterval(question.Confidence) ?? fit!.ScaleInterval(question.Confidence),
            Life = answer.LifeAt(question.FailedShare),
            LifeShown = known?.LifeShown(question.FailedShare, question.Confidence) ?? fit!.LifeShown(question.FailedShare, question.Confidence),
            Goodness = known is null ? WeibullGoodness.Of(fit!, lives) : null,
        };
    }

    private static double Shortest(ReadOnlySpan<double> lives)
    {
        double shortest = double.PositiveInfinity;
        foreach (double life in lives) shortest = Math.Min(shortest, life);
        return shortest;
    }
}
