namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A strut in section at one setting, as a draughtsman would draw it: shapes in drawing order, in millimetres of the strut
/// itself (1 : 1), x right from the strut's axis, y up from the lower datum. Page and paper scale and style it by role.
/// </summary>
public sealed record StrutSection
{
    /// <summary>In drawing order: what comes later lies on top.</summary>
    public required IReadOnlyList<DrawingShape> Shapes { get; init; }

    public required IReadOnlyList<DrawingDimension> Dimensions { get; init; }
    public required IReadOnlyList<SectionHandle> Handles { get; init; }

    /// <summary>Everything drawn at every setting the spring allows, so that a view does not move while a handle is dragged.</summary>
    public required DrawingBox Frame { get; init; }

    /// <summary>Rows of the title block; the renderer adds the scale it draws at.</summary>
    public required IReadOnlyList<TitleRow> TitleBlock { get; init; }

    /// <summary>The drawing in words, for those who hear it.</summary>
    public required string Summary { get; init; }
}

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
    string Id, DrawingPoint At, double Value_m, double Least_m, double Greatest_m, double ValuePerMillimetreUp);

public sealed record TitleRow(string Label, string Text);
