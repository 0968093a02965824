namespace Bellowsmith.Physics;

/// <summary>
/// A constant mass of air behind a wall that does not stretch under gauge pressure: <c>F = pg·A(h)</c> and
/// <c>pabs·V(h)^n = const</c>, hence the rate <c>k = −dF/dh = n·pabs·A·(dV/dh)/V − pg·dA/dh</c>. Height h is extension
/// +, a rate is + stiff, SI throughout. Absolute pressure stands in the gas term only, gauge pressure in the area term
/// only. A and dV/dh are kept apart because measured springs differ in them by several per cent
/// [EMDG198 1998, pp. 22–23].
/// </summary>
public static class SealedAir
{
    /// <summary><c>n·pabs·A·(dV/dh)/V</c>, N/m: what compressing the air adds, always stiff.</summary>
    /// <param name="exponent">Polytropic exponent, 1 (slow) to 1.4 (fast).</param>
    /// <param name="absolutePressure_Pa"></param>
    /// <param name="area_m2"></param>
    /// <param name="volumeSlope_m2">dV/dh; equal to the effective area for an inextensible wall.</param>
    /// <param name="volume_m3"></param>
    /// <exception cref="ArgumentOutOfRangeException">Volume or absolute pressure is zero or negative.</exception>
    public static double GasRate_N_per_m(
        double exponent, double absolutePressure_Pa, double area_m2, double volumeSlope_m2, double volume_m3)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(absolutePressure_Pa);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volume_m3);
        return exponent * absolutePressure_Pa * area_m2 * volumeSlope_m2 / volume_m3;
    }

    /// <summary><c>−pg·dA/dh</c>, N/m: stiff where the effective area shrinks as the spring extends.</summary>
    public static double AreaRate_N_per_m(double gaugePressure_Pa, double areaSlope_m) => -gaugePressure_Pa * areaSlope_m;

    /// <summary>Absolute pressure in Pa after the volume has changed from a known state: <c>p0·(V0/V)^n</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A volume or the absolute pressure is zero or negative.</exception>
    public static double AbsolutePressure_Pa(
        double knownAbsolutePressure_Pa, double knownVolume_m3, double volume_m3, double exponent)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(knownAbsolutePressure_Pa);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(knownVolume_m3);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(volume_m3);
        return knownAbsolutePressure_Pa * Math.Pow(knownVolume_m3 / volume_m3, exponent);
    }
}
