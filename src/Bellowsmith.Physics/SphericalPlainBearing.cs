namespace Bellowsmith.Physics;

/// <summary>
/// A spherical plain bearing, as in a camber plate or a strut's eye: how hard it is pressed, how fast it slides, how long it lasts
/// [Spherical Plain Bearings 1993, p. 31].
/// </summary>
/// <param name="DynamicRating_N">C.</param>
/// <param name="LoadFactor_Pa">K, the specific load at a load of C: 100 N/mm² of steel on steel.</param>
/// <param name="MeanDiameter_m">dk of the sliding sphere.</param>
/// <param name="Surface">What slides on what.</param>
/// <param name="TiltLimit_rad">How far the inner ring tilts to either side before it meets the housing or the shaft's shoulder.</param>
public sealed record SphericalPlainBearing(
    double DynamicRating_N, double LoadFactor_Pa, double MeanDiameter_m, SlidingSurface Surface, double TiltLimit_rad)
{
    private const double Hour_s = 3600, NewtonPerSquareMillimetre_Pa = 1e6;

    /// <summary>p = K·P/C.</summary>
    public double SpecificLoad_Pa(double load_N) => LoadFactor_Pa * load_N / DynamicRating_N;

    /// <summary>Mean over a swing of ± an amplitude: four amplitudes at half dk, v = 2·dk·β·f (the catalogue's 5.82e-7 in mm, degrees, 1/min).</summary>
    public double SlidingVelocity_m_per_s(double amplitude_rad, double frequency_Hz) => 2 * MeanDiameter_m * amplitude_rad * frequency_Hz;

    /// <summary>Seconds of swinging; null where the surface does not bear the load.</summary>
    /// <param name="load_N">P.</param>
    /// <param name="amplitude_rad">β, to either side.</param>
    /// <param name="frequency_Hz">f, swings to and fro a second.</param>
    /// <param name="factors">b1·b2·…: how the load turns, heat, sliding and angle, greasing, from the maker's diagrams.</param>
    public double? Life_s(double load_N, double amplitude_rad, double frequency_Hz, double factors = 1) =>
        Hour_s * factors * Surface.Hours(SpecificLoad_Pa(load_N) / NewtonPerSquareMillimetre_Pa, SlidingVelocity_m_per_s(amplitude_rad, frequency_Hz));

    /// <summary>What is left of the tilt, rad; below 0 the ring meets its stop and the bearing or the rod bends.</summary>
    public double TiltLeft_rad(double tilt_rad) => TiltLimit_rad - Math.Abs(tilt_rad);

    /// <summary>Life under loads that take turns, each with its share of the time: 1/Gh = Σ share/Gh.</summary>
    public static double MixedLife_s(params ReadOnlySpan<(double Share, double Life_s)> parts)
    {
        (double all, double used) = (0, 0);
        foreach ((double share, double life) in parts) (all, used) = (all + share, used + share / life);
        return all / used;
    }
}
