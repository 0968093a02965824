namespace Bellowsmith.Physics;

/// <summary>
/// A constant mass of air shut into a spring: <c>pabs·Vⁿ = const</c>, n from 1 (slow, heat follows) to 1.4 (fast, none does).
/// Height h is extension +, a rate is + stiff, SI throughout. Absolute pressure stands in the gas term only, gauge pressure
/// in the area term only. Ae and ∂V/∂h are kept apart because measured springs differ in them by several per cent
/// [EMDG198 1998, pp. 22–23].
/// </summary>
public static class SealedAir
{
    /// <summary>
    /// Polytropic exponent in service at body frequency [EMDG198 1998, p. 22]; between the isothermal 1 and the adiabatic
    /// 1.4 of a diatomic gas [Pelz Buttenbender 2004].
    /// </summary>
    public const double InServiceExponent = 1.38;

    public const double AdiabaticExponent = 1.4;

    /// <summary>
    /// Rate −dF/dh of a spring at constant air mass, N/m:
    /// <c>ks = n·pabs·(∂V/∂h)·(∂F/∂pg)/(V + n·pabs·∂V/∂pg) − pg·∂Ae/∂h</c>, where F = pg·Ae(h, pg). For a wall that does not
    /// stretch ∂F/∂pg = Ae and ∂V/∂pg = 0.
    /// </summary>
    public static double Rate_N_per_m(
        double exponent, double gaugePressure_Pa, double ambient_Pa, double areaSlope_m, double forceByGaugePressure_m2,
        double volume_m3, double volumeSlope_m2, double volumeByGaugePressure_m3_per_Pa) =>
        GasRate_N_per_m(
            exponent, gaugePressure_Pa + ambient_Pa, forceByGaugePressure_m2, volumeSlope_m2, volume_m3,
            volumeByGaugePressure_m3_per_Pa)
        + AreaRate_N_per_m(gaugePressure_Pa, areaSlope_m);

    /// <summary>What compressing the air adds, always stiff: the first term of the rate, N/m.</summary>
    /// <param name="exponent">Polytropic exponent, 1 (slow) to 1.4 (fast).</param>
    /// <param name="absolutePressure_Pa">Above zero.</param>
    /// <param name="forceByGaugePressure_m2">∂F/∂pg; the effective area for a wall that does not stretch.</param>
    /// <param name="volumeSlope_m2">∂V/∂h.</param>
    /// <param name="volume_m3">Enclosed air, above zero.</param>
    /// <param name="volumeByGaugePressure_m3_per_Pa">∂V/∂pg, 0 for a wall that does not stretch.</param>
    public static double GasRate_N_per_m(
        double exponent, double absolutePressure_Pa, double forceByGaugePressure_m2, double volumeSlope_m2,
        double volume_m3, double volumeByGaugePressure_m3_per_Pa = 0) =>
        exponent * absolutePressure_Pa * volumeSlope_m2 * forceByGaugePressure_m2
        / (volume_m3 + exponent * absolutePressure_Pa * volumeByGaugePressure_m3_per_Pa);

    /// <summary><c>−pg·∂Ae/∂h</c>, N/m: stiff where the effective area shrinks as the spring extends.</summary>
    public static double AreaRate_N_per_m(double gaugePressure_Pa, double areaSlope_m) => -gaugePressure_Pa * areaSlope_m;

    /// <summary>Absolute pressure in Pa after the volume has changed from a known state: <c>p0·(V0/V)ⁿ</c>.</summary>
    public static double AbsolutePressure_Pa(
        double knownAbsolutePressure_Pa, double knownVolume_m3, double volume_m3, double exponent) =>
        knownAbsolutePressure_Pa * Math.Pow(knownVolume_m3 / volume_m3, exponent);
}
