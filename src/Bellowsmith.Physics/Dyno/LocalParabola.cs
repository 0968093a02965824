using Bellowsmith.Physics.Numerics;

namespace Bellowsmith.Physics.Dyno;

/// <summary>The value at a phase of the parabola that fits the samples about it best; phases go round.</summary>
internal static class LocalParabola
{
    private const double Reach_rad = 0.2, Widest_rad = 0.8;
    private const int Terms = 3, LeastSamples = 5;

    public static double At(double[] phases, double[] values, double phase)
    {
        for (double reach = Reach_rad; reach <= Widest_rad; reach *= 2)
            if (Within(phases, values, phase, reach) is { } value) return value;
        return double.NaN;
    }

    // Null where too few samples lie within reach.
    private static double? Within(double[] phases, double[] values, double phase, double reach)
    {
        Span<double> matrix = stackalloc double[Terms * Terms], right = stackalloc double[Terms];
        int count = 0;
        for (int k = 0; k < phases.Length; k++)
        {
            double away = Math.IEEERemainder(phases[k] - phase, 2 * Math.PI) / reach;
            if (Math.Abs(away) > 1) continue;
            count++;
            ReadOnlySpan<double> powers = [1, away, away * away];
            for (int i = 0; i < Terms; i++)
            {
                right[i] += powers[i] * values[k];
                for (int j = 0; j <= i; j++) matrix[i * Terms + j] += powers[i] * powers[j];
            }
        }

        if (count < LeastSamples || !Cholesky.Factor(matrix, Terms)) return null;
        Cholesky.Solve(matrix, Terms, right);
        return double.IsFinite(right[0]) ? right[0] : null;
    }
}
