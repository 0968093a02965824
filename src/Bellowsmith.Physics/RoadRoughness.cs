namespace Bellowsmith.Physics;

/// <summary>
/// A random road whose height has the one-sided density <c>Gd(n) = Gd(n0)·(n/n0)⁻²</c> over spatial frequency n, waviness 2
/// [ISO 8608 2016], from 0.01 to 10 cycles/m. Public tables mix two scales: geometric mean 16e-6 m³ of class A belongs to n0 =
/// 0.1 cycle/m, 1e-6 m³ to Ω0 = 1 rad/m.
/// </summary>
/// <param name="Reference_m3">Gd(n0) at n0 = 0.1 cycle/m, m³.</param>
public readonly record struct RoadRoughness(double Reference_m3)
{
    public const double ReferenceFrequency_cycles_per_m = 0.1;
    public const double LowestFrequency_cycles_per_m = 0.01;
    public const double HighestFrequency_cycles_per_m = 10;

    private const double ClassA_m3 = 16e-6;

    /// <summary>The geometric mean of a class: 16e-6 m³ for A, four times as much for each next.</summary>
    public static RoadRoughness Of(RoadClass roadClass) => new(Math.ScaleB(ClassA_m3, 2 * (int)roadClass));

    /// <summary>The class whose bounds, half and twice its geometric mean (from memory), hold it; A and H are open outwards.</summary>
    public RoadClass Class => (RoadClass)Math.Clamp(Math.Floor((Math.Log2(Reference_m3 / ClassA_m3) + 1) / 2), (int)RoadClass.A, (int)RoadClass.H);

    /// <summary>Density of slope (rise per run) over n, m: (2π·n0)²·Gd(n0), the same at every n.</summary>
    public double Slope_m => 4 * Math.PI * Math.PI * ReferenceFrequency_cycles_per_m * ReferenceFrequency_cycles_per_m * Reference_m3;

    /// <summary>Gd(n), m³ = m² per cycle/m.</summary>
    public double AtSpatialFrequency_m3(double cycles_per_m) =>
        Reference_m3 * ReferenceFrequency_cycles_per_m * ReferenceFrequency_cycles_per_m / (cycles_per_m * cycles_per_m);

    /// <summary>Gd(Ω) with Ω = 2πn, m³ = m² per rad/m: Gd(n)/2π.</summary>
    public double AtAngularFrequency_m3(double rad_per_m) => AtSpatialFrequency_m3(rad_per_m / (2 * Math.PI)) / (2 * Math.PI);

    /// <summary>One-sided density of vertical road velocity in time at a speed, (m/s)²/Hz: 4π²·n0²·Gd(n0)·v at every frequency.</summary>
    public double Velocity_m2_per_s(double speed_m_per_s) => Slope_m * speed_m_per_s;
}
