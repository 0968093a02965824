using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// One strut on one road: how fast its damper moves, which frequencies reach the body, how far the wheel travels, and the same a step
/// aside. Null where it was not driven.
/// </summary>
public sealed class RideCharts(RideResult result, DisplayUnits units)
{
    private const int MostBars = 48;
    private const double LeastSeen_percent = 0.1;
    private static readonly double[] _widths_m = [0.0005, 0.001, 0.002, 0.005, 0.01, 0.02, 0.05];

    private readonly RideWords _words = new(result, units);

    /// <summary>All that have something to show, in the order one reads them.</summary>
    public IReadOnlyList<Chart> All() => [.. ((Chart?[])[Speeds(), Spectrum(), Travel(), Neighbours(), Waves()]).OfType<Chart>()];

    /// <summary>Share of the time at each damper speed, extension +; dashed where it moves faster than it was measured.</summary>
    public Chart? Speeds()
    {
        if (result.Detail is not { DamperSpeeds: { Count: > 0 } speeds } detail) return null;
        double width = speeds[0].To_m_per_s - speeds[0].From_m_per_s;
        ChartBars all = Bars(Dimension.Speed, width, speeds.Select(s => ((int)Math.Round(s.From_m_per_s / width), s.Share)));
        (double most, double least) = (units.Value(Dimension.Speed, result.Strut.Damper.GreatestRebound_m_per_s), units.Value(Dimension.Speed, -result.Strut.Damper.GreatestCompression_m_per_s));
        bool[] outside = [.. Enumerable.Range(0, all.Heights.Length).Select(k => all.Edges[k] >= most || all.Edges[k + 1] <= least)];
        Chart chart = Histogram("rideSpeeds", "Damper speeds", Dimension.Speed, "damper velocity, rebound +", all);
        return chart with
        {
            X = Widened(Seen(chart.X, all), least, most),
            Summary = $"{_words.Answer()} {Faster(detail.OutsideMeasuredSpeed)}",
            Bars = [all with { Heights = [.. all.Heights.Select((h, k) => outside[k] ? 0 : h)] }, all with { Heights = [.. all.Heights.Select((h, k) => outside[k] ? h : 0)], IsOutside = true }],
            Uprights = [.. ((double[])[least, most]).Where(double.IsFinite).Select(v => new ChartUpright(UprightKind.Limit, v, "measured to here"))],
        };
    }

    /// <summary>How much of waves the body follows; null where they were not asked for.</summary>
    public Chart? Waves() => result.Response is { } response ? new ResponseFigures(response, units).Transmissibility() : null;

    /// <summary>Density of body acceleration over frequency, plain and as a seated person feels it; null over a single bump or on a run too short.</summary>
    public Chart? Spectrum() => result.Road.Surface is RoadWithBump || result.Detail is not { } detail
        ? null : RideSpectrum.Of(detail, Title("Body acceleration over frequency"), _words.Answer());

    /// <summary>Share of the time at each wheel travel from rest, bump +, with where the stop is touched.</summary>
    public Chart? Travel()
    {
        if (result.Detail is not { } detail || detail.Trace.Settled >= detail.Trace.Travel_m.Length) return null;
        double[] travel = detail.Trace.Travel_m[detail.Trace.Settled..];
        double width = _widths_m.FirstOrDefault(w => (travel.Max() - travel.Min()) / w <= MostBars, _widths_m[^1]);
        ChartBars bars = Bars(Dimension.Length, width, travel.GroupBy(t => (int)Math.Floor(t / width)).Select(g => (g.Key, (double)g.Count() / travel.Length)));
        double stop = detail.StopContact_m is { } contact ? units.Value(Dimension.Length, contact) : double.NaN;
        Chart chart = Histogram("rideTravel", "Wheel travel", Dimension.Length, "wheel travel from rest, bump +", bars);
        return chart with
        {
            X = Widened(chart.X, 0, stop),
            Summary = $"{_words.Answer()} The wheel moves from {Text(travel.Min())} to {Text(travel.Max())}.",
            Uprights = [new(UprightKind.Centre, 0, "at rest"), .. double.IsNaN(stop) ? Array.Empty<ChartUpright>() : [new(UprightKind.Limit, stop, $"stop touched at {Text(detail.StopContact_m!.Value)}")]],
        };
    }

    /// <summary>Weighted r.m.s. of this setting and of each a step aside, so that no number stands alone.</summary>
    public Chart? Neighbours()
    {
        if (result.Figures is not { } here) return null;
        (string Name, double Value)[] all = [("this setting", here.WeightedRms_m_per_s2), .. result.Neighbours.Select(n => (n.Figures is null ? $"{n.Change}: cannot stand" : n.Change, n.Figures?.WeightedRms_m_per_s2 ?? double.NaN))];
        double[] values = [.. all.Select(a => a.Value)], beside = [.. values.Skip(1).Where(double.IsFinite)];
        double room = 0.08 * (values.Where(double.IsFinite).Max() - values.Where(double.IsFinite).Min());
        ChartMark[] marks = [.. all.Select((a, k) => new ChartMark(k == 0 ? MarkKind.Setting : MarkKind.State, a.Value, all.Length - 1 - k, $"{Number(a.Value)} m/s²")).Where(m => double.IsFinite(m.X))];
        return new Chart
        {
            Id = "rideNeighbours",
            Title = Title("This setting and a step aside"),
            Summary = $"{_words.Answer()}{(beside.Length == 0 ? "" : $" A step aside it is {Number(beside.Min())} to {Number(beside.Max())} m/s².")}",
            X = ChartAxis.Around("weighted body acceleration, r.m.s.", "m/s²", [.. values, .. values.Select(v => v - room), .. values.Select(v => v + room)]),
            Y = new ChartAxis("", "", -0.5, all.Length - 0.5, 0) { OwnTicks = [.. all.Select((a, k) => new ChartTick(all.Length - 1 - k, a.Name))] },
            Marks = marks,
        };
    }

    private Chart Histogram(string id, string title, Dimension dimension, string across, ChartBars bars) => new()
    {
        Id = id,
        Title = Title(title),
        Summary = "",
        X = ChartAxis.Around(across, units.Symbol(dimension), bars.Edges) with { Decimals = units.Decimals(dimension) },
        Y = ChartAxis.Around("share of the time", "%", [0, .. bars.Heights]),
        Bars = [bars],
    };

    // Bins without a count between the first and the last stand empty.
    private ChartBars Bars(Dimension dimension, double width, IEnumerable<(int Bin, double Share)> shares)
    {
        Dictionary<int, double> of = shares.ToDictionary(s => s.Bin, s => s.Share);
        (int first, int last) = (of.Keys.Min(), of.Keys.Max());
        return new ChartBars("",
            [.. Enumerable.Range(first, last - first + 2).Select(k => units.Value(dimension, k * width))],
            [.. Enumerable.Range(first, last - first + 1).Select(k => 100 * of.GetValueOrDefault(k))]);
    }

    // Few steps are very fast, on the stop or off the road; they would flatten all others.
    private static ChartAxis Seen(ChartAxis axis, ChartBars bars)
    {
        int first = Array.FindIndex(bars.Heights, h => h >= LeastSeen_percent), last = Array.FindLastIndex(bars.Heights, h => h >= LeastSeen_percent);
        return first < 0 ? axis : ChartAxis.Around(axis.Title, axis.Unit, [bars.Edges[first], bars.Edges[last + 1]]) with { Decimals = axis.Decimals };
    }

    private static ChartAxis Widened(ChartAxis axis, params ReadOnlySpan<double> to) =>
        ChartAxis.Around(axis.Title, axis.Unit, [axis.Low, axis.High, .. to]) with { Decimals = axis.Decimals };

    private static string Faster(double share) => share == 0 ? "The damper never moves faster than it was measured."
        : $"For {PlainNumbers.Chosen(100 * share, 2)} % of the time the damper moves faster than it was measured.";

    private string Title(string what) => $"{what}, {Names.Of(result.Strut.End)} strut";

    private string Text(double travel_m) => units.Text(Dimension.Length, travel_m);

    private static string Number(double value) => PlainNumbers.Fixed(value, 3);
}
