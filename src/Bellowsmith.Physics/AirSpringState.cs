namespace Bellowsmith.Physics;

/// <summary>
/// A bare air spring at one height h and gauge pressure pg, with everything a rate needs. Force pushes the plates apart:
/// F = pg·Ae(h, pg).
/// </summary>
/// <param name="EffectiveArea_m2">Ae = F/pg.</param>
/// <param name="AreaSlope_m">∂Ae/∂h at constant gauge pressure; negative where a convolute narrows as it extends.</param>
/// <param name="AreaByGaugePressure_m2_per_Pa">∂Ae/∂pg at constant height.</param>
/// <param name="Volume_m3">V, the enclosed air of the bare spring.</param>
/// <param name="VolumeSlope_m2">∂V/∂h at constant gauge pressure; equals Ae only where the wall does not stretch.</param>
/// <param name="VolumeByGaugePressure_m3_per_Pa">∂V/∂pg at constant height, 0 for a wall that does not stretch.</param>
public readonly record struct AirSpringState(
    double EffectiveArea_m2,
    double AreaSlope_m,
    double AreaByGaugePressure_m2_per_Pa,
    double Volume_m3,
    double VolumeSlope_m2,
    double VolumeByGaugePressure_m3_per_Pa);
