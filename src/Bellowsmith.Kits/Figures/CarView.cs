using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>From where a corner is seen: from ahead (car's left to the right, up up), from its left side (ahead to the left), from above (ahead down).</summary>
public enum Viewpoint { Front, Side, Plan }

/// <summary>One corner of the car to scale, mm of the car itself: shapes in drawing order, and what a hand can drag on it.</summary>
public sealed record CarView
{
    public required Viewpoint From { get; init; }

    public required IReadOnlyList<DrawingShape> Shapes { get; init; }

    public IReadOnlyList<ViewHandle> Handles { get; init; } = [];

    /// <summary>Everything drawn over the whole travel, so that the view stands still while the wheel moves.</summary>
    public required DrawingBox Frame { get; init; }

    /// <summary>The view in words, for those who hear it.</summary>
    public required string Summary { get; init; }
}

/// <summary>What a hand can drag on a view; moving it by a millimetre to the right or up changes the value by so many m.</summary>
public sealed record ViewHandle(string Id, DrawingPoint At, double Value_m, double PerMillimetreRight, double PerMillimetreUp);

/// <summary>A gap to be shown on a view: between which places of the car, how much, and whether it keeps its margin.</summary>
public sealed record ViewGap(string Id, string Name, Point From, Point To, double Gap_m, bool Holds);

/// <summary>Where places of the car lie on a drawing, mm.</summary>
internal static class Projection
{
    private const int Around = 60;

    public static DrawingPoint On(this Viewpoint from, Point p) => from switch
    {
        Viewpoint.Front => new(p.Y * 1000, p.Z * 1000),
        Viewpoint.Side => new(-p.X * 1000, p.Z * 1000),
        _ => new(p.Y * 1000, -p.X * 1000),
    };

    /// <summary>
    /// The outline of a body seen along its flank: its section on either side of its axis. Right where the axis lies in the drawing's
    /// plane; a body seen at an angle is a little longer than drawn.
    /// </summary>
    public static DrawingPoint[] Flank(this Viewpoint from, RevolvedBody body)
    {
        DrawingPoint origin = from.On(body.Origin), tip = from.On(body.Origin + body.Axis);
        double length = Math.Sqrt(Square(tip.X - origin.X) + Square(tip.Y - origin.Y));
        (double alongX, double alongY) = ((tip.X - origin.X) / length, (tip.Y - origin.Y) / length);
        (double, double)[] corners = [.. Corners(body.Profile).Select(c => (c.Along_m * length, c.Radius_m * 1000))];
        return [.. corners.Select(c => Place(c, 1)), .. corners.Reverse().Select(c => Place(c, -1))];

        DrawingPoint Place((double Along, double Radius) c, int side) =>
            new(origin.X + c.Along * alongX - side * c.Radius * alongY, origin.Y + c.Along * alongY + side * c.Radius * alongX);
    }

    /// <summary>The outline of a body that bulges everywhere, seen from any side: the hull of its circles.</summary>
    public static DrawingPoint[] Hull(this Viewpoint from, RevolvedBody body)
    {
        Point across = (Math.Abs(body.Axis.Z) < 0.9 ? Point.Up : Point.Left).SquareTo(body.Axis).Unit(), other = body.Axis.Cross(across);
        return Hull([.. Corners(body.Profile).Distinct().SelectMany(c => Enumerable.Range(0, Around).Select(k => 2 * Math.PI * k / Around)
            .Select(turn => from.On(body.Origin + c.Along_m * body.Axis + c.Radius_m * (Math.Cos(turn) * across + Math.Sin(turn) * other))))]);
    }

    private static IEnumerable<(double Along_m, double Radius_m)> Corners(RevolvedProfile profile)
    {
        for (int k = 0; k + 1 < profile.Along_m.Length; k++) yield return (profile.Along_m[k], profile.Radius_m[k]);
    }

    // Left to right below, right to left above, keeping left turns.
    private static DrawingPoint[] Hull(DrawingPoint[] points)
    {
        DrawingPoint[] sorted = [.. points.OrderBy(p => p.X).ThenBy(p => p.Y)];
        List<DrawingPoint> hull = [];
        foreach (IEnumerable<DrawingPoint> way in (IEnumerable<DrawingPoint>[])[sorted, sorted.Reverse()])
        {
            int start = hull.Count;
            foreach (DrawingPoint p in way)
            {
                while (hull.Count > start + 1 && Turn(hull[^2], hull[^1], p) <= 0) hull.RemoveAt(hull.Count - 1);
                hull.Add(p);
            }

            hull.RemoveAt(hull.Count - 1);
        }

        return [.. hull];
    }

    private static double Turn(DrawingPoint a, DrawingPoint b, DrawingPoint c) => (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X);

    private static double Square(double x) => x * x;
}
