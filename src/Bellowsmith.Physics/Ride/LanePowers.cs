namespace Bellowsmith.Physics.Ride;

/// <summary>
/// Polynomials of wheel travel that are evaluated together, one set a lane: a record of <typeparamref name="TPower"/> holds one
/// coefficient of each, the records run from the greatest power down, ready for Horner's rule.
/// </summary>
internal sealed class LanePowers<T, TPower>
    where T : struct, ILane<T>
    where TPower : struct
{
    private readonly LaneArray<TPower> _powers = new();

    public Span<TPower> Powers => _powers.Items;

    /// <summary>Takes the polynomials in the order of the record's fields; lesser degrees begin with zeros.</summary>
    public void Load(ReadOnlySpan<Corner> corners, params ReadOnlySpan<Func<Corner, TravelPolynomial>> polynomials)
    {
        int count = 0;
        foreach (Corner corner in corners)
            foreach (Func<Corner, TravelPolynomial> polynomial in polynomials) count = Math.Max(count, polynomial(corner).Powers.Length);
        double[][] rows = new double[corners.Length][];
        for (int lane = 0; lane < rows.Length; lane++)
        {
            rows[lane] = new double[count * polynomials.Length];
            for (int i = 0; i < polynomials.Length; i++)
            {
                double[] powers = polynomials[i](corners[lane]).Powers;
                for (int k = 0; k < powers.Length; k++) rows[lane][(count - 1 - k) * polynomials.Length + i] = powers[k];
            }
        }

        Lanes.Gather<T, TPower>(rows, _powers);
    }
}
