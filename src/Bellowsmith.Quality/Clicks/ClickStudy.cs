using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// Is each click of a damper a real change? Runs are blocks, <c>value = click + run + error</c>, so that warm-up drift from run
/// to run does not count as scatter; the steps between neighbouring clicks get exact simultaneous intervals by
/// <see cref="AdjacentSteps"/> [Hochberg Tamhane 1987]. See docs/theory/clicks.md.
/// </summary>
public static class ClickStudy
{
    /// <summary>The simultaneous confidence of all steps together.</summary>
    public const double Confidence = 0.95;

    /// <summary>How likely the number of runs recommended for an open step shows it.</summary>
    public const double Power = StepPower.Wanted;

    /// <summary>The most runs looked at for an open step.</summary>
    public const int MostRuns = StepPower.MostRuns;

    /// <summary>Judges every step; <paramref name="wanted"/> is the least step worth having, 0 or more, in the readings' unit.</summary>
    /// <exception cref="ArgumentException">There are no readings, or the wanted step is below 0.</exception>
    public static ClickResult Answer(ClickTable table, double? wanted = null)
    {
        if (table.Clicks.Count == 0) throw new ArgumentException("No readings.", nameof(table));
        if (wanted is < 0 or double.NaN) throw new ArgumentException("A wanted step is 0 or more.", nameof(wanted));
        if (table.Clicks.Count == 1) return Without(table, wanted, ClickLack.OneClick, null);
        if (table.Groups().Count > 1) return Without(table, wanted, ClickLack.NotJoined, null);
        BlockFit fit = new(table);
        if (fit.Degrees == 0) return Without(table, wanted, ClickLack.TooFewRuns, fit);
        double deviation = Math.Sqrt(fit.ResidualSquares / fit.Degrees), size = fit.ClickMeans.Max(Math.Abs);
        return deviation <= 1e-11 * size ? Without(table, wanted, ClickLack.NoScatter, fit) : Judged(table, wanted, fit, deviation);
    }

    private static ClickResult Judged(ClickTable table, double? wanted, BlockFit fit, double deviation)
    {
        int steps = table.Clicks.Count - 1, sense = Sense(table, fit.ClickMeans);
        double critical = table.IsComplete
            ? AdjacentSteps.TwoSidedQuantile(Confidence, table.Clicks.Count, fit.Degrees) : Sidak(steps, fit.Degrees);
        double oneSided = table.IsComplete
            ? AdjacentSteps.OneSidedQuantile(Confidence, table.Clicks.Count, fit.Degrees)
            : Quantiles.StudentT(1 - (1 - Confidence) / steps, fit.Degrees);
        StepPower power = new(table.Clicks.Count, deviation, Confidence);
        ClickStep[] judged = [.. Enumerable.Range(0, steps).Select(click =>
            Judge(Plain(table, fit, click) with { StandardError = deviation * Math.Sqrt(fit.StepVariance(click)) }, critical, oneSided, sense, wanted, power))];
        return Without(table, wanted, null, fit) with
        {
            Deviation = deviation,
            Critical = critical,
            CriticalOneSided = oneSided,
            IsExact = table.IsComplete || steps == 1,
            Steps = judged,
            Usable = Longest(judged),
            RunsForWanted = wanted > 0 ? power.Runs(wanted.Value) : null,
            Unblocked = OneWay.Of([.. Enumerable.Range(0, table.Clicks.Count).Select(table.Readings)]),
            Paired = PairedStep.Of(table, Confidence),
        };
    }

    private static ClickStep Judge(ClickStep step, double critical, double oneSided, int sense, double? wanted, StepPower power)
    {
        double error = step.StandardError!.Value, reach = critical * error, usual = sense * step.Step;
        StepVerdict verdict = Verdict(usual - reach, usual + reach, wanted ?? 0);
        return step with
        {
            Low = step.Step - reach,
            High = step.Step + reach,
            AtLeast = usual - oneSided * error,
            Verdict = verdict,
            RunsToDecide = verdict == StepVerdict.NotShownDistinct ? power.Runs(usual - (wanted ?? 0)) : null,
        };
    }

    // The interval of a step taken in the usual sense. With a wanted step, a step that is real but may be either is still open.
    private static StepVerdict Verdict(double low, double high, double wanted) =>
        high < 0 ? StepVerdict.Reversed
        : low > wanted ? StepVerdict.Distinct
        : high < wanted ? StepVerdict.SmallerThanWanted
        : StepVerdict.NotShownDistinct;

    // Intervals sharing one scatter cover together at least as often as if they were independent [Sidak 1967].
    private static double Sidak(int steps, double degrees) =>
        Quantiles.StudentT((1 + Math.Pow(Confidence, 1.0 / steps)) / 2, degrees);

    private static int Sense(ClickTable table, double[] means)
    {
        double middle = table.Clicks.Average();
        return table.Clicks.Zip(means, (click, mean) => (click - middle) * mean).Sum() < 0 ? -1 : 1;
    }

    private static ClickRange[] Longest(ClickStep[] steps)
    {
        List<(int Steps, ClickRange Range)> runs = [];
        for (int start = 0, end; start < steps.Length; start = end + 1)
        {
            for (end = start; end < steps.Length && steps[end].Verdict == StepVerdict.Distinct; end++) { }
            if (end > start) runs.Add((end - start, new(steps[start].From, steps[end - 1].To)));
        }

        return [.. runs.Where(run => run.Steps == runs.Max(other => other.Steps)).Select(run => run.Range)];
    }

    private static ClickResult Without(ClickTable table, double? wanted, ClickLack? lack, BlockFit? fit) => new(
        table, Confidence, wanted, lack, fit?.ClickMeans ?? [], fit?.RunEffects ?? [], fit?.Anova(), null, null, null, false,
        fit is null ? 0 : Sense(table, fit.ClickMeans),
        [.. Enumerable.Range(0, table.Clicks.Count - 1).Select(click => Plain(table, fit, click))], [], null, null, []);

    private static ClickStep Plain(ClickTable table, BlockFit? fit, int click) => new(
        table.Clicks[click], table.Clicks[click + 1], fit?.Step(click) ?? double.NaN, null, null, null, null, null, null);
}
