namespace Bellowsmith.Physics;

/// <summary>
/// Plates held by friction under a preloaded bolt [EN 1993-1-8 2005, 3.9], per bolt: Fp,C = 0.7·fub·As and
/// Fs,Rd = ks·n·μ·(Fp,C − 0.8·Ft)/γM3. A structural steelwork rule taken over to a strut's lower mount: preload must be controlled, surfaces
/// as the coefficient says.
/// </summary>
/// <param name="TensileStrength_Pa">fub, 800 MPa of class 8.8, 1000 of 10.9.</param>
/// <param name="StressArea_m2">As, as <see cref="ThreadEngagement.TensileStressArea_m2"/>.</param>
/// <param name="Friction">μ of the faying surfaces, 0.2 untreated to 0.5 blasted.</param>
/// <param name="FrictionPlanes">n.</param>
/// <param name="HoleFactor">ks: 1 in normal holes, less in slotted ones, such as for camber.</param>
public sealed record ClampedJoint(double TensileStrength_Pa, double StressArea_m2, double Friction, int FrictionPlanes = 1, double HoleFactor = 1)
{
    /// <summary>γM3 against failure, and where it must not slip in service.</summary>
    public const double Ultimate = 1.25, Serviceability = 1.1;

    public double Preload_N => 0.7 * TensileStrength_Pa * StressArea_m2;

    /// <summary>What one bolt holds, N, while a force along it takes some of its clamping away; never below 0.</summary>
    public double SlipResistance_N(double partialFactor = Ultimate, double tension_N = 0) =>
        HoleFactor * FrictionPlanes * Friction * Math.Max(0, Preload_N - 0.8 * tension_N) / partialFactor;
}
