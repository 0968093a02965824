namespace Bellowsmith.Physics.Ride;

/// <summary>
/// A smooth function of wheel travel as one polynomial in t ∈ [−1, 1]: no table look-up, so that lanes with different cases
/// stay in step. A Chebyshev series through 17 places, cut where what is left out stays within a tolerance; its error is within
/// a small factor of the best polynomial's [Trefethen 2013, ch. 16].
/// </summary>
public sealed class TravelPolynomial
{
    private const int MostDegree = 16;

    private static readonly double[] _places = [.. Enumerable.Range(0, MostDegree + 1).Select(j => Math.Cos(Math.PI * (j + 0.5) / (MostDegree + 1)))];

    private TravelPolynomial(double[] powers, double error) => (Powers, GreatestError) = (powers, error);

    /// <summary>The t at which a function is asked.</summary>
    public static ReadOnlySpan<double> Places => _places;

    /// <summary>Coefficients of 1, t, t² …</summary>
    internal double[] Powers { get; }

    /// <summary>What was left out of the series and, for what it never saw, as much again as its last term; in the function's unit.</summary>
    public double GreatestError { get; }

    /// <summary>The polynomial of least degree that stays within a tolerance, or of degree 16 where none does.</summary>
    public static TravelPolynomial Of(Func<double, double> function, TravelRange range, double tolerance) =>
        Through([.. _places.Select(t => function(range.Travel_m(t)))], tolerance);

    /// <summary>The same from the values at <see cref="Places"/>.</summary>
    public static TravelPolynomial Through(ReadOnlySpan<double> values, double tolerance)
    {
        double[] series = Chebyshev(values);
        double leftOut = Math.Abs(series[^1]);
        int count = series.Length;
        while (count > 2 && leftOut + Math.Abs(series[count - 1]) <= tolerance) leftOut += Math.Abs(series[--count]);
        return new(Monomials(series[..count]), leftOut);
    }

    public double At(double t)
    {
        double value = 0;
        for (int k = Powers.Length - 1; k >= 0; k--) value = Math.FusedMultiplyAdd(value, t, Powers[k]);
        return value;
    }

    private static double[] Chebyshev(ReadOnlySpan<double> values)
    {
        int count = values.Length;
        double[] series = new double[count];
        for (int j = 0; j < count; j++)
        {
            double angle = Math.PI * (j + 0.5) / count;
            for (int k = 0; k < count; k++) series[k] += values[j] * Math.Cos(k * angle) * (k == 0 ? 1.0 : 2.0) / count;
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
