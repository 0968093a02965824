using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>One case: the scalar twin of the wide lanes.</summary>
internal readonly struct Lane1(double value) : ILane<Lane1>
{
    private readonly double _value = value;

    public double Value => _value;

    public static int Count => 1;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 All(double value) => new(value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Load(ReadOnlySpan<double> values) => new(values[0]);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values) => values[0] = _value;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator +(Lane1 a, Lane1 b) => new(a._value + b._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator -(Lane1 a, Lane1 b) => new(a._value - b._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 operator *(Lane1 a, Lane1 b) => new(a._value * b._value);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 MultiplyAdd(Lane1 a, Lane1 b, Lane1 c) => new(Math.FusedMultiplyAdd(a._value, b._value, c._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Min(Lane1 a, Lane1 b) => new(double.MinNative(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Max(Lane1 a, Lane1 b) => new(double.MaxNative(a._value, b._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Absolute(Lane1 a) => new(Math.Abs(a._value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane1 Positive(Lane1 a) => new(a._value > 0 ? 1 : 0);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AnyAbove(Lane1 a, Lane1 b) => a._value > b._value;
}
