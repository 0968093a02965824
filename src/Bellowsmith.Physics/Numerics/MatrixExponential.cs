namespace Bellowsmith.Physics.Numerics;

/// <summary>
/// exp(A) of a small square matrix, row by row in one array, by scaling and squaring [Moler Van Loan 2003, method 3]: A is
/// halved until its largest row sum is at most 1/2, where fourteen Taylor terms leave less than 3e-17 (0.5¹⁵/15!), and the
/// result is squared back.
/// </summary>
internal static class MatrixExponential
{
    private const int Terms = 14;

    public static double[] Of(ReadOnlySpan<double> matrix, int n)
    {
        int halvings = Math.Max(0, 1 + (int)Math.Ceiling(Math.Log2(LargestRowSum(matrix, n))));
        double[] scaled = matrix.ToArray();
        for (int i = 0; i < scaled.Length; i++) scaled[i] = Math.ScaleB(scaled[i], -halvings);

        // Horner: I + A(I + A/2(I + A/3(…))).
        double[] sum = Identity(n);
        for (int term = Terms; term > 0; term--)
        {
            sum = Product(scaled, sum, n);
            for (int i = 0; i < sum.Length; i++) sum[i] /= term;
            for (int i = 0; i < n; i++) sum[i * n + i] += 1;
        }

        for (int i = 0; i < halvings; i++) sum = Product(sum, sum, n);
        return sum;
    }

    private static double LargestRowSum(ReadOnlySpan<double> matrix, int n)
    {
        double largest = 0;
        for (int i = 0; i < n; i++)
        {
            double sum = 0;
            foreach (double value in matrix.Slice(i * n, n)) sum += Math.Abs(value);
            largest = Math.Max(largest, sum);
        }

        return largest > 0 ? largest : 0.5;
    }

    private static double[] Identity(int n)
    {
        double[] identity = new double[n * n];
        for (int i = 0; i < n; i++) identity[i * n + i] = 1;
        return identity;
    }

    private static double[] Product(ReadOnlySpan<double> a, ReadOnlySpan<double> b, int n)
    {
        double[] product = new double[n * n];
        for (int i = 0; i < n; i++)
            for (int k = 0; k < n; k++)
                for (int j = 0; j < n; j++) product[i * n + j] += a[i * n + k] * b[k * n + j];
        return product;
    }
}
