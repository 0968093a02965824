namespace Bellowsmith.Quality.Calibration;

/// <summary>
/// Linear least squares by Householder reflections [Golub VanLoan 1996, alg. 5.2.1]: twice the digits that normal equations
/// keep on powers of one variable.
/// </summary>
internal sealed class LeastSquares
{
    // A column that the ones before it leave less of than this says nothing of its own.
    private const double Dependent = 1e-13;

    private readonly double[][] _inverse;

    private LeastSquares(double[] solution, double[][] inverse, double residualSquares) =>
        (Solution, _inverse, ResidualSquares) = (solution, inverse, residualSquares);

    public double[] Solution { get; }

    /// <summary>Σ(y − fit)².</summary>
    public double ResidualSquares { get; }

    /// <summary>Null where the columns depend on one another, or are more than the rows.</summary>
    public static LeastSquares? Solve(double[][] columns, double[] right)
    {
        int n = right.Length, p = columns.Length;
        if (n < p) return null;
        double[][] a = [.. columns.Select(column => (double[])column.Clone())];
        double[] b = (double[])right.Clone();
        double[] diagonal = new double[p];
        for (int k = 0; k < p; k++)
        {
            double whole = Norm(columns[k], 0), rest = Norm(a[k], k);
            if (!(rest > Dependent * whole)) return null;
            diagonal[k] = a[k][k] > 0 ? -rest : rest;
            a[k][k] -= diagonal[k];
            double half = diagonal[k] * a[k][k]; // −½‖v‖²
            for (int j = k + 1; j < p; j++) Reflect(a[k], a[j], k, half);
            Reflect(a[k], b, k, half);
        }

        double[][] inverse = InverseOfTriangle(a, diagonal);
        double[] solution = new double[p];
        for (int i = 0; i < p; i++)
            for (int j = i; j < p; j++) solution[i] += inverse[i][j] * b[j];
        double squares = 0;
        foreach (double left in b.AsSpan(p)) squares += left * left;
        return new(solution, inverse, squares);
    }

    /// <summary>vᵀ(AᵀA)⁻¹v: what the fit's own uncertainty adds to a prediction at a row v, in residual variances.</summary>
    public double Leverage(ReadOnlySpan<double> row)
    {
        double sum = 0;
        for (int j = 0; j < row.Length; j++)
        {
            double part = 0;
            for (int i = 0; i <= j; i++) part += row[i] * _inverse[i][j];
            sum += part * part;
        }

        return sum;
    }

    /// <summary>An entry of (AᵀA)⁻¹.</summary>
    public double Unscaled(int row, int column)
    {
        double sum = 0;
        for (int k = Math.Max(row, column); k < Solution.Length; k++) sum += _inverse[row][k] * _inverse[column][k];
        return sum;
    }

    private static void Reflect(double[] v, double[] x, int from, double half)
    {
        double product = 0;
        for (int i = from; i < x.Length; i++) product += v[i] * x[i];
        double factor = product / half;
        for (int i = from; i < x.Length; i++) x[i] += factor * v[i];
    }

    private static double[][] InverseOfTriangle(double[][] columns, double[] diagonal)
    {
        int p = diagonal.Length;
        double[][] inverse = [.. diagonal.Select(_ => new double[p])];
        for (int j = 0; j < p; j++)
        {
            inverse[j][j] = 1 / diagonal[j];
            for (int i = j - 1; i >= 0; i--)
            {
                double sum = 0;
                for (int k = i + 1; k <= j; k++) sum += columns[k][i] * inverse[k][j];
                inverse[i][j] = -sum / diagonal[i];
            }
        }

        return inverse;
    }

    private static double Norm(double[] column, int from)
    {
        double largest = 0, squares = 0;
        foreach (double x in column.AsSpan(from)) largest = Math.Max(largest, Math.Abs(x));
        if (largest == 0) return 0;
        foreach (double x in column.AsSpan(from)) squares += x / largest * (x / largest);
        return largest * Math.Sqrt(squares);
    }
}
