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
    /// a gap of the line, or outwards beside it, or below where that is asked for.
    /// </summary>
    public void Upright(
        string id, double value_m, string caption, DrawingPoint from, DrawingPoint to, double x, DrawingRole role, bool beside = false, bool below = false)
    {
        (double low, double high) = (Math.Min(from.Y, to.Y), Math.Max(from.Y, to.Y));
        int side = Math.Sign(x);
        foreach (DrawingPoint point in (ReadOnlySpan<DrawingPoint>)[from, to])
            pen.Line(role, id, point.X + side * Beyond / 2, point.Y, x + side * Beyond / 2, point.Y);

        double height = text * (caption.Length > 0 ? 1 + 1.15 * Caption : 1);
        bool inside = !beside && high - low > height + 3 * Arrow, arrowsInside = high - low > 3 * Arrow;
        double beyond = arrowsInside ? 0 : 2 * Arrow, middle = inside || !below ? (low + high) / 2 : low - beyond - height / 2 - Beyond;
        DrawingBox label = Place(id, caption, new DrawingPoint(x, middle), height, inside || below ? 0 : side);
        if (inside)
        {
            pen.Line(role, id, x, low, x, Math.Min(label.Bottom - Beyond / 2, high));
            pen.Line(role, id, x, Math.Max(label.Top + Beyond / 2, low), x, high);
        }
        else pen.Line(role, id, x, low - beyond, x, high + beyond);

        ArrowAt(role, id, new(x, low), 0, arrowsInside ? -1 : 1);
        ArrowAt(role, id, new(x, high), 0, arrowsInside ? 1 : -1);
        Write(role, id, value_m, caption, label, from, to, Number(value_m));
    }

    /// <summary>
    /// A level dimension at y, below or above what it measures; its number in a gap of the line, or to the right of it, where none of the upright
    /// lines runs that cross it.
    /// </summary>
    public void Level(string id, double value_m, DrawingPoint from, DrawingPoint to, double y, IReadOnlyList<double> crossing)
    {
        DrawingRole role = DrawingRole.Dimension;
        (double left, double right) = (Math.Min(from.X, to.X), Math.Max(from.X, to.X));
        foreach (DrawingPoint point in (ReadOnlySpan<DrawingPoint>)[from, to])
            pen.Line(role, id, point.X, point.Y + Math.Sign(y - point.Y) * Beyond / 2, point.X, y + Math.Sign(y - point.Y) * Beyond / 2);

        string number = Number(value_m);
        double half = Math.Max(HalfWidth(""), number.Length * LetterWidth * text / 2), room = half + 1.5 * Arrow;
        bool arrowsInside = right - left > 3 * Arrow;
        double? gap = Clear(left + room, (left + right) / 2, right - room, half, crossing);
        double outside = right + half + (arrowsInside ? Beyond : 3 * Arrow), middle = gap ?? Clear(outside, outside, double.PositiveInfinity, half, crossing)!.Value;
        DrawingBox label = new(middle - half, y - text / 2, middle + half, y + text / 2);
        pen.Line(role, id, left - (arrowsInside ? 0 : 2 * Arrow), y, label.Left, y);
        if (gap is not null) pen.Line(role, id, label.Right, y, right, y);
        ArrowAt(role, id, new(left, y), arrowsInside ? -1 : 1, 0);
        ArrowAt(role, id, new(right, y), arrowsInside ? 1 : -1, 0);
        Write(role, id, value_m, "", label, from, to, number);
    }

    /// <summary>Words on a leader: from what lies within a radius of a point to the words' left end. Returns the box they take.</summary>
    public DrawingBox Leader(DrawingRole role, string part, string words, double height, DrawingPoint at, double radius, DrawingPoint end)
    {
        double x = end.X - Beyond - at.X, y = end.Y - at.Y, share = radius / Math.Sqrt(x * x + y * y);
        pen.Line(DrawingRole.Dimension, part, at.X + share * x, at.Y + share * y, end.X - Beyond, end.Y);
        pen.Add(new DrawingText(role, part, end, words, TextAnchor.Start, height));
        return new(end.X, end.Y - height / 2, end.X + words.Length * LetterWidth * height, end.Y + height / 2);
    }

    /// <summary>A dimension whose words are on a leader.</summary>
    public void Measured(string id, double value_m, string words, DrawingPoint from, DrawingPoint to, DrawingBox label) =>
        _dimensions.Add(new DrawingDimension(id, value_m, words, from, to, label));

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

    // The place nearest the wanted one where a label of so much half width touches no crossing line; null where there is none.
    private double? Clear(double least, double wanted, double greatest, double half, IReadOnlyList<double> crossing)
    {
        double apart = half + Beyond / 2;
        double?[] places = [wanted, least, .. crossing.SelectMany(x => new double?[] { x - apart, x + apart })];
        return places.Where(at => at >= least && at <= greatest && crossing.All(x => Math.Abs(x - at!.Value) > apart - 1e-9)).MinBy(at => Math.Abs(at!.Value - wanted));
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
