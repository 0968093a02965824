using System.Runtime.InteropServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>The curves that stand side by side in a <see cref="KnotSum{T}"/>, one a lane.</summary>
internal sealed class KnotCurves<T>
    where T : struct, ILane<T>
{
    private const int Ends = 7, PerKnot = 3;

    private readonly LaneArray<T> _lanes = new();
    private int _up;

    public KnotSum<T> Sum
    {
        get
        {
            Span<T> lanes = _lanes.Items;
            Span<Knot<T>> knots = MemoryMarshal.Cast<T, Knot<T>>(lanes[Ends..]);
            return new(in MemoryMarshal.Cast<T, KnotEnds<T>>(lanes[..Ends])[0], knots[.._up], knots[_up..]);
        }
    }

    /// <summary>Null is a curve that is zero everywhere; curves with fewer knots are filled up with idle ones.</summary>
    public void Load(ReadOnlySpan<Corner> corners, Func<Corner, MonotoneCurve?> curve)
    {
        int up = 0, down = 0;
        foreach (Corner corner in corners)
        {
            if (curve(corner) is not { } here) continue;
            int centre = Centre(here);
            (up, down) = (Math.Max(up, here.X.Count - 1 - centre), Math.Max(down, centre));
        }

        double[][] rows = new double[corners.Length][];
        for (int lane = 0; lane < rows.Length; lane++)
        {
            rows[lane] = new double[Ends + PerKnot * (up + down)];
            if (curve(corners[lane]) is { } here) Write(here, rows[lane], up);
        }

        _up = up;
        Lanes.Gather(rows, _lanes);
    }

    private static void Write(MonotoneCurve curve, Span<double> row, int up)
    {
        int centre = Centre(curve), last = curve.X.Count - 1;
        (row[0], row[1], row[2]) = (curve.X[centre], curve.Y[centre], curve.Slopes[centre]);
        (row[3], row[4]) = (curve.X[0], curve.X[last]);
        (row[5], row[6]) = (curve.At(curve.X[0] - 1).Slope, curve.At(curve.X[last] + 1).Slope);
        for (int j = centre; j < last; j++)
            Write(curve.X[j], Start(curve, j), j == centre ? default : End(curve, j - 1), row[(Ends + PerKnot * (j - centre))..]);
        for (int j = centre; j > 0; j--)
            Write(curve.X[j], End(curve, j - 1), j == centre ? default : Start(curve, j), row[(Ends + PerKnot * (up + centre - j))..]);
    }

    private static void Write(double x, (double Square, double Cube) beyond, (double Square, double Cube) before, Span<double> knot) =>
        (knot[0], knot[1], knot[2]) = (x, beyond.Square - before.Square, beyond.Cube - before.Cube);

    // The zero that a damper and a stop stand at, so that they give exactly nothing there.
    private static int Centre(MonotoneCurve curve)
    {
        int centre = 0;
        for (int j = 1; j < curve.X.Count; j++)
            if (Math.Abs(curve.Y[j]) < Math.Abs(curve.Y[centre])) centre = j;
        return centre;
    }

    // A cell's cubic by powers of the way from its start, and from its end.
    private static (double Square, double Cube) Start(MonotoneCurve curve, int j)
    {
        double width = curve.X[j + 1] - curve.X[j], secant = (curve.Y[j + 1] - curve.Y[j]) / width;
        return ((3 * secant - 2 * curve.Slopes[j] - curve.Slopes[j + 1]) / width, (curve.Slopes[j] + curve.Slopes[j + 1] - 2 * secant) / (width * width));
    }

    private static (double Square, double Cube) End(MonotoneCurve curve, int j)
    {
        (double square, double cube) = Start(curve, j);
        return (square + 3 * cube * (curve.X[j + 1] - curve.X[j]), cube);
    }
}
