using System.Globalization;
using System.Text;
using System.Xml;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>
/// Writes SVG elements in millimetres, in the colours of the page. Words stay words, so that they can be selected and searched;
/// each says how wide it is in the letters it was measured in, so that another font takes the same room.
/// </summary>
internal sealed class SvgPen(XmlWriter xml, string id, Letters letters) : Pen(letters)
{
    /// <summary>Millimetres in a point of 1/72 in.</summary>
    public const double Millimetre = 25.4 / 72;

    private int _clips;

    public override void Path(ReadOnlySpan<SKPoint> points, bool closed, Shade? fill, Shade? line, float width, params ReadOnlySpan<float> dashes)
    {
        if (points.Length < 2) return;
        StringBuilder path = new();
        foreach (SKPoint point in points) path.Append(path.Length == 0 ? 'M' : 'L').Append(Number(point.X)).Append(' ').Append(Number(point.Y));
        if (closed) path.Append('Z');
        xml.WriteStartElement("path");
        xml.WriteAttributeString("d", path.ToString());
        Paint(fill, line, width);
        if (dashes.Length > 0) xml.WriteAttributeString("stroke-dasharray", string.Join(' ', dashes.ToArray().Select(d => Number(d))));
        xml.WriteEndElement();
    }

    public override void Circle(float x, float y, float radius, Shade? fill, Shade? line, float width)
    {
        xml.WriteStartElement("circle");
        foreach ((string name, float value) in (ReadOnlySpan<(string, float)>)[("cx", x), ("cy", y), ("r", radius)])
            xml.WriteAttributeString(name, Number(value));
        Paint(fill, line, width);
        xml.WriteEndElement();
    }

    public override void Wash(IReadOnlyList<SKRect> boxes, float strength)
    {
        StringBuilder path = new();
        foreach (SKRect box in boxes)
            path.Append(CultureInfo.InvariantCulture, $"M{Number(box.Left)} {Number(box.Top)}H{Number(box.Right)}V{Number(box.Bottom)}H{Number(box.Left)}Z");
        xml.WriteStartElement("path");
        xml.WriteAttributeString("d", path.ToString());
        xml.WriteAttributeString("fill", Colour(Shade.Ink));
        xml.WriteAttributeString("fill-opacity", strength.ToString("0.###", CultureInfo.InvariantCulture));
        xml.WriteAttributeString("shape-rendering", "crispEdges");
        xml.WriteEndElement();
    }

    public override void Clipped(SKRect box, Action draw)
    {
        string clip = $"{id}-clip{++_clips}";
        xml.WriteStartElement("clipPath");
        xml.WriteAttributeString("id", clip);
        xml.WriteStartElement("rect");
        foreach ((string name, float value) in (ReadOnlySpan<(string, float)>)[("x", box.Left), ("y", box.Top), ("width", box.Width), ("height", box.Height)])
            xml.WriteAttributeString(name, Number(value));
        xml.WriteEndElement();
        xml.WriteEndElement();
        xml.WriteStartElement("g");
        xml.WriteAttributeString("clip-path", $"url(#{clip})");
        draw();
        xml.WriteEndElement();
    }

    protected override void Words(string text, float left, float y, float width, float size, Shade colour, bool bold)
    {
        xml.WriteStartElement("text");
        xml.WriteAttributeString("x", Number(left));
        xml.WriteAttributeString("y", Number(y));
        xml.WriteAttributeString("textLength", Number(width));
        xml.WriteAttributeString("lengthAdjust", "spacingAndGlyphs");
        xml.WriteAttributeString("font-size", Number(size));
        if (bold) xml.WriteAttributeString("font-weight", "600");
        xml.WriteAttributeString("fill", Colour(colour));
        xml.WriteString(Sound(text));
        xml.WriteEndElement();
    }

    /// <summary>The text with what XML cannot hold replaced.</summary>
    public static string Sound(string text)
    {
        StringBuilder sound = new();
        foreach (Rune rune in text.EnumerateRunes()) sound.Append(rune.Value is < 0x20 or 0xFFFE or 0xFFFF ? Rune.ReplacementChar : rune);
        return sound.ToString();
    }

    /// <summary>Points as millimetres, to a thousandth.</summary>
    public static string Number(double points) => (Math.Round(points * Millimetre, 3) + 0.0).ToString("0.###", CultureInfo.InvariantCulture);

    private void Paint(Shade? fill, Shade? line, float width)
    {
        xml.WriteAttributeString("fill", fill is { } inside ? Colour(inside) : "none");
        if (line is not { } colour) return;
        xml.WriteAttributeString("stroke", Colour(colour));
        xml.WriteAttributeString("stroke-width", Number(width));
    }

    private static string Colour(Shade shade) => shade switch
    {
        Shade.Ink => "#22313a",
        Shade.Quiet => "#56636a",
        Shade.Rule => "#c9c2b2",
        Shade.Faint => "#e9e5d9",
        Shade.Band => "#d9d8d3",
        Shade.Accent => "#0a55a8",
        Shade.Wall => "#4b575d",
        Shade.Amber => "#8a5200",
        Shade.Red => "#a5261d",
        _ => "#f7f5ef",
    };
}
