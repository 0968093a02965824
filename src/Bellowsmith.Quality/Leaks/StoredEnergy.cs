namespace Bellowsmith.Quality.Leaks;

/// <summary>
/// What compressed gas could do if the part burst, J, by the formulas in use; they differ by a factor of two, so a figure carries the
/// name of its formula. Absolute pressures, Pa; volume m³. Ideal gas.
/// </summary>
/// <param name="AbsolutePressure_Pa">Inside, not below ambient.</param>
/// <param name="Ambient_Pa">Outside, absolute, above 0.</param>
/// <param name="Volume_m3">Of the gas.</param>
/// <param name="HeatRatio">cp/cv, 1.4 of air.</param>
public sealed record StoredEnergy(double AbsolutePressure_Pa, double Ambient_Pa, double Volume_m3, double HeatRatio = 1.4)
{
    /// <summary>
    /// Energy per kilogram of TNT that goes with the isentropic energy [ASME PCC-2 2008]. Others are in use: 4.450 MJ/kg in the same
    /// source's US units, 4.62 MJ/kg elsewhere.
    /// </summary>
    public const double TntDivisor_J_per_kg = 4_266_920;

    /// <summary>Bulk modulus of water, Pa; common practice.</summary>
    public const double WaterBulkModulus_Pa = 2.2e9;

    private double Ratio => Ambient_Pa / AbsolutePressure_Pa;

    /// <summary>Brode: <c>(p − pa)·V/(k − 1)</c>, heating the gas at constant volume [Brode 1959].</summary>
    public double Brode_J => (AbsolutePressure_Pa - Ambient_Pa) * Volume_m3 / (HeatRatio - 1);

    /// <summary>Isentropic expansion to ambient: <c>p·V/(k − 1)·[1 − (pa/p)^((k − 1)/k)]</c> [ASME PCC-2 2008].</summary>
    public double Isentropic_J => AbsolutePressure_Pa * Volume_m3 / (HeatRatio - 1) * (1 - Math.Pow(Ratio, (HeatRatio - 1) / HeatRatio));

    /// <summary>The same as printed for air, <c>2.5·p·V·[1 − (pa/p)^0.286]</c>, with its rounded exponent [ASME PCC-2 2008].</summary>
    public double IsentropicRounded_J => 2.5 * AbsolutePressure_Pa * Volume_m3 * (1 - Math.Pow(Ratio, 0.286));

    /// <summary>Isothermal expansion: <c>p·V·ln(p/pa)</c>.</summary>
    public double Isothermal_J => -AbsolutePressure_Pa * Volume_m3 * Math.Log(Ratio);

    /// <summary>Isothermal less the work done on the surroundings: <c>p·V·ln(p/pa) − (p − pa)·V</c>, the most there is to have.</summary>
    public double NetIsothermal_J => Isothermal_J - (AbsolutePressure_Pa - Ambient_Pa) * Volume_m3;

    /// <summary>The isentropic energy in kilograms of TNT at <see cref="TntDivisor_J_per_kg"/>.</summary>
    public double Tnt_kg => Isentropic_J / TntDivisor_J_per_kg;

    /// <summary>The same volume full of water at the same gauge pressure: <c>pg²·V/(2K)</c>, some thousandths of it.</summary>
    public double Water_J => (AbsolutePressure_Pa - Ambient_Pa) * (AbsolutePressure_Pa - Ambient_Pa) * Volume_m3 / (2 * WaterBulkModulus_Pa);
}
