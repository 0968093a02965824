using Bellowsmith.Physics;
using BenchmarkDotNet.Attributes;

namespace Bellowsmith.Benchmarks;

/// <summary>A tyre against what stands beside it, each at the same hundred places: bellows of two folds, a damper's tube, a tie rod.</summary>
public class ClearanceRegimes
{
    private const int Places = 100;

    private static readonly RevolvedBody _tyre =
        new(new RoadWheel(new Rim(0.2159, 0.4572, 0.035), new Tyre(0.225, 0.40, 0.4572)).TyreOutline(), new(0, 0.76, 0.31), Point.Left);

    private static readonly RevolvedProfile _bellows =
        new([(0, 0), .. Enumerable.Range(0, 27).Select(k => (0.003 * k, 0.05 + 0.015 * Math.Abs(Math.Sin(Math.PI * k / 13)))), (0.078, 0)]);

    private static readonly RevolvedProfile _tube = new((0, 0), (0, 0.025), (0.3, 0.025), (0.3, 0));

    [Benchmark(OperationsPerInvoke = Places)]
    public double TyreToBellows() => Sum(k => _tyre.GapTo(new RevolvedBody(_bellows, At(k, 0.55, 0.55), Axis(k))).Distance_m);

    [Benchmark(OperationsPerInvoke = Places)]
    public double TyreToTube() => Sum(k => _tyre.GapTo(new RevolvedBody(_tube, At(k, 0.57, 0.25), Axis(k))).Distance_m);

    [Benchmark(OperationsPerInvoke = Places)]
    public double TyreToTieRod() => Sum(k => _tyre.GapTo(new RoundBar(At(k, 0.35, 0.25), At(k, 0.62, 0.25), 0.008)).Distance_m);

    private static double Sum(Func<int, double> gap)
    {
        double sum = 0;
        for (int k = 0; k < Places; k++) sum += gap(k);
        return sum;
    }

    private static Point At(int k, double y, double z) => new(0.03 * Math.Sin(k), y + 0.02 * Math.Sin(2.3 * k), z + 0.05 * Math.Sin(3.7 * k));

    private static Point Axis(int k) => new Point(0.1 * Math.Sin(1.9 * k), -0.2 + 0.1 * Math.Sin(2.9 * k), 1).Unit();
}
