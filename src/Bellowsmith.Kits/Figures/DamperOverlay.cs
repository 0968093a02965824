using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// Force over velocity at every measured click, compression on the left, rebound on the right, force + in rebound. Dashed beyond a
/// click's own measured speeds, and there only where a slope was declared.
/// </summary>
internal sealed class DamperOverlay(DamperFit fit, DisplayUnits units)
{
    private const int Places = 121;
    private const double Reach = 1.15, TalkedOf_m_per_s = 0.13;

    private readonly Damper _damper = fit.Damper!;

    /// <param name="title">What it is of.</param>
    /// <param name="said">The sentence it draws.</param>
    /// <param name="click">The one set, in the accent; none where it lies outside those measured.</param>
    public Chart Of(string title, string said, double? click)
    {
        double? set = click >= _damper.Clicks[0] && click <= _damper.Clicks[^1] ? click : null;
        // The set one last, over the ends, over those between.
        ChartCurve[] curves = [.. _damper.Clicks.Where(c => c != set).OrderBy(IsEnd).Select(c => Curve(c, CurveKind.Beside))];
        if (set is { } chosen) curves = [.. curves, Curve(chosen, CurveKind.Setting)];
        var measured = _damper.Clicks.SelectMany(fit.Measured).ToArray();
        double[] forces = Shown(Dimension.Force, measured.Select(m => m.Force_N));
        return new Chart
        {
            Id = "damperOverlay",
            Title = title,
            Summary = set is { } one ? $"{said} {Said(one)}".TrimEnd() : said,
            X = Between("damper velocity, rebound +", [.. curves.SelectMany(c => c.X)]),
            Y = ChartAxis.Around("damper force, rebound +", units.Symbol(Dimension.Force), [.. forces, .. curves.SelectMany(c => c.Y.Concat(c.Outside))]) with { Decimals = units.Decimals(Dimension.Force) },
            Curves = curves,
            Measured = [new ChartPoints("measured, mean of runs", Shown(Dimension.Speed, measured.Select(m => m.Velocity_m_per_s)), forces)],
        };
    }

    private ChartCurve Curve(double click, CurveKind kind)
    {
        MonotoneCurve curve = _damper.Curve(click);
        double[] x = Velocities(curve);
        bool[] inside = [.. x.Select(v => v >= curve.X[0] && v <= curve.X[^1])];
        string label = kind == CurveKind.Setting || IsEnd(click) ? Name(click) : "";
        return Axes.Curve(label, Shown(Dimension.Speed, x), Shown(Dimension.Force, x.Select(v => curve.At(v).Value)), inside) with { Kind = kind };
    }

    private double[] Velocities(MonotoneCurve curve)
    {
        double reach = _damper.GoesOn ? Reach : 1, low = curve.X[0] * reach, high = curve.X[^1] * reach;
        return [.. Enumerable.Range(0, Places).Select(k => Math.Min(high, low + (high - low) * k / (Places - 1))).Union(curve.X).Order()];
    }

    private bool IsEnd(double click) => click == _damper.Clicks[0] || click == _damper.Clicks[^1];

    private static string Name(double click) => $"click {PlainNumbers.Chosen(click)}";

    private string Said(double click) => _damper.Covers(TalkedOf_m_per_s) && _damper.Covers(-TalkedOf_m_per_s)
        ? $"At {units.Text(Dimension.Speed, TalkedOf_m_per_s)} {Name(click)} resists with {units.Text(Dimension.Force, _damper.Force_N(click, TalkedOf_m_per_s))} in rebound and {units.Text(Dimension.Force, -_damper.Force_N(click, -TalkedOf_m_per_s))} in compression."
        : "";

    // From end to end of the data, so that curves end at the edge and are named beside it.
    private ChartAxis Between(string title, double[] shown) =>
        ChartAxis.Around(title, units.Symbol(Dimension.Speed), shown) with { Low = shown.Min(), High = shown.Max(), Decimals = units.Decimals(Dimension.Speed) };

    private double[] Shown(Dimension dimension, IEnumerable<double> si) => Axes.Shown(dimension, units, [.. si]);
}
