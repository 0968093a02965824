using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Boards;

/// <summary>A slider as it stands, in the unit shown.</summary>
public sealed record Slider(double Value, double Least, double Greatest, double Fine, double Coarse);

/// <summary>What a hand may do to one strut: which fields there are, how far each goes, and what a text typed into one means.</summary>
public static class Hands
{
    // A spring's own range and some more, so that what it cannot do can be asked for and is answered.
    private const double BelowSoftest = 0.85, AboveStiffest = 1.1;

    public static Slider Height(BoardView view) => Of(
        view, Dimension.Length, view.Here.Height_m, view.Case.LeastHeight_m, view.Case.GreatestHeight_m);

    public static Slider? Thread(BoardView view) => view is { Here.Thread: { } thread, Case.Design.Thread: { } design }
        ? Of(view, Dimension.Length, thread.Exposed_m, design.Least_m, design.Greatest_m)
        : null;

    public static Slider? Wanted(BoardView view)
    {
        if (view is not { Setting.Wanted: { } wanted, Result: { Minimum: { } soft, Maximum: { } stiff } }) return null;
        (double low, double high) = (Rated(view, wanted.Kind, soft), Rated(view, wanted.Kind, stiff));
        return Of(view, DimensionOf(wanted.Kind), wanted.Value.Si, BelowSoftest * low, AboveStiffest * high);
    }

    /// <summary>Whole clicks from closed; null for a damper without any.</summary>
    public static Slider? Click(BoardView view) => view.Click is { } click ? new Slider(click, view.Clicks[0], view.Clicks[^1], 1, 5) : null;

    public static Dimension DimensionOf(TargetKind kind) => kind == TargetKind.RideFrequency ? Dimension.Frequency : Dimension.Rate;

    /// <summary>The setting after a slider or handle moved; null where it moved nothing.</summary>
    public static StrutSetting? Slid(KitBoard board, string field, double shown)
    {
        BoardView view = board.View();
        switch (field)
        {
            case "height":
                return view.Setting with { DriveHeight = Stepped(view, Dimension.Length, shown, Height(view)) };
            case "thread" when Thread(view) is { } slider:
                return AtThread(view, Stepped(view, Dimension.Length, shown, slider));
            case "wanted" when view.Setting.Wanted is { } wanted && Wanted(view) is { } slider:
                return view.Setting with { DriveHeight = null, Wanted = wanted with { Value = Stepped(view, DimensionOf(wanted.Kind), shown, slider) } };
            case "click" when Click(view) is { } slider:
                return view.Setting with { Click = Math.Clamp(Math.Round(shown), slider.Least, slider.Greatest) };
            default:
                return null;
        }
    }

    /// <summary>The setting a typed text asks for, or why it cannot be had.</summary>
    public static (StrutSetting? Setting, string? Refused) Typed(KitBoard board, string field, string text)
    {
        BoardView view = board.View();
        return field switch
        {
            "height" => Within(view, text, view.Case.LeastHeight_m, view.Case.GreatestHeight_m, "where spring and data both are at home",
                w => view.Setting with { DriveHeight = w }),
            "thread" => TypedThread(view, text),
            "wanted" => TypedWanted(view, text),
            "click" => TypedClick(view, text),
            _ => (null, null),
        };
    }

    /// <summary>A typed gauge pressure within the spring's limit, or why not.</summary>
    public static (double? Value, string? Refused) Gauge(KitBoard board, string text)
    {
        BoardView view = board.View();
        if (Read(view, text, Dimension.GaugePressure, out string trouble) is not { } quantity) return (null, trouble);
        double most = view.Case.Part.MaxGaugePressure_Pa;
        return quantity.Si >= 0 && quantity.Si <= most ? (quantity.Si, null)
            : (null, $"Found {text.Trim()}; allowed 0 to {view.Units.Text(Dimension.GaugePressure, most)}, the spring's greatest.");
    }

    private static (StrutSetting?, string?) TypedThread(BoardView view, string text)
    {
        if (view.Case.Design.Thread is not { } thread) return (null, "The kit names no thread.");
        string words = text.Trim();
        if (words.EndsWith("turns", StringComparison.OrdinalIgnoreCase) || words.EndsWith("turn", StringComparison.OrdinalIgnoreCase))
        {
            string number = words[..words.LastIndexOf("turn", StringComparison.OrdinalIgnoreCase)].Trim().Replace(',', '.');
            if (!double.TryParse(number, CultureInfo.InvariantCulture, out double turns)) return (null, $"Found \"{words}\"; write for example \"12.5 turns\" or \"22 mm\".");
            text = string.Create(CultureInfo.InvariantCulture, $"{(thread.ExposedAtStop_m + turns * thread.Pitch_m) * 1e3} mm");
        }

        return Within(view, text, thread.Least_m, thread.Greatest_m, "what the thread can show", w => AtThread(view, w));
    }

    private static (StrutSetting?, string?) TypedWanted(BoardView view, string text)
    {
        TargetKind now = view.Setting.Wanted?.Kind ?? TargetKind.RideFrequency;
        string unit = view.Units.Symbol(DimensionOf(now));
        foreach (Dimension dimension in new[] { Dimension.Frequency, Dimension.Rate })
        {
            if (Quantity.Read(InUnit(text, unit), dimension, out _) is not { Si: > 0 } quantity) continue;
            TargetKind kind = DimensionOf(now) == dimension ? now : dimension == Dimension.Frequency ? TargetKind.RideFrequency : TargetKind.SpringRate;
            return (view.Setting with { DriveHeight = null, Wanted = new Wanted(kind, new Written(quantity.Si, Plain(quantity, text, unit))) }, null);
        }

        return (null, $"Found \"{text.Trim()}\"; write a ride frequency or a spring rate, for example \"1.9 Hz\" or \"34 N/mm\".");
    }

    private static (StrutSetting?, string?) TypedClick(BoardView view, string text)
    {
        if (Click(view) is not { } slider) return (null, "This damper has no clicks.");
        string number = text.Replace("click", "", StringComparison.OrdinalIgnoreCase).Trim(' ', 's').Replace(',', '.');
        return double.TryParse(number, CultureInfo.InvariantCulture, out double click) && click >= slider.Least && click <= slider.Greatest
            ? (view.Setting with { Click = click }, null)
            : (null, string.Create(CultureInfo.InvariantCulture, $"Found \"{text.Trim()}\"; allowed {slider.Least} to {slider.Greatest} from closed, the clicks measured."));
    }

    private static (StrutSetting?, string?) Within(
        BoardView view, string text, double least, double greatest, string range, Func<Written, StrutSetting?> set)
    {
        if (Read(view, text, Dimension.Length, out string trouble) is not { } quantity) return (null, trouble);
        string allowed = $"allowed {view.Units.Text(Dimension.Length, least)} to {view.Units.Text(Dimension.Length, greatest)}, {range}";
        if (quantity.Si < least - 1e-9 || quantity.Si > greatest + 1e-9) return (null, $"Found {text.Trim()}; {allowed}.");
        return set(new Written(quantity.Si, Plain(quantity, text, view.Units.Symbol(Dimension.Length)))) is { } setting
            ? (setting, null) : (null, "The spring has no data at the height this thread gives.");
    }

    // Car height is held: more exposed thread is less spring height.
    private static StrutSetting? AtThread(BoardView view, Written exposed)
    {
        StrutDesign d = view.Case.Design;
        if (d.StrutLengthAtDrive_m is not { } length || d.UpperStack_m is not { } upper || d.LowerStack_m is not { } lower) return null;
        double height = length - upper - lower - exposed.Si;
        if (height < view.Case.LeastHeight_m - 1e-9 || height > view.Case.GreatestHeight_m + 1e-9) return null;
        return view.Setting with { DriveHeight = Shown(view.Units, Dimension.Length, height, more: 1) };
    }

    private static Quantity? Read(BoardView view, string text, Dimension dimension, out string trouble)
    {
        string unit = view.Units.Symbol(dimension);
        trouble = $"Found \"{text.Trim()}\"; write a number and a unit, for example \"{Example(view, dimension)}\".";
        return Quantity.Read(InUnit(text, unit), dimension, out _);
    }

    // A bare number is in the unit shown beside it.
    internal static string InUnit(string text, string unit) =>
        Quantity.Read(text, Dimension.Length, out Misreading? misreading) is null && misreading == Misreading.NoUnit ? $"{text.Trim()} {unit}" : text.Trim();

    private static string Plain(Quantity quantity, string text, string unit) => InUnit(text, unit).Replace(',', '.') is var plain
        && plain.Contains(quantity.Unit.Name, StringComparison.Ordinal) ? plain : quantity.Unit.Write(quantity.Si, 6);

    private static string Example(BoardView view, Dimension dimension) => dimension switch
    {
        Dimension.GaugePressure => view.Units.Text(dimension, view.Here.GaugePressure_Pa),
        _ => view.Units.Text(dimension, view.Here.Height_m),
    };

    private static double Rated(BoardView view, TargetKind kind, RatePlace place) => kind switch
    {
        TargetKind.RideFrequency => place.RideFrequency_Hz,
        TargetKind.WheelRate => view.Case.WheelRate_N_per_m(place.SpringRate_N_per_m, place.Height_m),
        _ => place.SpringRate_N_per_m,
    };

    private static Slider Of(BoardView view, Dimension dimension, double si, double least, double greatest)
    {
        int decimals = view.Units.Decimals(dimension);
        double fine = Math.Pow(10, -decimals), power = Math.Pow(10, decimals);
        return new Slider(
            view.Units.Value(dimension, si), Math.Ceiling(view.Units.Value(dimension, least) * power - 1e-6) / power,
            Math.Floor(view.Units.Value(dimension, greatest) * power + 1e-6) / power, fine, 10 * fine);
    }

    private static Written Stepped(BoardView view, Dimension dimension, double shown, Slider slider)
    {
        double held = Math.Clamp(Math.Round(shown / slider.Fine) * slider.Fine, slider.Least, slider.Greatest);
        string text = string.Create(CultureInfo.InvariantCulture, $"{held.ToString("F" + view.Units.Decimals(dimension), CultureInfo.InvariantCulture)} {view.Units.UnitOf(dimension).Name}");
        return new Written(view.Units.UnitOf(dimension).ToSi(held), text);
    }

    private static Written Shown(DisplayUnits units, Dimension dimension, double si, int more)
    {
        Unit unit = units.UnitOf(dimension);
        return new Written(si, string.Create(CultureInfo.InvariantCulture, $"{unit.FromSi(si).ToString("F" + (units.Decimals(dimension) + more), CultureInfo.InvariantCulture)} {unit.Name}"));
    }
}
