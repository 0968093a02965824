namespace Bellowsmith.Kits.Figures;

/// <summary>Collects the shapes of a view of the car in drawing order; labels give way to each other.</summary>
internal sealed class ViewPen(double text_mm)
{
    private const double LetterWidth = 0.56;

    private readonly List<DrawingShape> _shapes = [];
    private readonly List<DrawingBox> _labels = [];

    public IReadOnlyList<DrawingShape> Shapes => _shapes;

    public void Clear()
    {
        _shapes.Clear();
        _labels.Clear();
    }

    public void Add(DrawingShape shape) => _shapes.Add(shape);

    public void Line(DrawingRole role, string part, DrawingPoint from, DrawingPoint to) => Add(new DrawingPath(role, part, [from, to]));

    public void Cross(string part, DrawingPoint at, double half) => Add(new DrawingStrokes(DrawingRole.Thin, part,
        [(new(at.X - half, at.Y), new(at.X + half, at.Y)), (new(at.X, at.Y - half), new(at.X, at.Y + half))]));

    /// <summary>Words at a place, moved up until nothing is in their way.</summary>
    public void Words(DrawingRole role, string part, DrawingPoint at, string text, TextAnchor anchor)
    {
        DrawingBox box = BoxOf(at, text, anchor);
        while (_labels.Any(box.Overlaps))
        {
            at = at with { Y = at.Y + 0.6 * text_mm };
            box = BoxOf(at, text, anchor);
        }

        _labels.Add(box);
        Add(new DrawingText(role, part, at, text, anchor, text_mm));
    }

    /// <summary>Words to the right of marks that may lie close together.</summary>
    public void Beside(string part, IEnumerable<(DrawingRole Role, DrawingPoint At, string Text)> labels)
    {
        foreach ((DrawingRole role, DrawingPoint at, string text) in labels.OrderBy(label => label.At.Y))
            Words(role, part, new(at.X + text_mm, at.Y + 0.7 * text_mm), text, TextAnchor.Start);
    }

    /// <summary>A gap: its two places joined, and words on a leader away from the middle of the view.</summary>
    public void Gap(DrawingRole role, string id, DrawingPoint from, DrawingPoint to, string words, DrawingBox frame)
    {
        DrawingPoint middle = new((from.X + to.X) / 2, (from.Y + to.Y) / 2);
        bool right = to.X >= from.X;
        double width = words.Length * LetterWidth * text_mm, at = right ? Math.Min(middle.X + 2 * text_mm, frame.Right - width) : Math.Max(middle.X - 2 * text_mm, frame.Left + width);
        DrawingPoint label = new(at, middle.Y + 2 * text_mm);
        Line(role, id, from, to);
        foreach (DrawingPoint end in (DrawingPoint[])[from, to]) Add(new DrawingCircle(role, id, end, text_mm / 6, DrawingFill.Line));
        Words(role, id, label, words, right ? TextAnchor.Start : TextAnchor.End);
        DrawingBox box = _labels[^1];
        Line(role, id, middle, new(right ? box.Left - 0.2 * text_mm : box.Right + 0.2 * text_mm, (box.Bottom + box.Top) / 2));
    }

    private DrawingBox BoxOf(DrawingPoint at, string text, TextAnchor anchor)
    {
        double width = text.Length * LetterWidth * text_mm;
        double left = anchor switch { TextAnchor.Start => at.X, TextAnchor.Middle => at.X - width / 2, _ => at.X - width };
        return new(left, at.Y - 0.6 * text_mm, left + width, at.Y + 0.6 * text_mm);
    }
}
