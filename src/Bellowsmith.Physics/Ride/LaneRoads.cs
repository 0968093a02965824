using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>The roads that corners side by side are driven over: one under all of them, or one each, all of one length.</summary>
internal readonly ref struct LaneRoads
{
    private readonly ReadOnlySpan<double> _one;
    private readonly ReadOnlySpan<double[]> _each;

    public LaneRoads(ReadOnlySpan<double> road_m) => _one = road_m;

    public LaneRoads(ReadOnlySpan<double[]> roads_m) => _each = roads_m;

    public int Length => _each.IsEmpty ? _one.Length : _each[0].Length;

    /// <summary>The heights from a step on; lanes without a corner repeat the last one.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Fill<T>(int at, Span<T> heights_m)
        where T : struct, ILane<T>
    {
        if (_each.IsEmpty)
        {
            for (int k = 0; k < heights_m.Length; k++) heights_m[k] = T.All(_one[at + k]);
            return;
        }

        Span<double> side = stackalloc double[T.Count];
        for (int k = 0; k < heights_m.Length; k++)
        {
            for (int lane = 0; lane < side.Length; lane++) side[lane] = _each[Math.Min(lane, _each.Length - 1)][at + k];
            heights_m[k] = T.Load(side);
        }
    }
}
