using System.Globalization;

namespace Bellowsmith.Physics.Dyno;

/// <summary>A dyno's readings as points without gas, sound ones apart from those that cannot be used.</summary>
internal sealed class SoundPoints
{
    private const double Still_m_per_s = 1e-4, ZeroShare = 0.005;
    private const int LeastEqualExtremes = 3, SaturatedSamples = 3, CurvePoints = 10;

    private readonly List<DynoLeftOut> _leftOut = [];

    private SoundPoints(DynoData data)
    {
        Loops = data is DynoSweeps sweeps ? Cyclic(sweeps) : [];
        List<DynoPoint> points = data is DynoPoints given ? WithoutSaturated([.. Named(given.Points)]) : FromLoops(Loops);
        GasForce_N = data.GasIn ? Gas(points) : null;
        points = [.. points.Where(point => Math.Abs(point.Velocity_m_per_s) > Still_m_per_s)
            .Select(point => data is DynoPoints ? point with { Force_N = point.Force_N + (GasForce_N ?? 0) } : point)];
        if (data is DynoSweeps) GasForce_N = data.GasIn && Loops.Count > 0 ? -Loops.Average(loop => _means[loop.Sweep.Click]) : null;
        Points = WithoutCrossed(points);
    }

    // What a raw sweep's middle shows at each click: of its slowest sweeps, where a lagging force bends the ends least.
    private readonly Dictionary<double, double> _means = [];

    public IReadOnlyList<DynoLoop> Loops { get; }

    public IReadOnlyList<DynoPoint> Points { get; }

    /// <summary>Gas force at mid-stroke, + out; null where the readings are without it.</summary>
    public double? GasForce_N { get; private set; }

    public IReadOnlyList<DynoLeftOut> LeftOut => _leftOut;

    public static SoundPoints Of(DynoData data) => new(data);

    // Rows without a run that repeat a click and velocity are runs in the order they stand.
    private static IEnumerable<DynoPoint> Named(IEnumerable<DynoPoint> points) => points
        .GroupBy(point => (point.Click, point.Velocity_m_per_s))
        .SelectMany(same => same.Select((point, k) => point with { Run = point.Run ?? Ordinal(k) }));

    private static string Ordinal(int k) => (k + 1).ToString(CultureInfo.InvariantCulture);

    private List<DynoLoop> Cyclic(DynoSweeps data)
    {
        List<DynoLoop> loops = [];
        foreach (DynoSweep sweep in data.Sweeps)
        {
            if (DynoLoop.Of(sweep) is { } loop) loops.Add(loop);
            else _leftOut.Add(new(DynoTrouble.NoSine, sweep.Click, Ends(sweep)));
        }

        // The extreme force of the whole file, held for some samples in sweeps that differ in click or speed, is the cell's end.
        foreach (double extreme in (ReadOnlySpan<double>)[Extreme(loops, forces => forces.Max()), Extreme(loops, forces => forces.Min())])
        {
            DynoLoop[] at = [.. loops.Where(loop => loop.Sweep.Samples.Count(sample => sample.Force_N == extreme) >= SaturatedSamples)];
            if (at.Select(loop => (loop.Sweep.Click, Math.Round(loop.PeakVelocity_m_per_s, 2))).Distinct().Count() < 2) continue;
            foreach (DynoLoop loop in at) _leftOut.Add(new(DynoTrouble.SaturatedCell, loop.Sweep.Click, Ends(loop.Sweep)));
            loops.RemoveAll(at.Contains);
        }

        return loops;

        static double Extreme(List<DynoLoop> loops, Func<IEnumerable<double>, double> of) =>
            loops.Count == 0 ? double.NaN : of(loops.SelectMany(loop => loop.Sweep.Samples).Select(sample => sample.Force_N));
    }

    private List<DynoPoint> FromLoops(IReadOnlyList<DynoLoop> loops)
    {
        List<DynoPoint> points = [];
        foreach (IGrouping<double, DynoLoop> click in loops.GroupBy(loop => loop.Sweep.Click))
        {
            double slowest = click.Min(loop => loop.PeakVelocity_m_per_s);
            double mean = _means[click.Key] = click.Where(loop => Alike(loop.PeakVelocity_m_per_s, slowest)).Average(loop => loop.MidStrokeMean_N);
            bool oneSpeed = click.All(loop => Alike(loop.PeakVelocity_m_per_s, slowest));
            DynoLoop[] all = [.. click];
            for (int k = 0; k < all.Length; k++)
            {
                string run = all[k].Sweep.Run ?? Ordinal(all[..k].Count(before => Alike(before.PeakVelocity_m_per_s, all[k].PeakVelocity_m_per_s)));
                points.AddRange(oneSpeed ? Continuous(all[k], mean, run) : Peaks(all[k], mean, run));
            }
        }

        return points;
    }

    private static bool Alike(double speed, double other) => Math.Abs(speed - other) <= SpeedLevel.SameShare * other;

    private static IEnumerable<DynoPoint> Peaks(DynoLoop loop, double mean, string run)
    {
        (double click, int line) = (loop.Sweep.Click, loop.Sweep.Samples[0].Line);
        yield return new(click, loop.PeakVelocity_m_per_s, loop.PeakRebound_N - mean, run, null, line);
        yield return new(click, -loop.PeakVelocity_m_per_s, loop.PeakCompression_N - mean, run, null, line);
    }

    // One speed alone: the curve of the whole cycle, mean of its two branches.
    private static IEnumerable<DynoPoint> Continuous(DynoLoop loop, double mean, string run)
    {
        for (int k = -CurvePoints; k <= CurvePoints; k++)
        {
            if (k == 0) continue;
            double velocity = loop.PeakVelocity_m_per_s * k / CurvePoints;
            (double gaining, double losing) = loop.At_N(velocity);
            yield return new(loop.Sweep.Click, velocity, (gaining + losing) / 2 - mean, run, null, loop.Sweep.Samples[0].Line);
        }
    }

    private List<DynoPoint> WithoutSaturated(IReadOnlyList<DynoPoint> points)
    {
        List<DynoPoint> sound = [.. points];
        if (points.Count == 0) return sound;
        foreach (double extreme in (ReadOnlySpan<double>)[points.Max(point => point.Force_N), points.Min(point => point.Force_N)])
        {
            DynoPoint[] at = [.. points.Where(point => point.Force_N == extreme && extreme != 0)];
            if (at.Length < LeastEqualExtremes
                || at.Select(point => (point.Click, Math.Round(point.Velocity_m_per_s, 2))).Distinct().Count() < 2) continue;
            foreach (IGrouping<double, DynoPoint> click in at.GroupBy(point => point.Click)) Leave(DynoTrouble.SaturatedCell, click);
            sound.RemoveAll(at.Contains);
        }

        return sound;
    }

    // At rest, else the mean of both strokes at the slowest speed of the click that resists least there: what the two strokes
    // differ by is taken for gas, so the gentlest click errs least.
    private static double Gas(IReadOnlyList<DynoPoint> points)
    {
        DynoPoint[] still = [.. points.Where(point => Math.Abs(point.Velocity_m_per_s) <= Still_m_per_s)];
        if (still.Length > 0) return -still.Average(point => point.Force_N);
        (SpeedLevel? Out, SpeedLevel? In) slowest = points.GroupBy(point => point.Click)
            .Select(click => (
                Out: SpeedLevel.Of(click.Where(point => point.Velocity_m_per_s > 0)).FirstOrDefault(),
                In: SpeedLevel.Of(click.Where(point => point.Velocity_m_per_s < 0)).LastOrDefault()))
            .Where(click => click is { Out: not null, In: not null })
            .OrderBy(click => click.Out!.Force_N - click.In!.Force_N).FirstOrDefault();
        return slowest.Out is null ? 0 : -(slowest.Out.Force_N + slowest.In!.Force_N) / 2;
    }

    private List<DynoPoint> WithoutCrossed(List<DynoPoint> points)
    {
        foreach (IGrouping<double, DynoPoint> click in points.GroupBy(point => point.Click).ToArray())
        {
            double zero = ZeroShare * click.Max(point => Math.Abs(point.Force_N));
            DynoPoint[] crossed = [.. click.Where(point => point.Force_N * Math.Sign(point.Velocity_m_per_s) < -zero)];
            if (crossed.Length > 0) Leave(DynoTrouble.CrossedSigns, crossed);
            points.RemoveAll(crossed.Contains);
        }

        return points;
    }

    private void Leave(DynoTrouble trouble, IEnumerable<DynoPoint> points)
    {
        DynoPoint[] all = [.. points];
        _leftOut.Add(new(trouble, all[0].Click, [.. all.Select(point => point.Line).Distinct().Order()]));
    }

    private static int[] Ends(DynoSweep sweep) => sweep.Samples.Count == 0 ? [] : [sweep.Samples[0].Line, sweep.Samples[^1].Line];
}
