using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>
/// A kit on the drawing board. Dragging the section, moving a slider, typing and arrow keys all end in the same two actions,
/// <see cref="Slide"/> and <see cref="Type"/>; both can be undone.
/// </summary>
public sealed class KitBoard
{
    private readonly Dictionary<AxleEnd, BoardStrut> _struts = [];
    private readonly History _history;
    private readonly Kept<(AxleEnd End, StrutSetting Setting, Asked Asked, DisplayUnits Units, double TextHeight_mm, Due Due), BoardView> _view;
    private Setting _saved;
    private DisplayUnits? _written;

    public const string Metric = "metric", Imperial = "imperial", Written = "written";

    /// <exception cref="FaultsException">The kit or a file it names cannot be used.</exception>
    public KitBoard(string file)
    {
        Edit = new KitEdit(file);
        Kit = KitReader.Read(file);
        foreach ((AxleEnd end, _) in Kit.Struts()) _struts[end] = new BoardStrut(Kit, end);
        End = _struts.Keys.Min();
        _saved = new Setting(_struts.GetValueOrDefault(AxleEnd.Front)?.Start, _struts.GetValueOrDefault(AxleEnd.Rear)?.Start);
        _history = new History(_saved);
        _view = new(key => _struts[key.End].At(key.Setting, key.Asked, key.Units, key.TextHeight_mm, key.Due));
    }

    public Kit Kit { get; }

    public KitEdit Edit { get; }

    public AxleEnd End { get; private set; }

    public IEnumerable<AxleEnd> Ends => _struts.Keys;

    public bool CanUndo => _history.CanUndo;

    public bool CanRedo => _history.CanRedo;

    public bool IsChanged => _history.Now != _saved;

    public string UnitsName { get; private set; } = Written;

    /// <summary>Height of the drawing's letters in mm of the strut, so that they stay readable at the scale it is shown at.</summary>
    public double TextHeight_mm { get; private set; } = 9;

    /// <summary>The same of the views of the car, in mm of the car.</summary>
    public double ViewTextHeight_mm { get; private set; } = 28;

    /// <summary>A gauge pressure typed to see where the car would stand on it.</summary>
    public double? WhatIf_Pa { get; private set; }

    /// <summary>What is asked beside the setting: no step to undo, and never saved.</summary>
    public Asked Asked { get; private set; } = Asked.First;

    /// <summary>The question that is open; empty where none is.</summary>
    public string Open { get; private set; } = Questions.Height;

    /// <summary>Whether a hand is down: the answers that take long then follow it only where their question is open.</summary>
    public bool IsHeld { get; private set; }

    private Due Due => new(Open, IsHeld);

    /// <summary>What was wrong with the last text typed, by the field it was typed into.</summary>
    public (string Field, string Words)? Refused { get; private set; }

    /// <summary>What saving came to; empty before.</summary>
    public string SaveWords { get; private set; } = "";

    public IReadOnlyList<Fault> TravelFaults => _struts[End].TravelFaults;

    public IReadOnlyList<Fault> DampingFaults => _struts[End].Damper.DampingFaults;

    public IReadOnlyList<Fault> GeometryFaults => _struts[End].Corner.GeometryFaults;

    public IReadOnlyList<Fault> AlignmentFaults => _struts[End].Corner.AlignmentFaults;

    /// <summary>What touches what at the strut shown, and what holds it above and below.</summary>
    public BoardTouch TouchFor => _struts[End].Corner.Touch;

    public IReadOnlyList<Fault> RideFaults => _struts[End].Damper.RideFaults;

    /// <summary>What may run along the map; fewer than two where the kit says too little to drive one.</summary>
    public IReadOnlyList<MapVariable> MapVariables => View() is var view ? _struts[End].Damper.Variables(view.Setting.Load, view.Here.Height_m) : [];

    /// <summary>The map at this setting; null where the kit says too little.</summary>
    public MapQuestion? Map() => View() is var view
        ? _struts[End].Damper.Map(view.Setting.Load, new RideSetting(Height_m: view.Here.Height_m, Click: view.Click), Asked.Drive, Asked.Map) : null;

    public DisplayUnits Units => UnitsName switch
    {
        Metric => DisplayUnits.Metric,
        Imperial => DisplayUnits.Imperial,
        _ => _written ??= DisplayUnits.Written(Kit.WrittenUnits),
    };

    public BoardView View() => _view.Of((End, _history.Now.At(End)!, Asked, Units, TextHeight_mm, Due));

    /// <summary>Every strut as it is set now, for the printed sheet.</summary>
    public IEnumerable<StrutCase> Settled() => _struts.Select(s => s.Value.Settled(_history.Now.At(s.Key)!));

    /// <summary>Moves a value while the hand is down; <paramref name="shown"/> is in the unit shown.</summary>
    public void Slide(string field, double shown)
    {
        Refused = null;
        IsHeld = true;
        if (CornerAsking.Sliding.Contains(field)) Asked = Asked with { Corner = CornerAsking.Slid(View(), field, shown) };
        else if (Asking.Slid(View(), field, shown) is { } asked) Asked = asked;
        else if (Hands.Slid(this, field, shown) is { } setting) _history.Slide(_history.Now.With(End, setting));
    }

    /// <summary>Lets go.</summary>
    public void Release()
    {
        IsHeld = false;
        _history.Release();
    }

    /// <summary>Takes a text typed into a field, in any unit.</summary>
    public void Type(string field, string text)
    {
        string? refused = field == "gauge" ? TypeGauge(text) : CornerAsking.Has(field) ? TypeCorner(field, text) : Asking.Has(field) ? TypeAsked(field, text) : TypeSetting(field, text);
        Refused = refused is null ? null : (field, refused);
    }

    public void Choose(string field, string choice)
    {
        Refused = null;
        StrutSetting now = _history.Now.At(End)!;
        switch (field)
        {
            case "load" when Kit.Car.Loads.Any(l => l.Name == choice): _history.Set(_history.Now.With(End, now with { Load = choice })); break;
            case "units" when choice is Metric or Imperial or Written: UnitsName = choice; break;
            case "end" when Enum.TryParse(choice, ignoreCase: true, out AxleEnd end) && _struts.ContainsKey(end): End = end; break;
            case "open": Open = choice; break;
            case "road" when Enum.TryParse(choice, out RoadClass road): Asked = Asked with { Road = road }; break;
            case "bump" when Enum.TryParse(choice, out BumpShape bump): Asked = Asked with { Bump = bump }; break;
            case "mapX" or "mapY" or "mapShow": Asked = Asked with { Map = MapNow().Chosen(field, choice) ?? Asked.Map }; break;
            case "cell": Take(choice.Split(',')); break;
            case "click" when View().Damping?.Chosen?.Click is { } click: _history.Set(_history.Now.With(End, now with { Click = click })); break;
            case "recommend": _history.Set(_history.Now.With(End, now with { DriveHeight = null })); break;
            case "undo": _history.Undo(); break;
            case "redo": _history.Redo(); break;
            case "text" when double.TryParse(choice, CultureInfo.InvariantCulture, out double height): TextHeight_mm = Math.Clamp(height, 2, 30); break;
            case "viewText" when double.TryParse(choice, CultureInfo.InvariantCulture, out double height): ViewTextHeight_mm = Math.Clamp(height, 5, 80); break;
            case "place" when Places(choice) is var (travel, rack): Asked = Asked with { Corner = Asked.Corner with { Touch = (travel, rack) } }; break;
            case "clear" when View().Corner.Swept?.Camber?.Camber_rad is { } clear: Asked = Asked with { Corner = Asked.Corner with { CamberChange_rad = clear } }; break;
            case "closest": Asked = Asked with { Corner = Asked.Corner with { Touch = null } }; break;
            case "looked": Asked = Asked with { Corner = Asked.Corner with { LookedAt_m = null } }; break;
            case "enough" when View().Corner.Fit?.LeastCamber is { } least: Asked = Asked with { Corner = Asked.Corner with { CamberChange_rad = least.Camber_rad } }; break;
            case "atRest": Asked = Asked with { Corner = Asked.Corner with { Travel_m = 0, Rack_m = 0 } }; break;
            case "save": Save(); break;
        }
    }

    // "travel rack", m.
    private static (double Travel_m, double Rack_m)? Places(string choice) => choice.Split(' ') is [var travel, var rack]
        && double.TryParse(travel, CultureInfo.InvariantCulture, out double z) && double.TryParse(rack, CultureInfo.InvariantCulture, out double r) ? (z, r) : null;

    private MapAsked MapNow() => MapVariables is { Count: > 1 } variables ? Asked.Map.Within(variables) : Asked.Map;

    // A cell of the map, "column,row", becomes the setting: one step to undo.
    private void Take(string[] cell)
    {
        if (Map() is not { } question || cell.Length != 2 || !int.TryParse(cell[0], out int column) || !int.TryParse(cell[1], out int row)) return;
        (StrutSetting setting, Asked asked, string? refused) = MapHand.Taken(View(), question, column, row);
        Refused = refused is null ? null : ("cell", refused);
        Asked = asked;
        _history.Set(_history.Now.With(End, setting));
    }

    private void Save()
    {
        SaveWords = Edit.Save(Units, Changes());
        if (Edit.Saved) _saved = _history.Now;
    }

    private IEnumerable<(AxleEnd End, StrutSetting From, StrutSetting To)> Changes() =>
        _struts.Keys.Select(end => (end, _saved.At(end)!, _history.Now.At(end)!)).Where(c => c.Item2 != c.Item3);

    private string? TypeSetting(string field, string text)
    {
        (StrutSetting? setting, string? refused) = Hands.Typed(this, field, text);
        if (setting is not null) _history.Set(_history.Now.With(End, setting));
        return refused;
    }

    private string? TypeAsked(string field, string text)
    {
        (Asked? asked, string? refused) = Asking.Typed(View(), field, text);
        Asked = asked ?? Asked;
        return refused;
    }

    private string? TypeCorner(string field, string text)
    {
        (CornerAsked? asked, string? refused) = CornerAsking.Typed(View(), field, text);
        Asked = Asked with { Corner = asked ?? Asked.Corner };
        return refused;
    }

    // An emptied field asks nothing any more.
    private string? TypeGauge(string text)
    {
        (double? value, string? refused) = text.Trim().Length == 0 ? (null, null) : Hands.Gauge(this, text);
        if (refused is null) WhatIf_Pa = value;
        return refused;
    }
}
