namespace Bellowsmith.Physics.Ride;

/// <summary>
/// A smooth function of wheel travel as one polynomial in t ∈ [−1, 1]: no table look-up, so that lanes with different cases
/// stay in step. Interpolated at Chebyshev points, whose error is within a small factor of the best polynomial's
/// [Trefethen 2013, ch. 16].
/// </summary>
public sealed class TravelPolynomial
{
    private const int MostDegree = 16;

    private TravelPolynomial(double[] powers, double error) => (Powers, GreatestError) = (powers, error);

    /// <summary>Coefficients of 1, t, t² …</summary>
    internal double[] Powers { get; }

    /// <summary>The greatest difference from the function, looked for between the points, in the function's unit.</summary>
    public double GreatestError { get; }

    /// <summary>The polynomial of least degree that stays within a tolerance, or of degree 16 where none does.</summary>
    public static TravelPolynomial Of(Func<double, double> function, TravelRange range, double tolerance)
    {
        TravelPolynomial fit = At(function, range, 1);
        for (int degree = 2; fit.GreatestError > tolerance && degree <= MostDegree; degree++) fit = At(function, range, degree);
        return fit;
    }

    public double At(double t)
    {
        double value = 0;
        for (int k = Powers.Length - 1; k >= 0; k--) value = Math.FusedMultiplyAdd(value, t, Powers[k]);
        return value;
    }

    private static TravelPolynomial At(Func<double, double> function, TravelRange range, int degree)
    {
        double[] powers = Monomials(Chebyshev(function, range, degree));
        TravelPolynomial fit = new(powers, 0);
        double error = 0;
        for (int k = 0; k <= 4 * degree; k++)
        {
            double t = -1 + 2.0 * k / (4 * degree);
            error = Math.Max(error, Math.Abs(fit.At(t) - function(range.Travel_m(t))));
        }

        return new(powers, error);
    }

    private static double[] Chebyshev(Func<double, double> function, TravelRange range, int degree)
    {
        int count = degree + 1;
        double[] series = new double[count];
        for (int j = 0; j < count; j++)
        {
            double angle = Math.PI * (j + 0.5) / count, value = function(range.Travel_m(Math.Cos(angle)));
            for (int k = 0; k < count; k++) series[k] += value * Math.Cos(k * angle) * (k == 0 ? 1.0 : 2.0) / count;
        }

        return series;
    }

    // T(k+1) = 2t·T(k) − T(k−1), gathered by powers.
    private static double[] Monomials(double[] series)
    {
        int count = series.Length;
        double[] powers = new double[count], before = new double[count], here = new double[count];
        before[0] = here[1] = 1;
        powers[0] = series[0];
        for (int k = 1; k < count; k++)
        {
            for (int p = 0; p < count; p++) powers[p] += series[k] * here[p];
            double[] next = new double[count];
            for (int p = 0; p < count; p++) next[p] = (p > 0 ? 2 * here[p - 1] : 0) - before[p];
            (before, here) = (here, next);
        }

        return powers;
    }
}

/// <summary>The wheel travel a corner can reach, bump +; t runs from −1 at the least to 1 at the greatest.</summary>
public readonly record struct TravelRange(double Least_m, double Greatest_m)
{
    public double Centre_m => (Least_m + Greatest_m) / 2;

    public double Half_m => (Greatest_m - Least_m) / 2;

    public double Travel_m(double t) => Centre_m + t * Half_m;
}
