namespace Bellowsmith.Physics;

/// <summary>
/// A straight bar with round ends: all that lies within a radius of the line from start to end. Tie rods, halfshafts and arms; with
/// radius 0 an edge, such as a piece of the arch's.
/// </summary>
public readonly record struct RoundBar(Point Start, Point End, double Radius_m)
{
    /// <summary>Exact.</summary>
    public Gap GapTo(Point point) => Across(Start + ShareNearest(point) * (End - Start), point, 0);

    /// <summary>Exact, of nearly parallel bars to 10 nm; two whose axes cross give no direction, and so two places on their axes.</summary>
    public Gap GapTo(in RoundBar other)
    {
        (double here, double there) = NearestShares(other);
        return Across(Start + here * (End - Start), other.Start + there * (other.End - other.Start), other.Radius_m);
    }

    private Gap Across(Point here, Point there, double otherRadius_m)
    {
        Point line = there - here;
        double distance = line.Length;
        Point toward = distance > 0 ? line / distance : default;
        return new(distance - Radius_m - otherRadius_m, here + Radius_m * toward, there - otherRadius_m * toward);
    }

    private double ShareNearest(Point point)
    {
        Point along = End - Start;
        double square = along.Dot(along);
        return square > 0 ? Math.Clamp((point - Start).Dot(along) / square, 0, 1) : 0;
    }

    // Of the two segments [Ericson 2005, 5.1.9]: the nearest places of the whole lines, brought back onto either in turn.
    private (double Here, double There) NearestShares(in RoundBar other)
    {
        Point u = End - Start, v = other.End - other.Start, w = Start - other.Start;
        double uv = u.Dot(v), vv = v.Dot(v), square = u.Cross(v) is var across ? across.Dot(across) : 0;
        double here = square > 0 ? Math.Clamp((uv * v.Dot(w) - vv * u.Dot(w)) / square, 0, 1) : 0;
        double there = other.ShareNearest(Start + here * u);
        return (ShareNearest(other.Start + there * v), there);
    }
}
