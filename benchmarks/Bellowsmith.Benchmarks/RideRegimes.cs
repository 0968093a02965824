using System.Runtime.Intrinsics;
using Bellowsmith.Physics;
using BenchmarkDotNet.Attributes;

namespace Bellowsmith.Benchmarks;

/// <summary>A second of one corner's ride with everything counted, and a second of this machine's fused multiply-adds.</summary>
public class RideRegimes
{
    private const int Chains = 10, Links = 10_000;

    private readonly Corner[] _corners = RideDrive.All();
    private readonly double[] _road = RideDrive.Road();
    private readonly RideFigures[] _figures = new RideFigures[RideDrive.Corners];

    [Benchmark(OperationsPerInvoke = RideDrive.Corners * (int)RideDrive.Time_s)]
    public RideFigures OnTwoThreads() => On(2);

    [Benchmark(OperationsPerInvoke = RideDrive.Corners * (int)RideDrive.Time_s)]
    public RideFigures OnOneThread() => On(1);

    [Benchmark(OperationsPerInvoke = (int)RideDrive.Time_s)]
    public RideFigures OneByOne() => RideRun.Over([_corners[0]], _road)[0];

    /// <summary>One multiply-add of eight numbers, with as many under way at once as keep the machine busy: its peak on one core.</summary>
    [Benchmark(OperationsPerInvoke = Chains * Links)]
    public Vector512<double> MultiplyAdd()
    {
        Vector512<double> a = default, b = a, c = a, d = a, e = a, f = a, g = a, h = a, i = a, j = a, half = Vector512.Create(0.5);
        for (int k = 0; k < Links; k++)
        {
            (a, b) = (Vector512.FusedMultiplyAdd(a, half, half), Vector512.FusedMultiplyAdd(b, half, half));
            (c, d) = (Vector512.FusedMultiplyAdd(c, half, half), Vector512.FusedMultiplyAdd(d, half, half));
            (e, f) = (Vector512.FusedMultiplyAdd(e, half, half), Vector512.FusedMultiplyAdd(f, half, half));
            (g, h) = (Vector512.FusedMultiplyAdd(g, half, half), Vector512.FusedMultiplyAdd(h, half, half));
            (i, j) = (Vector512.FusedMultiplyAdd(i, half, half), Vector512.FusedMultiplyAdd(j, half, half));
        }

        return a + b + c + d + e + f + g + h + i + j;
    }

    private RideFigures On(int threads)
    {
        RideRun.Over(_corners, _road, _figures, threads, CancellationToken.None);
        return _figures[0];
    }
}
