using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>
/// A monotone piecewise cubic written without a look-up: a straight line through its centre knot and, from there outwards, at
/// every knot the u²·(a + b·u) by which the curve parts from the cubic before it, u the way past that knot and 0 before it.
/// Two straight lines go on beyond the ends. The curve's own numbers within 1e-12 of its span where no cell is narrower than a
/// fiftieth of it, within 1e-6 down to a thousandth.
/// </summary>
internal readonly ref struct KnotSum<T>(ref readonly KnotLines<T> lines, ReadOnlySpan<KnotPair<T>> pairs)
    where T : struct, ILane<T>
{
    private readonly ref readonly KnotLines<T> _lines = ref lines;
    private readonly ReadOnlySpan<KnotPair<T>> _pairs = pairs;

    /// <summary>The two parts that add up to the curve: the line and what the knots above the centre add, and what those below do.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (T Up, T Down) At(T x)
    {
        T zero = T.All(0), inside = x, value = _lines.Value, down = zero;
        if (T.AnyAbove(T.Absolute(x), _lines.Reach))
        {
            inside = T.Max(_lines.First, T.Min(_lines.Last, x));
            value = T.MultiplyAdd(_lines.Above, T.Max(zero, x - inside), value);
            down = _lines.Below * T.Min(zero, x - inside);
        }

        T up = T.MultiplyAdd(_lines.Slope, inside - _lines.Centre, value);
        foreach (ref readonly KnotPair<T> knot in _pairs)
        {
            T above = T.Max(zero, inside - knot.Up), below = T.Min(zero, inside - knot.Down);
            up = T.MultiplyAdd(above * above, T.MultiplyAdd(above, knot.UpCube, knot.UpSquare), up);
            down = T.MultiplyAdd(below * below, T.MultiplyAdd(below, knot.DownCube, knot.DownSquare), down);
        }

        return (up, down);
    }
}

/// <summary>The line through the centre, the first and last knot, the slopes beyond them, and how far either way no knot is passed.</summary>
internal struct KnotLines<T>
    where T : struct, ILane<T>
{
    public T Centre, Value, Slope, First, Last, Below, Above, Reach;
}

/// <summary>Two knots, equally many from the centre: where they stand and how the cubic changes there.</summary>
internal struct KnotPair<T>
    where T : struct, ILane<T>
{
    public T Up, UpSquare, UpCube, Down, DownSquare, DownCube;
}
