namespace Bellowsmith.Physics.Linkages;

/// <summary>A rotation as a unit quaternion.</summary>
internal readonly record struct Turn(double W, Point V)
{
    public static readonly Turn None = new(1, default);

    /// <summary>About a unit axis, from one direction square to it to another; less than half a turn.</summary>
    public static Turn About(Point axis, Point from, Point to) =>
        Unit(from.Length * to.Length + from.Dot(to), axis.Dot(from.Cross(to)) * axis);

    /// <summary>About a unit axis, right hand.</summary>
    public static Turn By(Point axis, double angle_rad) => new(Math.Cos(angle_rad / 2), Math.Sin(angle_rad / 2) * axis);

    public Point Of(Point p)
    {
        Point t = 2 * V.Cross(p);
        return p + W * t + V.Cross(t);
    }

    /// <summary>Followed by a small turn; right to second order in its angle, a true rotation at any.</summary>
    public Turn Then(Point small_rad)
    {
        Point half = 0.5 * small_rad;
        return Unit(W - half.Dot(V), V + W * half + half.Cross(V));
    }

    /// <summary>How much of it is about a direction it carries along, rad, right hand; the rest swings that direction.</summary>
    public double Twist_rad(Point axis) => 2 * Math.Atan2(V.Dot(axis), W);

    private static Turn Unit(double w, Point v)
    {
        double scale = 1 / Math.Sqrt(w * w + v.Dot(v));
        return new(scale * w, scale * v);
    }
}
