using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Draws on a page of a PDF, in ink for white paper.</summary>
internal sealed class CanvasPen(SKCanvas canvas, Letters letters) : Pen(letters)
{
    public override void Path(ReadOnlySpan<SKPoint> points, bool closed, Shade? fill, Shade? line, float width, params ReadOnlySpan<float> dashes)
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

    public override void Circle(float x, float y, float radius, Shade? fill, Shade? line, float width)
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

    public override void Wash(IReadOnlyList<SKRect> boxes, float strength)
    {
        using SKPaint paint = new() { Color = Colour(Shade.Ink).WithAlpha((byte)(255 * strength)), Style = SKPaintStyle.Fill };
        foreach (SKRect box in boxes) canvas.DrawRect(box, paint);
    }

    public override void Clipped(SKRect box, Action draw)
    {
        canvas.Save();
        canvas.ClipRect(box);
        draw();
        canvas.Restore();
    }

    protected override void Words(string text, float left, float y, float width, float size, Shade colour, bool bold)
    {
        using SKPaint paint = Fill(colour);
        canvas.DrawText(text, left, y, SKTextAlign.Left, Letters.Font(size, bold), paint);
    }

    private static SKColor Colour(Shade shade) => shade switch
    {
        Shade.Ink => new(0x1d, 0x2a, 0x32),
        Shade.Quiet => new(0x55, 0x60, 0x66),
        Shade.Rule => new(0xb5, 0xb5, 0xb5),
        Shade.Faint => new(0xdd, 0xdd, 0xdd),
        Shade.Band => new(0xd4, 0xd6, 0xd7),
        Shade.Accent => new(0x0b, 0x4f, 0x9a),
        Shade.Wall => new(0x7c, 0x83, 0x87),
        Shade.Amber => new(0x8a, 0x52, 0x00),
        Shade.Red => new(0xa5, 0x26, 0x1d),
        _ => SKColors.White,
    };

    private static SKPaint Fill(Shade shade) => new() { Color = Colour(shade), IsAntialias = true, Style = SKPaintStyle.Fill };

    private static SKPaint Stroke(Shade shade, float width, params ReadOnlySpan<float> dashes) => new()
    {
        Color = Colour(shade),
        IsAntialias = true,
        Style = SKPaintStyle.Stroke,
        StrokeWidth = width,
        StrokeJoin = SKStrokeJoin.Round,
        PathEffect = dashes.Length > 0 ? SKPathEffect.CreateDash(dashes.ToArray(), 0) : null,
    };
}
