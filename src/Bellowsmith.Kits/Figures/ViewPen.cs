namespace Bellowsmith.Kits.Figures;

/// <summary>Collects the shapes of a view of the car in drawing order; labels give way to each other and to what is drawn.</summary>
internal sealed class ViewPen
{
    private const double LetterWidth = 0.52, LineHeight = 1.15;
    private const int Directions = 12, Reaches = 8, LongName = 10;

    private readonly double _text_mm;
    private readonly List<DrawingShape> _shapes = [];
    private ViewRoom _room;

    public ViewPen(double text_mm) => (_text_mm, _room) = (text_mm, new(_shapes));

    public IReadOnlyList<DrawingShape> Shapes => _shapes;

    public void Clear()
    {
        _shapes.Clear();
        _room = new(_shapes);
    }

    public void Add(DrawingShape shape) => _shapes.Add(shape);

    public void Line(DrawingRole role, string part, DrawingPoint from, DrawingPoint to) => Add(new DrawingPath(role, part, [from, to]));

    public void Cross(string part, DrawingPoint at, double half) => Add(new DrawingStrokes(DrawingRole.Thin, part,
        [(new(at.X - half, at.Y), new(at.X + half, at.Y)), (new(at.X, at.Y - half), new(at.X, at.Y + half))]));

    /// <summary>Words over a place, or further up where something is in their way; below it where there is no room above.</summary>
    public void Over(DrawingRole role, string part, DrawingPoint at, string text, DrawingBox frame)
    {
        IEnumerable<double> up = Enumerable.Range(0, Reaches).Select(k => 0.6 * k);
        Write(role, part, [text], up.Concat(up.Select(k => -2.2 - k)).Select(k => BoxOf(new(at.X, at.Y + k * _text_mm), [text], TextAnchor.Middle)), frame, null);
    }

    /// <summary>Words to the right of marks that may lie close together.</summary>
    public void Beside(string part, IEnumerable<(DrawingRole Role, DrawingPoint At, string Text)> labels, DrawingBox frame)
    {
        foreach ((DrawingRole role, DrawingPoint at, string text) in labels.OrderBy(label => label.At.Y))
            Write(role, part, [text], Enumerable.Range(0, Reaches).Select(k => BoxOf(new(at.X + _text_mm, at.Y + (0.7 + 0.6 * k) * _text_mm), [text], TextAnchor.Start)), frame, null);
    }

    /// <summary>Gaps: the two places of each joined, and name and size on a leader where they are best read, a long name on a line of its own.</summary>
    public void Gaps(IReadOnlyList<(DrawingRole Role, string Id, DrawingPoint From, DrawingPoint To, string Name, string Size)> gaps, DrawingBox frame)
    {
        foreach ((DrawingRole role, string id, DrawingPoint from, DrawingPoint to, _, _) in gaps)
        {
            Line(role, id, from, to);
            foreach (DrawingPoint end in (DrawingPoint[])[from, to]) Add(new DrawingCircle(role, id, end, _text_mm / 6, DrawingFill.Line));
        }

        foreach ((DrawingRole role, string id, DrawingPoint from, DrawingPoint to, string name, string size) in gaps)
        {
            string[] words = name.Length > LongName ? [name, size] : [$"{name} {size}"];
            DrawingPoint middle = new((from.X + to.X) / 2, (from.Y + to.Y) / 2);
            Write(role, id, words, Around(middle, words), frame, middle);
        }
    }

    // Nearest first, and of those the ones to the upper right.
    private IEnumerable<DrawingBox> Around(DrawingPoint middle, string[] words) =>
        from reach in Enumerable.Range(0, Reaches)
        from turn in Enumerable.Range(0, Directions)
        let angle = Math.PI / 4 + 2 * Math.PI * turn / Directions
        let at = new DrawingPoint(middle.X + (2 + reach) * _text_mm * Math.Cos(angle), middle.Y + (2 + reach) * _text_mm * Math.Sin(angle))
        select BoxOf(at, words, Math.Cos(angle) switch { > 0.3 => TextAnchor.Start, < -0.3 => TextAnchor.End, _ => TextAnchor.Middle });

    // Where no place is free words stand at the first, moved into the view.
    private void Write(DrawingRole role, string part, string[] lines, IEnumerable<DrawingBox> places, DrawingBox frame, DrawingPoint? from)
    {
        DrawingBox box = _room.Best(places, frame, from) ?? Into(places.First(), frame);
        _room.Take(box, from);
        if (from is { } place) Line(role, part, place, ViewRoom.Near(box, place));
        double upper = (box.Bottom + box.Top) / 2 + (lines.Length - 1) * LineHeight * _text_mm / 2;
        for (int k = 0; k < lines.Length; k++)
            Add(new DrawingText(role, part, new((box.Left + box.Right) / 2, upper - k * LineHeight * _text_mm), lines[k], TextAnchor.Middle, _text_mm));
    }

    private static DrawingBox Into(DrawingBox box, DrawingBox frame)
    {
        double left = Math.Max(frame.Left, Math.Min(box.Left, frame.Right - box.Width)), bottom = Math.Max(frame.Bottom, Math.Min(box.Bottom, frame.Top - box.Height));
        return new(left, bottom, left + box.Width, bottom + box.Height);
    }

    // With a little room on every side.
    private DrawingBox BoxOf(DrawingPoint at, string[] lines, TextAnchor anchor)
    {
        double width = (lines.Max(line => line.Length) * LetterWidth + 0.4) * _text_mm, half = (0.15 + lines.Length * LineHeight / 2) * _text_mm;
        double left = anchor switch { TextAnchor.Start => at.X, TextAnchor.Middle => at.X - width / 2, _ => at.X - width };
        return new(left, at.Y - half, left + width, at.Y + half);
    }
}
