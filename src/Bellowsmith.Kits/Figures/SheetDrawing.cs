namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A part as a draughtsman would draw it: shapes in drawing order, in millimetres of the part itself (1 : 1), x right from the strut's
/// axis, y up from the lower datum. Page and paper scale and style it by role.
/// </summary>
public record SheetDrawing
{
    /// <summary>In drawing order: what comes later lies on top.</summary>
    public required IReadOnlyList<DrawingShape> Shapes { get; init; }

    public required IReadOnlyList<DrawingDimension> Dimensions { get; init; }

    /// <summary>Everything drawn.</summary>
    public required DrawingBox Frame { get; init; }

    /// <summary>Rows of the title block; the renderer adds the scale it draws at to those beside it.</summary>
    public required IReadOnlyList<TitleRow> TitleBlock { get; init; }

    /// <summary>The drawing in words, for those who hear it.</summary>
    public required string Summary { get; init; }
}

/// <param name="Label">What it says.</param>
/// <param name="Text">Empty where it is written by hand.</param>
/// <param name="Beside">To the right of those that say what the part is.</param>
public sealed record TitleRow(string Label, string Text, bool Beside = false);
