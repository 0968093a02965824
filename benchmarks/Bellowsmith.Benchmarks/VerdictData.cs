using System.Runtime.InteropServices;
using Bellowsmith.Quality.Charts;
using Bellowsmith.Quality.Pairs;

namespace Bellowsmith.Benchmarks;

/// <summary>What the verdicts are timed on, the same here and in SciPy: seeded, nearly normal, invented.</summary>
internal static class VerdictData
{
    public const int Points = 1_000_000, Parts = 10, Appraisers = 3, Trials = 3, Clicks = 8, Runs = 5, Units = 200;

    public static RunRule[] Rules { get; } =
    [
        RunRule.BeyondLimit, new(RuleKind.BeyondOnOneSide, 2, 3, 2), new(RuleKind.BeyondOnOneSide, 4, 5, 1), new(RuleKind.BeyondOnOneSide, 8, 8, 0),
    ];

    public static Hand[] Hands { get; } = [.. Enumerable.Range(0, Units).Select(unit => unit < Units / 2 ? Hand.Left : Hand.Right)];

    public static double[] Series() => Normal(1, Points);

    public static double[] Trial()
    {
        double[] noise = Normal(2, Parts * Appraisers * Trials), parts = Normal(3, Parts), appraisers = Normal(4, Appraisers);
        return [.. noise.Select((value, k) => 0.2 * value + parts[k / (Appraisers * Trials)] + 0.2 * appraisers[k / Trials % Appraisers])];
    }

    public static double[] Forces() => [.. Normal(5, Clicks * Runs).Select((value, k) => 400 + 30 * (k % Clicks) + 2 * (k / Clicks) + value)];

    public static double[,] Batch()
    {
        double[] values = Normal(6, 2 * Units);
        double[,] batch = new double[Units, 2];
        for (int k = 0; k < values.Length; k++) batch[k / 2, k % 2] = 900 + 24 * values[k];
        return batch;
    }

    /// <summary>Everything SciPy is asked, as one row of little-endian doubles.</summary>
    public static byte[] Bytes() => [.. MemoryMarshal.AsBytes<double>([.. Series(), .. Trial(), .. Batch().Cast<double>()])];

    // Twelve uniform numbers (splitmix64) less their mean.
    private static double[] Normal(ulong seed, int count)
    {
        double[] values = new double[count];
        ulong state = seed;
        for (int i = 0; i < count; i++)
        {
            double sum = -6;
            for (int k = 0; k < 12; k++)
            {
                ulong z = state += 0x9E3779B97F4A7C15;
                z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
                z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
                sum += ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
            }

            values[i] = sum;
        }

        return values;
    }
}
