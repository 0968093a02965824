namespace Bellowsmith.Physics;

/// <summary>
/// The wheel of a linkage at rest: centre, rolling radius and spin axis. A centre with y &gt; 0 is a left wheel. Camber + top out, toe + in
/// [ISO 8855 2011]: <c>axis = (sin t·cos c, ±cos t·cos c, −sin c)</c>, pointing outward.
/// </summary>
public sealed record LinkageWheel
{
    /// <exception cref="ArgumentOutOfRangeException">A radius that is not positive, or camber or toe of 45° or more.</exception>
    public LinkageWheel(Point centre, double radius_m, double camber_rad = 0, double toe_rad = 0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius_m);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Math.Abs(camber_rad), Math.PI / 4, nameof(camber_rad));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(Math.Abs(toe_rad), Math.PI / 4, nameof(toe_rad));
        (Centre, Radius_m) = (centre, radius_m);
        double level = Math.Cos(camber_rad);
        Axis = new(Math.Sin(toe_rad) * level, Outward * Math.Cos(toe_rad) * level, -Math.Sin(camber_rad));
    }

    public Point Centre { get; }

    public double Radius_m { get; }

    public Point Axis { get; }

    public double Camber_rad => Of(Axis, Outward).Camber_rad;

    public double Toe_rad => Of(Axis, Outward).Toe_rad;

    /// <summary>1 of a left wheel, −1 of a right one.</summary>
    public double Outward => Centre.Y < 0 ? -1 : 1;

    /// <summary>Camber and toe of a wheel whose spin axis runs through its centre and another point, rad.</summary>
    public static (double Camber_rad, double Toe_rad) Of(Point centre, Point onAxis)
    {
        double outward = centre.Y < 0 ? -1 : 1;
        Point axis = (onAxis - centre).Unit();
        return Of(axis.Y * outward < 0 ? -axis : axis, outward);
    }

    internal static (double Camber_rad, double Toe_rad) Of(Point axis, double outward) =>
        (-Math.Asin(axis.Z), Math.Atan2(axis.X, outward * axis.Y));
}
