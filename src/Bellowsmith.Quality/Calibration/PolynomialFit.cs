
namespace Bellowsmith.Quality.Calibration;

/// <summary>
/// <c>y = b₀ + b₁x + … + bₙxⁿ</c> by least squares: x without error, y with the same independent scatter everywhere.
/// Coefficients carry y's unit per x's unit to their power.
/// </summary>
public sealed class PolynomialFit
{
    private readonly LeastSquares _squares;
    private readonly double _scale;
    private readonly int _first;

    private PolynomialFit(LeastSquares squares, double scale, int first, int count, double totalSquares)
    {
        (_squares, _scale, _first) = (squares, scale, first);
        Coefficients = [.. Enumerable.Repeat(0.0, first), .. squares.Solution.Select((b, k) => b / Math.Pow(scale, k + first))];
        Degrees = count - squares.Solution.Length;
        ResidualSquares = squares.ResidualSquares;
        TotalSquares = totalSquares;
    }

    /// <summary>b₀ first; b₀ is exactly 0 through the origin.</summary>
    public IReadOnlyList<double> Coefficients { get; }

    /// <summary>Degrees of freedom of the scatter.</summary>
    public int Degrees { get; }

    public double ResidualSquares { get; }

    /// <summary>Squares of y about its mean; about zero where the curve goes through the origin.</summary>
    public double TotalSquares { get; }

    /// <summary>Scatter of a reading about the curve; null without degrees of freedom.</summary>
    public double? ResidualDeviation => Degrees > 0 ? Math.Sqrt(ResidualSquares / Degrees) : null;

    /// <summary>Share of <see cref="TotalSquares"/> that the curve takes; null where y never varied.</summary>
    public double? RSquared => TotalSquares > 0 ? 1 - ResidualSquares / TotalSquares : null;

    /// <summary>The curve's mean square over the scatter's; null without scatter.</summary>
    public double? F => ResidualSquares > 0 && Degrees > 0
        ? (TotalSquares - ResidualSquares) / Terms / (ResidualSquares / Degrees) : null;

    private int Terms => Coefficients.Count - 1;

    /// <summary>Null where there are fewer different x than coefficients.</summary>
    /// <param name="x">Finite; as many as <paramref name="y"/>.</param>
    /// <param name="y">Finite.</param>
    /// <param name="degree">1 or more.</param>
    /// <param name="throughOrigin">Whether b₀ is held at 0.</param>
    public static PolynomialFit? Of(double[] x, double[] y, int degree, bool throughOrigin = false)
    {
        int first = throughOrigin ? 1 : 0;
        double scale = x.Select(Math.Abs).DefaultIfEmpty().Max();
        if (scale == 0 || x.Distinct().Count() < degree + 1 - first) return null;
        double[][] columns = [.. Enumerable.Range(first, degree + 1 - first).Select(k => x.Select(v => Math.Pow(v / scale, k)).ToArray())];
        double total = Means.SquaresAbout(y, throughOrigin ? 0 : Means.Of(y));
        return LeastSquares.Solve(columns, y) is { } squares ? new(squares, scale, first, y.Length, total) : null;
    }

    public double At(double x)
    {
        double sum = 0;
        for (int k = Coefficients.Count - 1; k >= 0; k--) sum = sum * x + Coefficients[k];
        return sum;
    }

    public double SlopeAt(double x)
    {
        double sum = 0;
        for (int k = Coefficients.Count - 1; k >= 1; k--) sum = sum * x + k * Coefficients[k];
        return sum;
    }

    /// <summary>Variance of the curve at x in variances of one reading.</summary>
    public double Leverage(double x)
    {
        Span<double> row = stackalloc double[_squares.Solution.Length];
        for (int k = 0; k < row.Length; k++) row[k] = Math.Pow(x / _scale, k + _first);
        return _squares.Leverage(row);
    }

    /// <summary>Covariance of two coefficients; null without degrees of freedom.</summary>
    public double? Covariance(int row, int column) => Degrees == 0 ? null
        : row < _first || column < _first ? 0
        : _squares.Unscaled(row - _first, column - _first) * ResidualSquares / Degrees / Math.Pow(_scale, row + column);

    /// <summary>Standard error of a coefficient; null without degrees of freedom.</summary>
    public double? StandardError(int power) => Covariance(power, power) is { } variance ? Math.Sqrt(variance) : null;
}
