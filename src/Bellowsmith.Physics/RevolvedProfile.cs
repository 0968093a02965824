namespace Bellowsmith.Physics;

/// <summary>
/// Section of a body of revolution: a closed outline of straight lines in the half plane (distance along the axis, radius). What it
/// encloses is solid; an outline that runs along the axis closes there without a surface.
/// </summary>
public sealed class RevolvedProfile
{
    private readonly double[] _along, _radius;

    /// <exception cref="ArgumentException">Fewer than three points, or a negative radius.</exception>
    public RevolvedProfile(params ReadOnlySpan<(double Along_m, double Radius_m)> points)
    {
        if (points.Length < 3) throw new ArgumentException("An outline needs three points or more.", nameof(points));
        (_along, _radius) = (new double[points.Length + 1], new double[points.Length + 1]);
        for (int k = 0; k < points.Length; k++)
        {
            (_along[k], _radius[k]) = points[k];
            if (!(_radius[k] >= 0)) throw new ArgumentException("No point of an outline lies below the axis.", nameof(points));
        }

        (_along[^1], _radius[^1]) = (_along[0], _radius[0]);
    }

    /// <summary>Corner by corner; the first stands at the end again.</summary>
    public ReadOnlySpan<double> Along_m => _along;

    public ReadOnlySpan<double> Radius_m => _radius;

    public double GreatestRadius_m => _radius.Max();

    /// <summary>How far a place lies from the surface, m: outside +, inside −.</summary>
    public double Outside_m(double along_m, double radius_m)
    {
        double nearest = double.PositiveInfinity;
        bool inside = false;
        for (int k = 0; k + 1 < _along.Length; k++)
        {
            (double x1, double y1, double x2, double y2) = (_along[k], _radius[k], _along[k + 1], _radius[k + 1]);
            if (y1 > radius_m != y2 > radius_m && along_m < x1 + (radius_m - y1) / (y2 - y1) * (x2 - x1)) inside = !inside;
            if (y1 == 0 && y2 == 0) continue;
            double dx = x2 - x1, dy = y2 - y1, length = dx * dx + dy * dy;
            double share = length > 0 ? Math.Clamp(((along_m - x1) * dx + (radius_m - y1) * dy) / length, 0, 1) : 0;
            (double offX, double offY) = (along_m - x1 - share * dx, radius_m - y1 - share * dy);
            nearest = Math.Min(nearest, offX * offX + offY * offY);
        }

        return inside ? -Math.Sqrt(nearest) : Math.Sqrt(nearest);
    }
}
