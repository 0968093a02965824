using System.Numerics;
using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// A corner of a car as two masses: the body's share on the wheel's spring and damper, the wheel on an undamped tyre.
/// <c>ms·z̈s = −k(zs − zu) − c(żs − żu)</c>, <c>mu·z̈u = k(zs − zu) + c(żs − żu) − kt(zu − zr)</c>; heights about rest, up +.
/// Linear: no stops, no lift-off, one damping coefficient for both strokes.
/// </summary>
/// <param name="SprungMass_kg">ms, the body's share, above 0.</param>
/// <param name="UnsprungMass_kg">mu, above 0.</param>
/// <param name="WheelRate_N_per_m">k at the wheel, above 0.</param>
/// <param name="WheelDamping_N_s_per_m">c at the wheel, 0 or more.</param>
/// <param name="TyreRate_N_per_m">kt, above 0.</param>
/// <exception cref="ArgumentOutOfRangeException">A value is out of its range.</exception>
public readonly record struct TwoMass(
    double SprungMass_kg, double UnsprungMass_kg, double WheelRate_N_per_m, double WheelDamping_N_s_per_m, double TyreRate_N_per_m)
{
    private const double PanelsPerOctave = 12;

    public double SprungMass_kg { get; } = Above0(SprungMass_kg);
    public double UnsprungMass_kg { get; } = Above0(UnsprungMass_kg);
    public double WheelRate_N_per_m { get; } = Above0(WheelRate_N_per_m);
    public double WheelDamping_N_s_per_m { get; } = WheelDamping_N_s_per_m == 0 ? 0 : Above0(WheelDamping_N_s_per_m);
    public double TyreRate_N_per_m { get; } = Above0(TyreRate_N_per_m);

    /// <summary>Natural frequencies with the damper taken out, Hz; the body's is the lower.</summary>
    public (double Body_Hz, double Wheel_Hz) UndampedFrequencies_Hz
    {
        get
        {
            TwoMass undamped = new(SprungMass_kg, UnsprungMass_kg, WheelRate_N_per_m, 0, TyreRate_N_per_m);
            return (undamped.Modes.Body.NaturalFrequency_Hz, undamped.Modes.Wheel.NaturalFrequency_Hz);
        }
    }

    /// <summary>
    /// The two pairs of eigenvalues, roots of <c>ms·mu·s⁴ + c(ms+mu)·s³ + (k(ms+mu) + kt·ms)·s² + c·kt·s + k·kt</c>. The body's
    /// is the slower, by the product of its roots. Two real roots are one pair, <see cref="TwoMassMode.Rings"/> false; of
    /// four, the two slow ones are the body's. As damping grows without end, body and wheel move as one mass on the tyre and
    /// the names fade.
    /// </summary>
    public (TwoMassMode Body, TwoMassMode Wheel) Modes
    {
        get
        {
            double both = SprungMass_kg + UnsprungMass_kg, lead = SprungMass_kg * UnsprungMass_kg;
            (Quadratic slow, Quadratic fast) = Quartic.Factor(
                WheelDamping_N_s_per_m * both / lead,
                (WheelRate_N_per_m * both + TyreRate_N_per_m * SprungMass_kg) / lead,
                WheelDamping_N_s_per_m * TyreRate_N_per_m / lead,
                WheelRate_N_per_m * TyreRate_N_per_m / lead);
            return (new(slow.Linear, slow.Constant), new(fast.Linear, fast.Constant));
        }
    }

    /// <summary>One exact step over a road straight between its ends.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The step is not positive.</exception>
    public TwoMassStep Step(double step_s) => new(this, Above0(step_s));

    /// <summary>The steady answer to a sinusoidal road of a frequency in Hz; zero at zero frequency.</summary>
    public TwoMassResponse At(double frequency_Hz)
    {
        double ms = SprungMass_kg, mu = UnsprungMass_kg, kt = TyreRate_N_per_m;
        Complex s = new(0, 2 * Math.PI * frequency_Hz);
        Complex strut = WheelDamping_N_s_per_m * s + WheelRate_N_per_m;
        Complex wheel = mu * s * s + kt, whole = ms * s * s * (wheel + strut) + strut * wheel;
        return new(kt * strut * s / whole, kt * ms * s / whole, kt * s * (ms * mu * s * s + (ms + mu) * strut) / whole);
    }

    /// <summary>
    /// Variances on a road whose vertical velocity is white noise without end of band: ISO 8608 with waviness 2 at a steady
    /// speed. Closed forms from the Lyapunov equation (derived; the structure is that of [Turkay Akcay 2005]):
    /// <c>E[z̈s²] = G/4·(kt·c/ms² + (ms+mu)k²/(c·ms²))</c>, <c>E[(zs−zu)²] = G/4·(ms+mu)/c</c>,
    /// <c>E[(zu−zr)²] = G/4·(c(ms+mu)²/(kt·ms²) + k²(ms+mu)³/(c·kt²·ms²) − 2k·mu(ms+mu)/(c·kt·ms) + mu/c)</c>.
    /// </summary>
    /// <param name="velocityDensity_m2_per_s">G, one-sided density of road velocity in time, (m/s)²/Hz.</param>
    /// <returns>Null without a damper, where nothing ends the motion.</returns>
    public TwoMassVariance? OnWhiteVelocity(double velocityDensity_m2_per_s)
    {
        double ms = SprungMass_kg, mu = UnsprungMass_kg, k = WheelRate_N_per_m, c = WheelDamping_N_s_per_m, kt = TyreRate_N_per_m;
        if (c == 0) return null;
        double both = ms + mu, quarter = velocityDensity_m2_per_s / 4;
        double deflection = c * both * both / (kt * ms * ms) + k * k * both * both * both / (c * kt * kt * ms * ms)
            - 2 * k * mu * both / (c * kt * ms) + mu / c;
        return new(
            quarter * (kt * c + both * k * k / c) / (ms * ms),
            quarter * both / c,
            quarter * kt * kt * deflection);
    }

    /// <summary>
    /// Variances on any road between two frequencies: the density times the squared response, integrated by 16-point
    /// Gauss–Legendre on twelve panels an octave. Within 1e-4 of the exact integral for damping ratios from 0.01 and a
    /// density without steps. A weighted acceleration comes from a density times the squared weighting.
    /// </summary>
    /// <param name="velocityDensity_m2_per_s">One-sided density of road velocity in time at a frequency in Hz, (m/s)²/Hz.</param>
    /// <param name="lowest_Hz">Lower end of the band, above 0.</param>
    /// <param name="highest_Hz">Upper end. Tyre force falls off only with 1/f², so that 80 Hz takes 2 % off its r.m.s.</param>
    /// <exception cref="ArgumentOutOfRangeException">The band is empty or does not begin above 0.</exception>
    public TwoMassVariance InBand(Func<double, double> velocityDensity_m2_per_s, double lowest_Hz, double highest_Hz)
    {
        ArgumentNullException.ThrowIfNull(velocityDensity_m2_per_s);
        ArgumentOutOfRangeException.ThrowIfLessThanOrEqual(highest_Hz, Above0(lowest_Hz));
        int panels = (int)Math.Ceiling(PanelsPerOctave * Math.Log2(highest_Hz / lowest_Hz));
        double half = Math.Log(highest_Hz / lowest_Hz) / (2 * panels), acceleration = 0, travel = 0, force = 0;
        for (int panel = 0; panel < panels; panel++)
        {
            for (int node = 0; node < GaussLegendre.Nodes.Length; node++)
            {
                double frequency_Hz = lowest_Hz * Math.Exp(half * (2 * panel + 1 + GaussLegendre.Nodes[node]));
                double share = half * frequency_Hz * GaussLegendre.Weights[node] * velocityDensity_m2_per_s(frequency_Hz);
                TwoMassResponse at = At(frequency_Hz);
                acceleration += share * Squared(at.BodyAcceleration_per_s);
                travel += share * Squared(at.Travel_s);
                force += share * Squared(at.TyreForce_N_s_per_m);
            }
        }

        return new(acceleration, travel, force);
    }

    private static double Squared(Complex value) => value.Real * value.Real + value.Imaginary * value.Imaginary;

    private static double Above0(double value)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(value);
        if (!double.IsFinite(value)) throw new ArgumentOutOfRangeException(nameof(value), value, "A finite value is needed.");
        return value;
    }
}
