namespace Bellowsmith.Physics;

/// <summary>
/// What slides in a spherical plain bearing. Life in hours b·K/(pⁿ·v), p in N/mm² and v in m/s, with K and n by range of p
/// [Spherical Plain Bearings 1993].
/// </summary>
public sealed record SlidingSurface
{
    private readonly (double UpTo_N_per_mm2, double K, double N)[] _ranges;

    private SlidingSurface(params (double, double, double)[] ranges) => _ranges = ranges;

    /// <summary>Greased; K counts 330 with every factor 1.</summary>
    public static SlidingSurface SteelOnSteel { get; } = new((double.PositiveInfinity, 330, 2.5));

    public static SlidingSurface SteelOnSinteredBronze { get; } = new((double.PositiveInfinity, 1400, 1.3));

    public static SlidingSurface SteelOnFabric { get; } = new((25, 770, 0.2), (90, 4000, 0.7), (300, 40000, 1.2));

    /// <summary>Its constant is in the maker's table.</summary>
    public static SlidingSurface SteelOnFibreReinforced(double constant) => new((double.PositiveInfinity, constant, 1));

    /// <summary>Hours with every factor 1; null beyond what the surface bears.</summary>
    internal double? Hours(double load_N_per_mm2, double velocity_m_per_s)
    {
        foreach ((double upTo, double k, double n) in _ranges)
            if (load_N_per_mm2 <= upTo) return k / (Math.Pow(load_N_per_mm2, n) * velocity_m_per_s);
        return null;
    }
}
