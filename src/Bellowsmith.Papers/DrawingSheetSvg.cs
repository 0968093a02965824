using Bellowsmith.Kits.Figures;
using Bellowsmith.Papers.Drawing;

namespace Bellowsmith.Papers;

/// <summary>Writes one drawing to scale as an SVG that stands alone, as <see cref="ChartSvg"/> does a chart.</summary>
public static class DrawingSheetSvg
{
    // As tall as on a sheet of A4.
    private const float Height = (float)(190 / SvgPen.Millimetre);

    /// <summary>UTF-8 without byte order mark, lines ended by line feeds.</summary>
    /// <param name="title">Heading.</param>
    /// <param name="draw">The part drawn with letters of so many mm of the part.</param>
    public static byte[] Write(string title, Func<double, SheetDrawing> draw) =>
        SvgSheet.Write("drawing", title, draw(1).Summary, (pen, box) => new SectionView(pen, box).Draw(draw), Height);
}
