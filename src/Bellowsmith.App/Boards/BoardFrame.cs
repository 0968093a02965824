using System.Text.Json.Nodes;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Boards;

/// <summary>Everything a page shows of a kit at one setting, and the bytes that paint it.</summary>
public sealed class BoardFrame
{
    private readonly KitBoard _board;

    public BoardFrame(KitBoard board)
    {
        (_board, View) = (board, board.View());
        Say = BoardWords.Of(board, View);
        Charts = [.. new HeightCharts(View.Sweep, View.Result?.Solutions ?? [], View.Units).At(View.Here.Height_m)];
        foreach (Chart chart in Charts) Say[$"figure.{chart.Id}"] = chart.Summary;
        foreach (TitleRow row in Section.TitleBlock) Say[$"title.{row.Label}"] = row.Text;
        Say["section.summary"] = Section.Summary;
        Say["figure.map"] = View.Map.Summary;
        if (View.Travel is not null)
        {
            TravelFigures travel = new(View.Travel, View.Units);
            Ladder = travel.Ladder();
            RideHeight = travel.RideHeight();
        }

        foreach (Chart chart in Follows(Questions.Travel).Concat(Follows(Questions.Damping)).Concat(Follows(Questions.Ride)).Concat(Follows(Questions.Geometry)).Concat(Follows(Questions.Wheel))) Say[$"figure.{chart.Id}"] = chart.Summary;
    }

    public BoardView View { get; }

    public Dictionary<string, string> Say { get; }

    public StrutSection Section => View.Section;

    public IReadOnlyList<Chart> Charts { get; }

    public TravelLadder? Ladder { get; }

    public Chart? RideHeight { get; }

    public IReadOnlyList<Chart> Damping => field ??= View.Damping is { } damping ? new DampingFigures(damping, View.Units, View.Click).All() : [];

    public IReadOnlyList<Chart> Ride => field ??= View.Ride is { } ride ? new RideCharts(ride, View.Units).All() : [];

    public IReadOnlyList<Chart> Bump => field ??= View.Bump is { } bump && new BumpCharts(bump, View.Units) is var charts ? [charts.Motion(), charts.Acceleration()] : [];

    public IReadOnlyList<Chart> Geometry => field ??= View.Corner.Lowering is { } lowering ? new LinkageCharts(lowering, View.Units).All() : [];

    /// <summary>Takes too long to be drawn where nobody looks: empty where its question is closed.</summary>
    public IReadOnlyList<Chart> Wheel => field ??= _board.Open == Questions.Wheel && View.Corner.Fit is { } fit && new WheelCharts(fit, View.Units).Camber() is { } chart ? [chart] : [];

    /// <summary>Views of the car in the question that is open.</summary>
    public IReadOnlyList<(string Id, CarView View)> Views => field ??= [.. _board.Open switch
    {
        Questions.Geometry => View.Corner.Views(View.Units, _board.ViewTextHeight_mm),
        Questions.Wheel => View.Corner.FitViews(View.Units, _board.ViewTextHeight_mm),
        Questions.Touch => View.Corner.TouchViews(View.Units, _board.ViewTextHeight_mm),
        _ => [],
    }];

    /// <summary>Null where its question is closed or the kit says too little to drive one.</summary>
    public MapQuestion? Map => field ??= _board.Open == Questions.Settings ? _board.Map() : null;

    public IReadOnlyDictionary<string, Slider> Sliders => new Dictionary<string, Slider?>
    {
        ["height"] = Hands.Height(View),
        ["wanted"] = Hands.Wanted(View),
        ["thread"] = Hands.Thread(View),
        ["click"] = Hands.Click(View),
        [Asking.Ratio] = Asking.SliderOf(View, Asking.Ratio),
        [Asking.Speed] = Asking.SliderOf(View, Asking.Speed),
        [Asking.BumpSpeed] = Asking.SliderOf(View, Asking.BumpSpeed),
    }.Concat(CornerAsking.Sliding.Select(name => KeyValuePair.Create(name, (Slider?)CornerAsking.SliderOf(View, name))))
        .Where(s => s.Value is not null).ToDictionary(s => s.Key, s => s.Value!);

    /// <summary>The frame; the map's grid goes along only where the page does not have it yet.</summary>
    public byte[] ToBytes(RateMap? known)
    {
        Frame frame = new();
        frame.Json["say"] = new JsonObject(Say.Select(s => KeyValuePair.Create(s.Key, (JsonNode?)s.Value)));
        frame.Json["sliders"] = new JsonObject(Sliders.Select(s => KeyValuePair.Create(s.Key, (JsonNode?)Of(s.Value, Say[$"{s.Key}.value"]))));
        frame.Json["section"] = DrawingSvg.Shapes(Section.Shapes, Section.Dimensions);
        frame.Json["viewBox"] = DrawingSvg.ViewBox(Section.Frame);
        frame.Json["handles"] = new JsonObject(Section.Handles.Select(h => KeyValuePair.Create(h.Id, (JsonNode?)Of(h)))
            .Concat(Views.SelectMany(v => v.View.Handles).Select(h => KeyValuePair.Create(h.Id, (JsonNode?)Of(h)))));
        frame.Json["views"] = new JsonObject(Views.Select(v => KeyValuePair.Create(v.Id, (JsonNode?)Of(v.View))));
        if (Ladder is not null) frame.Json["ladder"] = LadderSvg.Of(Ladder);
        frame.Json["charts"] = new JsonObject(Charts.Concat(Of(_board.Open)).Select(c => KeyValuePair.Create(c.Id, (JsonNode?)ChartFrame.Of(frame, c))));
        if (_board.Open == Questions.Touch && View.Corner.Swept is { } swept) frame.Json["room"] = RoomSvg.Of(swept, View.Corner.Touch, View.Units);
        if (View.Map != known) frame.Json["map"] = ChartFrame.Of(frame, View.Map);
        frame.Json["mapAt"] = MapAt();
        if (View.Bump is { } bump && _board.Open == Questions.Ride)
            frame.Json["corner"] = CornerFrame.Of(frame, bump, View.Here.Height_m, View.Case.Damper?.BumpStop?.FreeLength_m);
        frame.Json["missed"] = new JsonArray([.. (View.Travel?.Findings ?? []).Where(f => f.Holds == false).Select(f => (JsonNode)f.Rule.ToString())]);
        frame.Json["choices"] = new JsonObject
        {
            ["end"] = _board.End.ToString(),
            ["load"] = View.Setting.Load,
            ["units"] = _board.UnitsName,
            ["road"] = View.Asked.Road.ToString(),
            ["bump"] = View.Asked.Bump.ToString(),
            ["mapX"] = Map?.X.Variable.ToString(),
            ["mapY"] = Map?.Y.Variable.ToString(),
            ["mapShow"] = Map?.Show.Name,
        };
        frame.Json["canUndo"] = _board.CanUndo;
        frame.Json["canRedo"] = _board.CanRedo;
        frame.Json["changed"] = _board.IsChanged;
        frame.Json["recommended"] = View.Setting.DriveHeight is null || View.Result?.Recommended is null;
        return frame.ToBytes();
    }

    private IEnumerable<Chart> Of(string question) => question switch
    {
        Questions.Travel => RideHeight is null ? [] : [RideHeight],
        Questions.Damping => Damping,
        Questions.Ride => Ride.Concat(Bump),
        Questions.Geometry => Geometry,
        Questions.Wheel => Wheel,
        _ => [],
    };

    // Under a hand only what is open is drawn anew.
    private IEnumerable<Chart> Follows(string question) => _board.IsHeld && _board.Open != question ? [] : Of(question);

    private JsonObject MapAt()
    {
        double wanted = View.Sweep.TargetSpringRate_N_per_m[0];
        return new JsonObject
        {
            ["height"] = View.Units.Value(Kits.Units.Dimension.Length, View.Here.Height_m),
            ["load"] = View.Units.Value(Kits.Units.Dimension.Mass, View.Case.SprungMass_kg),
            ["wanted"] = double.IsNaN(wanted) ? null : View.Units.Value(Kits.Units.Dimension.Rate, View.Case.TargetSpringRate_N_per_m(View.Here.Height_m)),
            ["label"] = $"this setting · {Say["height.value"]} · {View.Units.Text(Kits.Units.Dimension.Rate, View.Here.SpringRate_N_per_m)}",
            ["loadLabel"] = $"{View.Case.Load} · {View.Units.Text(Kits.Units.Dimension.Mass, View.Case.SprungMass_kg)}",
        };
    }

    private JsonObject Of(SectionHandle handle)
    {
        double shown = View.Units.Value(Kits.Units.Dimension.Length, 1);
        return new JsonObject
        {
            ["x"] = handle.At.X,
            ["y"] = -handle.At.Y,
            ["value"] = handle.Value_m * shown,
            ["up"] = handle.ValuePerMillimetreUp * shown,
            ["right"] = 0,
        };
    }

    private JsonObject Of(ViewHandle handle)
    {
        double shown = View.Units.Value(Kits.Units.Dimension.Length, 1);
        return new JsonObject
        {
            ["x"] = handle.At.X,
            ["y"] = -handle.At.Y,
            ["value"] = handle.Value_m * shown,
            ["up"] = handle.PerMillimetreUp * shown,
            ["right"] = handle.PerMillimetreRight * shown,
        };
    }

    private static JsonObject Of(CarView view) => new()
    {
        ["shapes"] = DrawingSvg.Shapes(view.Shapes, []),
        ["viewBox"] = DrawingSvg.ViewBox(view.Frame),
        ["summary"] = view.Summary,
    };

    private static JsonObject Of(Slider slider, string text) => new()
    {
        ["value"] = slider.Value,
        ["least"] = slider.Least,
        ["greatest"] = slider.Greatest,
        ["fine"] = slider.Fine,
        ["coarse"] = slider.Coarse,
        ["text"] = text,
    };
}
