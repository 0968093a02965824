namespace Bellowsmith.Quality.Leaks;

/// <summary>
/// Pressure decay between two readings of a shut part of constant volume, ideal gas [ASTM E2930 2013]:
/// <c>q = V·Tref·(p1/T1 − p2/T2)/t</c> in Pa·m³/s, absolute pressures and kelvin. A negative result is a gain.
/// </summary>
/// <remarks>
/// The absolute pressures are gauge readings plus one ambient pressure, which is common to both and so enters them together.
/// The part's volume may creep between the readings: that fakes a leak of p1·ΔV/t.
/// </remarks>
public sealed record DecayTest
{
    /// <summary>20 °C, unless the test says otherwise.</summary>
    public const double UsualReferenceTemperature_K = 293.15;

    public required Measured Volume_m3 { get; init; }
    public required Measured StartAbsolutePressure_Pa { get; init; }
    public required Measured StartTemperature_K { get; init; }
    public required Measured EndAbsolutePressure_Pa { get; init; }
    public required Measured EndTemperature_K { get; init; }
    public required Measured Time_s { get; init; }
    public double ReferenceTemperature_K { get; init; } = UsualReferenceTemperature_K;

    /// <summary>Standard uncertainty of the ambient pressure common to both readings.</summary>
    public double AmbientUncertainty_Pa { get; init; }

    /// <summary>Standard uncertainty of the change of volume between the readings, as a share of the volume.</summary>
    public double CreepUncertainty { get; init; }

    private double StartDensity => StartAbsolutePressure_Pa.Value / StartTemperature_K.Value;

    private double EndDensity => EndAbsolutePressure_Pa.Value / EndTemperature_K.Value;

    /// <summary>Leak rate per pascal kelvin⁻¹ of p/T lost.</summary>
    private double RatePerDensity => Volume_m3.Value * ReferenceTemperature_K / Time_s.Value;

    public LeakRate Rate => new(RatePerDensity * (StartDensity - EndDensity), ReferenceTemperature_K);

    /// <summary><c>V·(p1 − p2)/t</c>: what the gauge alone would say. Temperature is in it: never a verdict.</summary>
    public double Uncompensated_Pa_m3_per_s => Uncompensated(Volume_m3.Value, StartAbsolutePressure_Pa.Value, EndAbsolutePressure_Pa.Value, Time_s.Value);

    /// <summary>What a kelvin between the readings looks like, Pa/K: p1/T1.</summary>
    public double PascalsPerKelvin => StartDensity;

    /// <summary><c>V·(p1 − p2)/t</c>.</summary>
    public static double Uncompensated(double volume_m3, double startAbsolutePressure_Pa, double endAbsolutePressure_Pa, double time_s) =>
        volume_m3 * (startAbsolutePressure_Pa - endAbsolutePressure_Pa) / time_s;

    /// <summary>The leak that a growth of the volume fakes, <c>p·ΔV/t</c>, Pa·m³/s; true within Tref/T and the share lost.</summary>
    public static double FakedByCreep_Pa_m3_per_s(double absolutePressure_Pa, double volumeChange_m3, double time_s) =>
        absolutePressure_Pa * volumeChange_m3 / time_s;

    /// <summary>Leak and budget: every sensitivity is the derivative of q, or of the loss p1 − p2·T1/T2.</summary>
    /// <exception cref="ArgumentException">A value is not above 0, or an uncertainty below 0.</exception>
    public LeakEstimate Estimate()
    {
        Measured[] inputs = [Volume_m3, StartAbsolutePressure_Pa, StartTemperature_K, EndAbsolutePressure_Pa, EndTemperature_K, Time_s];
        if (inputs.Any(m => !(m.Value > 0 && m.StandardUncertainty >= 0))) throw new ArgumentException("Values are above 0, uncertainties not below.");
        double t1 = StartTemperature_K.Value, t2 = EndTemperature_K.Value, q = Rate.Value_Pa_m3_per_s;
        double loss = StartAbsolutePressure_Pa.Value - EndDensity * t1;
        return new(Rate, loss, Time_s.Value,
        [
            Of(LeakSource.Volume, Volume_m3, q / Volume_m3.Value, 0),
            Of(LeakSource.StartGauge, StartAbsolutePressure_Pa, RatePerDensity / t1, 1),
            Of(LeakSource.EndGauge, EndAbsolutePressure_Pa, RatePerDensity / t2, t1 / t2),
            Of(LeakSource.StartTemperature, StartTemperature_K, RatePerDensity * StartDensity / t1, EndDensity),
            Of(LeakSource.EndTemperature, EndTemperature_K, RatePerDensity * EndDensity / t2, EndDensity * t1 / t2),
            Of(LeakSource.Time, Time_s, q / Time_s.Value, loss / Time_s.Value),
            Of(LeakSource.Ambient, new(0, AmbientUncertainty_Pa), RatePerDensity * (1 / t1 - 1 / t2), 1 - t1 / t2),
            new(LeakSource.Creep,
                FakedByCreep_Pa_m3_per_s(StartAbsolutePressure_Pa.Value, CreepUncertainty * Volume_m3.Value, Time_s.Value),
                CreepUncertainty * StartAbsolutePressure_Pa.Value),
        ]);
    }

    private static LeakContribution Of(LeakSource source, Measured input, double rateSensitivity, double lossSensitivity) =>
        new(source, Math.Abs(rateSensitivity) * input.StandardUncertainty, Math.Abs(lossSensitivity) * input.StandardUncertainty);
}
