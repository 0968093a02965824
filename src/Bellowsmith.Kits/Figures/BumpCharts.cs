using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>Five seconds over a bump, every second millisecond.</summary>
public sealed class BumpCharts(BumpRide ride, DisplayUnits units)
{
    private const int Every = 2;
    private const double Still = 0.02, Part_s = 0.5, Room = 0.08;

    private readonly double[] _time = Thinned(k => k * ride.Trace.Step_s, ride.Road_m.Length);

    /// <summary>Heights of road, wheel and body from rest, up +.</summary>
    public Chart Motion()
    {
        double[] Shown(Func<int, double> height_m) => Thinned(k => units.Value(Dimension.Length, height_m(k)), ride.Road_m.Length);
        double[] road = Shown(k => ride.Road_m[k]), wheel = Shown(k => ride.Trace.Body_m[k] + ride.Trace.Travel_m[k]), body = Shown(k => ride.Trace.Body_m[k]);
        return Drawn("bumpMotion", "Road, wheel and body over a bump") with
        {
            Y = Upward("height from rest, up +", units.Symbol(Dimension.Length), [.. road, .. wheel, .. body]) with { Decimals = units.Decimals(Dimension.Length) },
            Curves = [Curve("road", road) with { Kind = CurveKind.Beside }, Curve("wheel", wheel) with { Kind = CurveKind.Beside, LabelAt = Array.IndexOf(wheel, wheel.Min()) }, Curve("body", body)],
        };
    }

    /// <summary>Acceleration of the body, up +, its greatest each way marked.</summary>
    public Chart Acceleration()
    {
        double[] all = ride.Trace.Acceleration_m_per_s2, shown = Thinned(k => all[k], all.Length);
        return Drawn("bumpAcceleration", "Acceleration of the body over a bump") with
        {
            Y = Upward("body acceleration, up +", "m/s²", all),
            Centres = [ChartCurve.Level("", 0, _time[^1], 0)],
            Curves = [ChartCurve.Solid("", _time, shown)],
            Marks = [Mark(all.Max()), Mark(all.Min())],
        };

        ChartMark Mark(double value) => new(MarkKind.State, Array.IndexOf(all, value) * ride.Trace.Step_s, value, $"{PlainNumbers.Fixed(value, 1)} m/s²");
    }

    private Chart Drawn(string id, string title) => new()
    {
        Id = id,
        Title = $"{title}, {Names.Of(ride.Strut.End)} strut",
        Summary = BumpWords.Of(ride, units),
        X = ChartAxis.Around("time", "s", [0, End_s()]),
        Y = ChartAxis.Around("", "", []),
    };

    // With room for the words at either end.
    private static ChartAxis Upward(string title, string unit, double[] values)
    {
        (double low, double high) = (values.Min(), values.Max());
        return ChartAxis.Around(title, unit, [low - Room * (high - low), high + Room * (high - low)]);
    }

    // The axis ends where the body has come to rest.
    private double End_s()
    {
        double[] body = ride.Trace.Body_m;
        double most = body.Max(height => Math.Abs(height - body[^1]));
        int moving = Array.FindLastIndex(body, height => Math.Abs(height - body[^1]) > Still * most);
        return Math.Min(body.Length * ride.Trace.Step_s, Part_s * (Math.Ceiling(moving * ride.Trace.Step_s / Part_s) + 1));
    }

    // Named where it is farthest from rest; the wheel where it is lowest, for up there it runs with the road.
    private ChartCurve Curve(string label, double[] y) => ChartCurve.Solid(label, _time, y) with { LabelAt = Array.IndexOf(y, y.MaxBy(Math.Abs)) };

    private static double[] Thinned(Func<int, double> value, int count) => [.. Enumerable.Range(0, (count + Every - 1) / Every).Select(k => value(k * Every))];
}
