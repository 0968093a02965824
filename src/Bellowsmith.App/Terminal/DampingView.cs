using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>The damping answer as a person reads it.</summary>
internal static class DampingView
{
    private const double About = 3;

    public static void Show(Screen screen, Kit kit, IEnumerable<DampingResult> results, DisplayUnits units)
    {
        foreach (DampingResult result in results) Show(screen, kit, result, units);
        screen.Blank();
        screen.Quiet(Cautions.DamperGas);
        screen.Quiet(Cautions.Dyno);
        screen.Quiet(Cautions.Local);
    }

    private static void Show(Screen screen, Kit kit, DampingResult result, DisplayUnits units)
    {
        DampingWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Case.End)}: how hard should it be damped?");
        if (result.Chosen is not null) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (words.Distinct() is { Length: > 0 } distinct) screen.Say(distinct);
        if (words.Modes() is { Length: > 0 } modes) screen.Say(modes);
        if ((result.Chosen ?? result.Nearest)?.Click is { } click) Clicks(screen, result, click, units);
        if (result.Amplitudes.Count > 0) Amplitudes(screen, result, units);
        if (result.Case.Drive is { } drive) screen.Point("stands on", Drive(drive, result.Case, units));
        if (result.Heights.Count > 0) States(screen, "height", result, result.Heights, units);
        if (result.Loads.Count > 1) States(screen, "load", result, result.Loads, units);
        screen.Point("another spring", DampingWords.AnotherSpring);
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
    }

    private static void Clicks(Screen screen, DampingResult result, double click, DisplayUnits units) => screen.Table(
        ["click from closed", "ratio", "rebound", "compression", "body", "wheel", $"at the wheel {units.Symbol(Dimension.Damping)}", ""],
        result.Clicks.Where(c => Math.Abs(c.Click!.Value - click) <= About).Select(c => ((IReadOnlyList<string>)
        [
            Invariant($"{c.Click:0}"), Ratio(c.Ratio), Ratio(c.ReboundRatio), Ratio(c.CompressionRatio), Ratio(c.BodyModeRatio), Ratio(c.WheelModeRatio),
            units.Number(Dimension.Damping, c.Damping_N_s_per_m), c == result.Chosen ? "this one" : c.Interpolated ? "between" : "",
        ], c == result.Chosen)));

    private static void Amplitudes(Screen screen, DampingResult result, DisplayUnits units) => screen.Table(
        [$"velocity ± {units.Symbol(Dimension.Speed)}", "ratio", "rebound", "compression"],
        result.Amplitudes.Select(a => ((IReadOnlyList<string>)
        [
            units.Number(Dimension.Speed, a.Amplitude_m_per_s), Ratio(a.Ratio), Ratio(a.ReboundRatio), Ratio(a.CompressionRatio),
        ], a.Amplitude_m_per_s == DampingStudy.Amplitude_m_per_s)));

    private static void States(Screen screen, string what, DampingResult result, IEnumerable<StateDamping> states, DisplayUnits units) => screen.Table(
        [
            what == "height" ? $"height {units.Symbol(Dimension.Length)}" : "load", $"gauge {units.Symbol(Dimension.GaugePressure)}",
            $"at the wheel {units.Symbol(Dimension.Rate)}", "left alone", "click", "ratio",
        ],
        states.Select(s => ((IReadOnlyList<string>)
        [
            what == "height" ? units.Number(Dimension.Length, s.State.Height_m) : s.State.Load, units.Number(Dimension.GaugePressure, s.State.GaugePressure_Pa),
            units.Number(Dimension.Rate, s.State.WheelRate_N_per_m), Ratio(s.RatioLeftAlone), s.Click is { } click ? Invariant($"{click:0}") : "–", Ratio(s.Ratio),
        ], s.State == result.Case.Drive)));

    private static string Drive(WheelState drive, DampingCase corner, DisplayUnits units)
    {
        string height = drive.Height_m is { } h ? $" at {units.Text(Dimension.Length, h)} and {units.Text(Dimension.GaugePressure, drive.GaugePressure_Pa)} gauge" : "";
        return Invariant($"{units.Text(Dimension.Rate, drive.WheelRate_N_per_m)} at the wheel{height} under {units.Text(Dimension.Mass, corner.SprungMass_kg)} ({corner.Load}): critical is {units.Text(Dimension.Damping, drive.Critical_N_s_per_m)}; damper ratio {corner.DamperRatio:0.000}.");
    }

    private static string Ratio(double? ratio) => ratio is { } value ? Invariant($"{value:0.00}") : "–";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
