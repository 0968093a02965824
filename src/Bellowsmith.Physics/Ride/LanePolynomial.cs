using System.Runtime.CompilerServices;

namespace Bellowsmith.Physics.Ride;

/// <summary>A polynomial of its own in every lane.</summary>
internal sealed class LanePolynomial<T>
    where T : struct, ILane<T>
{
    private readonly LaneArray<T> _powers = new();

    /// <summary>The greatest first; a lane of a lesser degree begins with zeros.</summary>
    public ReadOnlySpan<T> Powers => _powers.Items;

    public void Load(ReadOnlySpan<Corner> corners, Func<Corner, TravelPolynomial> polynomial)
    {
        int count = 0;
        foreach (Corner corner in corners) count = Math.Max(count, polynomial(corner).Powers.Length);
        double[][] rows = new double[corners.Length][];
        for (int lane = 0; lane < rows.Length; lane++)
        {
            rows[lane] = new double[count];
            polynomial(corners[lane]).Powers.CopyTo(rows[lane], 0);
            Array.Reverse(rows[lane]);
        }

        Lanes.Gather(rows, _powers);
    }

    /// <summary>By Horner's rule.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public static T At(ReadOnlySpan<T> powers, T t)
    {
        T value = powers[0];
        foreach (ref readonly T power in powers[1..]) value = T.MultiplyAdd(value, t, power);
        return value;
    }
}
