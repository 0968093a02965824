namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A strut in section at one setting, as a draughtsman would draw it: shapes in drawing order, in millimetres of the strut
/// itself (1 : 1), x right from the strut's axis, y up from the lower datum. Page and paper scale and style it by role.
/// </summary>
public sealed record StrutSection
{
    /// <summary>In drawing order: what comes later lies on top.</summary>
    public required IReadOnlyList<SectionShape> Shapes { get; init; }

    public required IReadOnlyList<SectionDimension> Dimensions { get; init; }
    public required IReadOnlyList<SectionHandle> Handles { get; init; }

    /// <summary>Everything drawn at every setting the spring allows, so that a view does not move while a handle is dragged.</summary>
    public required SectionBox Frame { get; init; }

    /// <summary>Rows of the title block; the renderer adds the scale it draws at.</summary>
    public required IReadOnlyList<TitleRow> TitleBlock { get; init; }

    /// <summary>The drawing in words, for those who hear it.</summary>
    public required string Summary { get; init; }
}

/// <summary>How a shape is drawn. Outline thick; Thin, Hatch, Dimension and Accent thin; Centre thin chain line.</summary>
public enum SectionRole { Outline, Thin, Centre, Hatch, Dimension, Accent, Rubber }

/// <summary>What fills a closed shape: nothing, the paper (hiding what lies below), rubber, or the colour of its lines.</summary>
public enum SectionFill { None, Paper, Rubber, Line }

/// <param name="Role">How it is drawn.</param>
/// <param name="Part">What it belongs to: mount, upperPlate, bellows, lowerPlate, rod, stop, head, body, thread, lowerMount, axis, or a dimension's id.</param>
public abstract record SectionShape(SectionRole Role, string Part);

/// <summary>Straight lines through points, closed or open.</summary>
public sealed record SectionPath(SectionRole Role, string Part, IReadOnlyList<SectionPoint> Points, bool Closed = false, SectionFill Fill = SectionFill.None)
    : SectionShape(Role, Part);

public sealed record SectionCircle(SectionRole Role, string Part, SectionPoint Centre, double Radius, SectionFill Fill = SectionFill.None)
    : SectionShape(Role, Part);

/// <summary>Separate straight strokes, such as hatching.</summary>
public sealed record SectionStrokes(SectionRole Role, string Part, IReadOnlyList<(SectionPoint From, SectionPoint To)> Strokes)
    : SectionShape(Role, Part);

/// <summary>Words on the drawing; <paramref name="At"/> is the left end, middle or right end of the line at half its height, <paramref name="Height"/> the size of its letters.</summary>
public sealed record SectionText(SectionRole Role, string Part, SectionPoint At, string Text, TextAnchor Anchor, double Height)
    : SectionShape(Role, Part);

public enum TextAnchor { Start, Middle, End }

public readonly record struct SectionPoint(double X, double Y);

public readonly record struct SectionBox(double Left, double Bottom, double Right, double Top)
{
    public double Width => Right - Left;

    public double Height => Top - Bottom;

    public bool Overlaps(SectionBox other) =>
        Left < other.Right && other.Left < Right && Bottom < other.Top && other.Bottom < Top;
}

/// <summary>
/// A dimension as drawn and as computed: the two measured points and the study's value, which is their distance. A gap that is
/// squeezed is negative.
/// </summary>
/// <param name="Id">height, stopGap, outerDiameter, damperLength, exposedThread or strutLength.</param>
/// <param name="Value_m">The study's number.</param>
/// <param name="Text">As written on the drawing.</param>
/// <param name="From">One measured point.</param>
/// <param name="To">The other.</param>
/// <param name="Label">The box its words take, mm.</param>
public sealed record SectionDimension(string Id, double Value_m, string Text, SectionPoint From, SectionPoint To, SectionBox Label);

/// <summary>
/// What a hand can drag up and down. Moving it up by a millimetre of the strut changes the value by
/// <paramref name="ValuePerMillimetreUp"/> in m.
/// </summary>
/// <param name="Id">height or thread.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Value_m">What it is set to.</param>
/// <param name="Least_m">Least it may be.</param>
/// <param name="Greatest_m">Greatest it may be.</param>
/// <param name="ValuePerMillimetreUp">m per mm, with sign.</param>
public sealed record SectionHandle(
    string Id, SectionPoint At, double Value_m, double Least_m, double Greatest_m, double ValuePerMillimetreUp);

public sealed record TitleRow(string Label, string Text);
