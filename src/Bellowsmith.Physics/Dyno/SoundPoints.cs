using System.Globalization;

namespace Bellowsmith.Physics.Dyno;

/// <summary>A dyno's readings as points without gas, sound ones apart from those that cannot be used.</summary>
internal sealed class SoundPoints
{
    private const double Still_m_per_s = 1e-4, ZeroShare = 0.005;
    private const int LeastEqualExtremes = 3;

    private readonly List<DynoLeftOut> _leftOut = [];
    private readonly List<DynoPoint> _points;

    private SoundPoints(DynoPoints data)
    {
        _points = [.. Named(data.Points)];
        LeaveSaturated(forces => forces.Max());
        LeaveSaturated(forces => forces.Min());
        GasForce_N = data.GasIn ? Gas() : null;
        _points = [.. _points.Where(point => Math.Abs(point.Velocity_m_per_s) > Still_m_per_s)
            .Select(point => point with { Force_N = point.Force_N + (GasForce_N ?? 0) })];
        LeaveCrossed();
    }

    private SoundPoints(RawPoints raw)
    {
        (Loops, GasForce_N, _points, _leftOut) = (raw.Loops, raw.GasForce_N, [.. raw.Points], [.. raw.LeftOut]);
        LeaveCrossed();
    }

    public IReadOnlyList<DynoLoop> Loops { get; } = [];

    public IReadOnlyList<DynoPoint> Points => _points;

    /// <summary>Gas force at mid-stroke, + out; null where the readings are without it.</summary>
    public double? GasForce_N { get; }

    public IReadOnlyList<DynoLeftOut> LeftOut => _leftOut;

    public static SoundPoints Of(DynoData data) => data is DynoSweeps raw ? new(RawPoints.Of(raw)) : new((DynoPoints)data);

    // Rows without a run that repeat a click and velocity are runs in the order they stand.
    private static IEnumerable<DynoPoint> Named(IEnumerable<DynoPoint> points) => points
        .GroupBy(point => (point.Click, point.Velocity_m_per_s))
        .SelectMany(same => same.Select((point, k) => point with { Run = point.Run ?? (k + 1).ToString(CultureInfo.InvariantCulture) }));

    // Several readings at the extreme force of the file, at different clicks or speeds: the cell's end.
    private void LeaveSaturated(Func<IEnumerable<double>, double> extreme)
    {
        if (_points.Count == 0) return;
        double end = extreme(_points.Select(point => point.Force_N));
        DynoPoint[] at = [.. _points.Where(point => point.Force_N == end && end != 0)];
        if (at.Length < LeastEqualExtremes || SpeedLevel.Of(at).Count < 2 && at.All(point => point.Click == at[0].Click)) return;
        foreach (IGrouping<double, DynoPoint> click in at.GroupBy(point => point.Click)) Leave(DynoTrouble.SaturatedCell, click);
    }

    // At rest, else the mean of both strokes at the slowest speed of the click that resists least there: what the two strokes
    // differ by is taken for gas, so the gentlest click errs least.
    private double Gas()
    {
        DynoPoint[] still = [.. _points.Where(point => Math.Abs(point.Velocity_m_per_s) <= Still_m_per_s)];
        if (still.Length > 0) return -still.Average(point => point.Force_N);
        (SpeedLevel? Out, SpeedLevel? In) slowest = _points.GroupBy(point => point.Click)
            .Select(click => (
                Out: SpeedLevel.Of(click.Where(point => point.Velocity_m_per_s > 0)).FirstOrDefault(),
                In: SpeedLevel.Of(click.Where(point => point.Velocity_m_per_s < 0)).LastOrDefault()))
            .Where(click => click is { Out: not null, In: not null })
            .OrderBy(click => click.Out!.Force_N - click.In!.Force_N).FirstOrDefault();
        return slowest.Out is null ? 0 : -(slowest.Out.Force_N + slowest.In!.Force_N) / 2;
    }

    private void LeaveCrossed()
    {
        foreach (IGrouping<double, DynoPoint> click in _points.GroupBy(point => point.Click).ToArray())
        {
            double zero = ZeroShare * click.Max(point => Math.Abs(point.Force_N));
            DynoPoint[] crossed = [.. click.Where(point => point.Force_N * Math.Sign(point.Velocity_m_per_s) < -zero)];
            if (crossed.Length > 0) Leave(DynoTrouble.CrossedSigns, crossed);
        }
    }

    private void Leave(DynoTrouble trouble, IEnumerable<DynoPoint> points)
    {
        HashSet<DynoPoint> all = [.. points];
        _leftOut.Add(new(trouble, all.First().Click, [.. all.Select(point => point.Line).Distinct().Order()]));
        _points.RemoveAll(all.Contains);
    }
}
