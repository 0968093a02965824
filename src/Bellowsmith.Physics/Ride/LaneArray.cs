using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>Lanes, or records of nothing but lanes, that start on a cache line: a wide vector that straddles two loads half as fast.</summary>
internal sealed class LaneArray<TItem>
    where TItem : struct
{
    private const int LineLength = 8;

    private double[] _numbers = [];
    private int _first, _length;

    public LaneArray(int count = 0) => Resize<TItem>(count);

    public Span<TItem> Items => MemoryMarshal.Cast<double, TItem>(_numbers.AsSpan(_first, _length));

    /// <summary>Makes room for so many items, or parts of items; what stood there is lost.</summary>
    public void Resize<TPart>(int count)
        where TPart : struct
    {
        _length = count * Unsafe.SizeOf<TPart>() / sizeof(double);
        if (_length + LineLength <= _numbers.Length) return;
        _numbers = GC.AllocateArray<double>(_length + LineLength, pinned: true);
        long address = Marshal.UnsafeAddrOfPinnedArrayElement(_numbers, 0);
        _first = (int)(-(address / sizeof(double)) & (LineLength - 1));
    }
}
