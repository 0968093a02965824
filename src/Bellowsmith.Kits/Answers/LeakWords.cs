using System.Globalization;
using Bellowsmith.Kits.Studies.LeakTest;
using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a leak test.</summary>
public sealed class LeakWords(LeakTestResult result, DisplayUnits units)
{
    private static readonly Unit _rate = new("mbar·L/s", 1, 10), _time = new("h", 3600), _kelvin = new("K"), _share = new("%", 1, 100);

    private readonly LeakJudgement _judged = result.Judgement;

    /// <summary>The contract's three words.</summary>
    public static string Verdict(LeakVerdict verdict) => verdict switch
    {
        LeakVerdict.Conforms => "conforms",
        LeakVerdict.DoesNotConform => "does not conform",
        _ => "not decidable",
    };

    public static string Source(LeakSource source) => source switch
    {
        LeakSource.Volume => "volume",
        LeakSource.StartGauge => "start gauge pressure",
        LeakSource.EndGauge => "end gauge pressure",
        LeakSource.StartTemperature => "start temperature",
        LeakSource.EndTemperature => "end temperature",
        LeakSource.Time => "time",
        LeakSource.Ambient => "ambient pressure",
        LeakSource.Creep => "creep of the volume",
        _ => "scatter of the log",
    };

    public static string Rule(MethodRule rule) => rule switch
    {
        MethodRule.TotalChange => "pressure changes by less than a tenth of the absolute start",
        MethodRule.GaugeResolution => "gauge reads ten times finer than the limit",
        MethodRule.GaugeAccuracy => "gauge is accurate to a quarter of the limit (2 u)",
        MethodRule.ThermometerResolution => "thermometer reads ten times finer than the limit",
        MethodRule.ThermometerAccuracy => "thermometer is accurate to a quarter of the limit (2 u)",
        _ => "the part does not change its shape",
    };

    /// <summary>What was found of a rule beside what is asked; nothing where there are no numbers.</summary>
    public string Found(MethodFinding finding) => finding switch
    {
        { Rule: MethodRule.TotalChange, Value: { } value, Limit: { } limit } => $": {_share.Write(value, 2)}, asked {_share.Write(limit, 2)}",
        { Value: { } value, Limit: { } limit } => $": {Loss(value)}, asked {Loss(limit)}",
        _ => "",
    };

    public string Answer() => result.Estimate is not { } e
        ? $"{Capital(Verdict(_judged.Verdict))}."
        : $"{(_judged.Reason == LeakReason.NoLimit ? "" : Capital(Verdict(_judged.Verdict)) + ": ")}it leaks {Rate(e.Rate.Value_Pa_m3_per_s)} ± {Rate(2 * e.RateUncertainty_Pa_m3_per_s)} (2 u) at {Celsius(e.Rate.ReferenceTemperature_K)}, "
            + $"a corrected loss of {Loss(e.CorrectedLoss_Pa)} in {_time.Write(result.Time_s, 3)} at the start temperature.";

    public string Reason() => Why() + (result.IsHeld || _judged.Verdict == LeakVerdict.NotDecidable ? ""
        : " It holds only if the spring's height was held: nothing is said of a fixture, and a bellows that creeps fakes a leak.");

    /// <summary>What would decide an open test.</summary>
    public string? Remedy()
    {
        if (_judged.Reason == LeakReason.NoTemperatures) return "Read the temperature of the part beside its gauge, at start and end.";
        if (_judged.Reason == LeakReason.TooFewReadings) return Text($"Log longer than the swings of the room: {LoggedDecay.LeastIndependent} independent readings at the least, ten or more to be sure.");
        if (_judged.Reason == LeakReason.NoScatter) return "Use a gauge and a thermometer with a finer last digit, so that their scatter shows.";
        if (_judged.Reason != LeakReason.TooUncertain || _judged.Remedy is not { } r) return null;
        string[] ways =
        [
            .. r.TimeFactor is { } f ? [$"a test {f.ToString("0.0", CultureInfo.InvariantCulture)} times as long ({_time.Write(f * result.Time_s, 3)}) at the same leak"] : (string[])[],
            .. r.TemperatureUncertainty_K is { } t ? [$"temperatures each with u of {_kelvin.Write(t, 2)}"] : (string[])[],
            .. r.GaugeUncertainty_Pa is { } g ? [$"gauge readings each with u of {Loss(g, 2)}"] : (string[])[],
        ];
        return ways.Length == 0 ? "The loss lies on the limit: no single finer instrument and no test a thousand times as long decides it." : $"Any one of these would, if the leak is what it seems: {string.Join("; ", ways)}.";
    }

    public IEnumerable<Note> Notes()
    {
        yield return new("raw drop", $"The readings differ by {Loss(result.UncompensatedDrop_Pa)}. That is not a leak: cooling is in it"
            + (result.Test is { } t ? $", and here one kelvin looks like {Loss(t.PascalsPerKelvin)}." : "."));
        if (result.Estimate is { } e && e.CorrectedLoss_Pa < 0 && _judged.Reason != LeakReason.Gained)
            yield return new("rise", "Corrected for temperature it gained: within the uncertainty that is a leak too small to see.");
        if (result.Log is { } log)
        {
            yield return new("log", Text($"{log.Count} readings over {_time.Write(log.Duration_s, 3)}, lag-1 autocorrelation {log.Autocorrelation:0.00}: worth {log.Independent:0} independent ones. The scatter does not show what all readings share: a gauge's gain, or weather that a gauge takes for a leak."));
            yield return new("two points", $"First and last reading alone: {Rate(result.Test!.Rate.Value_Pa_m3_per_s)}.");
            if (log.Drifts) yield return new("settling", Text($"The second half alone falls at another slope ({log.Drift:0.0} standard errors): part or air is still settling. Leave out more with --settle, for example \"15 min\"."));
        }
        else if (result.Input.EndAmbient is null)
        {
            yield return new("ambient", "One ambient pressure is taken for both readings; weather moves it by about 1 kPa a day (common practice, no source), all of which a gauge shows as loss or gain. Give --end-ambient in a long test.");
        }

        if (result.Input.Creep == 0)
            yield return new("creep", $"No creep of the volume is counted; 0.1 % between the readings looks like {Loss(result.StartAbsolutePressure_Pa * 1e-3)}. Give --creep.");
        yield return new("fixture", result.IsHeld ? $"The height was held by {result.Input.Fixture}."
            : "The method is not for parts that change their shape: hold the spring's height in a rigid fixture, let it settle, and say so with --fixture.");
    }

    public string Energy()
    {
        StoredEnergy s = result.Energy;
        return Text($"{s.Isentropic_J:0} J isentropic, {s.Brode_J:0} J by Brode, {s.NetIsothermal_J:0} J isothermal less work on the surroundings; as TNT {s.Tnt_kg * 1e3:0.000} g (isentropic over {StoredEnergy.TntDivisor_J_per_kg / 1e6:0.000} MJ/kg). Full of water it would store {s.Water_J:0.00} J.");
    }

    public static string Rate(double rate_Pa_m3_per_s) => _rate.Write(rate_Pa_m3_per_s, 3).Replace('-', '−');

    private string Loss(double difference_Pa, int digits = 3) => units.UnitOf(Dimension.GaugePressure).Write(difference_Pa, digits).Replace('-', '−');

    public static string InOtherUnits(LeakRate rate) => Text(
        $"{rate.Value_Pa_m3_per_s:0.000e+0} Pa·m³/s = {rate.Moles_per_s:0.000e+0} mol/s = {Digits(rate.Air_kg_per_s * 3.6e6)} g/h of air = {Digits(rate.StandardCubicCentimetres_per_min(273.15))} cm³/min at 101.325 kPa and 0 °C, {Digits(rate.StandardCubicCentimetres_per_min(293.15))} at 20 °C").Replace('-', '−');

    private string Why() => _judged.Reason switch
    {
        LeakReason.NoTemperatures => "Temperatures are missing: cooling and leaking cannot be told apart.",
        LeakReason.NoLimit => "No limit is given, so nothing is judged.",
        LeakReason.TooFewReadings => "The log is too short, or its readings follow each other too closely, to tell a leak from its scatter.",
        LeakReason.NoScatter => "The log lies on its line exactly: its last digits hide the scatter, so nothing says how well the leak is known.",
        LeakReason.Gained => $"Corrected for temperature the part gained {Loss(-result.Estimate!.CorrectedLoss_Pa)}, more than three standard uncertainties: a shut part cannot, so a reading, the temperature of its air or the held height is wrong.",
        _ => $"The corrected loss of {Loss(result.Estimate!.CorrectedLoss_Pa)} (u {Loss(result.Estimate.LossUncertainty_Pa)}) keeps the limit of {Loss(_judged.Limit_Pa!.Value)} with a probability of {Percent(_judged.ConformanceProbability!.Value)}; "
            + (_judged.Verdict switch
            {
                LeakVerdict.Conforms => "95 % is needed.",
                LeakVerdict.DoesNotConform => "5 % or less says it does not.",
                _ => "95 % or more says it conforms, 5 % or less that it does not.",
            }),
    };

    private static string Digits(double value) => value.ToString("G3", CultureInfo.InvariantCulture);

    private static string Percent(double share) => share switch
    {
        > 0.9999 => "more than 99.99 %",
        < 0.0001 => "less than 0.01 %",
        > 0.99 or < 0.01 => Text($"{share * 100:0.00} %"),
        _ => Text($"{share * 100:0.0} %"),
    };

    private static string Celsius(double temperature_K) => Text($"{temperature_K - 273.15:0.##} °C");

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
