using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Boards;

/// <summary>What a hand may ask beside the setting: how hard it should be damped, and how fast it is driven.</summary>
public static class Asking
{
    public const string Ratio = "ratio", Speed = "speed", BumpSpeed = "bumpSpeed";

    private const double LeastRatio = 0.01, GreatestRatio = 5, LeastSpeed_m_per_s = 5 / 3.6, GreatestSpeed_m_per_s = 160 / 3.6;

    public static bool Has(string field) => field is Ratio or Speed or BumpSpeed;

    /// <summary>The slider of a field: what one usually asks for; more can be typed.</summary>
    public static Slider SliderOf(BoardView view, string field)
    {
        if (field == Ratio) return new Slider(view.Asked.Ratio, 0.1, 1.2, 0.01, 0.1);
        Unit unit = SpeedUnit(view);
        (double now, double most) = field == Speed ? (view.Asked.Speed_m_per_s, GreatestSpeed_m_per_s) : (view.Asked.BumpSpeed_m_per_s, GreatestSpeed_m_per_s / 2);
        return new Slider(unit.FromSi(now), Math.Ceiling(unit.FromSi(LeastSpeed_m_per_s)), Math.Floor(unit.FromSi(most)), 1, 10);
    }

    /// <summary>After a slider moved; null where the field is none of these.</summary>
    public static Asked? Slid(BoardView view, string field, double shown)
    {
        if (!Has(field)) return null;
        Slider slider = SliderOf(view, field);
        double held = Math.Clamp(Math.Round(shown / slider.Fine) * slider.Fine, slider.Least, slider.Greatest);
        return With(view.Asked, field, field == Ratio ? held : SpeedUnit(view).ToSi(held));
    }

    /// <summary>What a typed text asks, or why it cannot be.</summary>
    public static (Asked? Asked, string? Refused) Typed(BoardView view, string field, string text)
    {
        if (field == Ratio)
            return double.TryParse(text.Trim().Replace(',', '.'), CultureInfo.InvariantCulture, out double ratio) && ratio is >= LeastRatio and <= GreatestRatio
                ? (With(view.Asked, field, ratio), null)
                : (null, string.Create(CultureInfo.InvariantCulture, $"Found \"{text.Trim()}\"; write a share of critical from {LeastRatio} to {GreatestRatio}, for example \"0.5\"."));
        Unit unit = SpeedUnit(view);
        return Quantity.Read(Hands.InUnit(text, unit.Name), Dimension.Speed, out _) is { } speed && speed.Si is >= LeastSpeed_m_per_s and <= GreatestSpeed_m_per_s
            ? (With(view.Asked, field, speed.Si), null)
            : (null, $"Found \"{text.Trim()}\"; write a speed from {BumpWords.Speed(LeastSpeed_m_per_s, view.Units)} to {BumpWords.Speed(GreatestSpeed_m_per_s, view.Units)}.");
    }

    private static Unit SpeedUnit(BoardView view) => BumpWords.SpeedUnit(view.Units);

    private static Asked With(Asked asked, string field, double value) => field switch
    {
        Ratio => asked with { Ratio = value },
        Speed => asked with { Speed_m_per_s = value },
        _ => asked with { BumpSpeed_m_per_s = value },
    };
}
