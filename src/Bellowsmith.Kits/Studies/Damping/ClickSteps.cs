using Bellowsmith.Physics;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.Kits.Studies.Damping;

/// <summary>
/// Whether a click's damping differs from its neighbours' by more than runs differ: each run's own equivalent damping at 0.1 m/s,
/// runs as blocks, by the simultaneous intervals of <see cref="ClickStudy"/> over all steps of the damper.
/// </summary>
internal static class ClickSteps
{
    /// <summary>Empty where the runs can show nothing, or a neighbour was not measured.</summary>
    public static IReadOnlyList<ClickStep> Of(DamperFit fit, double click, params ReadOnlySpan<double?> neighbours)
    {
        var readings = fit.Runs(DampingStudy.Amplitude_m_per_s);
        if (readings.Count == 0 || readings.Any(reading => reading.Click != Math.Floor(reading.Click))) return [];
        string[] runs = [.. readings.Select(reading => reading.Run).Distinct().Order(StringComparer.Ordinal)];
        ClickResult judged = ClickStudy.Answer(ClickTable.Of(
            [.. readings.Select(reading => (int)reading.Click)], [.. readings.Select(reading => Array.IndexOf(runs, reading.Run))],
            [.. readings.Select(reading => reading.Damping_N_s_per_m)]));
        List<ClickStep> steps = [];
        foreach (double? neighbour in neighbours)
        {
            if (neighbour is not { } to) continue;
            if (Between(judged, click, to) is not { } step) return [];
            steps.Add(step);
        }

        return steps;
    }

    // The study's steps go up in clicks; one asked downwards is the same, turned round.
    private static ClickStep? Between(ClickResult judged, double click, double to)
    {
        var found = judged.Steps.FirstOrDefault(step => step.From == Math.Min(click, to) && step.To == Math.Max(click, to));
        if (found is not { Low: { } low, High: { } high }) return null;
        return to > click ? new(click, to, found.Step, low, high) : new(click, to, -found.Step, -high, -low);
    }
}
