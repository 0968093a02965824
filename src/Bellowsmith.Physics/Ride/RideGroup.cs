namespace Bellowsmith.Physics.Ride;

/// <summary>Corners side by side over their roads, group after group in the same memory.</summary>
internal sealed class RideGroup<T>(double step_s)
    where T : struct, ILane<T>
{
    private const int BlockLength = 16;

    private readonly CornerKernel<T> _kernel = new();
    private readonly RideStatistics<T> _statistics = new(step_s);
    private readonly LaneArray<T> _road = new(BlockLength), _weighted = new(BlockLength);
    private readonly LaneArray<CornerSample<T>> _samples = new(BlockLength);

    /// <summary>Drives no more corners than there are lanes, to the roads' end.</summary>
    public void Drive(ReadOnlySpan<Corner> corners, LaneRoads roads, Span<RideFigures> figures, CancellationToken cancel = default)
    {
        _kernel.Load(corners, step_s);
        _statistics.Load(corners);
        CornerState<T> state = default;
        int settling = (int)Math.Round(RideRun.Settling_s / step_s), length;
        for (int at = 0; at < roads.Length; at += length)
        {
            cancel.ThrowIfCancellationRequested();
            int left = (at < settling ? Math.Min(settling, roads.Length) : roads.Length) - at;
            length = Math.Min(left, Math.Min(BlockLength, _statistics.Wanted));
            roads.Fill(at, _road.Items[..length]);
            _kernel.Advance(ref state, _road.Items[..length], _samples.Items[..length]);
            _statistics.Take(_samples.Items[..length], _weighted.Items[..length], settling: at < settling);
        }

        for (int lane = 0; lane < corners.Length; lane++) figures[lane] = _statistics.Of(lane);
    }
}
