using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>What the dyno says of a damper: force over velocity, loops of its raw sweeps, and force over click.</summary>
public sealed class DamperFigures(DynoResult result, DisplayUnits units)
{
    private readonly string _said = new DynoWords(result, units).Answer();

    /// <summary>Every click's force over velocity with what was measured, one of them in the accent.</summary>
    public Chart Overlay(double? click = null) => new DamperOverlay(result.Fit, units).Of($"{result.Part.Name}: force over velocity", _said, click);

    /// <summary>Loops of a click at every speed, else of every click's fastest sweep; null where the file holds none.</summary>
    public Chart? Loops(double? click = null) => new DamperLoops(result.Fit, units).Of(result.Part.Name, _said, click);

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
}
