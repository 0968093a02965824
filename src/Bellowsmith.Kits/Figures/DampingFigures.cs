using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>How hard one corner is damped: over click, over how fast the damper moves, and which click keeps it on other air.</summary>
/// <param name="result">How hard it is damped.</param>
/// <param name="units">Units shown.</param>
/// <param name="set">The click set; the chosen one where not given.</param>
public sealed class DampingFigures(DampingResult result, DisplayUnits units, double? set = null)
{
    private readonly string _said = new DampingWords(result, units).Answer();

    /// <summary>All that have something to show, in the order one reads them.</summary>
    public IReadOnlyList<Chart> All() => [.. ((Chart?[])[Overlay(), Ratio(), Amplitude(), GaugePressure(), Loops()]).OfType<Chart>()];

    /// <summary>The damper's force over velocity, the chosen click in the accent; null without dyno data.</summary>
    public Chart? Overlay() => result.Case.Fit is { Damper: not null } fit
        ? new DamperOverlay(fit, units).Of(Title("Damper force over velocity"), _said, set ?? Best?.Click) : null;

    /// <summary>Loops of the click at every speed, else of every click; null where the dyno data hold no raw sweeps.</summary>
    public Chart? Loops()
    {
        if (result.Case.Fit is not { } fit) return null;
        DamperLoops loops = new(fit, units);
        return loops.Of(Title("Damper loops"), _said, set ?? Best?.Click) ?? loops.Of(Title("Damper loops"), _said, null);
    }

    /// <summary>
    /// Ratio over click, and of each stroke alone, with the wanted one. A neighbour's interval is that of its step from the chosen
    /// click. Null without clicks.
    /// </summary>
    public Chart? Ratio()
    {
        ClickDamping[] clicks = [.. result.Clicks.Where(c => c.Click is not null)];
        if (clicks.Length == 0) return null;
        double[] x = [.. clicks.Select(c => c.Click!.Value)];
        ChartInterval[] intervals = [.. Intervals()];
        ChartCurve[] curves = Strokes(x, [.. clicks.Select(c => c.Ratio)], [.. clicks.Select(c => c.ReboundRatio)], [.. clicks.Select(c => c.CompressionRatio)]);
        ClickDamping[] measured = [.. clicks.Where(c => !c.Interpolated)];
        return Drawn("dampingRatio", "Damping ratio over click", Axes.Clicks(x), curves, x, intervals.SelectMany(i => (double[])[i.Low, i.High])) with
        {
            Measured = [new ChartPoints("measured clicks", [.. measured.Select(c => c.Click!.Value)], [.. measured.Select(c => c.Ratio)])],
            Intervals = intervals,
            Marks = [.. Marks(best => best.Click!.Value), .. Beside is { Click: { } click } beside
                ? [new ChartMark(MarkKind.Setting, click, beside.Ratio, Text($"this setting · click {PlainNumbers.Chosen(click)} · {beside.Ratio:0.00}"))] : Array.Empty<ChartMark>()],
        };
    }

    /// <summary>Ratio of the chosen click over damper velocity amplitude; null where none is known.</summary>
    public Chart? Amplitude()
    {
        AmplitudeDamping[] known = [.. result.Amplitudes.Where(a => a.Ratio is not null)];
        if (known.Length == 0) return null;
        double[] x = [.. result.Amplitudes.Select(a => units.Value(Dimension.Speed, a.Amplitude_m_per_s))];
        ChartCurve[] curves = Strokes(x, Numbers(a => a.Ratio), Numbers(a => a.ReboundRatio), Numbers(a => a.CompressionRatio));
        ChartAxis across = ChartAxis.Around("damper velocity amplitude", units.Symbol(Dimension.Speed), x) with { Low = 0, High = x[^1], Decimals = units.Decimals(Dimension.Speed) };
        return Drawn("dampingAmplitude", "Damping ratio over velocity amplitude", across, curves, [0, .. x], []) with
        {
            Summary = $"{_said} {Text($"At ±{units.Text(Dimension.Speed, known[0].Amplitude_m_per_s)} it is {known[0].Ratio:0.00}, at ±{units.Text(Dimension.Speed, known[^1].Amplitude_m_per_s)} {known[^1].Ratio:0.00}.")}",
            Marks = Marks(_ => units.Value(Dimension.Speed, DampingStudy.Amplitude_m_per_s)),
        };

        double[] Numbers(Func<AmplitudeDamping, double?> of) => [.. result.Amplitudes.Select(a => of(a) ?? double.NaN)];
    }

    /// <summary>
    /// The click that keeps the ratio over gauge pressure: at other heights with the load held, and at other loads with the height held.
    /// Null for a spring without air, or a damper without clicks.
    /// </summary>
    public Chart? GaugePressure()
    {
        StateDamping[] heights = [.. result.Heights.Where(h => h.State.GaugePressure_Pa is not null).OrderBy(h => h.State.GaugePressure_Pa)];
        StateDamping[] loads = [.. result.Loads.Where(l => l is { State.GaugePressure_Pa: not null, Click: not null })];
        if (!heights.Concat(loads).Any(s => s.Click is not null)) return null;
        double[] x = [.. heights.Select(Gauge)], y = [.. heights.Select(Click)];
        ChartMark[] others = [.. loads.Where(l => l.State.Load != result.Case.Load).Select(l => new ChartMark(MarkKind.State, Gauge(l), Click(l), l.State.Load))];
        return new Chart
        {
            Id = "dampingGaugePressure",
            Title = Title("Click that keeps the ratio over gauge pressure"),
            Summary = $"{_said} {Kept(heights)}".TrimEnd(),
            X = Axes.Around("gauge pressure", Dimension.GaugePressure, units, [.. heights.Concat(loads).Select(s => s.State.GaugePressure_Pa!.Value)]),
            Y = Axes.WholeClicks([.. heights.Concat(loads).Select(Click).Where(double.IsFinite)]),
            Curves = [ChartCurve.Solid("other heights, load held", x, y) with { Kind = CurveKind.Beside }],
            Measured = [new ChartPoints("", x, y)],
            Marks = [.. others, .. Best is { Click: { } click } && result.Case.Drive?.GaugePressure_Pa is { } drive
                ? [new ChartMark(Kind, units.Value(Dimension.GaugePressure, drive), click, $"{Named}click {PlainNumbers.Chosen(click)} · {units.Text(Dimension.GaugePressure, drive)} gauge")]
                : Array.Empty<ChartMark>()],
        };
    }

    private ClickDamping? Best => result.Chosen ?? result.Nearest;

    // The click set where it is another than the best.
    private ClickDamping? Beside => set is { } click && click != Best?.Click ? result.Clicks.FirstOrDefault(c => c.Click == click) : null;

    private MarkKind Kind => Beside is not null ? MarkKind.Recommended : result.Chosen is not null ? MarkKind.Setting : MarkKind.Caution;

    private string Named => Kind switch { MarkKind.Setting => "this setting · ", MarkKind.Caution => "nearest · ", _ => "" };

    private Chart Drawn(string id, string title, ChartAxis across, ChartCurve[] curves, double[] x, IEnumerable<double> more) => new()
    {
        Id = id,
        Title = Title(title),
        Summary = _said,
        X = across,
        Y = ChartAxis.Around("share of critical damping", "", [.. curves.SelectMany(c => c.Y), .. more, result.WantedRatio, 0]) with { Decimals = 2 },
        Curves = curves,
        Limits = [ChartCurve.Level(Text($"wanted {result.WantedRatio:0.00}"), x[0], x[^1], result.WantedRatio)],
    };

    private static ChartCurve[] Strokes(double[] x, double[] both, double[] rebound, double[] compression) =>
    [
        ChartCurve.Solid("both strokes", x, both),
        ChartCurve.Solid("rebound", x, rebound) with { Kind = CurveKind.Beside },
        ChartCurve.Solid("compression", x, compression) with { Kind = CurveKind.Beside },
    ];

    // A step is told at the damper; the wheel feels it by the square of the damper's motion ratio.
    private IEnumerable<ChartInterval> Intervals()
    {
        if (result.Chosen is not { } chosen || result.Case.Drive is not { } drive) yield break;
        double share = result.Case.DamperRatio * result.Case.DamperRatio / drive.Critical_N_s_per_m;
        foreach (ClickStep step in result.Steps)
            yield return new(step.To, chosen.Ratio + step.Low_N_s_per_m * share, chosen.Ratio + step.Step_N_s_per_m * share, chosen.Ratio + step.High_N_s_per_m * share, "");
    }

    private ChartMark[] Marks(Func<ClickDamping, double> x) => Best is not { } best ? []
        : [new(Kind, x(best), best.Ratio, Text($"{Named}{(best.Click is { } click ? $"click {PlainNumbers.Chosen(click)}" : "linear")} · {best.Ratio:0.00}"))];

    private string Kept(StateDamping[] heights)
    {
        StateDamping[] kept = [.. heights.Where(h => h.Click is not null)];
        return kept.Length < 2 ? "" : $"From {units.Text(Dimension.GaugePressure, kept[0].State.GaugePressure_Pa)} to {units.Text(Dimension.GaugePressure, kept[^1].State.GaugePressure_Pa)} gauge the ratio is kept by click {PlainNumbers.Chosen(Click(kept[0]))} to {PlainNumbers.Chosen(Click(kept[^1]))}.";
    }

    private double Gauge(StateDamping state) => units.Value(Dimension.GaugePressure, state.State.GaugePressure_Pa!.Value);

    private static double Click(StateDamping state) => state.Click ?? double.NaN;

    private string Title(string what) => $"{what}, {Names.Of(result.Case.End)} strut";

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}
