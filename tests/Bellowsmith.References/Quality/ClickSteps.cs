using Bellowsmith.Quality.Clicks;
using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Eight clicks in five runs that warm up (own set; no published one is known), answered by R 4.2.2 and SciPy 1.10.1: the
/// analysis without blocks fails to show the step from click 5 to 6, the one in blocks shows it, and it is less than 10 N all the
/// same. R's qmvt at default tolerance gives 2.8445 for the critical value, 3e-4 off.
/// </summary>
public sealed class ClickSteps
{
    private static readonly double[][] _runs =
    [
        [409.5, 434.0, 464.5, 494.0, 527.5, 534.0, 569.5, 615.5],
        [409.5, 437.5, 465.0, 497.0, 531.5, 534.5, 573.0, 616.0],
        [413.5, 440.0, 465.0, 497.0, 530.5, 537.0, 576.0, 618.5],
        [413.5, 439.0, 468.5, 497.0, 533.0, 539.0, 575.0, 620.5],
        [415.0, 440.5, 468.0, 501.0, 533.5, 536.5, 577.5, 621.0],
    ];

    private static readonly ClickTable _table = ClickTable.Of(
        [.. _runs.SelectMany(run => Enumerable.Range(1, run.Length))], [.. _runs.SelectMany((run, index) => run.Select(_ => index))], [.. _runs.SelectMany(run => run)]);

    private static readonly ClickResult _result = ClickStudy.Answer(_table);

    [Theory]
    [InlineData(1, 412.2)]
    [InlineData(2, 438.2)]
    [InlineData(3, 466.2)]
    [InlineData(4, 497.2)]
    [InlineData(5, 531.2)]
    [InlineData(6, 536.2)]
    [InlineData(7, 574.2)]
    [InlineData(8, 618.3)]
    public void Click_Mean_IsTheComputed(int click, double mean) => Assert.Equal(mean, _result.ClickMeans[click - 1], 1e-9);

    [Fact]
    public void Anova_InBlocks_IsTheComputed()
    {
        Assert.Equal(168919.04375, _result.Anova!.Clicks.SumOfSquares, 1e-6);
        Assert.Equal(7, _result.Anova.Clicks.Degrees);
        Assert.Equal(156.9125, _result.Anova.Runs.SumOfSquares, 1e-6);
        Assert.Equal(4, _result.Anova.Runs.Degrees);
        Assert.Equal(37.9875, _result.Anova.Residual.SumOfSquares, 1e-6);
        Assert.Equal(28, _result.Anova.Residual.Degrees);
        Assert.Equal(1.35669642857, _result.Anova.Residual.MeanSquare, 1e-9);
        Assert.Equal(17786.8029, _result.Anova.Clicks.F!.Value, 1e-4);
        Assert.Equal(28.91445, _result.Anova.Runs.F!.Value, 1e-5);
    }

    [Fact]
    public void Limits_OfNeighbouringSteps_AreTheComputed()
    {
        Assert.Equal(0.736667205343, _result.Steps[0].StandardError!.Value, 1e-11);
        Assert.True(_result.IsExact);
        Assert.Equal(2.84417431, _result.Critical!.Value, 1e-7);
        Assert.Equal(2.59923862, _result.CriticalOneSided!.Value, 1e-7);
        Assert.Equal(2.0952099, _result.Steps[0].High!.Value - _result.Steps[0].Step, 1e-6);
    }

    [Theory]
    [InlineData(0.05 / 14, 2.902292836)]
    [InlineData(0.05 / 7, 2.612691747)]
    public void Bonferroni_OfSevenSteps_IsTheComputed(double tail, double critical) =>
        Assert.Equal(critical, -Quantiles.StudentT(tail, 28), 1e-9);

    [Theory]
    [InlineData(1, 26, 24.0852)]
    [InlineData(2, 28, 26.0852)]
    [InlineData(3, 31, 29.0852)]
    [InlineData(4, 34, 32.0852)]
    [InlineData(5, 5, 3.0852)]
    [InlineData(6, 38, 36.0852)]
    [InlineData(7, 44.1, 42.1852)]
    public void Step_FromAClick_IsDistinctAndHasTheComputedBound(int from, double step, double atLeast)
    {
        ClickStep judged = _result.Steps[from - 1];

        Assert.Equal((from, from + 1, StepVerdict.Distinct), (judged.From, judged.To, judged.Verdict));
        Assert.Equal(step, judged.Step, 1e-9);
        Assert.Equal(atLeast, judged.AtLeast!.Value, 5e-5);
    }

    [Theory]
    [InlineData(1, StepVerdict.Distinct)]
    [InlineData(2, StepVerdict.Distinct)]
    [InlineData(3, StepVerdict.Distinct)]
    [InlineData(4, StepVerdict.Distinct)]
    [InlineData(5, StepVerdict.SmallerThanWanted)]
    [InlineData(6, StepVerdict.Distinct)]
    [InlineData(7, StepVerdict.Distinct)]
    public void Step_WhereTenNewtonsAreWanted_FailsOnlyFromFiveToSix(int from, StepVerdict verdict) =>
        Assert.Equal(verdict, ClickStudy.Answer(_table, wanted: 10).Steps[from - 1].Verdict);

    [Fact]
    public void Unblocked_Analysis_DoesNotShowTheStepFromFiveToSix()
    {
        OneWay unblocked = _result.Unblocked!;

        Assert.Equal(168919.04375, unblocked.Between.SumOfSquares, 1e-6);
        Assert.Equal(194.9, unblocked.Within.SumOfSquares, 1e-6);
        Assert.Equal(32, unblocked.Within.Degrees);
        Assert.Equal(6.090625, unblocked.Within.MeanSquare, 1e-9);
        Assert.Equal(3962.0387, unblocked.Between.F!.Value, 1e-4);
        Assert.Equal(5.056056088, unblocked.HalfWidth(4, 5, 0.95), 1e-6);
        Assert.Equal(0.0543297145, unblocked.Probability(4, 5), 1e-9);
    }

    [Fact]
    public void AllPairs_InBlocks_ShowTheStepFromFiveToSix()
    {
        double spread = Math.Sqrt(_result.Anova!.Residual.MeanSquare / 5);

        Assert.Equal(2.409063812, StudentizedRange.Quantile(0.95, 8, 28) * spread, 1e-6);
        Assert.Equal(5.75004e-6, 1 - StudentizedRange.Cdf(5 / spread, 8, 28), 1e-5 * 5.75e-6);
    }

    [Theory]
    [InlineData(1, 43.94802125, 1.602862944e-6, 8.014314720e-6)]
    [InlineData(2, 29.51459149, 7.846712719e-6, 1.569342544e-5)]
    [InlineData(3, 36.40765361, 3.397812139e-6, 1.203572338e-5)]
    [InlineData(4, 57.47048932, 5.489029636e-7, 3.293417781e-6)]
    [InlineData(5, 6.085806195, 0.00368541618, 0.00368541618)]
    [InlineData(6, 37.53372467, 3.008930844e-6, 1.203572338e-5)]
    [InlineData(7, 63.32390959, 3.725277940e-7, 2.607694558e-6)]
    public void Paired_StepByStep_IsTheComputed(int from, double t, double probability, double holm)
    {
        PairedStep paired = _result.Paired[from - 1];

        Assert.Equal(t, paired.T!.Value, 1e-6);
        Assert.Equal(probability, paired.Probability!.Value, 1e-8 * probability);
        Assert.Equal(holm, paired.HolmProbability!.Value, 1e-8 * holm);
    }

    [Fact]
    public void Paired_FromFiveToSix_HasTheComputedInterval()
    {
        Assert.Equal(0.8366154034, _result.Paired[4].Low!.Value, 1e-8);
        Assert.Equal(9.1633845966, _result.Paired[4].High!.Value, 1e-8);
    }
}
