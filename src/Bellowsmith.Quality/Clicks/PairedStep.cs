using Bellowsmith.Quality.Distributions;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// One step judged by its own runs alone, without pooling the scatter of the others: mean of the differences within runs, their
/// t, its two-sided probability, that probability raised for the number of steps in descending order [Holm 1979], and the
/// interval at the confidence shared over all steps [Bonferroni 1936]. Null where fewer than two runs hold both clicks or the differences are all equal.
/// </summary>
public sealed record PairedStep(
    int From, int To, double Step, int Runs, double? T, double? Probability, double? HolmProbability, double? Low, double? High)
{
    public static IReadOnlyList<PairedStep> Of(ClickTable table, double confidence)
    {
        PairedStep[] steps = [.. Enumerable.Range(0, table.Clicks.Count - 1).Select(click => Of(table, click, confidence))];
        double highest = 0;
        int left = steps.Count(step => step.Probability is not null);
        foreach (PairedStep step in steps.Where(step => step.Probability is not null).OrderBy(step => step.Probability).ToArray())
        {
            highest = Math.Max(highest, Math.Min(1, left-- * step.Probability!.Value));
            steps[Array.IndexOf(steps, step)] = step with { HolmProbability = highest };
        }

        return steps;
    }

    private static PairedStep Of(ClickTable table, int click, double confidence)
    {
        double[] differences = [.. Enumerable.Range(0, table.Runs.Count)
            .Select(run => table[click + 1, run] - table[click, run]).Where(double.IsFinite)];
        double step = Sample.Mean(differences), error = Sample.StandardDeviation(differences) / Math.Sqrt(differences.Length);
        PairedStep unjudged = new(table.Clicks[click], table.Clicks[click + 1], step, differences.Length, null, null, null, null, null);
        if (!(error > 1e-12 * Math.Abs(step))) return unjudged;
        double t = step / error, degrees = differences.Length - 1;
        double reach = error * Quantiles.StudentT(1 - (1 - confidence) / 2 / (table.Clicks.Count - 1), degrees);
        double probability = 2 * StudentT.CDF(0, 1, degrees, -Math.Abs(t));
        return unjudged with { T = t, Probability = probability, Low = step - reach, High = step + reach };
    }
}
