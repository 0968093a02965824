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
        ["curves"] = new JsonArray([.. chart.Curves.Select(c => (JsonNode)Curve(frame, c))]),
        ["limits"] = new JsonArray([.. chart.Limits.Select(c => (JsonNode)Curve(frame, c))]),
        ["bands"] = new JsonArray([.. chart.Bands.Select(b => (JsonNode)new JsonObject
        {
            ["x"] = frame.Array(b.X),
            ["low"] = frame.Array(b.Low),
            ["high"] = frame.Array(b.High),
        })]),
        ["measured"] = new JsonArray([.. chart.Measured.Select(m => (JsonNode)new JsonObject
        {
            ["label"] = m.Label,
            ["x"] = frame.Array(m.X),
            ["y"] = frame.Array(m.Y),
        })]),
        ["marks"] = new JsonArray([.. chart.Marks.Where(m => double.IsFinite(m.X) && double.IsFinite(m.Y)).Select(m => (JsonNode)new JsonObject
        {
            ["kind"] = m.Kind.ToString(),
            ["x"] = m.X,
            ["y"] = m.Y,
            ["label"] = m.Label,
        })]),
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

    private static JsonObject Curve(Frame frame, ChartCurve curve) => new JsonObject
    {
        ["label"] = curve.Label,
        ["labelAt"] = curve.LabelAt,
        ["x"] = frame.Array(curve.X),
        ["y"] = frame.Array(curve.Y),
        ["outside"] = frame.Array(curve.Outside),
    };

    private static JsonObject Axis(ChartAxis axis) => new()
    {
        ["title"] = $"{axis.Title}, {axis.Unit}",
        ["low"] = axis.Low,
        ["high"] = axis.High,
        ["decimals"] = axis.Decimals,
    };
}
