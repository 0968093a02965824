using System.Text.Json.Nodes;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Boards;

/// <summary>A map of settings as a page paints it, with every sentence about it.</summary>
public static class MapFrame
{
    /// <summary>So many reasons a cell may be infeasible for have a line on the page.</summary>
    public const int MostReasons = 6, MostAside = 3;

    public static byte[] Of(MapRun run, DisplayUnits units, double? left_s, bool isStopped)
    {
        Frame frame = new();
        SettingMap map = SettingMap.Of(run, units);
        frame.Json["charts"] = new JsonObject();
        frame.Json["settings"] = Of(frame, map, new MapWords(run, units));
        frame.Json["say"] = new JsonObject(Say(run, map, units, left_s, isStopped).Select(s => KeyValuePair.Create(s.Key, (JsonNode?)s.Value)));
        return frame.ToBytes();
    }

    private static JsonObject Of(Frame frame, SettingMap map, MapWords words) => new()
    {
        ["x"] = Of(frame, map.X),
        ["y"] = Of(frame, map.Y),
        ["shown"] = map.Shown,
        ["decimals"] = map.Decimals,
        ["values"] = frame.Array(map.Values),
        ["reasons"] = frame.Array(Reasons(map)),
        ["patches"] = new JsonArray([.. map.Reasons.SelectMany(r => r.Patches(map.X.Count).Select(patch => (JsonNode)Patch(frame, r.Word, patch)))]),
        ["levels"] = new JsonArray([.. map.Levels.Select(l => (JsonNode)JsonValue.Create(l))]),
        ["hasLines"] = map.HasLines,
        ["lines"] = new JsonArray([.. map.Levels.SelectMany(level => map.Lines(level).Select(line => (JsonNode)Line(frame, line, map.Level(level))))]),
        ["here"] = Of(map.Here),
        ["least"] = Of(map.Least),
        ["cell"] = words.HereCell() is { } cell ? new JsonArray(cell.Column, cell.Row) : null,
    };

    private static JsonObject Line(Frame frame, (double X, double Y)[] line, string words) => new JsonObject
    {
        ["x"] = frame.Array(Array.ConvertAll(line, p => p.X)),
        ["y"] = frame.Array(Array.ConvertAll(line, p => p.Y)),
        ["words"] = words,
    };

    private static JsonObject Patch(Frame frame, string words, int[] cells) => new()
    {
        ["words"] = words,
        ["cells"] = frame.Array(Array.ConvertAll(cells, cell => (float)cell)),
    };

    // By its number for each cell; −1 for none.
    private static float[] Reasons(SettingMap map)
    {
        float[] reasons = [.. Enumerable.Repeat(-1f, map.Values.Length)];
        foreach ((int number, MapReason reason) in map.Reasons.Index())
            foreach (int cell in reason.Cells) reasons[cell] = number;
        return reasons;
    }

    private static JsonObject Of(Frame frame, MapSide side)
    {
        JsonObject axis = ChartFrame.Axis(side.Axis);
        axis["values"] = frame.Array(side.Values);
        axis["edges"] = frame.Array(side.Edges);
        return axis;
    }

    private static JsonObject? Of(MapPoint? point) => point is null ? null : new() { ["x"] = point.X, ["y"] = point.Y, ["label"] = point.Label };

    private static Dictionary<string, string> Say(MapRun run, SettingMap map, DisplayUnits units, double? left_s, bool isStopped)
    {
        MapWords words = new(run, units);
        Dictionary<string, string> say = [];
        BoardWords.Split(
            say, "map.answer", words.Answer(), words.HereCell() is { } here && words.Number(run.Value(here.Column, here.Row)) is { } number ? number : "\0", "\0");
        say["map.shared"] = words.Shared();
        IReadOnlyList<string> aside = new MapNeighbours(run, units).Sentences();
        for (int k = 0; k < MostAside; k++) say[$"map.aside.{k}"] = aside.ElementAtOrDefault(k) ?? "";
        for (int k = 0; k < MostReasons; k++) say[$"map.reason.{k}"] = map.Reasons.ElementAtOrDefault(k)?.Sentence ?? "";
        say["map.progress"] = MapHints.Progress(run, left_s, isStopped);
        say["map.hint"] = say["map.progress"].Length > 0 ? "" : MapHints.Hint;
        say["map.whole"] = run.IsDone ? "yes" : "";
        say["map.stop"] = isStopped ? "Drive on" : "Stop";
        return say;
    }
}
