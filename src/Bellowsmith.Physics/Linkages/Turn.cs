namespace Bellowsmith.Physics.Linkages;

/// <summary>A rotation as a unit quaternion.</summary>
internal readonly record struct Turn(double W, Point V)
{
    public static readonly Turn None = new(1, default);

    public static Turn About(Point axis, double angle_rad) => new(Math.Cos(angle_rad / 2), Math.Sin(angle_rad / 2) * axis);

    public Point Of(Point p)
    {
        Point t = 2 * V.Cross(p);
        return p + W * t + V.Cross(t);
    }

    public Point Back(Point p) => new Turn(W, -V).Of(p);

    /// <summary>Followed by a small turn; right to second order in its angle, a true rotation at any.</summary>
    public Turn Then(Point small_rad)
    {
        Point half = 0.5 * small_rad;
        double w = W - half.Dot(V);
        Point v = V + W * half + half.Cross(V);
        double size = Math.Sqrt(w * w + v.Dot(v));
        return new(w / size, v / size);
    }

    /// <summary>How much of it is about a direction it carries along, rad, right hand; the rest swings that direction.</summary>
    public double Twist_rad(Point axis) => 2 * Math.Atan2(V.Dot(axis), W);
}
