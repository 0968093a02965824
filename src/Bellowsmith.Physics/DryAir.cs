namespace Bellowsmith.Physics;

/// <summary>
/// Dry air as an ideal gas. It errs in density by at most 0.5 % up to 15 bar absolute at 20 °C and by 1.3 % at
/// 15 bar and −20 °C [Lemmon 2000]; see docs/accuracy.md.
/// </summary>
public static class DryAir
{
    /// <summary>R/M with the constants of [US Standard Atmosphere 1976, table 2], J/(kg·K).</summary>
    public const double GasConstant_J_per_kg_K = 8314.32 / 28.9644;

    /// <summary>cp/cv of a diatomic gas [Pelz Buttenbender 2004].</summary>
    public const double HeatRatio = 1.4;

    public const double SpecificHeatAtConstantVolume_J_per_kg_K = GasConstant_J_per_kg_K / (HeatRatio - 1);

    /// <summary><c>ρ = pabs/(R·T)</c> in kg/m³, from absolute pressure in Pa and temperature in K, both above 0.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is zero or negative.</exception>
    public static double Density_kg_per_m3(double absolutePressure_Pa, double temperature_K)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(absolutePressure_Pa);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(temperature_K);
        return absolutePressure_Pa / (GasConstant_J_per_kg_K * temperature_K);
    }
}
