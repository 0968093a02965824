namespace Bellowsmith.Physics.Ride;

/// <summary>Turns numbers of corners into lanes; lanes without a corner repeat the last one.</summary>
internal static class Lanes
{
    /// <summary>Row by row of numbers, one row a corner, all as long as the longest: number k of every row side by side.</summary>
    public static void Gather<T>(ReadOnlySpan<double[]> rows, LaneArray<T> lanes)
        where T : struct, ILane<T>
    {
        lanes.Resize(rows[0].Length);
        Span<double> side = stackalloc double[T.Count];
        for (int k = 0; k < rows[0].Length; k++)
        {
            for (int lane = 0; lane < side.Length; lane++) side[lane] = rows[Math.Min(lane, rows.Length - 1)][k];
            lanes.Items[k] = T.Load(side);
        }
    }

    /// <summary>One number of every corner as one lane value.</summary>
    public static T Of<T>(ReadOnlySpan<Corner> corners, Func<Corner, double> number)
        where T : struct, ILane<T>
    {
        Span<double> side = stackalloc double[T.Count];
        for (int lane = 0; lane < side.Length; lane++) side[lane] = number(corners[Math.Min(lane, corners.Length - 1)]);
        return T.Load(side);
    }

    /// <summary>One lane's number.</summary>
    public static double Number<T>(T value, int lane)
        where T : struct, ILane<T>
    {
        Span<double> side = stackalloc double[T.Count];
        value.Store(side);
        return side[lane];
    }
}
