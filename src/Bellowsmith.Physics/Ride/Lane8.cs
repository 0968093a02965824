using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Bellowsmith.Physics.Ride;

/// <summary>Eight cases side by side; machines without vectors that wide split them by themselves.</summary>
internal readonly struct Lane8(Vector512<double> values) : ILane<Lane8>
{
    private readonly Vector512<double> _values = values;

    public static int Count => 8;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 All(double value) => new(Vector512.Create(value));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Load(ReadOnlySpan<double> values) => new(Vector512.Create(values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Store(Span<double> values) => _values.CopyTo(values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator +(Lane8 a, Lane8 b) => new(a._values + b._values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator -(Lane8 a, Lane8 b) => new(a._values - b._values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 operator *(Lane8 a, Lane8 b) => new(a._values * b._values);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 MultiplyAdd(Lane8 a, Lane8 b, Lane8 c) => new(Vector512.FusedMultiplyAdd(a._values, b._values, c._values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Min(Lane8 a, Lane8 b) => new(Vector512.MinNative(a._values, b._values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Max(Lane8 a, Lane8 b) => new(Vector512.MaxNative(a._values, b._values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Absolute(Lane8 a) => new(Vector512.Abs(a._values));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static Lane8 Positive(Lane8 a) =>
        new(Vector512.ConditionalSelect(Vector512.GreaterThan(a._values, Vector512<double>.Zero), Vector512.Create(1.0), Vector512<double>.Zero));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static bool AnyAbove(Lane8 a, Lane8 b) => Vector512.GreaterThanAny(a._values, b._values);
}
