using Bellowsmith.Physics.Clearances;

namespace Bellowsmith.Physics;

/// <summary>
/// Section of a body of revolution: a closed outline of straight lines in the half plane (distance along the axis, radius). What it
/// encloses is solid; an outline that runs along the axis closes there without a surface.
/// </summary>
public sealed class RevolvedProfile
{
    // What rounding leaves of a point on the axis.
    private const double OnAxis_m = 1e-9;

    private readonly double[] _along, _radius;

    /// <exception cref="ArgumentException">Fewer than three points, a negative radius, or nothing off the axis.</exception>
    public RevolvedProfile(params ReadOnlySpan<(double Along_m, double Radius_m)> points)
    {
        if (points.Length < 3) throw new ArgumentException("An outline needs three points or more.", nameof(points));
        (_along, _radius) = (new double[points.Length + 1], new double[points.Length + 1]);
        for (int k = 0; k < points.Length; k++)
        {
            (_along[k], _radius[k]) = points[k];
            if (!(_radius[k] >= 0)) throw new ArgumentException("No point of an outline lies below the axis.", nameof(points));
            if (_radius[k] < OnAxis_m) _radius[k] = 0;
        }

        (_along[^1], _radius[^1]) = (_along[0], _radius[0]);
        Lines = new(_along, _radius);
        if (Lines.Count == 0) throw new ArgumentException("An outline on the axis alone encloses nothing.", nameof(points));
    }

    /// <summary>Corner by corner; the first stands at the end again.</summary>
    public ReadOnlySpan<double> Along_m => _along;

    public ReadOnlySpan<double> Radius_m => _radius;

    public double GreatestRadius_m => Lines.GreatestRadius_m;

    /// <summary>How far a place lies from the surface, m: outside +, inside −.</summary>
    public double Outside_m(double along_m, double radius_m) => Lines.Outside_m(along_m, radius_m);

    internal OutlineLines Lines { get; }

    /// <summary>How far from its middle on the axis it reaches.</summary>
    internal double Reach_m => Math.Sqrt(Lines.HalfLength_m * Lines.HalfLength_m + Lines.GreatestRadius_m * Lines.GreatestRadius_m);

    /// <summary>As <see cref="Outside_m"/>, with the place on the surface that is nearest.</summary>
    internal (double Outside_m, double Along_m, double Radius_m) Nearest(double along_m, double radius_m)
    {
        double outside = Lines.Outside_m(along_m, radius_m, out int line);
        (double along, double radius) = Lines.Foot(line, along_m, radius_m);
        return (outside, along, radius);
    }
}
