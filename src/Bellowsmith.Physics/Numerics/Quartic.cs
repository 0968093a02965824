namespace Bellowsmith.Physics.Numerics;

/// <summary>s² + Linear·s + Constant.</summary>
internal readonly record struct Quadratic(double Linear, double Constant);

/// <summary>
/// s⁴ + a·s³ + b·s² + c·s + d as two real quadratics. With s = y − a/4 it is (y² + αy + β)(y² − αy + γ), where α² is the
/// largest root of the resolvent cubic (Descartes): conjugate roots stay together, and of four real roots the two slow and
/// the two fast. Newton's step on one quadratic (Bairstow) then takes out what shifting by a/4 has rounded away.
/// </summary>
internal static class Quartic
{
    private const int MostSteps = 200, Polishes = 4;

    /// <summary>The factor of the smaller constant first.</summary>
    public static (Quadratic Slow, Quadratic Fast) Factor(double a, double b, double c, double d)
    {
        // In units of the roots' mean size no coefficient is out of all proportion.
        double unit = Math.Sqrt(Math.Sqrt(d));
        (a, b, c) = (a / unit, b / (unit * unit), c / (unit * unit * unit));
        (Quadratic one, Quadratic other) = Split(a, b, c);
        Quadratic slow = Polish(a, b, c, one.Constant < other.Constant ? one : other);
        Quadratic fast = new(a - slow.Linear, 1 / slow.Constant);
        return (new(slow.Linear * unit, slow.Constant * unit * unit), new(fast.Linear * unit, fast.Constant * unit * unit));
    }

    private static (Quadratic, Quadratic) Split(double a, double b, double c)
    {
        double p = b - 3 * a * a / 8;
        double q = c - a * b / 2 + a * a * a / 8;
        double r = 1 - a * c / 4 + a * a * b / 16 - 3 * a * a * a * a / 256;
        double square = LargestRoot(2 * p, p * p - 4 * r, -q * q);
        double alpha = Math.Sqrt(square), sum = p + square;
        double gap = Math.CopySign(Math.Sqrt(Math.Max(0, sum * sum - 4 * r)), q);
        if (square > 1e-12) gap = q / alpha;
        return (Shifted(alpha, (sum - gap) / 2, a / 4), Shifted(-alpha, (sum + gap) / 2, a / 4));
    }

    private static Quadratic Shifted(double linear, double constant, double by) =>
        new(linear + 2 * by, constant + linear * by + by * by);

    /// <summary>
    /// The largest real root of u³ + e·u² + f·u + g, g ≤ 0. Newton's steps from above fall onto it and never past it where all
    /// roots are real; where two are not, they may jump, and halving finds the only one.
    /// </summary>
    private static double LargestRoot(double e, double f, double g)
    {
        double low = 0, high = 1 + Math.Max(Math.Abs(e), Math.Max(Math.Abs(f), Math.Abs(g))), u = high;
        for (int step = 0; step < MostSteps; step++)
        {
            double value = ((u + e) * u + f) * u + g;
            if (value > 0) high = u;
            else low = u;
            double next = u - value / ((3 * u + 2 * e) * u + f);
            if (next == u) break;
            if (!(next > low && next < high)) next = (low + high) / 2;
            if (next == low || next == high) break;
            u = next;
        }

        return u;
    }

    private static Quadratic Polish(double a, double b, double c, Quadratic factor)
    {
        for (int step = 0; step < Polishes; step++)
        {
            (double u, double v) = (factor.Linear, factor.Constant);
            double m = a - u, n = b - v - u * m;
            (double rest1, double rest0) = (c - u * n - v * m, 1 - v * n);
            // Dividing the quotient s² + m·s + n once more gives the slopes of both rests.
            double slope1 = m - u, slope0 = n - v;
            double determinant = slope0 * slope0 + slope1 * (v * slope1 - u * slope0);
            double du = (slope0 * rest1 - slope1 * rest0) / determinant;
            double dv = ((slope0 - u * slope1) * rest0 + v * slope1 * rest1) / determinant;
            if (!double.IsFinite(du) || !double.IsFinite(dv)) break;
            factor = new(u + du, v + dv);
        }

        return factor;
    }
}
