using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

internal enum Align { Left, Middle, Right }

/// <summary>Lines, fills and words on one page, in points from its upper left corner.</summary>
internal sealed class Pen(SKCanvas canvas, Letters letters)
{
    public static readonly SKColor Ink = new(0x1d, 0x2a, 0x32), Quiet = new(0x55, 0x60, 0x66), Rule = new(0xb5, 0xb5, 0xb5);
    public static readonly SKColor Faint = new(0xdd, 0xdd, 0xdd), Band = new(0xd4, 0xd6, 0xd7), Accent = new(0x0b, 0x4f, 0x9a);
    public static readonly SKColor Paper = SKColors.White, Wall = new(0x7c, 0x83, 0x87);

    public SKCanvas Canvas => canvas;

    public void Line(float x1, float y1, float x2, float y2, SKColor colour, float width, params float[] dashes)
    {
        using SKPaint paint = Stroke(colour, width, dashes);
        canvas.DrawLine(x1, y1, x2, y2, paint);
    }

    public void Path(ReadOnlySpan<SKPoint> points, bool closed, SKColor? fill, SKColor? line, float width, params float[] dashes)
    {
        if (points.Length < 2) return;
        using SKPath path = new();
        path.MoveTo(points[0]);
        foreach (SKPoint point in points[1..]) path.LineTo(point);
        if (closed) path.Close();
        if (fill is { } inside)
        {
            using SKPaint paint = Fill(inside);
            canvas.DrawPath(path, paint);
        }

        if (line is not { } colour) return;
        using SKPaint stroke = Stroke(colour, width, dashes);
        canvas.DrawPath(path, stroke);
    }

    public void Circle(float x, float y, float radius, SKColor? fill, SKColor? line, float width)
    {
        if (fill is { } inside)
        {
            using SKPaint paint = Fill(inside);
            canvas.DrawCircle(x, y, radius, paint);
        }

        if (line is not { } colour) return;
        using SKPaint stroke = Stroke(colour, width);
        canvas.DrawCircle(x, y, radius, stroke);
    }

    public void Box(SKRect box, SKColor? fill, SKColor? line, float width) => Path(
        [new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)], true, fill, line, width);

    /// <summary>One line of words on a baseline.</summary>
    public void Words(string text, float x, float y, float size, SKColor colour, bool bold = false, Align align = Align.Left)
    {
        using SKPaint paint = Fill(colour);
        float left = align == Align.Left ? x : x - Width(text, size, bold) / (align == Align.Middle ? 2 : 1);
        canvas.DrawText(text, left, y, SKTextAlign.Left, letters.Font(size, bold), paint);
    }

    /// <summary>Words broken into lines from a top edge down; returns the lower edge.</summary>
    public float Paragraph(string text, float x, float top, float width, float size, SKColor colour, bool bold = false, float leading = 1.32f)
    {
        foreach (string line in letters.Lines(text, size, bold, width))
        {
            Words(line, x, top + size * (0.5f + leading / 2 - 0.14f), size, colour, bold);
            top += size * leading;
        }

        return top;
    }

    public float ParagraphHeight(string text, float width, float size, bool bold = false, float leading = 1.32f) =>
        letters.Lines(text, size, bold, width).Count * size * leading;

    public float Width(string text, float size, bool bold = false) => letters.Font(size, bold).MeasureText(text);

    private static SKPaint Fill(SKColor colour) => new() { Color = colour, IsAntialias = true, Style = SKPaintStyle.Fill };

    private static SKPaint Stroke(SKColor colour, float width, params float[] dashes) => new()
    {
        Color = colour,
        IsAntialias = true,
        Style = SKPaintStyle.Stroke,
        StrokeWidth = width,
        StrokeJoin = SKStrokeJoin.Round,
        PathEffect = dashes.Length > 0 ? SKPathEffect.CreateDash(dashes, 0) : null,
    };
}
