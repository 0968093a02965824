namespace Bellowsmith.Kits.Figures;

/// <summary>Collects the shapes of a section in drawing order; every part is symmetric about the strut's axis.</summary>
internal sealed class SectionPen
{
    private readonly List<DrawingShape> _shapes = [];

    /// <summary>Distance between hatching lines, mm of the strut.</summary>
    public required double Hatching { get; init; }

    public IReadOnlyList<DrawingShape> Shapes => _shapes;

    public void Add(DrawingShape shape) => _shapes.Add(shape);

    public void Line(DrawingRole role, string part, double x1, double y1, double x2, double y2) =>
        Add(new DrawingPath(role, part, [new(x1, y1), new(x2, y2)]));

    /// <summary>A closed box over the axis, hiding what lies below.</summary>
    public void Block(string part, double radius, double bottom, double top) =>
        Add(new DrawingPath(DrawingRole.Outline, part, Box(-radius, bottom, radius, top), Closed: true, DrawingFill.Paper));

    /// <summary>A cut ring, left and right of the axis, hatched at ±45°.</summary>
    public void Ring(string part, double inner, double outer, double bottom, double top, int lean)
    {
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
        {
            (double left, double right) = side < 0 ? (-outer, -inner) : (inner, outer);
            Add(new DrawingPath(DrawingRole.Outline, part, Box(left, bottom, right, top), Closed: true, DrawingFill.Paper));
            Add(new DrawingStrokes(DrawingRole.Hatch, part, [.. Strokes(left, bottom, right, top, lean)]));
        }
    }

    /// <summary>A closed outline given for the right side and mirrored to the left.</summary>
    public void Pair(DrawingRole role, string part, IReadOnlyList<DrawingPoint> right, DrawingFill fill)
    {
        Add(new DrawingPath(role, part, right, Closed: true, fill));
        Add(new DrawingPath(role, part, [.. right.Select(p => new DrawingPoint(-p.X, p.Y))], Closed: true, fill));
    }

    // Lines y = lean·x + c clipped to the box; counted from its own corner so that hatching moves with its part.
    private IEnumerable<(DrawingPoint, DrawingPoint)> Strokes(double left, double bottom, double right, double top, int lean)
    {
        (double width, double height, double step) = (right - left, top - bottom, Hatching * Math.Sqrt(2));
        for (double c = step / 2; c < width + height; c += step)
        {
            (double x1, double y1) = c < height ? (0, c) : (c - height, height);
            (double x2, double y2) = c < width ? (c, 0) : (width, c - width);
            yield return lean < 0
                ? (new(left + x1, bottom + y1), new(left + x2, bottom + y2))
                : (new(right - x1, bottom + y1), new(right - x2, bottom + y2));
        }
    }

    private static DrawingPoint[] Box(double left, double bottom, double right, double top) =>
        [new(left, bottom), new(right, bottom), new(right, top), new(left, top)];
}
