using Bellowsmith.Kits.Studies.SpringPoint;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>spring</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record SpringAnswer(
    double Height_mm, double Load_N, double? GaugePressure_kPa, double? EffectiveArea_cm2, double? Volume_cm3,
    double? SpringRate_N_per_mm, double? SpringRateLow_N_per_mm, double? SpringRateHigh_N_per_mm,
    double? SpringRateIsothermal_N_per_mm, double? SpringRateAdiabatic_N_per_mm, double? NaturalFrequency_Hz,
    bool? WithinPressureLimit,
    double Exponent, string ExponentSource, double DataLeastHeight_mm, double DataGreatestHeight_mm, string? Reason,
    IReadOnlyList<Note> Notes)
{
    public static SpringAnswer Of(SpringPointResult r)
    {
        SpringPointState? s = r.State;
        return new SpringAnswer(
            r.Height_m * 1e3, r.Load_N, s?.GaugePressure_Pa * 1e-3, s?.EffectiveArea_m2 * 1e4, s?.Volume_m3 * 1e6,
            s?.Rate_N_per_m * 1e-3, s?.RateBand_N_per_m?.Low * 1e-3, s?.RateBand_N_per_m?.High * 1e-3,
            s?.RateIsothermal_N_per_m * 1e-3, s?.RateAdiabatic_N_per_m * 1e-3, s?.NaturalFrequency_Hz,
            s is null ? null : s.GaugePressure_Pa <= r.Part.MaxGaugePressure_Pa,
            r.Exponent, Names.Of(r.ExponentSource), r.Fit.Spring.LeastHeight_m * 1e3, r.Fit.Spring.GreatestHeight_m * 1e3,
            s is null ? new SpringWords(r, DisplayUnits.Metric).Answer() : null, [.. Answers.Notes.Of(r.Fit, DisplayUnits.Metric)]);
    }
}
