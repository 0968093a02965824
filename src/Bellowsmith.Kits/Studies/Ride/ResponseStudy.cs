using System.Numerics;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>
/// How does it answer a wavy road of this amplitude? The nonlinear corner on one sine after another, each grown over 3 s and driven
/// 8 s before it counts. A wave is a whole number of steps, so that no window cuts one.
/// </summary>
public static class ResponseStudy
{
    public const double Lowest_Hz = 0.5, Highest_Hz = 25;

    /// <summary>Half of a ride's step: the method's error grows with the square of frequency.</summary>
    private const double Step_s = RideRun.Step_s / 2;

    private const double Growth_s = 3, Settling_s = 8, Window_s = 1, SteadyShare = 0.01;
    private const int Frequencies = 48;

    /// <summary>Null where the strut cannot stand at the setting.</summary>
    public static RideResponse? Answer(RideStrut strut, RideSetting asked, double amplitude_m) =>
        Stand.Of(strut, asked with { Click = asked.Click ?? strut.Click }, out _) is { } here
            ? new(Over(here, amplitude_m / 2), Over(here, amplitude_m), Over(here, amplitude_m * 2)) : null;

    private static WaveResponse Over(Stand stand, double amplitude_m) =>
        new(amplitude_m, [.. Waves().Select(steps => Over(stand, amplitude_m, steps))]);

    // Steps a wave, longest first, log-spaced as near as whole steps allow.
    private static IEnumerable<int> Waves() => Enumerable.Range(0, Frequencies)
        .Select(k => (int)Math.Round(1 / (Step_s * Lowest_Hz * Math.Pow(Highest_Hz / Lowest_Hz, k / (Frequencies - 1.0))))).Distinct();

    private static WavePoint Over(Stand stand, double amplitude_m, int wave)
    {
        int window = (int)Math.Ceiling(Window_s / (wave * Step_s)) * wave, settled = (int)Math.Ceiling(Settling_s / (wave * Step_s)) * wave;
        double[] road = Road(amplitude_m, wave, settled + 2 * window);
        RideTrace trace = RideRun.Trace(stand.Corner, road, Step_s);
        Range last = ^window..;
        double[] acceleration = trace.Acceleration_m_per_s2[last], tyre = trace.TyreForce_N[last], speed = trace.DamperVelocity_m_per_s[last];
        double[] travel = trace.Travel_m[last];
        Complex before = Fundamental(trace.Acceleration_m_per_s2.AsSpan(settled, window), wave), body = Fundamental(acceleration, wave);
        double omega = 2 * Math.PI / (wave * Step_s);
        return new WavePoint
        {
            Frequency_Hz = 1 / (wave * Step_s),
            BodyTransmissibility = body.Magnitude / (omega * omega * amplitude_m),
            BodyRms_m_per_s2 = Math.Sqrt(acceleration.Sum(a => a * a) / window),
            TravelAmplitude_m = (travel.Max() - travel.Min()) / 2,
            TyreLoadAmplitude_N = (tyre.Max() - tyre.Min()) / 2,
            StopTouched = trace.StopForce_N[last].Max() > 0,
            LeavesRoad = tyre.Min() <= 0,
            OutsideMeasuredSpeed = !(stand.Strut.Damper.Covers(speed.Min()) && stand.Strut.Damper.Covers(speed.Max())),
            Steady = (body - before).Magnitude <= SteadyShare * body.Magnitude,
        };
    }

    private static double[] Road(double amplitude_m, int wave, int steps)
    {
        double[] road = new double[steps];
        for (int k = 0; k < steps; k++)
            road[k] = Math.Min(1, (k + 1) * Step_s / Growth_s) * amplitude_m * Math.Sin(2 * Math.PI * (k + 1) / wave);
        return road;
    }

    private static Complex Fundamental(ReadOnlySpan<double> values, int wave)
    {
        Complex sum = 0;
        for (int k = 0; k < values.Length; k++) sum += Complex.FromPolarCoordinates(values[k], -2 * Math.PI * (k % wave) / wave);
        return 2 * sum / values.Length;
    }
}
