using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using Bellowsmith.Kits.Figures;

namespace Bellowsmith.App.Boards;

/// <summary>
/// A drawing as SVG in its own millimetres, y turned down. Colours and line widths belong to the style sheet; each dimension
/// carries its study's number so that a reader, or a test, can take it off the drawing.
/// </summary>
public static class DrawingSvg
{
    public static string ViewBox(DrawingBox frame) => Text($"{frame.Left:0.##} {-frame.Top:0.##} {frame.Width:0.##} {frame.Height:0.##}");

    public static string Shapes(IEnumerable<DrawingShape> shapes, IEnumerable<DrawingDimension> dimensions)
    {
        StringBuilder svg = new();
        foreach (DrawingShape shape in shapes) Shape(svg, shape);
        foreach (DrawingDimension d in dimensions)
            svg.Append(CultureInfo.InvariantCulture, $"<desc class=\"measured\" data-dimension=\"{d.Id}\" data-value=\"{d.Value_m}\" data-from=\"{d.From.X} {d.From.Y}\" data-to=\"{d.To.X} {d.To.Y}\"></desc>");
        return svg.ToString();
    }

    private static void Shape(StringBuilder svg, DrawingShape shape)
    {
        string style = $"class=\"{shape.Role.ToString().ToLowerInvariant()} {Fill(shape)}\" data-part=\"{shape.Part}\"";
        switch (shape)
        {
            case DrawingPath path:
                svg.Append("<path ").Append(style).Append(" d=\"");
                for (int k = 0; k < path.Points.Count; k++)
                    svg.Append(k == 0 ? 'M' : 'L').Append(CultureInfo.InvariantCulture, $"{path.Points[k].X:0.##} {-path.Points[k].Y:0.##}");
                svg.Append(path.Closed ? "Z\"/>" : "\"/>");
                break;
            case DrawingSlot slot:
                Shape(svg, slot.Lines);
                break;
            case DrawingStrokes strokes:
                svg.Append("<path ").Append(style).Append(" d=\"");
                foreach ((DrawingPoint from, DrawingPoint to) in strokes.Strokes)
                    svg.Append(CultureInfo.InvariantCulture, $"M{from.X:0.##} {-from.Y:0.##}L{to.X:0.##} {-to.Y:0.##}");
                svg.Append("\"/>");
                break;
            case DrawingCircle circle:
                svg.Append(CultureInfo.InvariantCulture, $"<circle {style} cx=\"{circle.Centre.X:0.##}\" cy=\"{-circle.Centre.Y:0.##}\" r=\"{circle.Radius:0.##}\"/>");
                break;
            case DrawingText text:
                svg.Append(CultureInfo.InvariantCulture, $"<text {style} x=\"{text.At.X:0.##}\" y=\"{-text.At.Y:0.##}\" text-anchor=\"{text.Anchor.ToString().ToLowerInvariant()}\" dominant-baseline=\"central\" font-size=\"{text.Height:0.##}\">{HtmlEncoder.Default.Encode(text.Text)}</text>");
                break;
        }
    }

    private static string Fill(DrawingShape shape) => shape switch
    {
        DrawingPath path => FillClass(path.Fill),
        DrawingCircle circle => FillClass(circle.Fill),
        _ => "",
    };

    private static string FillClass(DrawingFill fill) => "fill-" + fill.ToString().ToLowerInvariant();

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
