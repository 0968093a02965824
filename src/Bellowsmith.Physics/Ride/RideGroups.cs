namespace Bellowsmith.Physics.Ride;

/// <summary>One thread's corners, a group side by side at a time.</summary>
internal sealed class RideGroups(double step_s)
{
    private const int BlockLength = 128;

    /// <summary>The most corners that go side by side.</summary>
    public static int Most => Lane8.Count;

    public void Drive(ReadOnlySpan<Corner> corners, LaneRoads roads, Span<RideFigures> figures, CancellationToken cancel)
    {
        if (corners.Length == 1) Drive<Lane1>(corners, roads, figures, cancel);
        else Drive<Lane8>(corners, roads, figures, cancel);
    }

    internal void Drive<T>(ReadOnlySpan<Corner> corners, LaneRoads roads, Span<RideFigures> figures, CancellationToken cancel)
        where T : struct, ILane<T>
    {
        CornerKernel<T> kernel = new(corners, step_s);
        RideStatistics<T> statistics = new(corners, step_s, RideWeighting.Vertical(1 / step_s));
        CornerState<T> state = default;
        Span<T> road = new T[BlockLength];
        Span<CornerSample<T>> samples = new CornerSample<T>[BlockLength];
        int settling = (int)Math.Round(RideRun.Settling_s / step_s), length;
        for (int at = 0; at < roads.Length; at += length)
        {
            cancel.ThrowIfCancellationRequested();
            length = Math.Min(BlockLength, (at < settling ? Math.Min(settling, roads.Length) : roads.Length) - at);
            roads.Fill(at, road[..length]);
            kernel.Advance(ref state, road[..length], samples[..length]);
            statistics.Take(samples[..length], settling: at < settling);
        }

        for (int lane = 0; lane < figures.Length; lane++) figures[lane] = statistics.Of(lane);
    }
}
