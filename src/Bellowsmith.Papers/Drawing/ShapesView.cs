using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Shapes of a drawing in lines of paper, at a scale.</summary>
internal static class ShapesView
{
    public const float TextSize = 6.5f, PointsPerMillimetre = 72 / 25.4f;

    /// <summary>ISO 5455 and the steps between that workshops use; how many mm of the part one mm of paper shows.</summary>
    public static readonly double[] Scales = [1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 10, 15, 20, 50];

    /// <summary>How many mm of the part letters are high that stand on paper at <see cref="TextSize"/>.</summary>
    public static double Letters_mm(double scale) => TextSize / PointsPerMillimetre * scale;

    /// <param name="pen">Draws.</param>
    /// <param name="shapes">In drawing order.</param>
    /// <param name="frame">Of the drawing; its middle comes to lie in the middle of the box.</param>
    /// <param name="box">On paper.</param>
    /// <param name="scale">One of <see cref="Scales"/>.</param>
    /// <param name="wordsOnPaper">Whether words hide the lines behind them.</param>
    public static void Draw(Pen pen, IEnumerable<DrawingShape> shapes, DrawingBox frame, SKRect box, double scale, bool wordsOnPaper = false)
    {
        float point = (float)(PointsPerMillimetre / scale);
        float x0 = box.MidX - (float)(frame.Left + frame.Right) / 2 * point, y0 = box.MidY + (float)(frame.Top + frame.Bottom) / 2 * point;
        foreach (DrawingShape shape in shapes) Shape(shape);

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
                    bool bold = text.Role is DrawingRole.Accent or DrawingRole.Miss;
                    if (wordsOnPaper) pen.Box(Around(At(text.At), text, pen.Width(text.Text, size, bold), size), Shade.Paper, null, 0);
                    pen.Words(text.Text, At(text.At).X, At(text.At).Y + 0.36f * size, size, colour, bold,
                        text.Anchor switch { TextAnchor.Start => Align.Left, TextAnchor.Middle => Align.Middle, _ => Align.Right });
                    break;
            }
        }
    }

    private static SKRect Around(SKPoint at, DrawingText text, float width, float size)
    {
        float left = at.X - (text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => width / 2, _ => width });
        return new(left - 1, at.Y - 0.55f * size, left + width + 1, at.Y + 0.55f * size);
    }

    private static (Shade, float, float[]) Style(DrawingRole role) => role switch
    {
        DrawingRole.Outline => (Shade.Ink, 0.85f, []),
        DrawingRole.Rubber => (Shade.Ink, 0.6f, []),
        DrawingRole.Centre => (Shade.Ink, 0.35f, [9, 2, 1.5f, 2]),
        DrawingRole.Hatch => (Shade.Ink, 0.25f, []),
        DrawingRole.Accent => (Shade.Accent, 0.5f, []),
        DrawingRole.Before => (Shade.Quiet, 0.5f, [3, 2]),
        DrawingRole.Miss => (Shade.Red, 0.9f, []),
        _ => (Shade.Ink, 0.35f, []),
    };

    private static Shade? Fill(DrawingFill fill, Shade line, string part) => fill switch
    {
        DrawingFill.Paper => Shade.Paper,
        DrawingFill.Rubber => part is "stop" or "tyre" ? Shade.Faint : Shade.Wall,
        DrawingFill.Line => line,
        _ => null,
    };
}
