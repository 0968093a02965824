using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// How the wheel goes over its travel: camber, toe with what a mend makes of it, roll centre and motion ratio, with drive height and where it
/// was before the car was lowered.
/// </summary>
public sealed class LinkageCharts(LoweringResult result, DisplayUnits units)
{
    private const double Every_m = 0.002;
    private const string OldHeight = "old drive height", MeasuredRatio = "measured";

    private readonly LoweringWords _words = new(result, units);
    private readonly LinkageState[] _states = Sweep(result, result.Linkage);

    /// <summary>All of them, in the order one reads them.</summary>
    public IReadOnlyList<Chart> All() => [Camber(), Toe(), RollCentre(), Ratio()];

    public Chart Camber() => Of("linkageCamber", "Camber", "camber, top out +", "°", 2, _words.Camber(), s => Degrees(s.Camber_rad));

    /// <summary>Beside it the toe with the outer tie-rod joint at its mended height.</summary>
    public Chart Toe() => Of("linkageToe", "Toe", "toe per wheel, in +", "°", 2, _words.Toe(), s => Degrees(s.Toe_rad),
        result.Mend(MendKind.TieRodOuter) is { } mend ? Curve(_words.MendedLabel(mend), Sweep(result, mend.Linkage), s => Degrees(s.Toe_rad)) : null);

    /// <summary>Over the ground; beside it what the ball joint's mend makes of it.</summary>
    public Chart RollCentre() => Of(
        "linkageRollCentre", "Roll centre", "roll centre over the ground", units.Symbol(Dimension.Length), units.Decimals(Dimension.Length), _words.RollCentre(),
        s => units.Value(Dimension.Length, s.RollCentreHeight_m),
        result.Mend(MendKind.LowerBallJoint) is { } mend
            ? Curve(_words.MendedLabel(mend), Sweep(result, mend.Linkage), s => units.Value(Dimension.Length, s.RollCentreHeight_m)) : null);

    /// <summary>From the points; beside it as it was measured.</summary>
    public Chart Ratio() => Of("linkageRatio", "Motion ratio", "strut travel per wheel travel", "", 3, _words.Ratio() ?? _words.RatioFromPoints(), s => s.Strut.MotionRatio,
        result.Question.Measured is { } measured
            ? Beside(MeasuredRatio, [.. _states.Select(s => s.Travel_m).Where(measured.Covers)], measured.At) : null);

    private Chart Of(
        string id, string title, string axis, string unit, int decimals, string summary, Func<LinkageState, double> value, ChartCurve? beside = null)
    {
        ChartCurve curve = Curve("", _states, value);
        double[] all = [.. curve.Y, .. beside?.Y ?? []];
        return new Chart
        {
            Id = id,
            Title = title,
            Summary = summary,
            X = Axes.Around("wheel travel from drive height, bump +", Dimension.Length, units, [.. _states.Select(s => s.Travel_m)]),
            Y = ChartAxis.Around(axis, unit, all) with { Decimals = decimals },
            Curves = beside is null ? [curve] : [beside, curve],
            Marks = [.. Marks(value)],
        };
    }

    private IEnumerable<ChartMark> Marks(Func<LinkageState, double> value)
    {
        if (result.Old is { } old) yield return new(MarkKind.State, Travel(old.Travel_m), value(old), OldHeight);
        yield return new(MarkKind.Setting, 0, value(result.Now), "drive height");
    }

    private ChartCurve Curve(string label, LinkageState[] states, Func<LinkageState, double> value)
    {
        ChartCurve curve = ChartCurve.Solid(label, [.. states.Select(s => Travel(s.Travel_m))], [.. states.Select(value)]);
        return label.Length > 0 ? curve with { Kind = CurveKind.Beside } : curve;
    }

    private ChartCurve Beside(string label, double[] travels_m, Func<double, double> value) =>
        ChartCurve.Solid(label, [.. travels_m.Select(Travel)], [.. travels_m.Select(value)]) with { Kind = CurveKind.Beside };

    private static LinkageState[] Sweep(LoweringResult result, Linkage linkage)
    {
        (double from, double to) = (Math.Min(result.Question.From_m, -result.Question.Lowered_m), result.Question.To_m);
        double[] travels = [.. Studies.LinkageTravel.LinkageQuestion.Range(from, to, Every_m)];
        LinkagePoint[] points = new LinkagePoint[travels.Length];
        linkage.Sweep(travels, 0, points);
        return [.. points.Select(point => point.State).OfType<LinkageState>()];
    }

    private double Travel(double travel_m) => units.Value(Dimension.Length, travel_m);

    private static double Degrees(double angle_rad) => angle_rad * 180 / Math.PI;
}
