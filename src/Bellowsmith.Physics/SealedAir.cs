namespace Bellowsmith.Physics;

/// <summary>The law of air shut into a spring: pabs·Vⁿ = const, n from 1 (slow, heat follows) to 1.4 (fast, none does).</summary>
public static class SealedAir
{
    /// <summary>
    /// Polytropic exponent in service at body frequency [EMDG198 1998, p. 22]; between the isothermal 1 and the adiabatic
    /// 1.4 of a diatomic gas [Pelz Buttenbender 2004].
    /// </summary>
    public const double InServiceExponent = 1.38;

    public const double AdiabaticExponent = 1.4;

    /// <summary>
    /// Rate −dF/dh at constant air mass, + stiff, N/m:
    /// ks = n·pabs·(∂V/∂h)·(∂F/∂pg) / (V + n·pabs·∂V/∂pg) − pg·∂Ae/∂h.
    /// The volume term takes the absolute, the area term the gauge pressure. For a wall that does not stretch it is
    /// n·pabs·Ae·(dV/dh)/V − pg·dAe/dh, which reproduces the published rate of [EMDG198 1998, pp. 22–23].
    /// </summary>
    public static double Rate_N_per_m(
        double exponent, double gaugePressure_Pa, double ambient_Pa, double areaSlope_m, double forceByGaugePressure_m2,
        double volume_m3, double volumeSlope_m2, double volumeByGaugePressure_m3_per_Pa)
    {
        double stiffness_Pa = exponent * (gaugePressure_Pa + ambient_Pa);
        return stiffness_Pa * volumeSlope_m2 * forceByGaugePressure_m2
            / (volume_m3 + stiffness_Pa * volumeByGaugePressure_m3_per_Pa) - gaugePressure_Pa * areaSlope_m;
    }
}
