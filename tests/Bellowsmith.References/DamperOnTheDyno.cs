using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A linear damper on a dyno and in free vibration. Amplitudes READ in [Thorby 2008, table 1.2]; peak velocities of four
/// strokes at 100 strokes a minute are the 0.26 and 0.52 m/s of a car maker's own diagram, READ; energy per cycle π·c·ω·X² and
/// the coincidence of peak-velocity and continuous-velocity plots DERIVED, exact; the motorcycle's logarithmic decrement READ in
/// a textbook's example 2.14. FLAG: another public copy of that example prints twice its coefficient, 1109 N·s/m.
/// </summary>
public sealed class DamperOnTheDyno
{
    private const double Coefficient = 1500;

    [Theory] // f, |x| of ±1000 N on 1500 N·s/m, each rounded to 1 mm
    [InlineData(1, 0.106)]
    [InlineData(2, 0.053)]
    [InlineData(5, 0.021)]
    public void Force_AtThePublishedAmplitude_IsAThousandNewtons(double frequency_Hz, double amplitude_m)
    {
        var force = Damper.Linear(Coefficient).Force_N(0, 2 * Math.PI * frequency_Hz * amplitude_m);

        Assert.Equal(1000, force, 1000 * 0.0005 / amplitude_m);
    }

    [Theory] // stroke at 1.6667 Hz, π·stroke·frequency
    [InlineData(0.025, 0.1309)]
    [InlineData(0.050, 0.2618)]
    [InlineData(0.075, 0.3927)]
    [InlineData(0.100, 0.5236)]
    public void PeakVelocity_OfAStroke_IsTheDiagrams(double stroke_m, double velocity)
    {
        var loop = DynoLoop.Of(Sweep(stroke_m, 1 / 0.6, gas_N: 0))!;

        Assert.Equal(velocity, loop.PeakVelocity_m_per_s, 5e-5);
        Assert.Equal(stroke_m, loop.Stroke_m, 1e-6);
    }

    [Fact]
    public void EnergyPerCycle_OfALinearDamper_IsTheClosedForm() => Assert.Equal(
        123.37, Damper.Linear(Coefficient).Equivalent(0, 0.5236).EnergyPerCycle_J(1.6667, 0.05), 0.01);

    [Theory] // peak-velocity and continuous-velocity plots of a linear damper coincide, gas force taken out by the mid-stroke mean
    [InlineData(0)]
    [InlineData(-340)]
    [InlineData(600)]
    public void Plots_OfALinearDamper_CoincideWithinATenthOfAPercent(double gas_N)
    {
        var loop = DynoLoop.Of(Sweep(0.1, 1 / 0.6, gas_N))!;
        var peak = loop.PeakRebound_N - loop.MidStrokeMean_N;

        Assert.Equal(-gas_N, loop.MidStrokeMean_N, 0.5);
        Assert.Equal(Coefficient * 0.52360, peak, 0.001 * 785.4);
        foreach (var share in (double[])[-1, -0.8, -0.5, -0.2, 0.2, 0.5, 0.8, 1])
        {
            var (gaining, losing) = loop.At_N(share * loop.PeakVelocity_m_per_s);
            Assert.Equal(share * peak, gaining - loop.MidStrokeMean_N, 0.001 * peak);
            Assert.Equal(share * peak, losing - loop.MidStrokeMean_N, 0.001 * peak);
        }
    }

    /// <summary>
    /// 200 kg, damped period 2 s, a quarter of the amplitude after half a cycle: δ = ln 16. Published k 2358.2652 N/m and
    /// c 554.498 N·s/m; its own inputs give 2358.283 and 554.518, 0.004 % away. Followed in time with the damper's own force.
    /// </summary>
    [Fact]
    public void FreeVibration_OfThePublishedMotorcycle_LosesThreeQuartersInHalfACycle()
    {
        const double mass = 200, rate = 2358.2652, step = 1e-4;
        var damper = Damper.Linear(554.498);
        var (x, v) = (0.0, 1.0);
        var swings = new List<double>();
        while (swings.Count < 3)
        {
            var (before, place) = (v, x);
            var half = v + step / 2 * Pull(x, v);
            x += step * half;
            v = half + step / 2 * Pull(x, half);
            if (before * v < 0) swings.Add(Math.Max(Math.Abs(x), Math.Abs(place)));
        }

        Assert.Equal(0.25, swings[1] / swings[0], 0.0005);
        Assert.Equal(0.25, swings[2] / swings[1], 0.0005);

        double Pull(double position, double velocity) => -(rate * position + damper.Force_N(0, velocity)) / mass;
    }

    // 3.2 cycles at 500 Hz, begun anywhere; gas pushes the rod out and pulls a rebound-positive cell down.
    private static DynoSweep Sweep(double stroke_m, double frequency_Hz, double gas_N) => new(4, "1",
    [
        .. Enumerable.Range(0, (int)(3.2 / frequency_Hz * 500)).Select(i =>
        {
            var (omega, time) = (2 * Math.PI * frequency_Hz, i / 500.0);
            var (sine, cosine) = Math.SinCos(omega * time + 0.7);
            return new DynoSample(time, 0.3 + stroke_m / 2 * sine, Coefficient * omega * stroke_m / 2 * cosine - gas_N);
        }),
    ]);
}
