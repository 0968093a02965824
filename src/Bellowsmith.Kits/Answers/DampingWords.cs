using System.Globalization;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of the damping answer: the same on page, terminal and paper.</summary>
public sealed class DampingWords(DampingResult result, DisplayUnits units)
{
    private readonly DampingCase _corner = result.Case;

    /// <summary>"Click 6 from closed damps it at 0.61 of critical: …"; where no click does, why, and what comes nearest.</summary>
    public string Answer() => result switch
    {
        { Refusal: DampingRefusal.NoDriveHeight } => "No spring height gives the kit's target, so there is no wheel rate to damp: ask for its height first.",
        { Refusal: DampingRefusal.SpeedNotMeasured } => Text(
            $"The ratio is defined at ±{Speed(DampingStudy.Amplitude_m_per_s)}; every click was measured to {Speed(_corner.Damper.GreatestRebound_m_per_s)} in rebound and {Speed(_corner.Damper.GreatestCompression_m_per_s)} in compression only."),
        { Chosen: { Click: null } linear } => Text($"This linear damper has no clicks; it gives {linear.Ratio:0.00} of critical."),
        { Chosen: { } chosen } => Text(
            $"Click {chosen.Click:0} from closed damps it at {chosen.Ratio:0.00} of critical: {chosen.ReboundRatio:0.00} in rebound, {chosen.CompressionRatio:0.00} in compression.{Neighbours()}"),
        { Nearest: { } nearest } => Text(
            $"No click gives {result.WantedRatio:0.00} of critical: {(result.Refusal == DampingRefusal.EveryClickHarder ? "every one damps more" : "every one damps less")}. Nearest is click {nearest.Click:0} with {nearest.Ratio:0.00}."),
        _ => "",
    };

    /// <summary>What a click gives that is not the chosen one; empty for the chosen and for one between whole clicks.</summary>
    public string Set(double click) => result.Clicks.FirstOrDefault(c => c.Click == click) is { } set && set != result.Chosen
        ? Text($"Click {click:0} is set: {set.Ratio:0.00} of critical, {set.ReboundRatio:0.00} in rebound, {set.CompressionRatio:0.00} in compression.")
        : "";

    /// <summary>Whether a person can rely on one click's difference.</summary>
    public string Distinct() => result switch
    {
        { Chosen.Click: null } or { Chosen: null } => "",
        { Distinguishable: null } => "Whether one click makes a real difference is not known: it takes two runs or more of this click and of its neighbours.",
        { Distinguishable: true } => Text($"One click either way differs by more than repeated runs do: {Steps()}."),
        _ => Text($"One click is not shown to make a difference here: {Steps()}, and repeated runs differ as much."),
    };

    /// <summary>What to do when the spring changes.</summary>
    public static string AnotherSpring =>
        "To keep the ratio, damping follows the square root of wheel rate (mass held): 10 % more rate wants 4.9 % more damping, 20 % more wants 9.5 %.";

    /// <summary>Mode ratios beside the plain one; empty where no tyre rate is known.</summary>
    public string Modes() => (result.Chosen ?? result.Nearest) is { BodyModeRatio: { } body, WheelModeRatio: { } wheel }
        ? Text($"With the tyre's spring and the wheel's mass the body swings at {body:0.00} of critical and the wheel at {wheel:0.00}.")
        : "";

    /// <summary>What stands behind the answer.</summary>
    public IEnumerable<Note> Notes()
    {
        yield return new("ratio", "c/(2·√(kw·ms)), tyre rigid; c at the wheel is the linear damper that takes as much energy from a sine of ±0.1 m/s at the damper, over both strokes, times the damper's motion ratio squared.");
        if (_corner.Fit is { } fit)
            foreach (Note note in DynoWords.Notes(fit, _corner.DynoFile ?? ""))
                yield return note;
        if (_corner.DamperTemperature_K is { } warm) yield return DynoWords.At(warm);
        if (_corner.TyreRate_N_per_m is null)
            yield return new("modes", "The car gives no tyreRate, so the ratios of the body's and the wheel's own swing are not known.");
    }

    private string Neighbours()
    {
        string[] beside = [.. new[] { result.Below, result.Above }.OfType<ClickDamping>().Select(c => Text($"click {c.Click:0} gives {c.Ratio:0.00}"))];
        return beside.Length == 0 ? "" : $" {char.ToUpperInvariant(beside[0][0])}{string.Join(", ", beside)[1..]}.";
    }

    private string Steps() => string.Join("; ", result.Steps.Select(step => Text(
        $"to click {step.To:0} {units.Change(Dimension.Damping, step.Step_N_s_per_m, 0)} at the damper ({units.Number(Dimension.Damping, step.Low_N_s_per_m)} to {units.Number(Dimension.Damping, step.High_N_s_per_m)})")));

    private string Speed(double speed) => units.Text(Dimension.Speed, speed);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
