using System.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// How the polytropic exponent of shut-in air grows with frequency as the wall stops taking up its heat. Small
/// sinusoidal volume changes of one well-mixed mass of air at a wall of constant temperature:
/// <c>δp/p0 = −n(ω)·δV/V0</c> with <c>n(ω) = (1 + γ·jωτ)/(1 + jωτ)</c> and <c>τ = m·cv/(h·A)</c>. n runs from 1
/// (slow, isothermal) to γ = 1.4 (fast, adiabatic), the limits of [Pelz Buttenbender 2004]; the law between them is
/// exact for this model (derived). Real walls warm up and real air stratifies, so measured transitions are broader.
/// </summary>
public sealed class WallRelaxation
{
    private WallRelaxation(double timeConstant_s) => TimeConstant_s = timeConstant_s;

    /// <summary>
    /// An estimate for a strut's air spring where nothing was measured: 0.8 L at 5 bar absolute and 20 °C, 0.05 m² of
    /// wall, 8 W/(m²·K) natural convection. Common practice, no source; τ is right within a factor of about three.
    /// </summary>
    public static WallRelaxation StrutEstimate { get; } =
        Of(airMass_kg: 0.8e-3 * DryAir.Density_kg_per_m3(5e5, 293.15), filmCoefficient_W_per_m2_K: 8, wallArea_m2: 0.05);

    /// <summary>τ, the time in which the air's temperature error falls to 1/e, s.</summary>
    public double TimeConstant_s { get; }

    /// <summary>Where the in-phase exponent is halfway between 1 and γ: ωτ = 1. In Hz.</summary>
    public double HalfwayFrequency_Hz => 1 / (2 * Math.PI * TimeConstant_s);

    /// <summary>From air mass in kg, film coefficient in W/(m²·K) and wall area in m².</summary>
    /// <exception cref="ArgumentOutOfRangeException">A value is zero or negative.</exception>
    public static WallRelaxation Of(double airMass_kg, double filmCoefficient_W_per_m2_K, double wallArea_m2)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(airMass_kg);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(filmCoefficient_W_per_m2_K);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wallArea_m2);
        return new(airMass_kg * DryAir.SpecificHeatAtConstantVolume_J_per_kg_K
            / (filmCoefficient_W_per_m2_K * wallArea_m2));
    }

    /// <summary>
    /// n(ω): its magnitude is the amplitude ratio, its phase (0 to 9.6°) the lead of pressure over compression.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The angular frequency is negative.</exception>
    public Complex DynamicExponentAt(double angularFrequency_rad_per_s)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(angularFrequency_rad_per_s);
        var turn = angularFrequency_rad_per_s * TimeConstant_s;
        return new Complex(1, DryAir.HeatRatio * turn) / new Complex(1, turn);
    }

    /// <summary>Im n/Re n, the damping the wall adds to the gas term; at most (γ − 1)/(2√γ), at ωτ = 1/√γ.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The angular frequency is negative.</exception>
    public double LossTangentAt(double angularFrequency_rad_per_s)
    {
        var exponent = DynamicExponentAt(angularFrequency_rad_per_s);
        return exponent.Imaginary / exponent.Real;
    }

    /// <summary>Re n at a frequency in Hz: the exponent to put into a spring rate, 1 to 1.4.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frequency is negative.</exception>
    public double ExponentAt(double frequency_Hz) => DynamicExponentAt(2 * Math.PI * frequency_Hz).Real;
}
