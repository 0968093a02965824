using System.Globalization;
using System.Text;
using Bellowsmith.Kits.Figures;

namespace Bellowsmith.Papers;

/// <summary>
/// Writes one drawing as DXF of release 12, the oldest every program reads: 1 : 1 in millimetres, holes and slot ends as true circles and arcs,
/// dimensions as lines and text. Layers OUTLINE, HOLES, CENTRE, DIMENSIONS and NOTES; what a machine cuts is on the first two. No date and no
/// name of a machine: the same bytes for the same drawing. Written by hand: no library for it is served where this is built.
/// </summary>
public sealed class DrawingDxf
{
    private const string Continuous = "CONTINUOUS", Chain = "CENTER";

    private static readonly (string Name, string LineType, int Colour)[] _layers =
        [("OUTLINE", Continuous, 7), ("HOLES", Continuous, 7), ("CENTRE", Chain, 1), ("DIMENSIONS", Continuous, 3), ("NOTES", Continuous, 8)];

    private readonly StringBuilder _dxf = new();

    private DrawingDxf()
    {
    }

    /// <summary>ASCII, lines ended by line feeds.</summary>
    public static byte[] Write(SheetDrawing drawing)
    {
        DrawingDxf file = new();
        file.Put(999, "millimetres, 1 : 1");
        file.Section("HEADER", () => file.Put(9, "$ACADVER").Put(1, "AC1009"));
        file.Section("TABLES", file.Tables);
        file.Section("ENTITIES", () =>
        {
            foreach (DrawingShape shape in drawing.Shapes) file.Entity(shape);
            file.Title(drawing);
        });
        file.Put(0, "EOF");
        return Encoding.ASCII.GetBytes(file._dxf.ToString());
    }

    private void Section(string name, Action content)
    {
        Put(0, "SECTION").Put(2, name);
        content();
        Put(0, "ENDSEC");
    }

    private void Tables()
    {
        Put(0, "TABLE").Put(2, "LTYPE").Put(70, "2");
        Put(0, "LTYPE").Put(2, Continuous).Put(70, "0").Put(3, "solid").Put(72, "65").Put(73, "0").Put(40, 0);
        Put(0, "LTYPE").Put(2, Chain).Put(70, "0").Put(3, "chain").Put(72, "65").Put(73, "4").Put(40, 14.5).Put(49, 9).Put(49, -2).Put(49, 1.5).Put(49, -2);
        Put(0, "ENDTAB");
        Put(0, "TABLE").Put(2, "LAYER").Put(70, $"{_layers.Length}");
        foreach ((string name, string line, int colour) in _layers) Put(0, "LAYER").Put(2, name).Put(70, "0").Put(62, $"{colour}").Put(6, line);
        Put(0, "ENDTAB");
    }

    private void Entity(DrawingShape shape)
    {
        string layer = LayerOf(shape);
        switch (shape)
        {
            case DrawingCircle circle:
                Start("CIRCLE", layer).At(10, circle.Centre).Put(40, circle.Radius);
                break;
            case DrawingSlot slot:
                Arc(layer, slot.To, slot.Radius, -90);
                Arc(layer, slot.From, slot.Radius, 90);
                foreach (double side in (double[])[-slot.Radius, slot.Radius])
                    Line(layer, slot.From with { Y = slot.From.Y + side }, slot.To with { Y = slot.To.Y + side });
                break;
            case DrawingPath { Fill: DrawingFill.Line, Points: [var tip, var left, var right] }:
                Start("SOLID", layer).At(10, tip).At(11, left).At(12, right).At(13, right);
                break;
            case DrawingPath path:
                for (int k = path.Closed ? 0 : 1; k < path.Points.Count; k++) Line(layer, path.Points[k == 0 ? ^1 : k - 1], path.Points[k]);
                break;
            case DrawingStrokes strokes:
                foreach ((DrawingPoint from, DrawingPoint to) in strokes.Strokes) Line(layer, from, to);
                break;
            case DrawingText text:
                Text(layer, text.At, text.Text, text.Height, text.Anchor);
                break;
        }
    }

    // Below the drawing, as a title block without lines.
    private void Title(SheetDrawing drawing)
    {
        double size = drawing.Shapes.OfType<DrawingText>().Select(text => text.Height).DefaultIfEmpty(3.5).Max(), y = drawing.Frame.Bottom;
        foreach (TitleRow row in drawing.TitleBlock) Text("NOTES", new(drawing.Frame.Left, y -= 1.6 * size), $"{row.Label}: {row.Text}", size, TextAnchor.Start);
    }

    private void Line(string layer, DrawingPoint from, DrawingPoint to) => Start("LINE", layer).At(10, from).At(11, to);

    private void Arc(string layer, DrawingPoint centre, double radius, double from_deg) =>
        Start("ARC", layer).At(10, centre).Put(40, radius).Put(50, (from_deg + 360) % 360).Put(51, (from_deg + 180) % 360);

    // Narrow: the plain letters of a program without a font are as wide as high, and would run out of their gap.
    private void Text(string layer, DrawingPoint at, string text, double height, TextAnchor anchor) =>
        Start("TEXT", layer).At(10, at).Put(40, height).Put(41, 0.7).Put(1, Letters(text)).Put(72, $"{(int)anchor}").At(11, at).Put(73, "2");

    private DrawingDxf Start(string entity, string layer) => Put(0, entity).Put(8, layer);

    private DrawingDxf At(int code, DrawingPoint at) => Put(code, at.X).Put(code + 10, at.Y).Put(code + 20, 0);

    private DrawingDxf Put(int code, double value) => Put(code, (Math.Round(value, 6) + 0.0).ToString("0.0#####", CultureInfo.InvariantCulture));

    private DrawingDxf Put(int code, string value)
    {
        _dxf.Append(CultureInfo.InvariantCulture, $"{code}\n{value}\n");
        return this;
    }

    private static string LayerOf(DrawingShape shape) => shape.Role switch
    {
        DrawingRole.Outline => shape is DrawingCircle or DrawingSlot ? "HOLES" : "OUTLINE",
        DrawingRole.Centre => "CENTRE",
        DrawingRole.Dimension => "DIMENSIONS",
        _ => "NOTES",
    };

    // %%c and %%p are this format's diameter and plus-minus; other letters it does not have become their code point.
    private static string Letters(string text) => string.Concat(text.Replace("Ø", "%%c", StringComparison.Ordinal).Replace("±", "%%p", StringComparison.Ordinal)
        .Replace("×", "x", StringComparison.Ordinal).Replace("−", "-", StringComparison.Ordinal)
        .EnumerateRunes().Select(rune => rune.IsAscii && rune.Value >= 0x20 ? rune.ToString() : $"\\U+{rune.Value:X4}"));
}
