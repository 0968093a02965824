namespace Bellowsmith.Physics.Ride;

/// <summary>
/// A monotone piecewise cubic written without a look-up: the value at the first knot plus, for each cell, its cubic in
/// t = clamp((x − xⱼ)/wⱼ, 0, 1), which is 0 before the cell and the cell's whole rise after it. Two slopes go on beyond the
/// ends. The same numbers as the curve's own.
/// </summary>
internal sealed class CellSum<T>
    where T : struct, ILane<T>
{
    private const int PerCell = 5, Ends = 5;

    private readonly T[] _terms;

    /// <summary>One curve a lane; null is a curve that is zero everywhere. Curves with fewer cells are filled up with flat ones.</summary>
    public CellSum(ReadOnlySpan<MonotoneCurve?> curves)
    {
        int cells = 0;
        foreach (MonotoneCurve? curve in curves) cells = Math.Max(cells, (curve?.X.Count ?? 1) - 1);
        double[][] numbers = new double[curves.Length][];
        for (int lane = 0; lane < curves.Length; lane++) numbers[lane] = Numbers(curves[lane], cells);
        _terms = Lanes.Gather<T>(numbers);
    }

    public T At(T x)
    {
        ReadOnlySpan<T> terms = _terms;
        T zero = T.All(0), one = T.All(1);
        T value = T.MultiplyAdd(terms[3], T.Min(zero, x - terms[1]), terms[0]);
        value = T.MultiplyAdd(terms[4], T.Max(zero, x - terms[2]), value);
        for (int at = Ends; at + PerCell <= terms.Length; at += PerCell)
        {
            T t = T.Max(zero, T.Min(one, (x - terms[at]) * terms[at + 1]));
            value = T.MultiplyAdd(t, T.MultiplyAdd(t, T.MultiplyAdd(t, terms[at + 4], terms[at + 3]), terms[at + 2]), value);
        }

        return value;
    }

    private static double[] Numbers(MonotoneCurve? curve, int cells)
    {
        double[] numbers = new double[Ends + cells * PerCell];
        if (curve is null) return numbers;
        (numbers[0], numbers[1], numbers[2]) = (curve.Y[0], curve.X[0], curve.X[^1]);
        (numbers[3], numbers[4]) = (curve.At(curve.X[0] - 1).Slope, curve.At(curve.X[^1] + 1).Slope);
        for (int j = 0; j + 1 < curve.X.Count; j++)
        {
            double width = curve.X[j + 1] - curve.X[j], rise = curve.Y[j + 1] - curve.Y[j];
            double first = curve.Slopes[j] * width, last = curve.Slopes[j + 1] * width;
            Span<double> cell = numbers.AsSpan(Ends + j * PerCell, PerCell);
            (cell[0], cell[1]) = (curve.X[j], 1 / width);
            (cell[2], cell[3], cell[4]) = (first, 3 * rise - 2 * first - last, first + last - 2 * rise);
        }

        return numbers;
    }
}
