using System.Text.Json.Nodes;
using Bellowsmith.Kits.Figures;

namespace Bellowsmith.App.Boards;

/// <summary>Figures as a page paints them.</summary>
public static class ChartFrame
{
    public static JsonObject Of(Frame frame, Chart chart) => new()
    {
        ["x"] = Axis(chart.X),
        ["y"] = Axis(chart.Y),
        ["zones"] = Each(chart.Zones, b => Band(frame, b)),
        ["bands"] = Each(chart.Bands, b => Band(frame, b)),
        ["bars"] = Each(chart.Bars, b => new JsonObject
        {
            ["label"] = b.Label,
            ["outside"] = b.IsOutside,
            ["edges"] = frame.Array(b.Edges),
            ["heights"] = frame.Array(b.Heights),
        }),
        ["uprights"] = Each(chart.Uprights.Where(u => double.IsFinite(u.X)), u => new JsonObject
        {
            ["kind"] = u.Kind.ToString(),
            ["x"] = u.X,
            ["label"] = u.Label,
        }),
        ["limits"] = Each(chart.Limits, c => Curve(frame, c)),
        ["centres"] = Each(chart.Centres, c => Curve(frame, c)),
        ["curves"] = Each(chart.Curves, c => Curve(frame, c)),
        ["measured"] = Each(chart.Measured, m => new JsonObject
        {
            ["label"] = m.Label,
            ["shape"] = m.Shape.ToString(),
            ["joined"] = m.Joined,
            ["x"] = frame.Array(m.X),
            ["y"] = frame.Array(m.Y),
        }),
        ["intervals"] = Each(chart.Intervals.Where(i => double.IsFinite(i.X) && double.IsFinite(i.Y)), i => new JsonObject
        {
            ["kind"] = i.Kind.ToString(),
            ["x"] = i.X,
            ["low"] = Number(i.Low),
            ["y"] = i.Y,
            ["high"] = Number(i.High),
            ["label"] = i.Label,
        }),
        ["marks"] = Each(chart.Marks.Where(m => double.IsFinite(m.X) && double.IsFinite(m.Y)), m => new JsonObject
        {
            ["kind"] = m.Kind.ToString(),
            ["x"] = m.X,
            ["y"] = m.Y,
            ["label"] = m.Label,
        }),
    };

    public static JsonObject Of(Frame frame, RateMap map) => new()
    {
        ["x"] = Axis(map.X),
        ["y"] = Axis(map.Y),
        ["columns"] = map.Heights.Length,
        ["rows"] = map.Loads.Length,
        ["rate"] = frame.Array(map.Rate),
        ["unit"] = map.RateUnit,
        ["decimals"] = map.RateDecimals,
        ["levels"] = new JsonArray([.. map.Levels.Select(l => (JsonNode)JsonValue.Create(l))]),
    };

    private static JsonArray Each<T>(IEnumerable<T> parts, Func<T, JsonObject> of) => new([.. parts.Select(part => (JsonNode)of(part))]);

    private static double? Number(double value) => double.IsFinite(value) ? value : null;

    private static JsonObject Band(Frame frame, ChartBand band) => new()
    {
        ["x"] = frame.Array(band.X),
        ["low"] = frame.Array(band.Low),
        ["high"] = frame.Array(band.High),
    };

    private static JsonObject Curve(Frame frame, ChartCurve curve) => new()
    {
        ["label"] = curve.Label,
        ["labelAt"] = curve.LabelAt,
        ["kind"] = curve.Kind.ToString(),
        ["x"] = frame.Array(curve.X),
        ["y"] = frame.Array(curve.Y),
        ["outside"] = frame.Array(curve.Outside),
    };

    internal static JsonObject Axis(ChartAxis axis) => new()
    {
        ["title"] = axis.Unit.Length == 0 ? axis.Title : $"{axis.Title}, {axis.Unit}",
        ["low"] = axis.Low,
        ["high"] = axis.High,
        ["decimals"] = axis.Decimals,
        ["ticks"] = axis.OwnTicks is { } own ? Each(own, t => new JsonObject { ["at"] = t.At, ["label"] = t.Label }) : null,
    };
}
