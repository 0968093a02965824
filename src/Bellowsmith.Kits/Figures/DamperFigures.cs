using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>What the dyno says of a damper: force over velocity, loops of its raw sweeps, and force over click.</summary>
public sealed class DamperFigures(DynoResult result, DisplayUnits units)
{
    private const int LoopPlaces = 240;

    private readonly string _said = new DynoWords(result, units).Answer();

    /// <summary>Every click's force over velocity with what was measured, one of them in the accent.</summary>
    public Chart Overlay(double? click = null) => new DamperOverlay(result.Fit, units).Of($"{result.Part.Name}: force over velocity", _said, click);

    /// <summary>
    /// Force as recorded over position from mid-stroke, one cycle each: of a click at every speed, else of every click's fastest
    /// sweep. Null where the file holds no raw sweeps, or none of that click.
    /// </summary>
    public Chart? Loops(double? click = null)
    {
        DynoLoop[] loops = click is { } one ? [.. result.Fit.Loops.Where(l => l.Sweep.Click == one).DistinctBy(l => Math.Round(l.PeakVelocity_m_per_s, 2))]
            : [.. result.Fit.Loops.GroupBy(l => l.Sweep.Click).OrderBy(g => g.Key).Select(g => g.MaxBy(l => l.PeakVelocity_m_per_s)!)];
        if (loops.Length == 0) return null;
        ChartCurve[] curves = [.. loops.Select(loop => Loop(loop, click is not null ? Speed(loop) : loop == loops[0] || loop == loops[^1] ? Name(loop.Sweep.Click) : ""))];
        string which = click is { } at ? $"{Name(at)} at every speed" : "the fastest sweep of every click";
        return new Chart
        {
            Id = "damperLoops",
            Title = $"{result.Part.Name}: force over position, {which}",
            Summary = $"{_said} Forces as recorded{(result.Fit.GasForce_N is { } gas ? $", {units.Text(Dimension.Force, gas)} of gas among them" : "")}: a step of force at either end of the stroke is friction, a loop that leans has a spring in it.",
            X = ChartAxis.Around("position from mid-stroke, extension +", units.Symbol(Dimension.Length), curves.SelectMany(c => c.X)) with { Decimals = units.Decimals(Dimension.Length) },
            Y = ChartAxis.Around("force as recorded, rebound +", units.Symbol(Dimension.Force), curves.SelectMany(c => c.Y)) with { Decimals = units.Decimals(Dimension.Force) },
            Curves = curves,
        };
    }

    /// <summary>Force at the published speeds over click, compression below zero; nothing where a speed was not reached.</summary>
    public Chart Forces()
    {
        DynoClick[] clicks = [.. result.Damper.Clicks.Select(c => DynoStudy.Forces(result.Damper, c))];
        double[] x = [.. clicks.Select(c => c.Click)];
        ChartCurve[] curves = [.. new[] { +1, -1 }.SelectMany(stroke => DynoStudy.Speeds_m_per_s.Select((_, k) => AtSpeed(clicks, stroke, k)))
            .Where(curve => curve.Y.Any(double.IsFinite))];
        return new Chart
        {
            Id = "damperForces",
            Title = $"{result.Part.Name}: force at the published speeds over click",
            Summary = _said,
            X = Axes.Clicks(x),
            Y = ChartAxis.Around("damper force, rebound +", units.Symbol(Dimension.Force), [0, .. curves.SelectMany(c => c.Y)]) with { Decimals = units.Decimals(Dimension.Force) },
            Centres = [ChartCurve.Level("", x[0], x[^1], 0)],
            Curves = curves,
            Measured = [new ChartPoints("measured clicks", [.. curves.SelectMany(c => c.X)], [.. curves.SelectMany(c => c.Y)])],
        };
    }

    private ChartCurve AtSpeed(DynoClick[] clicks, int stroke, int speed)
    {
        double?[] forces = [.. clicks.Select(c => c.Forces[speed]).Select(f => stroke > 0 ? f.Rebound_N : -f.Compression_N)];
        return ChartCurve.Solid(
            units.Text(Dimension.Speed, DynoStudy.Speeds_m_per_s[speed]), [.. clicks.Select(c => c.Click)],
            [.. forces.Select(f => units.Value(Dimension.Force, f ?? double.NaN))]);
    }

    private ChartCurve Loop(DynoLoop loop, string label)
    {
        IReadOnlyList<DynoSample> samples = loop.Sweep.Samples;
        DynoSample[] cycle = [.. samples.TakeWhile(s => s.Time_s - samples[0].Time_s <= 1 / loop.Frequency_Hz)];
        DynoSample[] kept = [.. cycle.Where((_, k) => k % Math.Max(1, cycle.Length / LoopPlaces) == 0).Append(cycle[0])];
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
