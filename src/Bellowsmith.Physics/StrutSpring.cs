namespace Bellowsmith.Physics;

/// <summary>
/// An air spring as built into a strut. Rod, stop and damper head stand inside the bellows: with the area As of the seal
/// that slides in the spring's air, Fspring = pg·(Ae − As) and V = Vbare − displaced + line, where displaced grows by As per
/// unit of height as the rod comes out. Force and ∂V/∂h thus lose the same area, as virtual work demands.
/// </summary>
/// <param name="Spring">The bare spring.</param>
/// <param name="SealArea_m2">As: the rod's section for a usual damper, the outer tube's for an inverted one.</param>
/// <param name="DisplacedVolume_m3">Solid bodies inside at drive height.</param>
/// <param name="LineVolume_m3">Port and line to the closed valve.</param>
/// <param name="Ambient_Pa">Absolute pressure of the air outside.</param>
/// <param name="DriveHeight_m">Where <paramref name="DisplacedVolume_m3"/> holds; null while each height asked for is itself the candidate drive height.</param>
public readonly record struct StrutSpring(
    AirSpring Spring,
    double SealArea_m2 = 0,
    double DisplacedVolume_m3 = 0,
    double LineVolume_m3 = 0,
    double Ambient_Pa = 101_325,
    double? DriveHeight_m = null)
{
    private const int MostSteps = 50;

    /// <summary>Fspring, N, + pushes the ends apart.</summary>
    public double Force_N(double height_m, double gaugePressure_Pa) =>
        gaugePressure_Pa * (Spring.At(height_m, gaugePressure_Pa).EffectiveArea_m2 - SealArea_m2);

    /// <summary>Enclosed air V at a height and gauge pressure.</summary>
    public double Volume_m3(double height_m, double gaugePressure_Pa) =>
        Volume(Spring.At(height_m, gaugePressure_Pa), height_m);

    /// <summary>
    /// Rate with the valve shut at constant air mass, N/m; see <see cref="SealedAir.Rate_N_per_m"/>. NaN where what stands
    /// inside leaves no air.
    /// </summary>
    public double SealedRate_N_per_m(double height_m, double gaugePressure_Pa, double exponent)
    {
        AirSpringState at = Spring.At(height_m, gaugePressure_Pa);
        return !(Volume(at, height_m) > 0) ? double.NaN : SealedAir.Rate_N_per_m(
            exponent, gaugePressure_Pa, Ambient_Pa, at.AreaSlope_m, ForceByGaugePressure(at, gaugePressure_Pa),
            Volume(at, height_m), at.VolumeSlope_m2 - SealArea_m2, at.VolumeByGaugePressure_m3_per_Pa);
    }

    /// <summary>Rate with the gauge pressure held, N/m: −pg·∂Ae/∂h.</summary>
    public double RegulatedRate_N_per_m(double height_m, double gaugePressure_Pa) =>
        -gaugePressure_Pa * Spring.At(height_m, gaugePressure_Pa).AreaSlope_m;

    /// <summary>The gauge pressure at which the spring carries a force at a height; NaN where it cannot (no area left).</summary>
    public double GaugePressureFor_Pa(double force_N, double height_m)
    {
        (double a0, double a1, double a2) = Spring.AreaPowers(height_m);
        double p = Math.Max(0, force_N) / Math.Max(a0 - SealArea_m2, 1e-6);
        for (int step = 0; step < MostSteps; step++)
        {
            double area = a0 + p * (a1 + p * a2) - SealArea_m2, slope = area + p * (a1 + 2 * p * a2);
            if (!(slope > 0)) return double.NaN;
            double change = (force_N - p * area) / slope;
            p += change;
            if (Math.Abs(change) <= 1e-12 * Math.Abs(p) + 1e-9) return p;
        }

        return double.NaN;
    }

    /// <summary>
    /// The gauge pressure at a height when the air was shut in at another: pabs·Vⁿ is kept, or has grown by e^entropyGain
    /// through heat. NaN where no volume is left.
    /// </summary>
    public double SealedGaugePressure_Pa(
        double height_m, double fromHeight_m, double fromGaugePressure_Pa, double exponent, double entropyGain = 0)
    {
        double kept = entropyGain + Math.Log(fromGaugePressure_Pa + Ambient_Pa)
            + exponent * Math.Log(Volume_m3(fromHeight_m, fromGaugePressure_Pa));
        double absolute = fromGaugePressure_Pa + Ambient_Pa;
        for (int step = 0; step < MostSteps; step++)
        {
            AirSpringState at = Spring.At(height_m, absolute - Ambient_Pa);
            double volume = Volume(at, height_m);
            if (!(volume > 0)) return double.NaN;
            double miss = kept - Math.Log(absolute) - exponent * Math.Log(volume);
            double slope = 1 + exponent * absolute * at.VolumeByGaugePressure_m3_per_Pa / volume;
            double change = miss / slope;
            absolute *= Math.Exp(Math.Clamp(change, -1, 1));
            if (Math.Abs(change) < 1e-13) return absolute - Ambient_Pa;
        }

        return absolute - Ambient_Pa;
    }

    private double Volume(in AirSpringState at, double height_m) =>
        at.Volume_m3 - DisplacedVolume_m3 + LineVolume_m3 - SealArea_m2 * (height_m - (DriveHeight_m ?? height_m));

    private double ForceByGaugePressure(in AirSpringState at, double gaugePressure_Pa) =>
        at.EffectiveArea_m2 - SealArea_m2 + gaugePressure_Pa * at.AreaByGaugePressure_m2_per_Pa;
}
