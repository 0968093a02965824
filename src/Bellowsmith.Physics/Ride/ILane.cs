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

    static abstract T operator /(T a, T b);

    /// <summary>a·b + c, rounded once.</summary>
    static abstract T MultiplyAdd(T a, T b, T c);

    static abstract T Min(T a, T b);

    static abstract T Max(T a, T b);

    /// <summary>1 where the value is above zero, else 0.</summary>
    static abstract T Positive(T a);
}
