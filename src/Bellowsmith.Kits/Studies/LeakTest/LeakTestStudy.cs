using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.Kits.Studies.LeakTest;

/// <summary>Does it leak more than it may? From written readings to a verdict.</summary>
public static class LeakTestStudy
{
    public static LeakTestResult Answer(LeakTestInput input) => input.Log is null ? OfTwoReadings(input) : OfALog(input);

    private static LeakTestResult OfTwoReadings(LeakTestInput input)
    {
        double ambientStep = HalfDigit(input.Ambient), endAmbient_Pa = input.EndAmbient?.Si ?? input.Ambient_Pa;
        bool twice = input.EndAmbient is not null;
        Measured start = Gauge(input, input.StartGauge!.Value, input.Ambient_Pa, twice ? ambientStep : 0);
        Measured end = Gauge(input, input.EndGauge!.Value, endAmbient_Pa, HalfDigit(input.EndAmbient));
        DecayTest? test = input is { StartTemperature: { } t1, EndTemperature: { } t2 } ? new()
        {
            Volume_m3 = Volume(input),
            StartAbsolutePressure_Pa = start,
            StartTemperature_K = Reading(t1, input.TemperatureUncertainty),
            EndAbsolutePressure_Pa = end,
            EndTemperature_K = Reading(t2, input.TemperatureUncertainty),
            Time_s = Reading(input.Time!.Value, input.TimeUncertainty),
            ReferenceTemperature_K = ReferenceTemperature_K(input),
            AmbientUncertainty_Pa = twice ? 0 : Measured.Rectangular(0, ambientStep).StandardUncertainty,
            CreepUncertainty = input.Creep,
        } : null;
        return Result(input, test, test?.Estimate(), null, start.Value, end.Value, input.Time!.Value.Si, LeakReason.NoTemperatures);
    }

    private static LeakTestResult OfALog(LeakTestInput input)
    {
        (double[] time_s, double[] absolute_Pa, double[]? temperature_K) = input.Log!.At(input.Ambient_Pa);
        int first = 0;
        while (first < time_s.Length - 1 && time_s[first] - time_s[0] < (input.Settle?.Si ?? 0)) first++;
        double duration_s = time_s[^1] - time_s[first], limited_s = input.Time?.Si ?? duration_s;
        LoggedDecay? log = temperature_K is null ? null : LoggedDecay.Fit(time_s, absolute_Pa, temperature_K, input.Settle?.Si ?? 0);
        LeakEstimate? estimate = log is { IsEnough: true, HasScatter: true }
            ? log.Estimate(Volume(input), limited_s, ReferenceTemperature_K(input), input.Creep) : null;
        DecayTest? test = temperature_K is null || !(duration_s > 0) ? null : new()
        {
            Volume_m3 = Volume(input),
            StartAbsolutePressure_Pa = new(absolute_Pa[first], 0),
            StartTemperature_K = new(temperature_K[first], 0),
            EndAbsolutePressure_Pa = new(absolute_Pa[^1], 0),
            EndTemperature_K = new(temperature_K[^1], 0),
            Time_s = new(duration_s, 0),
            ReferenceTemperature_K = ReferenceTemperature_K(input),
        };
        LeakReason lack = temperature_K is null ? LeakReason.NoTemperatures
            : log is { IsEnough: true, HasScatter: false } ? LeakReason.NoScatter : LeakReason.TooFewReadings;
        return Result(input, test, estimate, log, absolute_Pa[first], absolute_Pa[^1], limited_s, lack);
    }

    private static LeakTestResult Result(
        LeakTestInput input, DecayTest? test, LeakEstimate? estimate, LoggedDecay? log, double start_Pa, double end_Pa, double time_s, LeakReason lack)
    {
        double? limit_Pa = input.Limit?.Si;
        return new()
        {
            Input = input,
            Judgement = estimate is null ? LeakJudgement.Undecided(lack, limit_Pa) : LeakJudgement.Of(estimate, limit_Pa, test!.PascalsPerKelvin),
            Estimate = estimate,
            Test = test,
            Log = log,
            StartAbsolutePressure_Pa = start_Pa,
            EndAbsolutePressure_Pa = end_Pa,
            Time_s = time_s,
            Findings = test is null || input.Log is not null ? [] :
                [.. MethodCheck.Of(test, limit_Pa, Coarser(input.StartGauge, input.EndGauge), Coarser(input.StartTemperature, input.EndTemperature), !string.IsNullOrWhiteSpace(input.Fixture))],
            Energy = new(start_Pa, input.Ambient_Pa, input.Volume.Si),
        };
    }

    private static Measured Volume(LeakTestInput input) => Reading(input.Volume, input.VolumeUncertainty);

    private static double ReferenceTemperature_K(LeakTestInput input) => input.ReferenceTemperature?.Si ?? DecayTest.UsualReferenceTemperature_K;

    private static Measured Gauge(LeakTestInput input, Quantity gauge, double ambient_Pa, double ambientHalfWidth_Pa)
    {
        Measured reading = Reading(gauge, input.GaugeUncertainty);
        double ambient = Measured.Rectangular(0, ambientHalfWidth_Pa).StandardUncertainty;
        return new(reading.Value + ambient_Pa, Math.Sqrt(reading.StandardUncertainty * reading.StandardUncertainty + ambient * ambient));
    }

    // An uncertainty is a difference: 0.1 degC is 0.1 K.
    private static Measured Reading(Quantity quantity, Quantity? uncertainty) => uncertainty is { } u
        ? new(quantity.Si, u.Si - u.Unit.Offset) : Measured.Rectangular(quantity.Si, HalfDigit(quantity));

    private static double HalfDigit(Quantity? quantity) => quantity is { } q ? LastDigit.Of(q) / 2 : 0;

    private static double Coarser(Quantity? a, Quantity? b) => Math.Max(LastDigit.Of(a!.Value), LastDigit.Of(b!.Value));
}
