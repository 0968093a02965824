namespace Bellowsmith.Physics;

/// <summary>A body of revolution in its place: where its section's origin stands and the unit direction its axis runs.</summary>
public readonly record struct RevolvedBody(RevolvedProfile Profile, Point Origin, Point Axis)
{
    /// <summary>How far a point lies from its surface, m: outside +, inside −. Exact.</summary>
    public double Outside_m(Point point)
    {
        Point from = point - Origin;
        double along = from.Dot(Axis);
        return Profile.Outside_m(along, from.SquareTo(Axis).Length);
    }
}
