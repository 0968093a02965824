using Bellowsmith.Kits.Studies.Damping;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>damping</c>: unrounded, each number in the unit its name ends with; damping at the wheel
/// except in the steps, which are at the damper.</summary>
public sealed record DampingAnswer(IReadOnlyDictionary<string, DampingAnswer.DampedStrut> Struts)
{
    public sealed record DampedStrut(
        string Load, double WantedRatio, double? Click, double? Ratio, double? BodyModeRatio, double? WheelModeRatio,
        double? ClickBelow, double? ClickAbove, bool? Distinguishable, double? RatioBelow, double? RatioAbove,
        double? ReboundRatio, double? CompressionRatio, double? Damping_N_s_per_m, double? CriticalDamping_N_s_per_m,
        double SprungMass_kg, double UnsprungMass_kg, double DamperRatio, double? WheelRate_N_per_mm, double? Height_mm, double? GaugePressure_kPa,
        double? Repeatability_N, int RepeatabilityDegrees, ClickRatio? Nearest, IReadOnlyList<ClickRatio> Clicks, IReadOnlyList<StepLimits> Steps,
        IReadOnlyList<AmplitudeRatio> Amplitudes, IReadOnlyList<WheelOn> Loads, IReadOnlyList<WheelOn> Heights, string Reason, IReadOnlyList<Note> Notes, double? DamperTemperature_degC);

    public sealed record ClickRatio(
        double? Click, double Ratio, double ReboundRatio, double CompressionRatio, double Damping_N_s_per_m, bool Interpolated,
        double? BodyModeRatio, double? WheelModeRatio);

    public sealed record StepLimits(double From, double To, double Step_N_s_per_m, double Low_N_s_per_m, double High_N_s_per_m, bool Distinct);

    public sealed record AmplitudeRatio(double Amplitude_m_per_s, double? Ratio, double? ReboundRatio, double? CompressionRatio);

    public sealed record WheelOn(
        string Load, double SprungMass_kg, double? Height_mm, double? GaugePressure_kPa, double WheelRate_N_per_mm,
        double RatioLeftAlone, double? Click, double? Ratio);

    public static DampingAnswer Of(IEnumerable<DampingResult> results) => new(results.ToDictionary(r => Names.Of(r.Case.End), Of));

    private static DampedStrut Of(DampingResult r)
    {
        (DampingCase corner, ClickDamping? chosen, WheelState? drive) = (r.Case, r.Chosen, r.Case.Drive);
        return new DampedStrut(
            corner.Load, r.WantedRatio, chosen?.Click, chosen?.Ratio, chosen?.BodyModeRatio, chosen?.WheelModeRatio,
            r.Below?.Click, r.Above?.Click, r.Distinguishable, r.Below?.Ratio, r.Above?.Ratio,
            chosen?.ReboundRatio, chosen?.CompressionRatio, chosen?.Damping_N_s_per_m, drive?.Critical_N_s_per_m,
            corner.SprungMass_kg, corner.UnsprungMass_kg, corner.DamperRatio, drive?.WheelRate_N_per_m / 1e3, drive?.Height_m * 1e3,
            drive?.GaugePressure_Pa / 1e3, corner.Fit?.Repeatability_N, corner.Fit?.RepeatabilityDegrees ?? 0,
            r.Nearest is { } nearest ? Of(nearest) : null, [.. r.Clicks.Select(Of)],
            [.. r.Steps.Select(s => new StepLimits(s.From, s.To, s.Step_N_s_per_m, s.Low_N_s_per_m, s.High_N_s_per_m, s.IsDistinct))],
            [.. r.Amplitudes.Select(a => new AmplitudeRatio(a.Amplitude_m_per_s, a.Ratio, a.ReboundRatio, a.CompressionRatio))],
            [.. r.Loads.Select(Of)], [.. r.Heights.Select(Of)], new DampingWords(r, DisplayUnits.Metric).Answer(),
            [.. new DampingWords(r, DisplayUnits.Metric).Notes()], corner.DamperTemperature_K - 273.15);
    }

    private static ClickRatio Of(ClickDamping c) => new(
        c.Click, c.Ratio, c.ReboundRatio, c.CompressionRatio, c.Damping_N_s_per_m, c.Interpolated, c.BodyModeRatio, c.WheelModeRatio);

    private static WheelOn Of(StateDamping s) => new(
        s.State.Load, s.State.SprungMass_kg, s.State.Height_m * 1e3, s.State.GaugePressure_Pa / 1e3, s.State.WheelRate_N_per_m / 1e3,
        s.RatioLeftAlone, s.Click, s.Ratio);
}
