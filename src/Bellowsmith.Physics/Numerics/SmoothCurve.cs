namespace Bellowsmith.Physics.Numerics;

/// <summary>
/// A piecewise polynomial of degree four or less in x, its slope and curvature beside it. Segments ascend and touch.
/// Outside [Start, End] the end segment goes on; callers decide whether they may ask there.
/// </summary>
public sealed class SmoothCurve
{
    internal const int Terms = 5;

    private readonly double[] _breaks;
    private readonly double[] _powers;
    private readonly double _perSegment;

    private SmoothCurve(double[] breaks, double[] powers, bool equal)
    {
        _breaks = breaks;
        _powers = powers;
        _perSegment = equal ? (breaks.Length - 1) / (breaks[^1] - breaks[0]) : 0;
    }

    public double Start => _breaks[0];

    public double End => _breaks[^1];

    /// <summary>A constant on [start, end].</summary>
    public static SmoothCurve Constant(double start, double end, double value) =>
        new([start, end], [value, 0, 0, 0, 0], equal: true);

    internal static SmoothCurve OnEqualSegments(double start, double end, double[] powers)
    {
        int segments = powers.Length / Terms;
        double[] breaks = new double[segments + 1];
        for (int i = 0; i <= segments; i++) breaks[i] = start + (end - start) * i / segments;
        return new(breaks, powers, equal: true);
    }

    /// <summary>
    /// The interpolating cubic spline with not-a-knot ends [de Boor 1978, ch. IV]: a parabola through three points, a
    /// straight line through two. x ascends strictly.
    /// </summary>
    public static SmoothCurve Through(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        int n = x.Length;
        if (n < 2 || y.Length != n) throw new ArgumentException("An interpolating curve needs two points or more.", nameof(x));
        return WithSlopes(x, y, NotAKnot.Slopes(x, y));
    }

    private static SmoothCurve WithSlopes(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double[] slopes)
    {
        int n = x.Length;
        double[] powers = new double[(n - 1) * Terms];
        for (int i = 0; i < n - 1; i++)
        {
            double width = x[i + 1] - x[i], secant = (y[i + 1] - y[i]) / width;
            Span<double> p = powers.AsSpan(i * Terms, Terms);
            p[0] = y[i];
            p[1] = slopes[i];
            p[2] = (3 * secant - 2 * slopes[i] - slopes[i + 1]) / width;
            p[3] = (slopes[i] + slopes[i + 1] - 2 * secant) / (width * width);
        }

        return new(x.ToArray(), powers, equal: false);
    }

    /// <summary>Value, slope and curvature at x.</summary>
    public (double Value, double Slope, double Curvature) At(double x)
    {
        int s = Segment(x);
        double u = x - _breaks[s];
        ReadOnlySpan<double> p = _powers.AsSpan(s * Terms, Terms);
        return (
            p[0] + u * (p[1] + u * (p[2] + u * (p[3] + u * p[4]))),
            p[1] + u * (2 * p[2] + u * (3 * p[3] + u * 4 * p[4])),
            2 * p[2] + u * (6 * p[3] + u * 12 * p[4]));
    }

    /// <summary>The integral from Start, plus <paramref name="atStart"/>. Only for curves of degree three or less.</summary>
    public SmoothCurve Integral(double atStart = 0)
    {
        double[] powers = new double[_powers.Length];
        double sum = atStart;
        for (int s = 0; s < _breaks.Length - 1; s++)
        {
            ReadOnlySpan<double> p = _powers.AsSpan(s * Terms, Terms);
            Span<double> q = powers.AsSpan(s * Terms, Terms);
            q[0] = sum;
            for (int k = 0; k < Terms - 1; k++) q[k + 1] = p[k] / (k + 1);
            double u = _breaks[s + 1] - _breaks[s];
            sum += u * (q[1] + u * (q[2] + u * (q[3] + u * q[4])));
        }

        return new(_breaks, powers, _perSegment > 0);
    }

    /// <summary>This curve plus another on the same segments.</summary>
    internal SmoothCurve Plus(SmoothCurve other, double factor = 1)
    {
        double[] powers = new double[_powers.Length];
        for (int i = 0; i < powers.Length; i++) powers[i] = _powers[i] + factor * other._powers[i];
        return new(_breaks, powers, _perSegment > 0);
    }

    private int Segment(double x)
    {
        int last = _breaks.Length - 2;
        if (_perSegment > 0) return Math.Clamp((int)((x - _breaks[0]) * _perSegment), 0, last);
        int low = 0, high = last;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (_breaks[middle] <= x) low = middle;
            else high = middle - 1;
        }

        return low;
    }
}
