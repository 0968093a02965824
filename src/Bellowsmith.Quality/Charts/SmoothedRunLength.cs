using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;

namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Average run lengths of charts whose points carry their past along, from their integral equations, solved at Gauss-Legendre
/// nodes (Nyström) [Lucas Saccucci 1990] [Lucas Crosier 1982]. The kernel is a normal density, so the error falls faster than
/// any power of the number of nodes; with four and more nodes to its standard deviation it is below 1e-8 of the answer.
/// What lasts beyond 1e9 points is infinite: rounding grows with the answer.
/// </summary>
public static class SmoothedRunLength
{
    private const double NodesPerSigma = 8, Longest = 1e9;

    // Orders whose nodes the library tabulates to the last digit.
    private static readonly int[] _orders = [64, 96, 128, 256, 512];

    /// <summary>
    /// Exponentially weighted average with steady limits, begun at its target:
    /// <c>L(z) = 1 + (1/λ)·∫ L(y)·φ((y − (1 − λ)z)/λ − δ) dy</c> within <c>±width·√(λ/(2 − λ))</c>.
    /// </summary>
    /// <param name="weight">λ, weight of the newest point, above 0 and up to 1.</param>
    /// <param name="width">Limits in standard deviations of the average.</param>
    /// <param name="shift_sigma">How far the mean has moved, in standard deviations of a single point.</param>
    public static double Ewma(double weight, double width, double shift_sigma)
    {
        if (width <= 0) return 1;
        double reach = width * Math.Sqrt(weight / (2 - weight));
        return Solve(-reach, reach, weight, 0, (y, z) => Normal.PDF(0, 1, (y - (1 - weight) * z) / weight - shift_sigma) / weight, null);
    }

    /// <summary>
    /// Two-sided cumulative sum begun at zero: <c>1/L = 1/L₊ + 1/L₋</c>, each side from
    /// <c>L(s) = 1 + L(0)·Φ(k − s − δ) + ∫₀ʰ L(y)·φ(y + k − s − δ) dy</c>.
    /// </summary>
    /// <param name="allowance_sigma">k, what each step forgives.</param>
    /// <param name="decision_sigma">h, beyond which the sum signals.</param>
    /// <param name="shift_sigma">How far the mean has moved.</param>
    public static double Cusum(double allowance_sigma, double decision_sigma, double shift_sigma) =>
        1 / (1 / OneSided(allowance_sigma, decision_sigma, shift_sigma) + 1 / OneSided(allowance_sigma, decision_sigma, -shift_sigma));

    /// <summary>The price of an exponentially weighted average with steady limits.</summary>
    public static RulePrice EwmaPrice(double weight, double width) => RulePrice.Of(shift => Ewma(weight, width, shift));

    /// <summary>The price of a two-sided cumulative sum.</summary>
    public static RulePrice CusumPrice(double allowance_sigma, double decision_sigma) =>
        RulePrice.Of(shift => Cusum(allowance_sigma, decision_sigma, shift));

    private static double OneSided(double k, double h, double shift) => h <= 0
        ? 1 / Normal.CDF(0, 1, shift - k)
        : Solve(0, h, 1, 0, (y, s) => Normal.PDF(0, 1, y + k - s - shift), s => Normal.CDF(0, 1, k - s - shift));

    // L(start) of L(u) = 1 + atom(u)·L(start) + ∫ kernel(y, u)·L(y) dy; the start is the last unknown.
    private static double Solve(
        double low, double high, double kernelWidth, double start, Func<double, double, double> kernel, Func<double, double>? atStart)
    {
        int nodes = _orders.FirstOrDefault(order => order >= NodesPerSigma * (high - low) / kernelWidth, _orders[^1]);
        GaussLegendreRule rule = new(low, high, nodes);
        double[] at = [.. rule.Abscissas, start], weights = [.. rule.Weights, 0];
        Matrix<double> system = Matrix<double>.Build.Dense(nodes + 1, nodes + 1, (i, j) =>
            (i == j ? 1 : 0) - weights[j] * kernel(at[j], at[i]) - (j == nodes && atStart is not null ? atStart(at[i]) : 0));
        return system.Solve(Vector<double>.Build.Dense(nodes + 1, 1))[nodes] is var length && length is > 0 and < Longest ? length : double.PositiveInfinity;
    }
}
