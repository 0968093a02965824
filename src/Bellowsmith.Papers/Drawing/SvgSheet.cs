using System.Text;
using System.Xml;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>A sheet of SVG that stands alone: title and sentence above a figure, and for those who hear it; the same bytes for the same figure.</summary>
internal static class SvgSheet
{
    private const float Width = (float)(180 / SvgPen.Millimetre), Height = (float)(120 / SvgPen.Millimetre), LeastFigure = (float)(80 / SvgPen.Millimetre);
    private const float Margin = 15, Heading = 12, Sentence = 8.4f;

    // Not every program keeps to a stated length of words, and fonts that stand in for the one measured are up to a sixth wider.
    private const float Lines = 0.85f * (Width - 2 * Margin);
    private const string Namespace = "http://www.w3.org/2000/svg";

    /// <summary>Height of a figure's letters.</summary>
    public const float Letters = 7.4f;

    /// <summary>UTF-8 without byte order mark, lines ended by line feeds.</summary>
    /// <param name="name">Begins every id.</param>
    /// <param name="title">Heading.</param>
    /// <param name="summary">The sentence below it.</param>
    /// <param name="figure">Draws into the box it is given.</param>
    /// <param name="least">Height of the figure at least.</param>
    public static byte[] Write(string name, string title, string summary, Action<Pen, SKRect> figure, float least = LeastFigure)
    {
        using MemoryStream bytes = new();
        using (XmlWriter xml = XmlWriter.Create(bytes, new() { Encoding = new UTF8Encoding(false), Indent = true, IndentChars = " ", NewLineChars = "\n" }))
        using (Letters letters = new(tabular: true))
        {
            string id = string.Concat(name.Where(char.IsAsciiLetterOrDigit).Prepend('f'));
            SvgPen pen = new(xml, id, letters);
            float top = Margin + pen.ParagraphHeight(title, Lines, Heading, bold: true) + 3
                + pen.ParagraphHeight(summary, Lines, Sentence) + 9;
            float height = Math.Max(Height, top + least + Margin);
            Open(xml, id, title, summary, height);
            Frame(pen, title, summary, height);
            figure(pen, new SKRect(Margin, top, Width - Margin, height - Margin));
            xml.WriteEndElement();
        }

        bytes.WriteByte((byte)'\n');
        return bytes.ToArray();
    }

    private static void Open(XmlWriter xml, string id, string title, string summary, float height)
    {
        (string width, string tall) = (SvgPen.Number(Width), SvgPen.Number(height));
        xml.WriteStartElement("svg", Namespace);
        xml.WriteAttributeString("width", $"{width}mm");
        xml.WriteAttributeString("height", $"{tall}mm");
        xml.WriteAttributeString("viewBox", $"0 0 {width} {tall}");
        xml.WriteAttributeString("role", "img");
        xml.WriteAttributeString("aria-labelledby", $"{id}-title {id}-desc");
        xml.WriteAttributeString("font-family", "Inter, 'Helvetica Neue', Helvetica, Arial, 'Liberation Sans', 'DejaVu Sans', sans-serif");
        xml.WriteAttributeString("font-variant-numeric", "tabular-nums");
        xml.WriteAttributeString("stroke-linejoin", "round");
        foreach ((string name, string text) in (ReadOnlySpan<(string, string)>)[("title", title), ("desc", summary)])
        {
            xml.WriteStartElement(name);
            xml.WriteAttributeString("id", $"{id}-{name}");
            xml.WriteString(SvgPen.Sound(text));
            xml.WriteEndElement();
        }

        // A printer need not lay paper colour on paper.
        xml.WriteElementString("style", "@media print { [fill='#f7f5ef'] { fill: #fff } }");
    }

    private static void Frame(SvgPen pen, string title, string summary, float height)
    {
        pen.Box(new SKRect(0, 0, Width, height), Shade.Paper, null, 0);
        pen.Box(new SKRect(4, 4, Width - 4, height - 4), null, Shade.Rule, 0.6f);
        float y = pen.Paragraph(title, Margin, Margin, Lines, Heading, Shade.Ink, bold: true) + 3;
        pen.Paragraph(summary, Margin, y, Lines, Sentence, Shade.Quiet);
    }
}
