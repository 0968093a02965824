using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Tests.Physics.Ride;

/// <summary>
/// First law on a driven corner: what the road puts in is what the damper and the wall take and what masses, tyre, air and stop then
/// hold. Heat and stored energy are those of the air itself, pV/(γ − 1) and T·dS, which the corner's polynomials know nothing of.
/// </summary>
public sealed class EnergyTests
{

    private const double Body_kg = 360, Wheel_kg = 38, Tyre_N_per_m = 225e3, Gravity = 9.80665, Static_N = Body_kg * Gravity;
    private const double Ratio = 0.95, Area_m2 = 6.5e-3, Volume_m3 = 1.1e-3, Ambient_Pa = 101_325, Absolute_Pa = Static_N / Ratio / Area_m2 + Ambient_Pa;

    [Theory] // Hz, mm, ms; where the tyre lifts the order of the method asks for a finer step
    [InlineData(0.5, 15, 1, 40, false, false)]
    [InlineData(1.3, 15, 1, 40, true, false)]
    [InlineData(4, 10, 1, 40, false, false)]
    [InlineData(12, 8, 0.5, 100, true, true)]
    public void Trace_OverSteadyCycles_WorkIsHeatAndDamping(double frequency_Hz, double amplitude_mm, double step_ms, int cycles, bool stop, bool lifts)
    {
        int cycle = (int)Math.Round(1e3 / frequency_Hz / step_ms);
        double[] road = [.. Enumerable.Range(1, 2 * cycles * cycle).Select(k => amplitude_mm * 1e-3 * Math.Sin(2 * Math.PI * k / cycle))];

        RideTrace trace = RideRun.Trace(Made(), road, step_ms * 1e-3);
        Balance balance = Over(trace, road, from: cycles * cycle - 1);

        Assert.Equal((stop, lifts), (trace.StopForce_N[^cycle..].Max() > 0, trace.TyreForce_N[^cycle..].Min() == 0));
        Assert.True(balance.Heat_J > 0 && balance.Damping_J > 0);
        Assert.Equal(balance.Road_J, balance.Damping_J + balance.Heat_J, 1e-3 * balance.Road_J);
        Assert.InRange(balance.Stored_J, -1e-3 * balance.Road_J, 1e-3 * balance.Road_J);
    }

    [Fact]
    public void Trace_OverARoughRoad_WorkIsHeatDampingAndWhatIsStored()
    {
        const double step_s = 0.25e-3, speed_m_per_s = 22;
        double[] road = new double[5_000];
        RoadProfile.Fill(road, speed_m_per_s * step_s, RoadClass.D, 7);
        double start = road[0];
        for (int k = 0; k < road.Length; k++) road[k] -= start;

        RideTrace trace = RideRun.Trace(Made(), road, step_s);
        Balance balance = Over(trace, road, from: 0);

        Assert.Contains(trace.StopForce_N, force => force > 0);
        Assert.True(Math.Abs(balance.Stored_J) > 0.01 * balance.Road_J);
        Assert.Equal(balance.Road_J, balance.Damping_J + balance.Heat_J + balance.Stored_J, 1e-3 * balance.Road_J);
    }

    private readonly record struct Balance(double Road_J, double Damping_J, double Heat_J, double Stored_J);

    private static Balance Over(RideTrace trace, double[] road_m, int from)
    {
        Corner corner = Made();
        int end = road_m.Length - 1;
        double[] stored = Stored(corner, trace);
        Balance sum = default;
        for (int k = from + 1; k <= end; k++)
        {
            sum = new(
                sum.Road_J + (trace.TyreForce_N[k] + trace.TyreForce_N[k - 1]) / 2 * (road_m[k] - road_m[k - 1]),
                sum.Damping_J + (Loss_W(k) + Loss_W(k - 1)) / 2 * trace.Step_s,
                sum.Heat_J - (Inner_J(k) + Inner_J(k - 1)) / 2 * (trace.Entropy[k] - trace.Entropy[k - 1]),
                stored[end] - stored[from]);
        }

        return sum;

        double Loss_W(int k) => trace.DamperVelocity_m_per_s[k] * corner.DamperForce.At(trace.DamperVelocity_m_per_s[k]).Value;
        double Inner_J(int k) => AbsolutePressure_Pa(trace.Travel_m[k], trace.Entropy[k]) * AirVolume_m3(trace.Travel_m[k]) / 0.4;
    }

    // Body and wheel by the trapezoid of their accelerations; the wheel's is what tyre and strut leave it.
    private static double[] Stored(Corner corner, RideTrace trace)
    {
        double[] stored = new double[trace.Travel_m.Length];
        double h = trace.Step_s, z = 0, body = 0, wheel = 0, bodyBefore = 0, wheelBefore = 0;
        for (int k = 0; k < stored.Length; k++)
        {
            double tyre = trace.TyreForce_N[k], a = trace.Acceleration_m_per_s2[k], b = (tyre - corner.StaticForce_N - Wheel_kg * Gravity - Body_kg * a) / Wheel_kg;
            z += h * body + h * h / 2 * bodyBefore;
            (body, wheel) = (body + h / 2 * (a + bodyBefore), wheel + h / 2 * (b + wheelBefore));
            (bodyBefore, wheelBefore) = (a, b);
            double w = trace.Travel_m[k], volume = AirVolume_m3(w);
            stored[k] = Body_kg * body * body / 2 + corner.StaticForce_N * z + Wheel_kg * (wheel * wheel / 2 + Gravity * (z + w)) + tyre * tyre / (2 * Tyre_N_per_m)
                + volume * (AbsolutePressure_Pa(w, trace.Entropy[k]) / 0.4 + Ambient_Pa) + Stop_J(corner, w);
        }

        return stored;
    }

    private static double AirVolume_m3(double w) => Volume_m3 - Area_m2 * Ratio * w;

    private static double AbsolutePressure_Pa(double w, double entropy) => Absolute_Pa * Math.Exp(entropy) * Math.Pow(Volume_m3 / AirVolume_m3(w), 1.4);

    private static double Stop_J(Corner corner, double w)
    {
        const int strips = 200;
        double contact = corner.BumpStop!.X[0], width = (w - contact) / strips;
        return w <= contact ? 0 : Enumerable.Range(0, strips).Select(k => contact + (k + 0.5) * width).Sum(x => corner.BumpStop.At(x).Value * DamperRatio(x) * width);
    }

    private static double DamperRatio(double w) => 0.93 + 0.3 * w;

    private static Corner Made()
    {
        TravelRange range = new(-0.075, 0.045);
        TravelPolynomial Fit(Func<double, double> law, double tolerance) => TravelPolynomial.Of(law, range, tolerance);
        double[] speeds = [.. Enumerable.Range(-60, 121).Select(k => 0.05 * k)];
        return new Corner
        {
            SprungMass_kg = Body_kg,
            UnsprungMass_kg = Wheel_kg,
            TyreRate_N_per_m = Tyre_N_per_m,
            Range = range,
            Force = Fit(w => Ratio * Area_m2 * (AbsolutePressure_Pa(w, 0) - Ambient_Pa), 0.1),
            ForceByEntropy = Fit(w => Ratio * Area_m2 * AbsolutePressure_Pa(w, 0), 0.1),
            ForceByEntropySquare = Fit(w => Ratio * Area_m2 * AbsolutePressure_Pa(w, 0) / 2, 1),
            Cooling = Fit(w => Math.Pow(AirVolume_m3(w) / Volume_m3, 0.4) - 1, 1e-5),
            CoolingByEntropy = Fit(w => -Math.Pow(AirVolume_m3(w) / Volume_m3, 0.4), 1e-4),
            TimeConstant_s = 0.3,
            DamperRatio = Fit(DamperRatio, 1e-9),
            DamperForce = MonotoneCurve.Through(speeds, [.. speeds.Select(v => v >= 0 ? 2600 * v / (1 + v / 0.9) : 2600 * v / (1 - v / 0.45))]),
            BumpStop = MonotoneCurve.Through([0.015, 0.025, 0.035, 0.045], [0, 700, 2300, 6000], 0, 2e6),
        };
    }
}
