namespace Bellowsmith.Quality.Numerics;

/// <summary>
/// A root between two points of opposite sign, by inverse quadratic interpolation where it is safe and bisection where it is not
/// [Chandrupatla 1997]. Infinite values at an end are borne: they only cost bisections.
/// </summary>
internal static class BracketedRoot
{
    private const double Tolerance = 1e-14;

    public static double Find(Func<double, double> function, double low, double high)
    {
        (double a, double b) = (low, high);
        (double fa, double fb) = (function(a), function(b));
        if (fa == 0) return a;
        (double c, double fc, double part) = (a, fa, 0.5);
        for (int step = 0; step < 200 && fb != 0; step++)
        {
            double next = a + part * (b - a), value = function(next);
            if (Math.Sign(value) == Math.Sign(fa)) (c, fc) = (a, fa);
            else (c, fc, b, fb) = (b, fb, a, fa);
            (a, fa) = (next, value);
            double root = Math.Abs(fa) < Math.Abs(fb) ? a : b;
            double narrowest = 2 * Tolerance * Math.Abs(root) + double.Epsilon, share = narrowest / Math.Abs(b - a);
            if (share > 0.5 || fa == 0) return root;
            double x = (a - b) / (c - b), y = (fa - fb) / (fc - fb);
            bool smooth = y * y < x && (1 - y) * (1 - y) < 1 - x;
            part = smooth ? fa / (fb - fa) * (fc / (fb - fc)) + (c - a) / (b - a) * (fa / (fc - fa)) * (fb / (fc - fb)) : 0.5;
            part = double.IsFinite(part) ? Math.Clamp(part, share, 1 - share) : 0.5;
        }

        return b;
    }

    /// <summary>Steps out from where the function is positive until it is not, doubling the step; null where it stays so.</summary>
    public static double? Beyond(Func<double, double> function, double start, double step, int most = 24)
    {
        double inside = start;
        for (int k = 0; k < most; k++, step *= 2)
        {
            double outside = inside + step;
            if (!(function(outside) > 0)) return Find(function, inside, outside);
            inside = outside;
        }

        return null;
    }
}
