using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>Corners side by side over their roads, group after group in the same memory.</summary>
internal sealed class RideGroup<T>(double step_s)
    where T : struct, ILane<T>
{
    private const int BlockLength = 32;

    private readonly CornerKernel<T> _kernel = new();
    private readonly RideStatistics<T> _statistics = new(step_s);
    private readonly LaneArray<T> _road = new(BlockLength);
    private readonly LaneArray<CornerSample<T>> _samples = new(BlockLength);

    /// <summary>Drives no more corners than there are lanes, to the roads' end.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Drive(ReadOnlySpan<Corner> corners, LaneRoads roads, Span<RideFigures> figures, CancellationToken cancel = default)
    {
        _kernel.Load(corners, step_s);
        _statistics.Load(corners);
        CornerState<T> state = default;
        int settling = (int)Math.Round(RideRun.Settling_s / step_s), length;
        for (int at = 0; at < roads.Length; at += length)
        {
            cancel.ThrowIfCancellationRequested();
            if (at == settling) _statistics.Settle();
            length = Math.Min(BlockLength, (at < settling ? Math.Min(settling, roads.Length) : roads.Length) - at);
            Span<T> road = _road.Items[..length];
            Span<CornerSample<T>> samples = _samples.Items[..length];
            roads.Fill(at, road);
            _kernel.Advance(ref state, road, samples);
            _statistics.Take(samples);
        }

        if (roads.Length < settling) _statistics.Settle();
        for (int lane = 0; lane < corners.Length; lane++) figures[lane] = _statistics.Of(lane);
    }
}
