using Bellowsmith.Kits.Studies.LeakTest;
using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.Kits.Answers;

/// <summary>
/// The machine answer of <c>leak</c>: unrounded, each number in the unit its name ends with. The leak rate is p·V per time at the
/// reference temperature; the loss and its limit are at the start temperature. The uncompensated drop is no leak.
/// </summary>
public sealed record LeakAnswer(
    double? LeakRate_Pa_m3_per_s, double? CorrectedLoss_kPa, double? Uncertainty_Pa_m3_per_s, double? ConformanceProbability,
    string Verdict, string Reason, string? Remedy, double ReferenceTemperature_degC,
    double? LeakRate_mbar_L_per_s, double? LeakRate_mol_per_s, double? LeakRateAir_g_per_h, double? LeakRateAt0degC_cm3_per_min,
    double? LeakRateAt20degC_cm3_per_min, double? CorrectedLossUncertainty_kPa, double? DegreesOfFreedom, double? Limit_kPa,
    double? Limit_Pa_m3_per_s, double UncompensatedDrop_kPa, double Time_s, IReadOnlyList<LeakAnswer.LeakShare> Contributions,
    IReadOnlyList<LeakAnswer.LeakRule> Findings, LeakAnswer.LeakLine? Log, LeakAnswer.LeakEnergy StoredEnergy, IReadOnlyList<Note> Notes)
{
    public sealed record LeakShare(string Source, double Uncertainty_Pa_m3_per_s, double Loss_kPa);

    /// <summary>Value and limit are shares of the start for the total change, else Pa of loss.</summary>
    public sealed record LeakRule(string Rule, double? Value, double? Limit, bool? Holds);

    public sealed record LeakLine(int Readings, double IndependentReadings, double Autocorrelation, double Drift, bool Drifts, double? TwoPoint_Pa_m3_per_s);

    public sealed record LeakEnergy(
        double Isentropic_J, double Brode_J, double Isothermal_J, double NetIsothermal_J, double Tnt_g, double TntDivisor_J_per_kg, double Water_J);

    public static LeakAnswer Of(LeakTestResult r)
    {
        LeakWords words = new(r, DisplayUnits.Metric);
        LeakEstimate? e = r.Estimate;
        LeakRate? q = e?.Rate;
        Quality.Leaks.StoredEnergy s = r.Energy;
        return new(
            q?.Value_Pa_m3_per_s, e?.CorrectedLoss_Pa * 1e-3, e?.RateUncertainty_Pa_m3_per_s, r.Judgement.ConformanceProbability,
            LeakWords.Verdict(r.Judgement.Verdict), words.Reason(), words.Remedy(),
            (r.Input.ReferenceTemperature?.Si ?? DecayTest.UsualReferenceTemperature_K) - 273.15,
            q?.Value_mbar_L_per_s, q?.Moles_per_s, q?.Air_kg_per_s * 3.6e6, q?.StandardCubicCentimetres_per_min(273.15),
            q?.StandardCubicCentimetres_per_min(293.15), e?.LossUncertainty_Pa * 1e-3, e is { } && double.IsFinite(e.Degrees) ? e.Degrees : null,
            r.Judgement.Limit_Pa * 1e-3, r.Limit_Pa_m3_per_s, r.UncompensatedDrop_Pa * 1e-3, r.Time_s,
            [.. (e?.Contributions ?? []).Select(c => new LeakShare(LeakWords.Source(c.Source), c.Rate_Pa_m3_per_s, c.Loss_Pa * 1e-3))],
            [.. r.Findings.Select(f => new LeakRule(LeakWords.Rule(f.Rule), f.Value, f.Limit, f.Holds))],
            r.Log is { } log ? new(log.Count, log.Independent, log.Autocorrelation, log.Drift, log.Drifts, r.Test?.Rate.Value_Pa_m3_per_s) : null,
            new(s.Isentropic_J, s.Brode_J, s.Isothermal_J, s.NetIsothermal_J, s.Tnt_kg * 1e3, Quality.Leaks.StoredEnergy.TntDivisor_J_per_kg, s.Water_J),
            [.. words.Notes()]);
    }
}
