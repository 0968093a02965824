namespace Bellowsmith.Physics.Ride;

/// <summary>The curves that stand side by side in a <see cref="KnotSum{T}"/>, one a lane.</summary>
internal sealed class KnotCurves<T>
    where T : struct, ILane<T>
{
    private const int PerPair = 6;

    private readonly LaneArray<KnotLines<T>> _lines = new(1);
    private readonly LaneArray<KnotPair<T>> _pairs = new();

    public KnotSum<T> Sum => new(in _lines.Items[0], _pairs.Items);

    /// <summary>Takes curves about the knot nearest zero, so that a damper at rest gives exactly nothing.</summary>
    public void Load(ReadOnlySpan<Corner> corners, Func<Corner, MonotoneCurve> curve) => Gather(corners, c => KnotNumbers.Of(curve(c)));

    /// <summary>Takes stops: the part above the centre is the bump stop, the part below the top-out stop.</summary>
    public void LoadStops(ReadOnlySpan<Corner> corners) => Gather(corners, c => KnotNumbers.OfStops(c.BumpStop, c.TopOut));

    private void Gather(ReadOnlySpan<Corner> corners, Func<Corner, KnotNumbers> numbers)
    {
        KnotNumbers[] lanes = new KnotNumbers[corners.Length];
        for (int lane = 0; lane < lanes.Length; lane++) lanes[lane] = numbers(corners[lane]);
        int pairs = lanes.Max(lane => Math.Max(lane.Up.Length, lane.Down.Length));
        Lanes.Gather<T, KnotLines<T>>(Array.ConvertAll(lanes, lane => lane.Lines), _lines);
        Lanes.Gather<T, KnotPair<T>>(Array.ConvertAll(lanes, lane => Row(lane, pairs)), _pairs);
    }

    // Knots that a curve lacks are filled up with idle ones.
    private static double[] Row(KnotNumbers lane, int pairs)
    {
        double[] row = new double[PerPair * pairs];
        for (int k = 0; k < lane.Up.Length; k++) (row[PerPair * k], row[PerPair * k + 1], row[PerPair * k + 2]) = lane.Up[k];
        for (int k = 0; k < lane.Down.Length; k++) (row[PerPair * k + 3], row[PerPair * k + 4], row[PerPair * k + 5]) = lane.Down[k];
        return row;
    }
}
