namespace Bellowsmith.Physics.Ride;

/// <summary>A polynomial of its own in every lane, by Horner's rule.</summary>
internal sealed class LanePolynomial<T>
    where T : struct, ILane<T>
{
    private readonly T[] _powers;

    public LanePolynomial(ReadOnlySpan<Corner> corners, Func<Corner, TravelPolynomial> polynomial)
    {
        int count = 0;
        foreach (Corner corner in corners) count = Math.Max(count, polynomial(corner).Powers.Length);
        double[][] powers = new double[corners.Length][];
        for (int lane = 0; lane < corners.Length; lane++)
        {
            powers[lane] = new double[count];
            polynomial(corners[lane]).Powers.CopyTo(powers[lane], 0);
        }

        _powers = Lanes.Gather<T>(powers);
    }

    public T At(T t)
    {
        ReadOnlySpan<T> powers = _powers;
        T value = powers[^1];
        for (int k = powers.Length - 2; k >= 0; k--) value = T.MultiplyAdd(value, t, powers[k]);
        return value;
    }
}
