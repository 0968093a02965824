using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>
/// A monotone piecewise cubic written without a look-up: a straight line through the knot nearest zero and, from there
/// outwards, at every knot the u²·(a + b·u) by which the curve parts from the cubic before it, u the way past that knot and 0
/// before it. Two straight lines go on beyond the ends. Within 1e-9 of its span the curve's own numbers.
/// </summary>
internal readonly ref struct KnotSum<T>(ref readonly KnotEnds<T> ends, ReadOnlySpan<Knot<T>> up, ReadOnlySpan<Knot<T>> down)
    where T : struct, ILane<T>
{
    private readonly ref readonly KnotEnds<T> _ends = ref ends;
    private readonly ReadOnlySpan<Knot<T>> _up = up, _down = down;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public T At(T x)
    {
        T zero = T.All(0), inside = T.Max(_ends.First, T.Min(_ends.Last, x)), beyond = x - inside;
        T up = T.MultiplyAdd(_ends.Above, T.Max(zero, beyond), T.MultiplyAdd(_ends.Slope, inside - _ends.Centre, _ends.Value));
        T down = _ends.Below * T.Min(zero, beyond);
        foreach (ref readonly Knot<T> knot in _up)
        {
            T u = T.Max(zero, inside - knot.X);
            up = T.MultiplyAdd(u * u, T.MultiplyAdd(u, knot.Cube, knot.Square), up);
        }

        foreach (ref readonly Knot<T> knot in _down)
        {
            T u = T.Min(zero, inside - knot.X);
            down = T.MultiplyAdd(u * u, T.MultiplyAdd(u, knot.Cube, knot.Square), down);
        }

        return up + down;
    }
}

/// <summary>Where the line stands and how steep it is, the first and last knot and the slopes beyond them.</summary>
internal struct KnotEnds<T>
    where T : struct, ILane<T>
{
    public T Centre, Value, Slope, First, Last, Below, Above;
}

/// <summary>Where a knot stands and how the cubic changes there.</summary>
internal struct Knot<T>
    where T : struct, ILane<T>
{
    public T X, Square, Cube;
}
