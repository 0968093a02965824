namespace Bellowsmith.Kits.Figures;

/// <summary>
/// Where words may stand on a view: inside it, clear of other words and of leaders, and there where they cross least of what is drawn.
/// </summary>
internal sealed class ViewRoom(IReadOnlyList<DrawingShape> drawn)
{
    // What a step further away costs, in lines crossed.
    private const double Step = 0.02, OnRubber = 2;

    private readonly List<DrawingBox> _words = [];
    private readonly List<(DrawingPoint From, DrawingPoint To)> _leaders = [];

    /// <summary>The best of some places, those that come first a little better; null where none is free. A place with a leader is led to from <paramref name="from"/>.</summary>
    public DrawingBox? Best(IEnumerable<DrawingBox> places, DrawingBox frame, DrawingPoint? from = null)
    {
        (DrawingBox? best, double least, double further) = (null, double.PositiveInfinity, 0);
        foreach (DrawingBox box in places)
        {
            if (further >= least) break;
            if (IsInside(box, frame) && IsFree(box, from) && further + Crossed(box) is var cost && cost < least) (best, least) = (box, cost);
            further += Step;
        }

        return best;
    }

    public void Take(DrawingBox words, DrawingPoint? from)
    {
        _words.Add(words);
        if (from is { } place) _leaders.Add((place, Near(words, place)));
    }

    /// <summary>Where a leader from a place ends beside words.</summary>
    public static DrawingPoint Near(DrawingBox words, DrawingPoint from) => new(
        from.X <= words.Left ? words.Left : from.X >= words.Right ? words.Right : (words.Left + words.Right) / 2,
        from.X > words.Left && from.X < words.Right ? from.Y < words.Bottom ? words.Bottom : words.Top : (words.Bottom + words.Top) / 2);

    private static bool IsInside(DrawingBox box, DrawingBox frame) => box.Left >= frame.Left && box.Right <= frame.Right && box.Bottom >= frame.Bottom && box.Top <= frame.Top;

    private bool IsFree(DrawingBox box, DrawingPoint? from) => !_words.Any(box.Overlaps) && !_leaders.Any(leader => Crosses(box, leader.From, leader.To))
        && (from is not { } place || !_words.Any(words => Crosses(words, place, Near(box, place))));

    private double Crossed(DrawingBox box) => drawn.Sum(shape => shape switch
    {
        DrawingPath path => (IsCrossed(box, path) ? 1 : 0) + (path.Fill == DrawingFill.Rubber && Encloses(path, box) ? OnRubber : 0),
        DrawingStrokes strokes => strokes.Strokes.Any(stroke => Crosses(box, stroke.From, stroke.To)) ? 1 : 0,
        DrawingCircle circle => box.Overlaps(new(circle.Centre.X - circle.Radius, circle.Centre.Y - circle.Radius, circle.Centre.X + circle.Radius, circle.Centre.Y + circle.Radius)) ? 1 : 0,
        _ => 0,
    });

    private static bool IsCrossed(DrawingBox box, DrawingPath path)
    {
        IReadOnlyList<DrawingPoint> points = path.Points;
        for (int k = path.Closed ? 0 : 1; k < points.Count; k++)
            if (Crosses(box, points[k > 0 ? k - 1 : points.Count - 1], points[k])) return true;
        return false;
    }

    // Odd: a level line from the middle meets the outline an odd number of times.
    private static bool Encloses(DrawingPath path, DrawingBox box)
    {
        (double x, double y, bool within) = ((box.Left + box.Right) / 2, (box.Bottom + box.Top) / 2, false);
        DrawingPoint before = path.Points[^1];
        foreach (DrawingPoint at in path.Points)
        {
            if (at.Y > y != before.Y > y && x < at.X + (before.X - at.X) * (y - at.Y) / (before.Y - at.Y)) within = !within;
            before = at;
        }

        return within;
    }

    // What of the line lies between the box's sides, and whether any of that lies between top and bottom.
    private static bool Crosses(DrawingBox box, DrawingPoint from, DrawingPoint to)
    {
        if (Math.Max(from.X, to.X) <= box.Left || Math.Min(from.X, to.X) >= box.Right || Math.Max(from.Y, to.Y) <= box.Bottom || Math.Min(from.Y, to.Y) >= box.Top) return false;
        if (from.X == to.X) return true;
        double slope = (to.Y - from.Y) / (to.X - from.X);
        double left = At(Math.Max(box.Left, Math.Min(from.X, to.X))), right = At(Math.Min(box.Right, Math.Max(from.X, to.X)));
        return Math.Max(left, right) > box.Bottom && Math.Min(left, right) < box.Top;

        double At(double x) => from.Y + slope * (x - from.X);
    }
}
