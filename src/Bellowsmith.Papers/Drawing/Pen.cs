using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

internal enum Align { Left, Middle, Right }

/// <summary>What a colour is for; each pen has its own for it.</summary>
internal enum Shade { Ink, Quiet, Rule, Faint, Band, Accent, Paper, Wall, Amber, Red }

/// <summary>Lines, fills and words on one page, in points of 1/72 in from its upper left corner.</summary>
internal abstract class Pen(Letters letters)
{
    protected Letters Letters => letters;

    public abstract void Path(ReadOnlySpan<SKPoint> points, bool closed, Shade? fill, Shade? line, float width, params ReadOnlySpan<float> dashes);

    public abstract void Circle(float x, float y, float radius, Shade? fill, Shade? line, float width);

    /// <summary>Boxes side by side in ink of a strength from 0 to 1, without seams.</summary>
    public abstract void Wash(IReadOnlyList<SKRect> boxes, float strength);

    /// <summary>Draws what leaves a box only inside it.</summary>
    public abstract void Clipped(SKRect box, Action draw);

    public void Line(float x1, float y1, float x2, float y2, Shade colour, float width, params ReadOnlySpan<float> dashes) =>
        Path([new(x1, y1), new(x2, y2)], false, null, colour, width, dashes);

    public void Box(SKRect box, Shade? fill, Shade? line, float width) => Path(
        [new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)], true, fill, line, width);

    /// <summary>One line of words on a baseline.</summary>
    public void Words(string text, float x, float y, float size, Shade colour, bool bold = false, Align align = Align.Left)
    {
        if (text.Length == 0) return;
        float width = Width(text, size, bold);
        Words(text, align == Align.Left ? x : x - width / (align == Align.Middle ? 2 : 1), y, width, size, colour, bold);
    }

    /// <summary>Words broken into lines from a top edge down; returns the lower edge.</summary>
    public float Paragraph(string text, float x, float top, float width, float size, Shade colour, bool bold = false, float leading = 1.32f)
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

    public IReadOnlyList<string> Lines(string text, float size, float width) => letters.Lines(text, size, false, width);

    public float Width(string text, float size, bool bold = false) => letters.Width(text, size, bold);

    protected abstract void Words(string text, float left, float y, float width, float size, Shade colour, bool bold);
}
