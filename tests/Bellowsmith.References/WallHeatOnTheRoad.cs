using System.Numerics;
using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;

namespace Bellowsmith.References;

/// <summary>
/// Wall heat as the corner over a road steps it. Air in a cylinder between a body too heavy to move and a wheel as heavy as it
/// needs to be is squeezed by a thousandth of its volume; gauge pressure is what the simulated force says. The relaxation table is
/// DERIVED, exact for a linear wall, γ = 1.4: n = (1 + γ·jωτ)/(1 + jωτ).
/// </summary>
public sealed class WallHeatOnTheRoad
{
    private const double TimeConstant_s = 0.5, Body_kg = 1e12, Wheel_kg = 1e6, Tyre_N_per_m = 1e11;
    private const double Area_m2 = 6.5e-3, Volume_m3 = 1.1e-3, Absolute_Pa = 6e5, Ambient_Pa = 101_325, Swing = 1e-3;

    [Theory] // ωτ, |n|, phase in degrees; ±1 %
    [InlineData(0.1, 1.00474, 2.25902)]
    [InlineData(0.5, 1.09179, 8.42697)]
    [InlineData(1, 1.21655, 9.46232)]
    [InlineData(2, 1.32966, 6.91123)]
    [InlineData(10, 1.39660, 1.62498)]
    public void Trace_SinusoidalVolume_GivesTheTable(double turn, double magnitude, double phase_deg)
    {
        Complex exponent = Driven(turn / TimeConstant_s);

        Assert.Equal(magnitude, exponent.Magnitude, 0.01 * magnitude);
        Assert.Equal(phase_deg, exponent.Phase * 180 / Math.PI, 0.01 * phase_deg);
    }

    [Fact] // (γ − 1)/(2√γ) at ωτ = 1/√γ
    public void Trace_AtTheGreatestLoss_GivesTheClosedForm() =>
        Assert.Equal(0.169031, Loss(0.845154), 0.01 * 0.169031);

    [Theory]
    [InlineData(0.7)]
    [InlineData(1.0)]
    public void Trace_AsideOfTheGreatestLoss_LosesLess(double turn) => Assert.True(Loss(turn) < Loss(0.845154));

    private static double Loss(double turn) => Math.Tan(Driven(turn / TimeConstant_s).Phase);

    // −(δp/p0)/(δV/V0) at the driving frequency, both from the kept steps: the wheel goes where its tyre takes it.
    private static Complex Driven(double omega_rad_per_s)
    {
        const double step_s = RideRun.Step_s;
        int cycle = (int)Math.Round(2 * Math.PI / omega_rad_per_s / step_s), settle = 1 + (int)(20 * TimeConstant_s / (cycle * step_s)), kept = 4;
        double turn = 2 * Math.PI / cycle, amplitude_m = Swing * Volume_m3 / Area_m2;
        double[] road = [.. Enumerable.Range(1, (settle + kept) * cycle).Select(k => Math.Min(1, k / (double)(settle * cycle)) * amplitude_m * Math.Sin(turn * k))];

        RideTrace trace = RideRun.Trace(Cylinder(), road, step_s);

        (Complex absolute, Complex volume) = (0, 0);
        for (int k = settle * cycle; k < road.Length; k++)
        {
            Complex back = Complex.Exp(new Complex(0, -turn * k));
            absolute += trace.Acceleration_m_per_s2[k] * Body_kg / Area_m2 / Absolute_Pa * back;
            volume -= trace.Travel_m[k] * Area_m2 / Volume_m3 * back;
        }

        return -absolute / volume;
    }

    private static Corner Cylinder()
    {
        TravelRange range = new(-0.02, 0.02);
        double Shrunk(double w) => Volume_m3 / (Volume_m3 - Area_m2 * w);
        TravelPolynomial Fit(Func<double, double> law) => TravelPolynomial.Of(law, range, 1e-9);
        return new Corner
        {
            SprungMass_kg = Body_kg,
            UnsprungMass_kg = Wheel_kg,
            TyreRate_N_per_m = Tyre_N_per_m,
            Range = range,
            Force = Fit(w => Area_m2 * (Absolute_Pa * Math.Pow(Shrunk(w), 1.4) - Ambient_Pa)),
            ForceByEntropy = Fit(w => Area_m2 * Absolute_Pa * Math.Pow(Shrunk(w), 1.4)),
            ForceByEntropySquare = Fit(w => Area_m2 * Absolute_Pa * Math.Pow(Shrunk(w), 1.4) / 2),
            Cooling = Fit(w => Math.Pow(Shrunk(w), -0.4) - 1),
            CoolingByEntropy = Fit(w => -Math.Pow(Shrunk(w), -0.4)),
            TimeConstant_s = TimeConstant_s,
            DamperRatio = Fit(_ => 1),
            DamperForce = MonotoneCurve.Through([-1, 1], [0, 0]),
        };
    }
}
