namespace Bellowsmith.Physics.Clearances;

/// <summary>Axes of a body of revolution: X its own, Y square to it, Z square to both.</summary>
internal readonly record struct Frame(Point Origin, Point X, Point Y, Point Z)
{
    /// <summary>Y lies toward a place, any way across where that place is on the axis.</summary>
    public static Frame Of(Point origin, Point axis, Point toward)
    {
        Point across = (toward - origin).SquareTo(axis);
        double length = across.Length;
        Point y = length > 0 ? across / length : (Math.Abs(axis.Y) < 0.7 ? Point.Left : Point.Up).SquareTo(axis).Unit();
        return new(origin, axis, y, axis.Cross(y));
    }

    public Point Into(Point place) => Turned(place - Origin);

    /// <summary>A direction of the car in these axes.</summary>
    public Point Turned(Point direction) => new(direction.Dot(X), direction.Dot(Y), direction.Dot(Z));

    public Point OutOf(Point local) => Origin + local.X * X + local.Y * Y + local.Z * Z;
}
