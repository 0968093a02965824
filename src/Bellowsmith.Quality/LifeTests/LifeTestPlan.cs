namespace Bellowsmith.Quality.LifeTests;

/// <summary>
/// How many parts must run how long: for the failures allowed and, beside them, for each number up to a few more, because a plan
/// chosen before the test is the only honest one.
/// </summary>
/// <param name="Reliability">Wanted at the wanted life.</param>
/// <param name="Confidence">One-sided.</param>
/// <param name="AllowedFailures">The test is passed with no more.</param>
/// <param name="LifeRatio">Test life over wanted life; 1 where parts run the wanted life.</param>
/// <param name="Shape">Weibull β that life beyond the wanted one is traded with; null where the ratio is 1.</param>
/// <param name="ReliabilityOverTest">What must be shown at the test life: R^(L^β).</param>
/// <param name="Parts">Parts to test; null where that is more than a million.</param>
/// <param name="Choices">Parts to test for each number of failures allowed.</param>
/// <param name="Given">What a number of parts given shows; null where none is.</param>
public sealed record LifeTestPlan(
    double Reliability, double Confidence, int AllowedFailures, double LifeRatio, double? Shape,
    double ReliabilityOverTest, int? Parts, IReadOnlyList<LifeTestChoice> Choices, LifeTestShown? Given)
{
    private const int MoreFailures = 3;

    /// <summary>A shape is needed where the life ratio is not 1.</summary>
    public static LifeTestPlan Of(
        double reliability, double confidence, int allowedFailures = 0, double lifeRatio = 1, double? shape = null, int? parts = null)
    {
        if (lifeRatio != 1 && shape is null) throw new ArgumentException("Life can be traded for parts only with a shape.", nameof(shape));
        double overTest = lifeRatio == 1 ? reliability : ReliabilityDemonstration.OverLife(reliability, lifeRatio, shape!.Value);
        LifeTestChoice[] choices = [.. Enumerable.Range(0, Math.Max(allowedFailures, MoreFailures) + 1)
            .Select(failures => new LifeTestChoice(failures, Parts(failures)))];
        return new(reliability, confidence, allowedFailures, lifeRatio, shape, overTest, choices[allowedFailures].Parts, choices,
            parts is { } given ? LifeTestShown.Of(given, reliability, confidence, allowedFailures, lifeRatio, shape) : null);

        // A reliability that rounds to 0 or 1 has lost the question: 0 is shown by any survivor, 1 by no test.
        int? Parts(int failures) => overTest <= 0 ? failures + 1 : overTest >= 1 ? null : ReliabilityDemonstration.PartsNeeded(overTest, confidence, failures);
    }
}

/// <summary>Parts to test when so many may fail; null where that is more than a million.</summary>
public sealed record LifeTestChoice(int AllowedFailures, int? Parts);
