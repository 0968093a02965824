namespace Bellowsmith.Physics.Clearances;

/// <summary>Axes of a body of revolution: X its own, Y square to it, Z square to both.</summary>
internal readonly record struct Frame(Point Origin, Point X, Point Y, Point Z)
{
    // What is left of a line along the axis is rounding, and points anywhere.
    private const double Rounding = 1e-12;

    /// <summary>Y lies toward a place, any way across where that place is on the axis.</summary>
    public static Frame Of(Point origin, Point axis, Point toward)
    {
        Point line = toward - origin, across = line.SquareTo(axis);
        if (!(across.Length > Rounding * line.Length)) across = (Math.Abs(axis.Y) < 0.7 ? Point.Left : Point.Up).SquareTo(axis);
        Point y = across.Unit().SquareTo(axis).Unit();
        return new(origin, axis, y, axis.Cross(y));
    }

    public Point Into(Point place) => Turned(place - Origin);

    /// <summary>A direction of the car in these axes.</summary>
    public Point Turned(Point direction) => new(direction.Dot(X), direction.Dot(Y), direction.Dot(Z));

    public Point OutOf(Point local) => Origin + local.X * X + local.Y * Y + local.Z * Z;
}
