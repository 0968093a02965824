using Bellowsmith.Quality.LifeTests;
using CsCheck;

namespace Bellowsmith.Tests.Quality.LifeTests;

public sealed class LifeAnalysisTests
{
    private static readonly Gen<(double[] Lives, bool[] Failed)> _tests =
        Gen.Select(Gen.Double[10, 1000].Array[4, 25], Gen.Bool.Array[25]).Select((lives, failed) => (lives, failed[..lives.Length]))
            .Where(test => WeibullFit.Of(test.lives, test.Item2) is { Failures: > 2 }).Select(test => (test.lives, test.Item2));

    [Fact]
    public void Of_OneFailure_AsksForMoreOrAShape()
    {
        LifeAnalysis result = LifeAnalysis.Of([100, 200, 300], [true, false, false], new());

        Assert.Equal(NoLife.TooFewFailures, result.Reason);
        Assert.Null(result.Life);
        Assert.Null(result.LifeAt(0.1));
    }

    [Fact]
    public void Of_FailuresAllAtTheLongestLife_HasNoShape() =>
        Assert.Equal(NoLife.AllAtOnce, LifeAnalysis.Of([300, 300, 200], [true, true, false], new()).Reason);

    [Fact]
    public void Of_Nothing_GivesAReason() => Assert.Equal(NoLife.TooFewFailures, LifeAnalysis.Of([], [], new(Shape: 2)).Reason);

    [Fact] // 13 survivors at 90 % show 0.83768
    public void Of_SurvivorsAlone_ShowsAReliabilityWithoutALaw()
    {
        LifeAnalysis result = LifeAnalysis.Of([.. Enumerable.Repeat(500.0, 13)], new bool[13], new(Confidence: 0.9));

        Assert.Equal(0.83768, result.ReliabilityShown!.Value, 5e-6);
        Assert.Equal(500, result.ShortestLife);
    }

    [Fact]
    public void Of_AGivenShape_KeepsItAndTellsTheOwn()
    {
        LifeAnalysis result = LifeAnalysis.Of([100, 200, 300, 400], [true, true, true, false], new(Shape: 9));

        Assert.Equal(9, result.Shape!.Value);
        Assert.True(result.OwnShape!.High < 9);
        Assert.Null(result.Goodness);
    }

    [Fact]
    public void LifeShown_OfAFit_LiesBetweenTheLowEndAndTheEstimate() => _tests.Sample(test =>
    {
        LifeAnalysis result = LifeAnalysis.Of(test.Lives, test.Failed, new());

        Assert.InRange(result.LifeShown!.Value, result.Life!.Low!.Value, result.Life.Value!.Value);
    }, iter: 30);

    [Fact]
    public void Fit_InAnotherUnitAndOrder_IsTheSame() => _tests.Sample(test =>
    {
        double[] lives = [.. test.Lives.Select(life => life * 3600).Reverse()];
        WeibullFit one = WeibullFit.Of(test.Lives, test.Failed)!, other = WeibullFit.Of(lives, [.. test.Failed.Reverse()])!;

        Assert.Equal(one.Shape, other.Shape, 1e-8 * one.Shape);
        Assert.Equal(one.Scale * 3600, other.Scale, 1e-8 * other.Scale);
        Assert.Equal(one.ShapeInterval(0.95).Low!.Value, other.ShapeInterval(0.95).Low!.Value, 1e-8 * one.Shape);
    }, iter: 30);

    // The greatest likelihood is where a step to either side lowers it.
    [Fact]
    public void Fit_AnyTest_StandsAtTheTop() => _tests.Sample(test =>
    {
        WeibullFit fit = WeibullFit.Of(test.Lives, test.Failed)!;
        double top = Likelihood(fit.Shape, fit.Scale);

        foreach ((double shape, double scale) in new (double, double)[] { (1.01, 1), (0.99, 1), (1, 1.01), (1, 0.99) })
            Assert.True(Likelihood(fit.Shape * shape, fit.Scale * scale) < top);

        double Likelihood(double shape, double scale) => test.Lives.Zip(test.Failed).Sum(part =>
            -Math.Pow(part.First / scale, shape) + (part.Second ? Math.Log(shape / scale) + (shape - 1) * Math.Log(part.First / scale) : 0));
    }, iter: 50);

    [Fact] // a survivor before the second failure moves its rank: 1, then 1 + (6 − 1)/(1 + 3) = 2.25, then 2.25 + 3.75/3 = 3.5
    public void PlottedFailure_AfterASurvivor_StepsFurther()
    {
        IReadOnlyList<PlottedFailure> plotted = PlottedFailure.Of([10, 20, 30, 40, 50], [true, false, true, true, false]);

        Assert.Equal([1, 2.25, 3.5], plotted.Select(failure => failure.Rank));
    }

    [Fact]
    public void Plan_BeyondAMillionParts_HasNone()
    {
        Assert.Null(LifeTestPlan.Of(0.9999999, 0.9).Parts);
        Assert.Null(LifeTestPlan.Of(0.9, 0.9, 0, 1e-6, 3).Parts);
    }

    [Fact] // 0.5² is exactly 1 − 0.75
    public void PartsNeeded_WhereThePowerMeetsTheRisk_IsNotOneMore() => Assert.Equal(2, ReliabilityDemonstration.PartsNeeded(0.5, 0.75));

    [Fact] // 13 survivors show 0.83768 over the life they ran; over half of it its root of 2² = 4
    public void Plan_OfPartsGiven_SaysWhatTheyShow()
    {
        Assert.Equal(0.83768, LifeTestPlan.Of(0.9, 0.9, parts: 13).Given!.Reliability, 5e-6);
        Assert.Equal(Math.Pow(0.83768, 0.25), LifeTestPlan.Of(0.9, 0.9, 0, 2, 2, 13).Given!.Reliability, 5e-6);
        Assert.Equal(new(2, 0, null), LifeTestPlan.Of(0.9, 0.9, 2, parts: 2).Given);
    }

    [Fact]
    public void LifeRatioNeeded_ForSixParts_ShowsTheReliability()
    {
        double ratio = ReliabilityDemonstration.LifeRatioNeeded(0.9, 0.9, 6, 0, 2);

        Assert.Equal(0.9, Math.Pow(ReliabilityDemonstration.Shown(6, 0, 0.9), 1 / Math.Pow(ratio, 2)), 1e-12);
        Assert.InRange(ratio, 1.9, 2);
    }

    [Fact]
    public void Weibayes_ConfidenceOfOneSide_IsTheEndOfTwo()
    {
        Weibayes fit = new([100, 150, 300], [false, true, false], 1.5);

        Assert.Equal(fit.LifeInterval(0.1, 0.90).Low!.Value, fit.LifeShown(0.1, 0.95), 1e-9);
    }

    [Fact]
    public void Goodness_OfTwoWaysOfFailing_IsDoubted()
    {
        double[] lives = [.. Enumerable.Range(0, 20).Select(i => i < 10 ? 10 + 0.1 * i : 1000 + 10 * i)];
        bool[] failed = [.. Enumerable.Repeat(true, 20)];

        Assert.True(WeibullGoodness.Of(WeibullFit.Of(lives, failed)!, lives)!.IsDoubted);
    }
}
