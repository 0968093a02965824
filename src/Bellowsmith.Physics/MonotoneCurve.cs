namespace Bellowsmith.Physics;

/// <summary>
/// A curve through points that never fall, which never falls between them and never overshoots them: cubic Hermite pieces
/// whose slopes are those of the parabola through a point and its neighbours, held to 0 ≤ slope and to the circle of radius
/// 3 about each piece's secant [Fritsch Carlson 1980]. Value and slope are continuous. Beyond the ends it goes on straight.
/// </summary>
public sealed class MonotoneCurve
{
    private readonly double[] _x, _y, _slopes;
    private readonly double _below, _above;

    private MonotoneCurve(double[] x, double[] y, double[] slopes, double below, double above) =>
        (_x, _y, _slopes, _below, _above) = (x, y, slopes, below, above);

    /// <summary>Where the points stand, strictly rising.</summary>
    public IReadOnlyList<double> X => _x;

    /// <summary>The values there.</summary>
    public IReadOnlyList<double> Y => _y;

    /// <summary>The slopes there, within the curve.</summary>
    public IReadOnlyList<double> Slopes => _slopes;

    /// <summary>The curve through two points or more.</summary>
    /// <param name="x">Strictly rising.</param>
    /// <param name="y">Never falling.</param>
    /// <param name="slopeBelow">Slope of the straight line before the first point, 0 or more; null: the curve's own there.</param>
    /// <param name="slopeAbove">Slope of the straight line past the last point. A given slope is the curve's own end slope
    /// too, as far as the circle allows; steeper than that the curve has a corner there.</param>
    /// <exception cref="ArgumentException">Fewer than two points, x that does not rise, y that falls, a value that is not
    /// finite or a slope below 0.</exception>
    public static MonotoneCurve Through(
        ReadOnlySpan<double> x, ReadOnlySpan<double> y, double? slopeBelow = null, double? slopeAbove = null)
    {
        Check(x, y);
        if (!(slopeBelow is null or >= 0 and < double.PositiveInfinity)) throw new ArgumentException("A slope is 0 or more.", nameof(slopeBelow));
        if (!(slopeAbove is null or >= 0 and < double.PositiveInfinity)) throw new ArgumentException("A slope is 0 or more.", nameof(slopeAbove));
        double[] secants = Secants(x, y), slopes = Parabolas(x, secants);
        slopes[0] = slopeBelow ?? slopes[0];
        slopes[^1] = slopeAbove ?? slopes[^1];
        Limit(secants, slopes);
        return new(x.ToArray(), y.ToArray(), slopes, slopeBelow ?? slopes[0], slopeAbove ?? slopes[^1]);
    }

    /// <summary>Value and slope at x.</summary>
    public (double Value, double Slope) At(double x)
    {
        if (x < _x[0]) return (_y[0] + _below * (x - _x[0]), _below);
        if (x > _x[^1]) return (_y[^1] + _above * (x - _x[^1]), _above);
        int found = Array.BinarySearch(_x, x), i = Math.Min(found >= 0 ? found : ~found - 1, _x.Length - 2);
        double width = _x[i + 1] - _x[i], t = (x - _x[i]) / width, secant = (_y[i + 1] - _y[i]) / width;
        double square = 3 * secant - 2 * _slopes[i] - _slopes[i + 1], cube = _slopes[i] + _slopes[i + 1] - 2 * secant;
        return (
            _y[i] + width * t * (_slopes[i] + t * (square + t * cube)),
            _slopes[i] + t * (2 * square + t * 3 * cube));
    }

    /// <summary>
    /// (1 − share)·first + share·second at every x, exactly within both: the two are cubic on each piece between the points of
    /// either, so value and slope there say everything.
    /// </summary>
    internal static MonotoneCurve Between(MonotoneCurve first, MonotoneCurve second, double share)
    {
        double start = Math.Max(first._x[0], second._x[0]), end = Math.Min(first._x[^1], second._x[^1]);
        double[] x = [.. first._x.Union(second._x).Where(at => at >= start && at <= end).Order()];
        (double Value, double Slope)[] at = [.. x.Select(place => Blend(first.At(place), second.At(place)))];
        return new(
            x, [.. at.Select(point => point.Value)], [.. at.Select(point => point.Slope)],
            (1 - share) * first._below + share * second._below, (1 - share) * first._above + share * second._above);

        (double, double) Blend((double Value, double Slope) a, (double Value, double Slope) b) =>
            ((1 - share) * a.Value + share * b.Value, (1 - share) * a.Slope + share * b.Slope);
    }

    private static void Check(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        if (x.Length < 2 || y.Length != x.Length) throw new ArgumentException("A curve needs two points or more.", nameof(x));
        for (int i = 0; i < x.Length; i++)
        {
            if (!double.IsFinite(x[i]) || (i > 0 && x[i] <= x[i - 1])) throw new ArgumentException("x rises strictly.", nameof(x));
            if (!double.IsFinite(y[i]) || (i > 0 && y[i] < y[i - 1])) throw new ArgumentException("y never falls.", nameof(y));
        }
    }

    private static double[] Secants(ReadOnlySpan<double> x, ReadOnlySpan<double> y)
    {
        double[] secants = new double[x.Length - 1];
        for (int i = 0; i < secants.Length; i++) secants[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
        return secants;
    }

    /// <summary>The slope at each point of the parabola through it and its two neighbours, at the ends of the end parabola.</summary>
    private static double[] Parabolas(ReadOnlySpan<double> x, double[] secants)
    {
        int last = secants.Length;
        double[] slopes = new double[last + 1];
        for (int i = 1; i < last; i++)
        {
            double left = x[i] - x[i - 1], right = x[i + 1] - x[i];
            slopes[i] = (right * secants[i - 1] + left * secants[i]) / (left + right);
        }

        slopes[0] = last == 1 ? secants[0] : Math.Max(0, 2 * secants[0] - slopes[1]);
        slopes[last] = last == 1 ? secants[0] : Math.Max(0, 2 * secants[last - 1] - slopes[last - 1]);
        return slopes;
    }

    private static void Limit(double[] secants, double[] slopes)
    {
        for (int i = 0; i < secants.Length; i++)
        {
            double length = Math.Sqrt(slopes[i] * slopes[i] + slopes[i + 1] * slopes[i + 1]), most = 3 * secants[i];
            if (length <= most) continue;
            slopes[i] *= most / length;
            slopes[i + 1] *= most / length;
        }
    }
}
