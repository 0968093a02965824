using System.Globalization;

namespace Bellowsmith.Physics;

/// <summary>
/// A place, m, or a direction in car axes: x forward, y left, z up [ISO 8855 2011]. Whatever is computed from points mirrored in y
/// is the mirror image to the last bit.
/// </summary>
public readonly record struct Point(double X, double Y, double Z)
{
    public static readonly Point Up = new(0, 0, 1), Left = new(0, 1, 0);

    public double Length => Math.Sqrt(Dot(this));

    public Point Mirrored => this with { Y = -Y };

    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Point operator -(Point a) => new(-a.X, -a.Y, -a.Z);

    public static Point operator *(double s, Point a) => new(s * a.X, s * a.Y, s * a.Z);

    public static Point operator /(Point a, double s) => new(a.X / s, a.Y / s, a.Z / s);

    public double Dot(Point other) => X * other.X + Y * other.Y + Z * other.Z;

    public Point Cross(Point other) => new(Y * other.Z - Z * other.Y, Z * other.X - X * other.Z, X * other.Y - Y * other.X);

    public Point Unit() => this / Length;

    /// <summary>The part of it that stands square to a unit direction.</summary>
    public Point SquareTo(Point direction) => this - Dot(direction) * direction;

    /// <summary>0 to π rad, sharp also where the two are nearly in line.</summary>
    public double AngleTo_rad(Point other) => Math.Atan2(Cross(other).Length, Dot(other));

    // A record's own text would print its mirror image, and that its own, without end.
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"({X}, {Y}, {Z})");
}
