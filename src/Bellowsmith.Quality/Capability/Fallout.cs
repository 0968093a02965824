using MathNet.Numerics.Distributions;

namespace Bellowsmith.Quality.Capability;

/// <summary>
/// The share of normal parts beyond the limits, <c>Φ(−3Cpl) + Φ(−3Cpu)</c>, with its 95 % interval: exact with one limit; with two, each
/// side takes half of the 5 % and the sums hold at least 95 %.
/// </summary>
/// <param name="Below">Null without a lower limit.</param>
/// <param name="Above">Null without an upper limit.</param>
/// <param name="Total">Both.</param>
/// <param name="Low">Of the total.</param>
/// <param name="High">Of the total.</param>
public sealed record Fallout(double? Below, double? Above, double Total, double Low, double High)
{
    public static Fallout Of(CapabilityIndices indices)
    {
        double miss = (1 - CapabilityIndices.Confidence) / (indices.Cpl is null || indices.Cpu is null ? 1 : 2);
        double total = 0, low = 0, high = 0;
        foreach (IndexEstimate? side in (IndexEstimate?[])[indices.Cpl, indices.Cpu])
        {
            if (side is null) continue;
            (double least, double greatest) = NoncentralBound.ShareBeyond(side.Value, indices.Count, 1 - miss);
            (total, low, high) = (total + Share(side), low + least, high + greatest);
        }

        return new(indices.Cpl is { } l ? Share(l) : null, indices.Cpu is { } u ? Share(u) : null, total, low, Math.Min(high, 1));
    }

    private static double Share(IndexEstimate side) => Normal.CDF(0, 1, -3 * side.Value);
}
