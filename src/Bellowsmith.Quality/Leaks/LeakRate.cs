namespace Bellowsmith.Quality.Leaks;

/// <summary>
/// Gas that leaks, as p·V per time at a reference temperature which it keeps: the same gas counts 7 % more at 20 °C than at 0 °C, so
/// a figure without its temperature says nothing to 7 %. Positive out of the part.
/// </summary>
/// <param name="Value_Pa_m3_per_s">p·V/t at the reference temperature.</param>
/// <param name="ReferenceTemperature_K">Above 0.</param>
public readonly record struct LeakRate(double Value_Pa_m3_per_s, double ReferenceTemperature_K)
{
    /// <summary>Molar gas constant R, J/(mol·K), exact by definition to these digits [SI Brochure 2019].</summary>
    public const double MolarGasConstant_J_per_mol_K = 8.314462618;

    /// <summary>Of dry air, J/(kg·K); common practice, rounded.</summary>
    public const double AirGasConstant_J_per_kg_K = 287.05;

    private const double Atmosphere_Pa = 101_325, Litre_m3 = 1e-3, CubicCentimetre_m3 = 1e-6;
    private const double Millibar_Pa = 100, Torr_Pa = Atmosphere_Pa / 760;
    private const double StandardCubicCentimetre_Pa_m3_per_s = Atmosphere_Pa * CubicCentimetre_m3 / 60;

    public double Value_mbar_L_per_s => Value_Pa_m3_per_s / (Millibar_Pa * Litre_m3);

    public double Value_Torr_L_per_s => Value_Pa_m3_per_s / (Torr_Pa * Litre_m3);

    public double Value_atm_cm3_per_s => Value_Pa_m3_per_s / (Atmosphere_Pa * CubicCentimetre_m3);

    /// <summary><c>q/(R·Tref)</c>; no longer depends on the temperature chosen.</summary>
    public double Moles_per_s => Value_Pa_m3_per_s / (MolarGasConstant_J_per_mol_K * ReferenceTemperature_K);

    /// <summary>If the gas is dry air.</summary>
    public double Air_kg_per_s => Value_Pa_m3_per_s / (AirGasConstant_J_per_kg_K * ReferenceTemperature_K);

    public static LeakRate FromMillibarLitres(double value_mbar_L_per_s, double referenceTemperature_K) =>
        new(value_mbar_L_per_s * (Millibar_Pa * Litre_m3), referenceTemperature_K);

    public static LeakRate FromTorrLitres(double value_Torr_L_per_s, double referenceTemperature_K) =>
        new(value_Torr_L_per_s * (Torr_Pa * Litre_m3), referenceTemperature_K);

    public static LeakRate FromAtmosphereCubicCentimetres(double value_atm_cm3_per_s, double referenceTemperature_K) =>
        new(value_atm_cm3_per_s * (Atmosphere_Pa * CubicCentimetre_m3), referenceTemperature_K);

    /// <summary>From cubic centimetres a minute at 101 325 Pa and the standard temperature, which becomes the reference.</summary>
    public static LeakRate FromStandardCubicCentimetres(double value_cm3_per_min, double standardTemperature_K) =>
        new(value_cm3_per_min * StandardCubicCentimetre_Pa_m3_per_s, standardTemperature_K);

    /// <summary>The same gas at another reference temperature: <c>q·T/Tref</c>.</summary>
    public LeakRate At(double referenceTemperature_K) =>
        new(Value_Pa_m3_per_s * referenceTemperature_K / ReferenceTemperature_K, referenceTemperature_K);

    /// <summary>Cubic centimetres a minute at 101 325 Pa and a standard temperature, which must be said beside it.</summary>
    public double StandardCubicCentimetres_per_min(double standardTemperature_K) =>
        At(standardTemperature_K).Value_Pa_m3_per_s / StandardCubicCentimetre_Pa_m3_per_s;
}
