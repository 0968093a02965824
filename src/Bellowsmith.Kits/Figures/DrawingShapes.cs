namespace Bellowsmith.Kits.Figures;

/// <summary>
/// How a shape is drawn. Outline thick; Thin, Hatch, Dimension and Accent thin; Centre thin chain line; Before thin and dashed, where
/// something stood or would stand; Miss in red, a gap that is too small.
/// </summary>
public enum DrawingRole { Outline, Thin, Centre, Hatch, Dimension, Accent, Rubber, Before, Miss }

/// <summary>What fills a closed shape: nothing, the paper (hiding what lies below), rubber, or the colour of its lines.</summary>
public enum DrawingFill { None, Paper, Rubber, Line }

/// <param name="Role">How it is drawn.</param>
/// <param name="Part">What it belongs to: of a strut mount, upperPlate, bellows, lowerPlate, rod, stop, head, body, thread, lowerMount, axis, or a dimension's id;
/// of a car tyre, rim, link, body, ground, or a gap's id.</param>
public abstract record DrawingShape(DrawingRole Role, string Part);

/// <summary>Straight lines through points, closed or open.</summary>
public sealed record DrawingPath(DrawingRole Role, string Part, IReadOnlyList<DrawingPoint> Points, bool Closed = false, DrawingFill Fill = DrawingFill.None)
    : DrawingShape(Role, Part);

public sealed record DrawingCircle(DrawingRole Role, string Part, DrawingPoint Centre, double Radius, DrawingFill Fill = DrawingFill.None)
    : DrawingShape(Role, Part);

/// <summary>A slot with round ends, level: from one end's centre to the other's.</summary>
public sealed record DrawingSlot(DrawingRole Role, string Part, DrawingPoint From, DrawingPoint To, double Radius)
    : DrawingShape(Role, Part)
{
    private const int Corners = 24;

    /// <summary>The same in straight lines, for what draws no arcs; within 0.3 % of its radius.</summary>
    public DrawingPath Lines => new(Role, Part, [.. Arc(To, -90), .. Arc(From, 90)], Closed: true);

    private IEnumerable<DrawingPoint> Arc(DrawingPoint centre, double from_deg) => Enumerable.Range(0, Corners + 1)
        .Select(k => double.DegreesToRadians(from_deg + 180.0 * k / Corners))
        .Select(angle => new DrawingPoint(centre.X + Radius * Math.Cos(angle), centre.Y + Radius * Math.Sin(angle)));
}

/// <summary>Separate straight strokes, such as hatching.</summary>
public sealed record DrawingStrokes(DrawingRole Role, string Part, IReadOnlyList<(DrawingPoint From, DrawingPoint To)> Strokes)
    : DrawingShape(Role, Part);

/// <summary>Words on the drawing; <paramref name="At"/> is the left end, middle or right end of the line at half its height, <paramref name="Height"/> the size of its letters.</summary>
public sealed record DrawingText(DrawingRole Role, string Part, DrawingPoint At, string Text, TextAnchor Anchor, double Height)
    : DrawingShape(Role, Part);

public enum TextAnchor { Start, Middle, End }

public readonly record struct DrawingPoint(double X, double Y);

public readonly record struct DrawingBox(double Left, double Bottom, double Right, double Top)
{
    public double Width => Right - Left;

    public double Height => Top - Bottom;

    public bool Overlaps(DrawingBox other) =>
        Left < other.Right && other.Left < Right && Bottom < other.Top && other.Bottom < Top;
}

/// <summary>
/// A dimension as drawn and as computed: the two measured points and the study's value, which is their distance. A gap that is
/// squeezed is negative.
/// </summary>
/// <param name="Id">Of a strut height, stopGap, outerDiameter, damperLength, exposedThread or strutLength; of a bracket holeX1, holeY1, … and its own.</param>
/// <param name="Value_m">The study's number.</param>
/// <param name="Text">As written on the drawing.</param>
/// <param name="From">One measured point.</param>
/// <param name="To">The other.</param>
/// <param name="Label">The box its words take, mm.</param>
public sealed record DrawingDimension(string Id, double Value_m, string Text, DrawingPoint From, DrawingPoint To, DrawingBox Label);
