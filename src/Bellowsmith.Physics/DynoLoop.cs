using Bellowsmith.Physics.Dyno;

namespace Bellowsmith.Physics;

/// <summary>
/// One raw sweep laid over its own sine: x = x0 + X·sinθ, v = V·cosθ with V = ω·X = π·stroke·frequency. The force at a phase
/// is that of a parabola through the samples about it, all cycles together, so that noise of the cell averages out; a
/// parabola over ±0.2 rad misses a sine by 0.01 % of its amplitude at most (0.2 % where samples are few and it reaches ±0.8).
/// </summary>
public sealed class DynoLoop
{
    private const double GreatestMiss = 0.05, LeastCycles = 0.95;
    private const int LeastSamples = 24, PhasesChecked = 12;

    private readonly double[] _phases;
    private readonly double[] _forces;

    private DynoLoop(DynoSweep sweep, SineFit sine)
    {
        (Sweep, Frequency_Hz, Stroke_m) = (sweep, sine.AngularFrequency / (2 * Math.PI), 2 * sine.Amplitude);
        Cycles = (sweep.Samples[^1].Time_s - sweep.Samples[0].Time_s) * Frequency_Hz;
        _phases = [.. sweep.Samples.Select(sample => sine.Phase(sample.Time_s))];
        _forces = [.. sweep.Samples.Select(sample => sample.Force_N)];
    }

    public DynoSweep Sweep { get; }

    public double Frequency_Hz { get; }

    /// <summary>From end to end, twice the sine's amplitude.</summary>
    public double Stroke_m { get; }

    public double Cycles { get; }

    /// <summary>π·stroke·frequency.</summary>
    public double PeakVelocity_m_per_s => Math.PI * Stroke_m * Frequency_Hz;

    /// <summary>The force where the rod moves out fastest, as recorded.</summary>
    public double PeakRebound_N => At(0);

    /// <summary>The force where the rod moves in fastest, as recorded; − where it resists.</summary>
    public double PeakCompression_N => At(Math.PI);

    /// <summary>
    /// The force at mid-stroke that is not damping: the mean of both ends of the stroke, where nothing moves. Gas force and the
    /// cell's zero remain, a gas spring's straight part and the inertia of the moving end cancel.
    /// </summary>
    public double MidStrokeMean_N => (At(Math.PI / 2) + At(-Math.PI / 2)) / 2;

    /// <summary>The continuous-velocity curve at a velocity of either sign: gaining speed, and losing it. NaN beyond the peak.</summary>
    public (double Gaining_N, double Losing_N) At_N(double velocity_m_per_s)
    {
        double phase = Math.Acos(velocity_m_per_s / PeakVelocity_m_per_s);
        return velocity_m_per_s < 0 ? (At(phase), At(-phase)) : (At(-phase), At(phase));
    }

    /// <summary>How far the two branches of the continuous-velocity curve lie apart at half the peak velocity, each stroke.</summary>
    public (double Rebound_N, double Compression_N) Hysteresis()
    {
        (double rebound, double compression) = (Apart(PeakVelocity_m_per_s / 2), Apart(-PeakVelocity_m_per_s / 2));
        return (rebound, compression);

        double Apart(double velocity) => At_N(velocity) is var (gaining, losing) ? Math.Abs(gaining - losing) : double.NaN;
    }

    /// <summary>The sweep over its sine; null where it does not follow one for a whole cycle, or leaves parts of it without samples.</summary>
    public static DynoLoop? Of(DynoSweep sweep)
    {
        if (sweep.Samples.Count < LeastSamples || SineFit.Of(sweep.Samples) is not { } sine) return null;
        DynoLoop loop = new(sweep, sine);
        bool follows = sine.Miss <= GreatestMiss * sine.Amplitude && loop.Cycles >= LeastCycles;
        return follows && Enumerable.Range(0, PhasesChecked).All(k => double.IsFinite(loop.At(2 * Math.PI * k / PhasesChecked))) ? loop : null;
    }

    private double At(double phase) => LocalParabola.At(_phases, _forces, phase);
}
