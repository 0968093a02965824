using System.Globalization;

namespace Bellowsmith.Physics.Dyno;

/// <summary>Points from raw sweeps, what moves with the gas and the cell's zero taken out.</summary>
internal sealed class RawPoints
{
    private const int SaturatedSamples = 3, CurvePoints = 10;

    private readonly List<DynoLoop> _loops = [];
    private readonly List<DynoPoint> _points = [];
    private readonly List<DynoLeftOut> _leftOut = [];

    private RawPoints(DynoSweeps data)
    {
        foreach (DynoSweep sweep in data.Sweeps)
        {
            if (DynoLoop.Of(sweep) is { } loop) _loops.Add(loop);
            else Leave(DynoTrouble.NoSine, sweep);
        }

        LeaveSaturated(forces => forces.Max());
        LeaveSaturated(forces => forces.Min());
        List<double> means = [.. _loops.GroupBy(loop => loop.Sweep.Click).Select(click => Add([.. click], data.GasIn))];
        GasForce_N = data.GasIn && means.Count > 0 ? -means.Average() : null;
    }

    public IReadOnlyList<DynoLoop> Loops => _loops;

    public IReadOnlyList<DynoPoint> Points => _points;

    public IReadOnlyList<DynoLeftOut> LeftOut => _leftOut;

    public double? GasForce_N { get; }

    public static RawPoints Of(DynoSweeps data) => new(data);

    // The middle is taken from the slowest sweeps, whose ends a lagging force bends least. Returns it.
    private double Add(DynoLoop[] click, bool gasIn)
    {
        double slowest = click.Min(loop => loop.PeakVelocity_m_per_s);
        double mean = gasIn ? click.Where(loop => Alike(loop, slowest)).Average(loop => loop.MidStrokeMean_N) : 0;
        bool oneSpeed = click.All(loop => Alike(loop, slowest));
        for (int k = 0; k < click.Length; k++)
        {
            DynoLoop loop = click[k];
            int before = click[..k].Count(other => Alike(other, loop.PeakVelocity_m_per_s));
            string run = loop.Sweep.Run ?? (before + 1).ToString(CultureInfo.InvariantCulture);
            foreach ((double velocity, double force) in oneSpeed ? Continuous(loop) : Peaks(loop))
                _points.Add(new(loop.Sweep.Click, velocity, force - mean, run, null, loop.Sweep.Samples[0].Line));
        }

        return mean;
    }

    private static bool Alike(DynoLoop loop, double speed) => Math.Abs(loop.PeakVelocity_m_per_s - speed) <= SpeedLevel.SameShare * speed;

    private static IEnumerable<(double Velocity, double Force)> Peaks(DynoLoop loop) =>
        [(loop.PeakVelocity_m_per_s, loop.PeakRebound_N), (-loop.PeakVelocity_m_per_s, loop.PeakCompression_N)];

    // One speed alone: the curve of the whole cycle, mean of its two branches.
    private static IEnumerable<(double Velocity, double Force)> Continuous(DynoLoop loop) =>
        from k in Enumerable.Range(-CurvePoints, 2 * CurvePoints + 1)
        where k != 0
        let velocity = loop.PeakVelocity_m_per_s * k / CurvePoints
        let force = loop.At_N(velocity)
        select (velocity, (force.Gaining_N + force.Losing_N) / 2);

    // The extreme force of the whole file, held for some samples in sweeps that differ in click or speed, is the cell's end.
    private void LeaveSaturated(Func<IEnumerable<double>, double> extreme)
    {
        if (_loops.Count == 0) return;
        double end = extreme(_loops.SelectMany(loop => loop.Sweep.Samples).Select(sample => sample.Force_N));
        DynoLoop[] at = [.. _loops.Where(loop => loop.Sweep.Samples.Count(sample => sample.Force_N == end) >= SaturatedSamples)];
        if (!at.Any(loop => loop.Sweep.Click != at[0].Sweep.Click || !Alike(loop, at[0].PeakVelocity_m_per_s))) return;
        foreach (DynoLoop loop in at) Leave(DynoTrouble.SaturatedCell, loop.Sweep);
        _loops.RemoveAll(at.Contains);
    }

    private void Leave(DynoTrouble trouble, DynoSweep sweep) =>
        _leftOut.Add(new(trouble, sweep.Click, sweep.Samples.Count == 0 ? [] : [sweep.Samples[0].Line, sweep.Samples[^1].Line]) { IsRange = true });
}
