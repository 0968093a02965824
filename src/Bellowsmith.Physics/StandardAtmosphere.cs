namespace Bellowsmith.Physics;

/// <summary>
/// Ambient absolute pressure against altitude: the lowest layer of the standard atmosphere, temperature falling by
/// 6.5 K per km from 288.15 K [US Standard Atmosphere 1976, eq. 33a]. Weather moves the real value by about ±3 %
/// (common practice, no source).
/// </summary>
public static class StandardAtmosphere
{
    public const double SeaLevel_Pa = 101_325;
    public const double SeaLevelTemperature_K = 288.15;

    /// <summary>Lowest and highest altitude answered; the layer itself ends at 11 km.</summary>
    public const double LeastAltitude_m = -500;
    public const double GreatestAltitude_m = 11_000;

    private const double LapseRate_K_per_m = 0.0065;
    private const double MolarMass_kg_per_kmol = 28.9644;
    private const double GasConstant_J_per_kmol_K = 8314.32;

    private const double Exponent =
        StandardGravity.Value_m_per_s2 * MolarMass_kg_per_kmol / (GasConstant_J_per_kmol_K * LapseRate_K_per_m);

    /// <summary>
    /// <c>p = p0·(1 − L·H/T0)^(g0·M/(R·L))</c> in Pa, at a geopotential altitude in m above sea level.
    /// Geometric altitude differs by less than 20 m within the range.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The altitude lies outside −500 to 11 000 m.</exception>
    public static double AbsolutePressure_Pa(double altitude_m) =>
        altitude_m is >= LeastAltitude_m and <= GreatestAltitude_m
            ? SeaLevel_Pa * Math.Pow(1 - LapseRate_K_per_m * altitude_m / SeaLevelTemperature_K, Exponent)
            : throw new ArgumentOutOfRangeException(
                nameof(altitude_m), altitude_m, "The altitude must lie between -500 and 11 000 m.");
}
