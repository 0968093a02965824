using System.Runtime.InteropServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>Turns numbers of corners into lanes and back; lanes without a corner repeat the last one.</summary>
internal static class Lanes
{
    /// <summary>Rows of numbers, one a corner and all of one length: number k of every row side by side, in records of lanes.</summary>
    public static void Gather<T, TItem>(ReadOnlySpan<double[]> rows, LaneArray<TItem> items)
        where T : struct, ILane<T>
        where TItem : struct
    {
        items.Resize<T>(rows[0].Length);
        Span<T> lanes = MemoryMarshal.Cast<TItem, T>(items.Items);
        Span<double> side = stackalloc double[T.Count];
        for (int k = 0; k < lanes.Length; k++)
        {
            for (int lane = 0; lane < side.Length; lane++) side[lane] = rows[Math.Min(lane, rows.Length - 1)][k];
            lanes[k] = T.Load(side);
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
