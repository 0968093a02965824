using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>Force as recorded over position from mid-stroke, one cycle each.</summary>
internal sealed class DamperLoops(DamperFit fit, DisplayUnits units)
{
    private const int Places = 240;

    /// <summary>
    /// Of a click at every speed, else of every click's fastest sweep. Null where the data hold no raw sweeps, or none of that click.
    /// </summary>
    public Chart? Of(string title, string said, double? click)
    {
        DynoLoop[] loops = click is { } one ? [.. fit.Loops.Where(l => l.Sweep.Click == one).DistinctBy(l => Math.Round(l.PeakVelocity_m_per_s, 2))]
            : [.. fit.Loops.GroupBy(l => l.Sweep.Click).OrderBy(g => g.Key).Select(g => g.MaxBy(l => l.PeakVelocity_m_per_s)!)];
        if (loops.Length == 0) return null;
        ChartCurve[] curves = [.. loops.Select(loop => Loop(loop, click is not null ? Speed(loop) : loop == loops[0] || loop == loops[^1] ? Name(loop.Sweep.Click) : ""))];
        string which = click is { } at ? $"{Name(at)} at every speed" : "the fastest sweep of every click";
        return new Chart
        {
            Id = "damperLoops",
            Title = $"{title}: force over position, {which}",
            Summary = $"{said} Forces as recorded{(fit.GasForce_N is { } gas ? $", {units.Text(Dimension.Force, gas)} of gas among them" : "")}: a step of force at either end of the stroke is friction, a loop that leans has a spring in it.",
            X = ChartAxis.Around("position from mid-stroke, extension +", units.Symbol(Dimension.Length), curves.SelectMany(c => c.X)) with { Decimals = units.Decimals(Dimension.Length) },
            Y = ChartAxis.Around("force as recorded, rebound +", units.Symbol(Dimension.Force), curves.SelectMany(c => c.Y)) with { Decimals = units.Decimals(Dimension.Force) },
            Curves = curves,
        };
    }

    private ChartCurve Loop(DynoLoop loop, string label)
    {
        IReadOnlyList<DynoSample> samples = loop.Sweep.Samples;
        DynoSample[] cycle = [.. samples.TakeWhile(s => s.Time_s - samples[0].Time_s <= 1 / loop.Frequency_Hz)];
        DynoSample[] kept = [.. cycle.Where((_, k) => k % Math.Max(1, cycle.Length / Places) == 0).Append(cycle[0])];
        double middle = (cycle.Max(s => s.Position_m) + cycle.Min(s => s.Position_m)) / 2;
        double[] y = [.. kept.Select(s => units.Value(Dimension.Force, s.Force_N))];
        return ChartCurve.Solid(label, [.. kept.Select(s => units.Value(Dimension.Length, s.Position_m - middle))], y) with
        {
            Kind = CurveKind.Beside,
            LabelAt = label.Length > 0 ? Array.IndexOf(y, y.Max()) : -1,
        };
    }

    private static string Name(double click) => $"click {PlainNumbers.Chosen(click)}";

    private string Speed(DynoLoop loop) => units.Text(Dimension.Speed, loop.PeakVelocity_m_per_s);
}
