namespace Bellowsmith.Physics.Ride;

/// <summary>
/// Numbers that move together: a kernel written over a lane type computes one case with <see cref="Lane1"/> and eight side by
/// side with <see cref="Lane8"/>, to the same last bit, because each operation rounds once and alike in both.
/// </summary>
internal interface ILane<T>
    where T : struct, ILane<T>
{
    static abstract int Count { get; }

    static abstract T All(double value);

    static abstract T Load(ReadOnlySpan<double> values);

    void Store(Span<double> values);

    static abstract T operator +(T a, T b);

    static abstract T operator -(T a, T b);

    static abstract T operator *(T a, T b);

    /// <summary>a·b + c, rounded once.</summary>
    static abstract T MultiplyAdd(T a, T b, T c);

    /// <summary>a where a is less, else b.</summary>
    static abstract T Min(T a, T b);

    /// <summary>a where a is greater, else b.</summary>
    static abstract T Max(T a, T b);

    static abstract T Absolute(T a);

    /// <summary>1 where the value is above zero, else 0.</summary>
    static abstract T Positive(T a);

    /// <summary>Whether a is above b in any lane: what is nothing in all of them need not be computed.</summary>
    static abstract bool AnyAbove(T a, T b);
}
