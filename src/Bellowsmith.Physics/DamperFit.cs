using Bellowsmith.Physics.Dyno;

namespace Bellowsmith.Physics;

/// <summary>
/// A damper's curves from its dyno readings, and how well they are known. Runs at equal click and velocity are averaged;
/// where scatter makes the force fall with velocity, neighbours share their mean [Barlow Bartholomew Bremner Brunk 1972]; a
/// monotone curve goes through what then stands and through (0, 0).
/// </summary>
public sealed class DamperFit
{
    /// <summary>How far, in deviations of a mean of runs, a level may move to be monotone; and in shares of the click's
    /// greatest force where no run was repeated. Common practice, no source.</summary>
    private const double MostDeviations = 3, MostShare = 0.01;

    private const double AnchorWeight = 1e12;
    private const int LeastSpeeds = 2;

    private readonly List<DynoLeftOut> _leftOut;
    private readonly Dictionary<double, List<SpeedLevel>> _levels = [];
    private readonly (double Compression, double Rebound)? _beyond;
    private readonly SoundPoints _sound;

    private DamperFit(SoundPoints sound, IEnumerable<DynoPoint> points, (double Compression, double Rebound)? beyond)
    {
        _leftOut = [.. sound.LeftOut];
        (_sound, _beyond, Loops, GasForce_N) = (sound, beyond, sound.Loops, sound.GasForce_N);
        foreach (IGrouping<double, DynoPoint> click in points.GroupBy(point => point.Click).OrderBy(click => click.Key))
            _levels[click.Key] = SpeedLevel.Of(click);
        Temperature = ForceByTemperature.Of(_levels.Values.SelectMany(levels => levels));
        RepeatabilityDegrees = _levels.Values.Sum(levels => levels.Sum(level => level.Points.Count - 1));
        double squares = _levels.Values.Sum(levels => levels.Sum(level => level.Squares));
        Repeatability_N = RepeatabilityDegrees > 0 ? Math.Sqrt(squares / RepeatabilityDegrees) : null;
        Damper = Build();
    }

    /// <summary>Null where no click can be used; <see cref="LeftOut"/> says why.</summary>
    public Damper? Damper { get; }

    /// <summary>Pooled standard deviation of force over runs at equal click and speed; null where nothing was run twice.</summary>
    public double? Repeatability_N { get; }

    /// <summary>Degrees of freedom of <see cref="Repeatability_N"/>.</summary>
    public int RepeatabilityDegrees { get; }

    /// <summary>What warmth does to the force; null where it was not measured, as for raw sweeps.</summary>
    public ForceByTemperature? Temperature { get; }

    /// <summary>Gas force at mid-stroke, pushes the rod out, +; null where the readings are without it.</summary>
    public double? GasForce_N { get; }

    /// <summary>Raw sweeps that could be used; none where the file holds points.</summary>
    public IReadOnlyList<DynoLoop> Loops { get; }

    public IReadOnlyList<DynoLeftOut> LeftOut => _leftOut;

    /// <summary>Whole clicks between the first and the last measured that were not: there the curve is interpolated.</summary>
    public IReadOnlyList<int> MissingClicks => Damper is not { } damper ? [] : [.. Enumerable
        .Range((int)damper.Clicks[0], (int)(damper.Clicks[^1] - damper.Clicks[0]) + 1).Where(click => !damper.Clicks.Contains(click))];

    /// <summary>
    /// Friction of rod and seals: half the step of force at zero speed, on the straight line through the two slowest speeds of
    /// the click that resists least. An upper limit unless those speeds creep, as a bleed that opens digressively shows alike.
    /// Null without a damper.
    /// </summary>
    public (double Force_N, double SlowestSpeed_m_per_s)? Friction { get; private set; }

    /// <summary>The damper of a dyno's readings.</summary>
    /// <param name="data">The readings.</param>
    /// <param name="beyond_N_s_per_m">Declared slopes by which the force goes on beyond the measured speeds.</param>
    public static DamperFit Of(DynoData data, (double Compression, double Rebound)? beyond_N_s_per_m = null)
    {
        SoundPoints sound = SoundPoints.Of(data);
        return new(sound, sound.Points, beyond_N_s_per_m);
    }

    /// <summary>
    /// The same readings, each brought from its own temperature to this one (readings without one from the mean of the others);
    /// declared slopes beyond the measured speeds come along.
    /// </summary>
    /// <exception cref="InvalidOperationException">Nothing is known of temperature.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Outside the temperatures that were measured.</exception>
    public DamperFit At(double temperature_K)
    {
        if (Temperature is not { } warmth) throw new InvalidOperationException("Force was not measured over temperature.");
        if (!warmth.Covers(temperature_K)) throw new ArgumentOutOfRangeException(nameof(temperature_K), temperature_K, "The temperature was not measured.");
        double mean = warmth.Ratio(warmth.Reference_K, temperature_K);
        return new(
            _sound, _sound.Points.Select(p => p with { Force_N = p.Force_N * warmth.Ratio(p.Temperature_K ?? warmth.Reference_K, temperature_K), Temperature_K = temperature_K }),
            _beyond is var (compression, rebound) ? (compression * mean, rebound * mean) : null);
    }

    /// <summary>
    /// The equivalent damping of each run that covers the amplitude by itself: what clicks are told apart by. Readings
    /// without a run count as runs in the order they repeat.
    /// </summary>
    public IReadOnlyList<(double Click, string Run, double Damping_N_s_per_m)> Runs(double amplitude_m_per_s) =>
    [
        .. from click in Damper?.Clicks ?? []
           from run in _levels[click].SelectMany(level => level.Points).GroupBy(point => point.Run!).OrderBy(run => run.Key, StringComparer.Ordinal)
           let levels = SpeedLevel.Of(run)
           where Covers(levels, amplitude_m_per_s)
           let curve = Curve(levels, Heights(levels))
           select (click, run.Key, EquivalentDamping.Of(curve, amplitude_m_per_s, Damper.QuarterSteps).Both_N_s_per_m),
    ];

    /// <summary>Every sound reading behind the curves, its gas taken out; readings without a run are named in the order they repeat.</summary>
    public IReadOnlyList<DynoPoint> Points =>
        [.. (Damper?.Clicks ?? []).SelectMany(click => _levels[click].SelectMany(level => level.Points))];

    /// <summary>The measured means of a click, ascending by velocity: velocity, force and how many runs.</summary>
    public IReadOnlyList<(double Velocity_m_per_s, double Force_N, int Runs)> Measured(double click) =>
        [.. _levels[click].Select(level => (level.Velocity_m_per_s, level.Force_N, level.Points.Count))];

    private Damper? Build()
    {
        List<double> clicks = [];
        List<MonotoneCurve> curves = [];
        foreach ((double click, List<SpeedLevel> levels) in _levels)
        {
            if (!Covers(levels, 0, LeastSpeeds))
            {
                Leave(DynoTrouble.TooFewSpeeds, click, levels);
                continue;
            }

            double[] forces = Heights(levels);
            SpeedLevel[] moved = [.. levels.Where((level, k) => Math.Abs(forces[k] - level.Force_N) > Limit_N(levels, level))];
            if (moved.Length > 0) Leave(DynoTrouble.FallingForce, click, moved);
            else
            {
                clicks.Add(click);
                curves.Add(Curve(levels, forces, _beyond));
            }
        }

        if (clicks.Count == 0) return null;
        Damper damper = Damper.Of(clicks, curves, _beyond is not null);
        double gentlest = clicks.MinBy(click => _levels[click].Where(level => level.Velocity_m_per_s > 0).First().Force_N);
        Friction = (Math.Max(0, (Start(_levels[gentlest], +1) + Start(_levels[gentlest], -1)) / 2),
            _levels[gentlest].Min(level => Math.Abs(level.Velocity_m_per_s)));
        return damper;
    }

    private double Limit_N(List<SpeedLevel> levels, SpeedLevel level) => Repeatability_N is { } deviation
        ? MostDeviations * deviation / Math.Sqrt(level.Points.Count)
        : MostShare * levels.Max(other => Math.Abs(other.Force_N));

    private void Leave(DynoTrouble trouble, double click, IEnumerable<SpeedLevel> levels) => _leftOut.Add(new(
        trouble, click, [.. levels.SelectMany(level => level.Points).Select(point => point.Line).Distinct().Order()]));

    private static bool Covers(List<SpeedLevel> levels, double speed_m_per_s, int least = 1) =>
        levels.Count(level => level.Velocity_m_per_s > 0) >= least && levels.Count(level => level.Velocity_m_per_s < 0) >= least
        && levels[^1].Velocity_m_per_s >= speed_m_per_s && -levels[0].Velocity_m_per_s >= speed_m_per_s;

    // Compression at or below 0, rebound at or above: nothing moves the anchor.
    private static double[] Heights(List<SpeedLevel> levels)
    {
        int rest = levels.FindIndex(level => level.Velocity_m_per_s > 0);
        double[] forces = [.. levels.Select(level => level.Force_N)], weights = [.. levels.Select(level => (double)level.Points.Count)];
        double[] rising = Rising.Of([.. forces[..rest], 0, .. forces[rest..]], [.. weights[..rest], AnchorWeight, .. weights[rest..]]);
        return [.. rising[..rest].Select(force => Math.Min(force, 0)), .. rising[(rest + 1)..].Select(force => Math.Max(force, 0))];
    }

    private static MonotoneCurve Curve(List<SpeedLevel> levels, double[] forces, (double Compression, double Rebound)? beyond = null)
    {
        int rest = levels.FindIndex(level => level.Velocity_m_per_s > 0);
        double[] speeds = [.. levels.Select(level => level.Velocity_m_per_s)];
        return MonotoneCurve.Through(
            [.. speeds[..rest], 0, .. speeds[rest..]], [.. forces[..rest], 0, .. forces[rest..]], beyond?.Compression, beyond?.Rebound);
    }

    // Where the straight line through the two slowest speeds of a stroke meets zero speed.
    private static double Start(List<SpeedLevel> levels, int stroke)
    {
        SpeedLevel[] slowest = [.. levels.Where(level => level.Velocity_m_per_s * stroke > 0)
            .OrderBy(level => Math.Abs(level.Velocity_m_per_s)).Take(2)];
        (double v, double f) = (slowest[0].Velocity_m_per_s * stroke, slowest[0].Force_N * stroke);
        return f - v * (slowest[1].Force_N * stroke - f) / (slowest[1].Velocity_m_per_s * stroke - v);
    }
}
