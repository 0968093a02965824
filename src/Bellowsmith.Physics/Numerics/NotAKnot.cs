namespace Bellowsmith.Physics.Numerics;

/// <summary>Slopes at the points of the cubic spline whose third derivative is continuous at the second and last-but-one
/// point [de Boor 1978, ch. IV].</summary>
internal static class NotAKnot
{
    public static double[] Slopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        int n = x.Length;
        if (n == 2) return [(y[1] - y[0]) / (x[1] - x[0]), (y[1] - y[0]) / (x[1] - x[0])];
        if (n == 3) return Parabola(x, y);

        double[] below = new double[n], diagonal = new double[n], above = new double[n], slopes = new double[n];
        for (int i = 1; i < n - 1; i++)
        {
            double left = x[i] - x[i - 1], right = x[i + 1] - x[i];
            below[i] = right;
            diagonal[i] = 2 * (left + right);
            above[i] = left;
            slopes[i] = 3 * (right * (y[i] - y[i - 1]) / left + left * (y[i + 1] - y[i]) / right);
        }

        (diagonal[0], above[0], slopes[0]) = End(x[1] - x[0], x[2] - x[1], y[0], y[1], y[2], 1);
        (diagonal[n - 1], below[n - 1], slopes[n - 1]) =
            End(x[n - 1] - x[n - 2], x[n - 2] - x[n - 3], y[n - 1], y[n - 2], y[n - 3], -1);
        SolveTridiagonal(below, diagonal, above, slopes);
        return slopes;
    }

    private static (double Diagonal, double Beside, double Right) End(
        double outer, double inner, double y0, double y1, double y2, int sign)
    {
        double both = outer + inner, first = sign * (y1 - y0) / outer, second = sign * (y2 - y1) / inner;
        return (inner, both, ((outer + 2 * both) * inner * first + outer * outer * second) / both);
    }

    private static double[] Parabola(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        double first = (y[1] - y[0]) / (x[1] - x[0]), second = (y[2] - y[1]) / (x[2] - x[1]);
        double curvature = (second - first) / (x[2] - x[0]);
        return [first - curvature * (x[1] - x[0]), first + curvature * (x[1] - x[0]), second + curvature * (x[2] - x[1])];
    }

    private static void SolveTridiagonal(double[] below, double[] diagonal, double[] above, double[] right)
    {
        int n = right.Length;
        for (int i = 1; i < n; i++)
        {
            double factor = below[i] / diagonal[i - 1];
            diagonal[i] -= factor * above[i - 1];
            right[i] -= factor * right[i - 1];
        }

        right[n - 1] /= diagonal[n - 1];
        for (int i = n - 2; i >= 0; i--) right[i] = (right[i] - above[i] * right[i + 1]) / diagonal[i];
    }
}
