using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>A drawing on paper, at the largest usual scale that fits, with frame and title block.</summary>
internal sealed class SectionView(Pen pen, SKRect box)
{
    // ISO 5455 and the steps between that workshops use; how many mm of the part one mm of paper shows.
    private static readonly double[] _scales = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 10, 15, 20, 50];
    private const float RowHeight = 10.4f, TextSize = 6.5f, LabelWidth = 40, RightCell = 62, PointsPerMillimetre = 72 / 25.4f;

    /// <param name="draw">The part drawn with letters of so many mm of the part.</param>
    public void Draw(Func<double, SheetDrawing> draw)
    {
        foreach (double scale in _scales)
        {
            SheetDrawing section = draw(TextSize / PointsPerMillimetre * scale);
            float point = (float)(PointsPerMillimetre / scale), rows = (section.TitleBlock.Count - 1) * RowHeight;
            bool fits = section.Frame.Width * point <= box.Width && section.Frame.Height * point <= box.Height - rows;
            if (!fits && scale != _scales[^1]) continue;
            Frame(section, rows, scale);
            Shapes(section, point, box.Height - rows);
            return;
        }
    }

    // What it is on the left, how it is drawn on the right.
    private void Frame(SheetDrawing section, float rows, double scale)
    {
        pen.Box(box, null, Shade.Ink, 1);
        float top = box.Bottom - rows, right = box.Right - RightCell;
        TitleRow[] left = [.. section.TitleBlock.SkipLast(1)];
        TitleRow[] drawn = [section.TitleBlock[^1], new TitleRow("scale", FormattableString.Invariant($"1 : {scale:0.#}"))];
        pen.Line(right, top, right, box.Bottom, Shade.Ink, 0.35f);
        Cells(left, box.Left, right, top, LabelWidth);
        Cells(drawn, right, box.Right, top, 28);
    }

    private void Cells(TitleRow[] rows, float left, float right, float top, float label)
    {
        foreach (TitleRow row in rows)
        {
            pen.Line(left, top, right, top, Shade.Ink, 0.35f);
            pen.Words(row.Label, left + 5, top + 7.4f, 6.2f, Shade.Quiet);
            pen.Words(row.Text, left + label, top + 7.4f, 6.2f, Shade.Ink, bold: true);
            top += RowHeight;
        }
    }

    private void Shapes(SheetDrawing section, float point, float height)
    {
        DrawingBox frame = section.Frame;
        float x0 = box.MidX - (float)(frame.Left + frame.Right) / 2 * point;
        float y0 = box.Top + height / 2 + (float)(frame.Top + frame.Bottom) / 2 * point;
        foreach (DrawingShape shape in section.Shapes) Shape(shape);

        SKPoint At(DrawingPoint p) => new(x0 + (float)p.X * point, y0 - (float)p.Y * point);

        void Shape(DrawingShape shape)
        {
            (Shade colour, float width, float[] dashes) = Style(shape.Role);
            switch (shape)
            {
                case DrawingPath path:
                    pen.Path([.. path.Points.Select(At)], path.Closed, Fill(path.Fill, colour, path.Part), colour, path.Fill == DrawingFill.Line ? 0.2f : width, dashes);
                    break;
                case DrawingSlot slot:
                    Shape(slot.Lines);
                    break;
                case DrawingStrokes strokes:
                    foreach ((DrawingPoint from, DrawingPoint to) in strokes.Strokes)
                        pen.Line(At(from).X, At(from).Y, At(to).X, At(to).Y, colour, width);
                    break;
                case DrawingCircle circle:
                    pen.Circle(At(circle.Centre).X, At(circle.Centre).Y, (float)circle.Radius * point, Fill(circle.Fill, colour, circle.Part), colour, width);
                    break;
                case DrawingText text:
                    float size = (float)text.Height * point;
                    pen.Words(text.Text, At(text.At).X, At(text.At).Y + 0.36f * size, size, colour, text.Role == DrawingRole.Accent,
                        text.Anchor switch { TextAnchor.Start => Align.Left, TextAnchor.Middle => Align.Middle, _ => Align.Right });
                    break;
            }
        }
    }

    private static (Shade, float, float[]) Style(DrawingRole role) => role switch
    {
        DrawingRole.Outline => (Shade.Ink, 0.85f, []),
        DrawingRole.Rubber => (Shade.Ink, 0.6f, []),
        DrawingRole.Centre => (Shade.Ink, 0.35f, [9, 2, 1.5f, 2]),
        DrawingRole.Hatch => (Shade.Ink, 0.25f, []),
        DrawingRole.Accent => (Shade.Accent, 0.5f, []),
        _ => (Shade.Ink, 0.35f, []),
    };

    private static Shade? Fill(DrawingFill fill, Shade line, string part) => fill switch
    {
        DrawingFill.Paper => Shade.Paper,
        DrawingFill.Rubber => part == "stop" ? Shade.Faint : Shade.Wall,
        DrawingFill.Line => line,
        _ => null,
    };
}
