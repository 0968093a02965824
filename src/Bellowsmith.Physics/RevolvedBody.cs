using Bellowsmith.Physics.Clearances;

namespace Bellowsmith.Physics;

/// <summary>A body of revolution in its place: where its section's origin stands and the unit direction its axis runs.</summary>
public readonly record struct RevolvedBody(RevolvedProfile Profile, Point Origin, Point Axis)
{
    /// <summary>
    /// A gap that had to be searched for is the true distance of the two places it names, and at most this much more than the least
    /// there is, m.
    /// </summary>
    public const double Tolerance_m = PatchSearch.Tolerance_m;

    /// <summary>How far a point lies from its surface, m: outside +, inside −. Exact.</summary>
    public double Outside_m(Point point)
    {
        Point from = point - Origin;
        double along = from.Dot(Axis);
        return Profile.Outside_m(along, from.SquareTo(Axis).Length);
    }

    /// <summary>Exact, as is the place on the surface.</summary>
    public Gap GapTo(Point point)
    {
        Frame frame = Frame.Of(Origin, Axis, point);
        Point local = frame.Into(point);
        (double distance, double along, double radius) = Profile.Nearest(local.X, Math.Sqrt(local.Y * local.Y + local.Z * local.Z));
        return new(distance, frame.OutOf(new(along, radius, 0)), point);
    }

    /// <summary>The nearest of some points. Exact.</summary>
    /// <exception cref="ArgumentException">There are none.</exception>
    public Gap GapTo(params ReadOnlySpan<Point> points)
    {
        if (points.IsEmpty) throw new ArgumentException("There must be a point to be near to.", nameof(points));
        Gap nearest = GapTo(points[0]);
        foreach (Point point in points[1..])
            if (GapTo(point) is var gap && gap.Distance_m < nearest.Distance_m) nearest = gap;
        return nearest;
    }

    /// <summary>
    /// Within <see cref="Tolerance_m"/>. Where the bar's axis enters the body, at −radius and below, only the sign is sure and the other
    /// place lies on the axis.
    /// </summary>
    public Gap GapTo(in RoundBar bar)
    {
        Gap axis = PatchSearch.Nearest(this, bar);
        return axis.Distance_m > 0 ? bar.GapTo(axis.On).Turned() : axis with { Distance_m = axis.Distance_m - bar.Radius_m };
    }

    /// <summary>
    /// Within <see cref="Tolerance_m"/>. Where the two overlap only the sign is sure: the depth is how far a place of the smaller one's
    /// surface lies inside the other than which no place beside it is deeper by more than a thousandth of the way there; one elsewhere may be,
    /// by a millimetre and a quarter of it.
    /// </summary>
    public Gap GapTo(in RevolvedBody other)
    {
        if (Profile.Reach_m < other.Profile.Reach_m) return PatchSearch.Nearest(other, this).Turned();
        return PatchSearch.Nearest(this, other);
    }

    /// <summary>
    /// No gap to another, searched for or true, is less than this, m: that of two planes square to this one's axis between which neither
    /// lies. Often negative where they stand apart some other way; quick, so that what is too far off need not be searched.
    /// </summary>
    public double GapAtLeast_m(in RevolvedBody other)
    {
        double turned = Axis.Dot(other.Axis), across = Math.Sqrt(Math.Max(0, 1 - turned * turned)), from = (other.Origin - Origin).Dot(Axis);
        (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
        for (int k = 0; k < other.Profile.Along_m.Length; k++)
        {
            (double middle, double half) = (from + turned * other.Profile.Along_m[k], across * other.Profile.Radius_m[k]);
            (low, high) = (Math.Min(low, middle - half), Math.Max(high, middle + half));
        }

        OutlineLines own = Profile.Lines;
        return Math.Max(low - own.Middle_m - own.HalfLength_m, own.Middle_m - own.HalfLength_m - high);
    }
}
