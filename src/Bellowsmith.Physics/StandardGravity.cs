namespace Bellowsmith.Physics;

/// <summary>
/// The conventional acceleration of free fall in m/s², by which a scale reading in kg becomes a force in N
/// [US Standard Atmosphere 1976, table 2]. Local gravity differs from it by up to 0.3 %.
/// </summary>
public static class StandardGravity
{
    public const double Value_m_per_s2 = 9.80665;
}
