namespace Bellowsmith.Physics;

/// <summary>
/// A damper with clicks: force over extension velocity at each measured click, both + in rebound, without its gas. Between
/// measured clicks the force is interpolated straight at equal velocity. Click 0 is fully closed.
/// </summary>
public sealed class Damper
{
    internal const int QuarterSteps = 360;

    private readonly double[] _clicks;
    private readonly MonotoneCurve[] _curves;

    private Damper(double[] clicks, MonotoneCurve[] curves, double rebound_m_per_s, double compression_m_per_s, bool goesOn)
    {
        (_clicks, _curves) = (clicks, curves);
        (GreatestRebound_m_per_s, GreatestCompression_m_per_s, GoesOn) = (rebound_m_per_s, compression_m_per_s, goesOn);
    }

    /// <summary>The measured clicks, ascending.</summary>
    public IReadOnlyList<double> Clicks => _clicks;

    /// <summary>The greatest rebound speed that every click was measured at, +.</summary>
    public double GreatestRebound_m_per_s { get; }

    /// <summary>The greatest compression speed that every click was measured at, +.</summary>
    public double GreatestCompression_m_per_s { get; }

    /// <summary>True where a declared slope carries the force on beyond the measured speeds.</summary>
    public bool GoesOn { get; }

    /// <summary>A damper of measured clicks.</summary>
    /// <param name="clicks">Ascending, from fully closed.</param>
    /// <param name="curves">The curve of each, through (0, 0).</param>
    /// <param name="goesOn">Whether the slopes of the curves beyond their ends were declared by someone.</param>
    /// <exception cref="ArgumentException">No click, clicks that do not rise, or a curve that does not span 0.</exception>
    public static Damper Of(IReadOnlyList<double> clicks, IReadOnlyList<MonotoneCurve> curves, bool goesOn = false)
    {
        if (clicks.Count == 0 || clicks.Count != curves.Count) throw new ArgumentException("Each click has one curve.", nameof(clicks));
        for (int i = 1; i < clicks.Count; i++)
            if (!(clicks[i] > clicks[i - 1])) throw new ArgumentException("Clicks rise.", nameof(clicks));
        double rebound = curves.Min(curve => curve.X[^1]), compression = -curves.Max(curve => curve.X[0]);
        if (!(rebound > 0 && compression > 0)) throw new ArgumentException("A curve spans both strokes.", nameof(curves));
        return new([.. clicks], [.. curves], rebound, compression, goesOn);
    }

    /// <summary>Fd = c·v at every velocity; its one click is 0.</summary>
    public static Damper Linear(double coefficient_N_s_per_m)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(coefficient_N_s_per_m);
        MonotoneCurve line = MonotoneCurve.Through([-1, 1], [-coefficient_N_s_per_m, coefficient_N_s_per_m]);
        return new([0], [line], double.PositiveInfinity, double.PositiveInfinity, goesOn: false);
    }

    /// <summary>Whether every click was measured at this velocity.</summary>
    public bool Covers(double velocity_m_per_s) =>
        velocity_m_per_s <= GreatestRebound_m_per_s && velocity_m_per_s >= -GreatestCompression_m_per_s;

    /// <summary>
    /// Force over velocity at a click. Where <see cref="Covers"/> is false the curve's straight ends are no measurement: the
    /// declared slope where <see cref="GoesOn"/>, else the slope the curve ends with.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the measured clicks.</exception>
    public MonotoneCurve Curve(double click)
    {
        if (!(click >= _clicks[0] && click <= _clicks[^1]))
            throw new ArgumentOutOfRangeException(nameof(click), click, "The click was not measured.");
        int found = Array.BinarySearch(_clicks, click);
        if (found >= 0) return _curves[found];
        int above = ~found;
        double share = (click - _clicks[above - 1]) / (_clicks[above] - _clicks[above - 1]);
        return MonotoneCurve.Between(_curves[above - 1], _curves[above], share);
    }

    /// <summary>Fd at a click and velocity.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the measured clicks, or outside the measured speeds where no
    /// declared slope carries on.</exception>
    public double Force_N(double click, double velocity_m_per_s)
    {
        if (!GoesOn && !Covers(velocity_m_per_s))
            throw new ArgumentOutOfRangeException(nameof(velocity_m_per_s), velocity_m_per_s, "No force was measured at that velocity.");
        return Curve(click).At(velocity_m_per_s).Value;
    }

    /// <summary>The linear damper that takes as much energy from a sine of this velocity amplitude.</summary>
    /// <exception cref="ArgumentOutOfRangeException">As <see cref="Force_N"/>, and an amplitude that is not positive.</exception>
    public EquivalentDamping Equivalent(double click, double amplitude_m_per_s)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(amplitude_m_per_s);
        if (!GoesOn && !(Covers(amplitude_m_per_s) && Covers(-amplitude_m_per_s)))
            throw new ArgumentOutOfRangeException(nameof(amplitude_m_per_s), amplitude_m_per_s, "No force was measured at that velocity.");
        return EquivalentDamping.Of(Curve(click), amplitude_m_per_s, QuarterSteps);
    }
}

/// <summary>
/// Energy per cycle of a sine as a coefficient: c = E/(π·ω·X²) with X the amplitude and ω·X = V, which is
/// c = (1/(π·V))·∮Fd(V·cosθ)·cosθ dθ and does not depend on ω; exact for a linear damper [Thorby 2008].
/// </summary>
/// <param name="Rebound_N_s_per_m">The linear damper whose rebound stroke takes as much energy as this one's.</param>
/// <param name="Compression_N_s_per_m">The same of the compression stroke.</param>
public readonly record struct EquivalentDamping(double Rebound_N_s_per_m, double Compression_N_s_per_m)
{
    /// <summary>Over both strokes: the mean of the two.</summary>
    public double Both_N_s_per_m => (Rebound_N_s_per_m + Compression_N_s_per_m) / 2;

    /// <summary>Energy taken in one cycle, J: π·c·ω·X².</summary>
    public double EnergyPerCycle_J(double frequency_Hz, double amplitude_m) =>
        2 * Math.PI * Math.PI * frequency_Hz * amplitude_m * amplitude_m * Both_N_s_per_m;

    // Midpoints over a quarter turn; each stroke is two equal quarters. Exact for a straight line.
    internal static EquivalentDamping Of(MonotoneCurve force, double amplitude_m_per_s, int steps)
    {
        double rebound = 0, compression = 0;
        for (int i = 0; i < steps; i++)
        {
            double cosine = Math.Cos((i + 0.5) / steps * Math.PI / 2);
            rebound += force.At(amplitude_m_per_s * cosine).Value * cosine;
            compression -= force.At(-amplitude_m_per_s * cosine).Value * cosine;
        }

        double share = 2 / (steps * amplitude_m_per_s);
        return new(rebound * share, compression * share);
    }
}
