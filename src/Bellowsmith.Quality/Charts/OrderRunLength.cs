using MathNet.Numerics.Integration;
using MathNet.Numerics.LinearAlgebra;

namespace Bellowsmith.Quality.Charts;

/// <summary>
/// The average run length of a rule that sees only the order of its points. It depends neither on their distribution nor on a
/// lasting shift, so the points may be uniform: with fⱼ(x) the further points expected when the last point is x and j of them
/// rise, <c>fⱼ(x) = 1 + ∫ₓ¹ fⱼ₊₁ + ∫₀ˣ f₂(1 − y) dy</c>, a turn being the same seen upside down; alternation swaps the two
/// integrals' parts. The fⱼ are entire functions, so 64 Gauss-Legendre nodes leave rounding alone: the relative error is below
/// 1e-14 times the answer itself (seen against twice the nodes, and the closed forms of three points). Beyond 1e9 points,
/// where that would show, the answer is infinite.
/// </summary>
internal static class OrderRunLength
{
    // Of the orders whose nodes the library tabulates to the last digit.
    private const int Nodes = 64;
    private const double Longest = 1e9;

    public static double Of(RunRule rule) => Of(rule, Nodes) is var length && length is > 0 and < Longest ? length : double.PositiveInfinity;

    internal static double Of(RunRule rule, int nodes)
    {
        if (rule.Count <= 2) return rule.Count;
        (Matrix<double> below, Vector<double> weights) = Integrals(nodes);
        Matrix<double> above = Matrix<double>.Build.Dense(nodes, nodes, (_, j) => weights[j]) - below;
        Matrix<double> turned = Matrix<double>.Build.Dense(nodes, nodes, (i, j) => below[i, nodes - 1 - j]);
        (Matrix<double> onward, Matrix<double> back) = rule.Kind == RuleKind.RisingOrFalling ? (above, turned) : (turned, above);

        Vector<double> one = Vector<double>.Build.Dense(nodes, 1), constant = one;
        Matrix<double> ofTwo = back; // fⱼ = constant + ofTwo·f₂
        for (int j = rule.Count - 2; j >= 2; j--) (constant, ofTwo) = (one + onward * constant, onward * ofTwo + back);
        Vector<double> two = (Matrix<double>.Build.DenseIdentity(nodes) - ofTwo).Solve(constant);
        return 1 + weights * (one + above * two + turned * two);
    }

    // ∫₀ˣ of the polynomial through the nodes, at each node: Legendre coefficients by the same quadrature, and
    // (2k + 1)·∫Pₖ = Pₖ₊₁ − Pₖ₋₁.
    private static (Matrix<double> Below, Vector<double> Weights) Integrals(int nodes)
    {
        GaussLegendreRule rule = new(-1, 1, nodes);
        double[][] legendre = [.. rule.Abscissas.Select(x => Legendre(x, nodes))];
        Matrix<double> below = Matrix<double>.Build.Dense(nodes, nodes, (i, j) =>
        {
            double sum = legendre[i][1] + 1;
            for (int k = 1; k < nodes; k++) sum += (legendre[i][k + 1] - legendre[i][k - 1]) * legendre[j][k];
            return sum * rule.Weights[j] / 4;
        });
        return (below, Vector<double>.Build.DenseOfArray(rule.Weights) / 2);
    }

    private static double[] Legendre(double x, int highest)
    {
        double[] p = new double[highest + 1];
        (p[0], p[1]) = (1, x);
        for (int k = 1; k < highest; k++) p[k + 1] = ((2 * k + 1) * x * p[k] - k * p[k - 1]) / (k + 1);
        return p;
    }
}
