namespace Bellowsmith.Physics.Ride;

/// <summary>Turns one row of numbers a case into lanes, and cases into full sets of lanes.</summary>
internal static class Lanes
{
    /// <summary>Number k of every case side by side; lanes without a case repeat the last one.</summary>
    public static T[] Gather<T>(ReadOnlySpan<double[]> cases)
        where T : struct, ILane<T>
    {
        T[] lanes = new T[cases[0].Length];
        Span<double> side = stackalloc double[T.Count];
        for (int k = 0; k < lanes.Length; k++)
        {
            for (int lane = 0; lane < side.Length; lane++) side[lane] = cases[Math.Min(lane, cases.Length - 1)][k];
            lanes[k] = T.Load(side);
        }

        return lanes;
    }

    /// <summary>One number of every case as one lane value.</summary>
    public static T Of<T>(ReadOnlySpan<Corner> corners, Func<Corner, double> number)
        where T : struct, ILane<T>
    {
        Span<double> side = stackalloc double[T.Count];
        for (int lane = 0; lane < side.Length; lane++) side[lane] = number(corners[Math.Min(lane, corners.Length - 1)]);
        return T.Load(side);
    }
}
