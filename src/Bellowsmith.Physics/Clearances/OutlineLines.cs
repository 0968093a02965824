using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Bellowsmith.Physics.Clearances;

/// <summary>The lines of an outline that are surface, laid out so that four are asked at once. A line on the axis is none.</summary>
internal sealed class OutlineLines
{
    private const int Wide = 4;

    // One array after the other: starts, run, 1 / length², and run along per run outward.
    private readonly Vector256<double>[] _x, _y, _dx, _dy, _perSquare, _slope;

    public OutlineLines(ReadOnlySpan<double> along, ReadOnlySpan<double> radius)
    {
        Span<int> surface = new int[along.Length - 1];
        for (int k = 0; k + 1 < along.Length; k++)
            if (radius[k] > 0 || radius[k + 1] > 0) surface[Count++] = k;
        int vectors = (Count + Wide - 1) / Wide;
        (_x, _y, _dx, _dy, _perSquare, _slope) = (Far(), Far(), new Vector256<double>[vectors], new Vector256<double>[vectors], new Vector256<double>[vectors], new Vector256<double>[vectors]);
        for (int k = 0; k < Count; k++)
        {
            int from = surface[k];
            double dx = along[from + 1] - along[from], dy = radius[from + 1] - radius[from], square = dx * dx + dy * dy;
            (Of(_x)[k], Of(_y)[k], Of(_dx)[k], Of(_dy)[k]) = (along[from], radius[from], dx, dy);
            (Of(_perSquare)[k], Of(_slope)[k]) = (square > 0 ? 1 / square : 0, dy != 0 ? dx / dy : 0);
        }

        (double least, double greatest) = (along[0], along[0]);
        foreach (double x in along) (least, greatest) = (Math.Min(least, x), Math.Max(greatest, x));
        (Middle_m, HalfLength_m) = ((least + greatest) / 2, (greatest - least) / 2);
        foreach (double y in radius) GreatestRadius_m = Math.Max(GreatestRadius_m, y);

        // What fills the last vector lies where nothing is near it.
        Vector256<double>[] Far()
        {
            var far = new Vector256<double>[vectors];
            Array.Fill(far, Vector256.Create(1e30));
            return far;
        }
    }

    public int Count { get; }

    public double Middle_m { get; }

    public double HalfLength_m { get; }

    public double GreatestRadius_m { get; }

    public (double X, double Y, double Dx, double Dy) Line(int k) => (Of(_x)[k], Of(_y)[k], Of(_dx)[k], Of(_dy)[k]);

    /// <summary>Its place nearest to one asked for.</summary>
    public (double Along, double Radius) Foot(int k, double along, double radius)
    {
        (double x, double y, double dx, double dy) = Line(k);
        double share = Math.Clamp(((along - x) * dx + (radius - y) * dy) * Of(_perSquare)[k], 0, 1);
        return (x + share * dx, y + share * dy);
    }

    public double Outside_m(double along, double radius)
    {
        Vector256<double> least = Vector256.Create(double.PositiveInfinity);
        bool inside = false;
        for (int i = 0; i < _x.Length; i++) least = Vector256.Min(least, Square(i, along, radius, ref inside));
        double nearest = Math.Sqrt(Least(least));
        return inside ? -nearest : nearest;
    }

    public double Outside_m(double along, double radius, out int line)
    {
        Span<double> squares = stackalloc double[Wide];
        double least = double.PositiveInfinity;
        bool inside = false;
        line = 0;
        for (int i = 0; i < _x.Length; i++)
        {
            Square(i, along, radius, ref inside).CopyTo(squares);
            for (int k = 0; k < Wide; k++)
                if (squares[k] < least) (least, line) = (squares[k], i * Wide + k);
        }

        return inside ? -Math.Sqrt(least) : Math.Sqrt(least);
    }

    /// <summary>Whether a patch may reach any line within a distance; if so, whether its angle brings it nearer than its length.</summary>
    public bool Within(in PatchBound patch, double distance, ref bool narrow)
    {
        Vector256<double> byTurnOverRun = default, any = default, limit = Vector256.Create(distance);
        for (int i = 0; i < _x.Length; i++)
        {
            (Vector256<double> x, Vector256<double> y) = Off(i, patch.Along, patch.Radius);
            Vector256<double> apart = Vector256.Sqrt(x * x + y * y);
            (Vector256<double> byRun, Vector256<double> byTurn) = patch.Fall(x / apart, y / apart);
            Vector256<double> within = Vector256.LessThan(apart - limit, Vector256.Min(byRun + byTurn, Vector256.Create(patch.Reach)));
            any |= within;
            byTurnOverRun += within & (byTurn - byRun);
        }

        narrow = Vector256.Sum(byTurnOverRun) > 0;
        return any != default;
    }

    // The square of the distance from four lines; a line outward of the place that runs past its radius turns inside to outside.
    private Vector256<double> Square(int i, double along, double radius, ref bool inside)
    {
        Vector256<double> x = Vector256.Create(along) - _x[i], r = Vector256.Create(radius), y = r - _y[i];
        Vector256<double> passes = Vector256.GreaterThan(_y[i], r) ^ Vector256.GreaterThan(_y[i] + _dy[i], r);
        uint crossed = Vector256.ExtractMostSignificantBits(passes & Vector256.LessThan(x, y * _slope[i]));
        inside ^= (BitOperations.PopCount(crossed) & 1) != 0;
        (x, y) = Off(i, along, radius);
        return x * x + y * y;
    }

    // From the nearest places of four lines to the place asked for.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private (Vector256<double> X, Vector256<double> Y) Off(int i, double along, double radius)
    {
        Vector256<double> x = Vector256.Create(along) - _x[i], y = Vector256.Create(radius) - _y[i], dx = _dx[i], dy = _dy[i];
        Vector256<double> share = Vector256.Min(Vector256.Max((x * dx + y * dy) * _perSquare[i], Vector256<double>.Zero), Vector256<double>.One);
        return (x - share * dx, y - share * dy);
    }

    private static double Least(Vector256<double> v)
    {
        Vector128<double> pair = Vector128.Min(v.GetLower(), v.GetUpper());
        return Math.Min(pair.GetElement(0), pair.GetElement(1));
    }

    private static Span<double> Of(Vector256<double>[] vectors) => MemoryMarshal.Cast<Vector256<double>, double>(vectors.AsSpan());
}
