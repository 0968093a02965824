using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>A strut in its top mount over wheel travel.</summary>
public sealed class MountCharts(MountResult result, DisplayUnits units)
{
    private const double Degree = Math.PI / 180;

    private readonly MountWords _words = new(result, units);

    /// <summary>What pushes the rod's top outward, as the spring stands and along the line that frees it; null without a side load.</summary>
    public Chart? Side()
    {
        if (result.SideLoad is not { } side) return null;
        double[] travel = Axes.Shown(Dimension.Length, units, [.. side.Curve.Select(both => both.Now.Travel_m)]);
        double[] now = [.. side.Curve.Select(both => both.Now.Outward_N)], freed = [.. side.Curve.Select(both => both.Freed.Outward_N)];
        return new Chart
        {
            Id = "mountSide",
            Title = $"What pushes the rod aside, {Names.Of(result.Case.Corner.End)}",
            Summary = _words.Aside(),
            X = Travel(),
            Y = Axes.Around("side force on the rod's top, outward +", Dimension.Force, units, [0, .. now, .. freed]),
            Centres = [ChartCurve.Level("", travel[0], travel[^1], 0)],
            Curves =
            [
                ChartCurve.Solid($"spring line tilted {LinkageWords.Angle(side.FreeTilt_rad)}", travel, Axes.Shown(Dimension.Force, units, freed)) with { Kind = CurveKind.Beside },
                ChartCurve.Solid("as it stands", travel, Axes.Shown(Dimension.Force, units, now)) with { Kind = CurveKind.Setting },
            ],
            Marks = [new(MarkKind.Setting, 0, units.Value(Dimension.Force, side.Drive.Outward_N), $"drive · {units.Text(Dimension.Force, side.Drive.Side_N)}")],
        };
    }

    /// <summary>How far the strut leans from its bearing's axis, at either lock and straight ahead, against the bearing's limit.</summary>
    public Chart Tilt()
    {
        MountPlace most = result.Greatest;
        ChartAxis x = Travel();
        double? limit = result.Case.Mount.SphericalBearing?.TiltLimit_rad / Degree;
        return new Chart
        {
            Id = "mountTilt",
            Title = $"How far the strut tilts in its mount, {Names.Of(result.Case.Corner.End)}",
            Summary = _words.InTheMount(),
            X = x,
            Y = ChartAxis.Around("tilt from the bearing's axis", "°", [0, limit ?? 0, .. result.Places.Select(place => place.Tilt_rad / Degree)]) with { Decimals = 1 },
            Limits = limit is { } asked ? [ChartCurve.Level("bearing's limit", x.Low, x.High, asked)] : [],
            Curves = [.. result.Places.GroupBy(place => place.Rack_m).Select(Curve)],
            Marks = [new(limit < most.Tilt_rad / Degree ? MarkKind.Signal : MarkKind.State, units.Value(Dimension.Length, most.Travel_m), most.Tilt_rad / Degree, $"most · {LinkageWords.Angle(most.Tilt_rad)}")],
        };
    }

    private ChartCurve Curve(IGrouping<double, MountPlace> rack) => ChartCurve.Solid(
        rack.Key == 0 ? "straight ahead" : rack.Key > 0 ? "rack left" : "rack right",
        [.. rack.Select(place => units.Value(Dimension.Length, place.Travel_m))], [.. rack.Select(place => place.Tilt_rad / Degree)]) with
    {
        Kind = rack.Key == 0 ? CurveKind.Setting : CurveKind.Plain,
    };

    private ChartAxis Travel()
    {
        double droop = units.Value(Dimension.Length, result.Case.FullDroop_m), bump = units.Value(Dimension.Length, result.Case.FullBump_m);
        return Axes.Around("wheel travel, bump +", Dimension.Length, units, [result.Case.FullDroop_m, result.Case.FullBump_m]) with { Low = droop, High = bump };
    }
}
