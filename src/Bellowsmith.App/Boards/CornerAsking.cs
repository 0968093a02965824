using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Boards;

/// <summary>What a hand may ask of one corner: where its wheel stands, how it is aligned, which wheel is tried.</summary>
public static class CornerAsking
{
    public const string Travel = "zw", Rack = "rack", Camber = "camber", Toe = "toe", Spacer = "spacer", Change = "camberChange", LookedAt = "lookedAt", Wheel = "wheel", TouchTravel = "touchTravel", TouchRack = "touchRack";

    private const double Degree = Math.PI / 180, MostSpacer_m = 0.030, MostCamber_rad = 6 * Degree, MostToe_rad = 2 * Degree, MostChange_rad = 4 * Degree;

    private static readonly CornerField[] _fields =
    [
        new(Travel, Dimension.Length, view => (view.FullDroop_m, view.FullBump_m), view => view.Asked.Travel_m, (view, travel) => view.Asked with { Travel_m = travel }),
        new(Rack, Dimension.Length, view => (-view.RackTravel_m, view.RackTravel_m), view => view.Asked.Rack_m, (view, rack) => view.Asked with { Rack_m = rack }),
        new(Camber, Dimension.Angle, _ => (-MostCamber_rad, MostCamber_rad), view => view.Asked.Camber_rad ?? view.StaticCamber_rad, (view, camber) => view.Asked with { Camber_rad = camber }),
        new(Toe, Dimension.Angle, _ => (-MostToe_rad, MostToe_rad), view => view.Asked.Toe_rad ?? view.StaticToe_rad, (view, toe) => view.Asked with { Toe_rad = toe }),
        new(Spacer, Dimension.Length, _ => (0, MostSpacer_m), view => view.Asked.Spacer_m, (view, spacer) => view.Asked with { Spacer_m = spacer }),
        new(Change, Dimension.Angle, _ => (-MostChange_rad, MostChange_rad), view => view.Asked.CamberChange_rad, (view, change) => view.Asked with { CamberChange_rad = change }),
        new(LookedAt, Dimension.Length, view => (0, view.FullBump_m), view => view.LookedAt_m, (view, travel) => view.Asked with { LookedAt_m = travel }),
        new(TouchTravel, Dimension.Length, view => (view.FullDroop_m, view.FullBump_m), view => view.Touch.Travel_m, (view, travel) => view.Asked with { Touch = (travel, view.Touch.Rack_m) }),
        new(TouchRack, Dimension.Length, view => (-view.RackTravel_m, view.RackTravel_m), view => view.Touch.Rack_m, (view, rack) => view.Asked with { Touch = (view.Touch.Travel_m, rack) }),
    ];

    public static bool Has(string field) => field == Wheel || Field(field) is not null;

    public static IEnumerable<string> Sliding => _fields.Select(known => known.Name);

    /// <summary>The slider of a field.</summary>
    public static Slider SliderOf(BoardView view, string name)
    {
        CornerField field = Field(name)!;
        (double least, double greatest) = field.Range(view.Corner);
        (double scale, double fine, int decimals) = Shown(view, field.Dimension);
        double round = Math.Pow(10, decimals);
        return new Slider(
            field.Value(view.Corner) * scale, Math.Ceiling(least * scale * round - 1e-6) / round, Math.Floor(greatest * scale * round + 1e-6) / round, fine, 10 * fine);
    }

    /// <summary>After a slider or a handle moved.</summary>
    public static CornerAsked Slid(BoardView view, string name, double shown)
    {
        Slider slider = SliderOf(view, name);
        double held = Math.Clamp(Math.Round(shown / slider.Fine) * slider.Fine, slider.Least, slider.Greatest);
        return Field(name)!.With(view.Corner, held / Shown(view, Field(name)!.Dimension).Scale);
    }

    /// <summary>What a typed text asks, or why it cannot be.</summary>
    public static (CornerAsked? Asked, string? Refused) Typed(BoardView view, string name, string text)
    {
        if (name == Wheel) return TypedWheel(view.Asked.Corner, text);
        CornerField field = Field(name)!;
        (double least, double greatest) = field.Range(view.Corner);
        string unit = field.Dimension == Dimension.Angle ? "deg" : view.Units.Symbol(field.Dimension);
        return Quantity.Read(Hands.InUnit(text.Replace("°", " deg", StringComparison.Ordinal).Replace('−', '-'), unit), field.Dimension, out _) is { } found
            && found.Si >= least - 1e-9 && found.Si <= greatest + 1e-9
            ? (field.With(view.Corner, found.Si), null)
            : (null, $"Found \"{text.Trim()}\"; write {(field.Dimension == Dimension.Angle ? "an angle" : "a length")} from {Text(view, field.Dimension, least)} to {Text(view, field.Dimension, greatest)}.");
    }

    /// <summary>The values and labels of every field.</summary>
    public static void Say(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        foreach (CornerField field in _fields) say[$"{field.Name}.value"] = Text(view, field.Dimension, field.Value(view.Corner));
        (say["zw.label"], say["rack.label"]) = ("wheel travel, bump +", "rack, to the left +");
        (say["camber.label"], say["toe.label"]) = ("wanted camber", "wanted toe, per wheel");
        (say["spacer.label"], say["camberChange.label"], say["lookedAt.label"]) = ("spacer", "camber change", "looked at, wheel travel");
        (say["touchTravel.label"], say["touchRack.label"]) = ("wheel travel, bump +", "rack, to the left +");
        say["wheel.label"] = "wheel tried";
        say["wheel.value"] = view.Asked.Corner.Wheel.Length > 0 ? view.Asked.Corner.Wheel : view.Corner.OwnWheel;
        foreach (string name in _fields.Select(field => field.Name).Append(Wheel))
            say[$"{name}.refused"] = board.Refused is { } refused && refused.Field == name ? refused.Words : "";
    }

    private static (CornerAsked?, string?) TypedWheel(CornerAsked asked, string text) => text.Trim().Length == 0 ? (asked with { Wheel = "" }, null)
        : Kits.WheelText.Wheel(text) is { } wheel ? (asked with { Wheel = Kits.WheelText.Of(wheel) }, null)
        : (null, $"Found \"{text.Trim()}\". {Kits.WheelText.WheelFix(text)}");

    private static CornerField? Field(string name) => Array.Find(_fields, field => field.Name == name);

    // Angles are shown in degrees, a twentieth the finest.
    private static (double Scale, double Fine, int Decimals) Shown(BoardView view, Dimension dimension) => dimension == Dimension.Angle
        ? (1 / Degree, 0.05, 2) : (view.Units.Value(dimension, 1), Math.Pow(10, -view.Units.Decimals(dimension)), view.Units.Decimals(dimension));

    private static string Text(BoardView view, Dimension dimension, double si) => dimension == Dimension.Angle ? LinkageWords.Angle(si) : view.Units.Text(dimension, si);

    private sealed record CornerField(
        string Name, Dimension Dimension, Func<BoardCornerView, (double Least, double Greatest)> Range, Func<BoardCornerView, double> Value, Func<BoardCornerView, double, CornerAsked> With);
}
