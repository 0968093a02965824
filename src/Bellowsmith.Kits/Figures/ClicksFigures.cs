using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.DamperClicks;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.Kits.Figures;

/// <summary>Every step between neighbouring clicks with its simultaneous interval; a step whose interval meets zero is open.</summary>
public static class ClicksFigures
{
    /// <summary>Null where no step could be judged.</summary>
    public static Chart? Steps(DamperClicksResult result)
    {
        ClickStep[] steps = [.. result.Judged.Steps.Where(s => s.Low is not null)];
        if (steps.Length == 0) return null;
        (int sense, var unit, double? wanted) = (result.Judged.Sense, result.Readings.ForceUnit, result.Judged.Wanted);
        double Shown(double force_N) => unit.FromSi(sense * force_N);
        ChartInterval[] intervals = [.. steps.Select((s, k) => new ChartInterval(
            k, Math.Min(Shown(s.Low!.Value), Shown(s.High!.Value)), Shown(s.Step), Math.Max(Shown(s.Low!.Value), Shown(s.High!.Value)), ""))];
        ChartAxis up = ChartAxis.Around("step in the usual sense", unit.Name, [0, .. intervals.Select(i => i.Low), .. intervals.Select(i => i.High), wanted is { } w ? unit.FromSi(w) : 0]);
        return new Chart
        {
            Id = "clicks",
            Title = $"{result.Name}: steps between clicks, simultaneous 95 % intervals",
            Summary = new ClicksWords(result).Answer(),
            X = new ChartAxis("click to click", "", -0.5, steps.Length - 0.5, 0)
            {
                OwnTicks = [.. steps.Select((s, k) => new ChartTick(k, string.Create(CultureInfo.InvariantCulture, $"{s.From}–{s.To}")))],
            },
            Y = up,
            Centres = [ChartCurve.Level("", -0.5, steps.Length - 0.5, 0)],
            Limits = wanted is { } least ? [ChartCurve.Level("wanted", -0.5, steps.Length - 0.5, unit.FromSi(least))] : [],
            Intervals = intervals,
            Marks = [.. steps.Select((s, k) => (s, k)).Where(p => p.s.Verdict != StepVerdict.Distinct)
                .Select(p => new ChartMark(MarkKind.Signal, p.k, Shown(p.s.Step), ClicksWords.Of(p.s.Verdict)))],
        };
    }
}
