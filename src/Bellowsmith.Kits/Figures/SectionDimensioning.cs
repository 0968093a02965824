using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// Dimension lines after ISO 129: extension lines from the part, arrows at the line's ends, the number in a gap of the line, or
/// beside it where the line is too short. Labels stand in lanes and give way to each other, so none lies on another.
/// </summary>
/// <param name="pen">Takes the shapes.</param>
/// <param name="units">Units of the numbers.</param>
/// <param name="text">Size of the letters.</param>
/// <param name="more">Decimals beyond those a number on a screen deserves, for who makes the part.</param>
internal sealed class SectionDimensioning(SectionPen pen, DisplayUnits units, double text, int more = 0)
{
    private const double LetterWidth = 0.6, SmallLetterWidth = 0.55, Caption = 0.72, Slender = 0.17;

    private readonly List<DrawingDimension> _dimensions = [];

    public IReadOnlyList<DrawingDimension> Dimensions => _dimensions;

    /// <summary>Size of an arrow, and how far extension lines run past the dimension line.</summary>
    public double Arrow => 0.9 * text;

    public double Beyond => 0.5 * text;

    /// <summary>Half the width of a label with this caption.</summary>
    public double HalfWidth(string caption) => Math.Max(caption.Length * Caption * SmallLetterWidth, 6 * LetterWidth) * text / 2;

    /// <summary>
    /// An upright dimension at x, from one point up to another; a negative value is drawn over its amount. Its label stands in
    /// a gap of the line, or outwards beside it.
    /// </summary>
    public void Upright(
        string id, double value_m, string caption, DrawingPoint from, DrawingPoint to, double x, DrawingRole role, bool beside = false)
    {
        (double low, double high) = (Math.Min(from.Y, to.Y), Math.Max(from.Y, to.Y));
        int side = Math.Sign(x);
        foreach (DrawingPoint point in (ReadOnlySpan<DrawingPoint>)[from, to])
            pen.Line(role, id, point.X + side * Beyond / 2, point.Y, x + side * Beyond / 2, point.Y);

        double height = text * (caption.Length > 0 ? 1 + 1.15 * Caption : 1);
        bool inside = !beside && high - low > height + 3 * Arrow, arrowsInside = high - low > 3 * Arrow;
        DrawingBox label = Place(id, caption, new DrawingPoint(x, (low + high) / 2), height, inside ? 0 : side);
        if (inside)
        {
            pen.Line(role, id, x, low, x, Math.Min(label.Bottom - Beyond / 2, high));
            pen.Line(role, id, x, Math.Max(label.Top + Beyond / 2, low), x, high);
        }
        else pen.Line(role, id, x, low - (arrowsInside ? 0 : 2 * Arrow), x, high + (arrowsInside ? 0 : 2 * Arrow));

        ArrowAt(role, id, new(x, low), 0, arrowsInside ? -1 : 1);
        ArrowAt(role, id, new(x, high), 0, arrowsInside ? 1 : -1);
        Write(role, id, value_m, caption, label, from, to, Number(value_m));
    }

    /// <summary>A level dimension at y, below or above what it measures; its number in a gap of the line, or to the right of it.</summary>
    public void Level(string id, double value_m, DrawingPoint from, DrawingPoint to, double y)
    {
        DrawingRole role = DrawingRole.Dimension;
        (double left, double right) = (Math.Min(from.X, to.X), Math.Max(from.X, to.X));
        foreach (DrawingPoint point in (ReadOnlySpan<DrawingPoint>)[from, to])
            pen.Line(role, id, point.X, point.Y + Math.Sign(y - point.Y) * Beyond / 2, point.X, y + Math.Sign(y - point.Y) * Beyond / 2);

        double half = HalfWidth("");
        bool inside = right - left > 2 * half + 3 * Arrow, arrowsInside = right - left > 3 * Arrow;
        double middle = inside ? (left + right) / 2 : right + half + (arrowsInside ? Beyond : 3 * Arrow), beyond = arrowsInside ? 0 : 2 * Arrow;
        DrawingBox label = new(middle - half, y - text / 2, middle + half, y + text / 2);
        if (inside)
        {
            pen.Line(role, id, left, y, label.Left, y);
            pen.Line(role, id, label.Right, y, right, y);
        }
        else pen.Line(role, id, left - beyond, y, right + beyond, y);

        ArrowAt(role, id, new(left, y), arrowsInside ? -1 : 1, 0);
        ArrowAt(role, id, new(right, y), arrowsInside ? 1 : -1, 0);
        Write(role, id, value_m, "", label, from, to, Number(value_m));
    }

    /// <summary>A hole's diameter on a leader from its edge to words that begin at x, right of it.</summary>
    public void Hole(string id, double value_m, DrawingPoint centre, double radius, double x, string before)
    {
        DrawingPoint edge = new(centre.X + radius * Math.Cos(Math.PI / 4), centre.Y + radius * Math.Sin(Math.PI / 4)), end = new(x, centre.Y + radius + text);
        string words = before + Number(value_m);
        DrawingBox label = new(x + Beyond, end.Y - text / 2, x + Beyond + words.Length * LetterWidth * text, end.Y + text / 2);
        pen.Line(DrawingRole.Dimension, id, edge.X, edge.Y, end.X, end.Y);
        pen.Add(new DrawingText(DrawingRole.Dimension, id, new(label.Left, end.Y), words, TextAnchor.Start, text));
        _dimensions.Add(new DrawingDimension(id, value_m, words, new(centre.X - radius, centre.Y), new(centre.X + radius, centre.Y), label));
    }

    /// <summary>A diameter across the axis at height y, its number outside the right arrow.</summary>
    public void Across(string id, double value_m, double radius, double fromY, double y, string prefix)
    {
        DrawingRole role = DrawingRole.Dimension;
        foreach (int side in (ReadOnlySpan<int>)[-1, 1])
        {
            pen.Line(role, id, side * radius, fromY, side * radius, y + Math.Sign(y - fromY) * Beyond);
            ArrowAt(role, id, new(side * radius, y), side, 0);
        }

        pen.Line(role, id, -radius, y, radius + Arrow, y);
        string words = prefix + Number(value_m);
        double left = radius + 1.3 * Arrow;
        DrawingBox label = new(left, y - text / 2, left + words.Length * LetterWidth * text, y + text / 2);
        pen.Add(new DrawingText(role, id, new(left, y), words, TextAnchor.Start, text));
        _dimensions.Add(new DrawingDimension(id, value_m, words, new(-radius, fromY), new(radius, fromY), label));
    }

    private string Number(double value_m) => units.Number(Dimension.Length, value_m, more);

    private void Write(
        DrawingRole role, string id, double value_m, string caption, DrawingBox label, DrawingPoint from, DrawingPoint to, string number)
    {
        double middle = (label.Left + label.Right) / 2;
        pen.Add(new DrawingText(role, id, new(middle, label.Top - text / 2), number, TextAnchor.Middle, text));
        if (caption.Length > 0)
            pen.Add(new DrawingText(role, id, new(middle, label.Bottom + Caption * text / 2), caption, TextAnchor.Middle, Caption * text));
        _dimensions.Add(new DrawingDimension(id, value_m, number, from, to, label));
    }

    // Beside the line where it does not fit into it, and down until nothing is in the way.
    private DrawingBox Place(string id, string caption, DrawingPoint at, double height, int side)
    {
        double half = HalfWidth(caption), x = at.X + side * (half + Beyond);
        DrawingBox box = new(x - half, at.Y - height / 2, x + half, at.Y + height / 2);
        while (_dimensions.Any(d => d.Id != id && d.Label.Overlaps(box)))
            box = box with { Bottom = box.Bottom - text / 2, Top = box.Top - text / 2 };
        return box;
    }

    private void ArrowAt(DrawingRole role, string id, DrawingPoint tip, int alongX, int alongY)
    {
        (double dx, double dy, double half) = (alongX * Arrow, alongY * Arrow, Slender * Arrow);
        DrawingPoint left = new(tip.X - dx + half * alongY, tip.Y - dy + half * alongX);
        DrawingPoint right = new(tip.X - dx - half * alongY, tip.Y - dy - half * alongX);
        pen.Add(new DrawingPath(role, id, [tip, left, right], Closed: true, DrawingFill.Line));
    }
}
