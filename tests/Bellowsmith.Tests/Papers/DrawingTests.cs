using System.Globalization;
using System.Text;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Papers;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Papers;

public sealed class DrawingTests
{
    private static readonly Kit _kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));

    [Fact]
    public void Pdf_Twice_IsTheSameBytesOfLettersAndLinesWithoutADate()
    {
        byte[] one = DrawingPdf.Write("bracket", Drawing().With, Paper.A4);
        string text = Encoding.Latin1.GetString(one);

        Assert.Equal(one, DrawingPdf.Write("bracket", Drawing().With, Paper.A4));
        Assert.Contains("/ToUnicode", text, StringComparison.Ordinal);
        Assert.DoesNotContain("/Subtype /Image", text, StringComparison.Ordinal);
        Assert.DoesNotContain("CreationDate", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Svg_OfTheStreetKit_IsTheSnapshot()
    {
        string path = Path.Combine(ExampleFolder.Repository, "tests", "Bellowsmith.Tests", "Papers", "bracket.svg");
        string svg = Encoding.UTF8.GetString(DrawingSheetSvg.Write("Lower mount", Drawing().With));
        if (Environment.GetEnvironmentVariable("BELLOWSMITH_WRITE_SNAPSHOTS") == "1") await File.WriteAllTextAsync(path, svg, TestContext.Current.CancellationToken);

        Assert.Equal((await File.ReadAllTextAsync(path, TestContext.Current.CancellationToken)).ReplaceLineEndings("\n"), svg);
    }

    [Fact] // read back by the format's own pairs of code and value
    public void Dxf_OfTheStreetKit_HasItsHolesInMillimetres()
    {
        byte[] one = DrawingDxf.Write(Drawing().With(3.5));
        (string Kind, Dictionary<int, string> Values)[] entities = [.. Entities(one)];

        Assert.Equal(one, DrawingDxf.Write(Drawing().With(3.5)));
        Assert.Equal([(46, 32, 7.25), (46, 102, 7.25)], entities.Where(e => e.Kind == "CIRCLE" && e.Values[8] == "HOLES").Select(e => (Number(e.Values[10]), Number(e.Values[20]), Number(e.Values[40]))));
        Assert.Equal(4, entities.Count(e => e.Kind == "LINE" && e.Values[8] == "OUTLINE"));
        Assert.Contains(entities, e => e.Kind == "TEXT" && e.Values[8] == "DIMENSIONS" && e.Values[1] == "2 x %%c 14.50");
        Assert.Contains(entities, e => e.Kind == "TEXT" && e.Values[1] == "general: ISO 2768-m (common practice)");
        Assert.All(entities, e => Assert.Contains(e.Values[8], (string[])["OUTLINE", "HOLES", "CENTRE", "DIMENSIONS", "NOTES"]));
    }

    [Fact] // letters at most 0.7 of their height wide: the width's number left of the line that rises from x = 46 mm through its lane
    public void Dxf_OfTheStreetKit_HasNoLineThroughItsWidth()
    {
        (string Kind, Dictionary<int, string> Values)[] entities = [.. Entities(DrawingDxf.Write(Drawing().With(3.5)))];
        Dictionary<int, string> width = entities.Single(e => e.Kind == "TEXT" && e.Values[1] == "40.00").Values;
        Dictionary<int, string> rises = entities.Single(e => e.Kind == "LINE" && e.Values[8] == "DIMENSIONS" && e.Values[10] == "46.0" && e.Values[11] == "46.0").Values;

        Assert.InRange(Number(width[20]), Number(rises[20]), Number(rises[21]));
        Assert.Equal(("1", "0.7"), (width[72], width[41]));
        Assert.True(Number(width[10]) + 0.5 * 5 * 0.7 * 3.5 < 46);
    }

    [Fact] // ends are true arcs: right from 270° to 90°, left from 90° to 270°
    public void Dxf_OfASlot_HasTwoArcsAndTwoLines()
    {
        LowerMount mount = _kit.Front!.LowerMount!;
        SheetDrawing drawing = new BracketDrawing(_kit, AxleEnd.Front, mount with { Bracket = mount.Bracket with { Slot_m = 0.0205 } }, DisplayUnits.Metric).With(3.5);
        (string Kind, Dictionary<int, string> Values)[] holes = [.. Entities(DrawingDxf.Write(drawing)).Where(e => e.Values[8] == "HOLES")];

        Assert.Equal([(49, 270, 90), (43, 90, 270)], holes.Where(e => e.Kind == "ARC").Select(e => (Number(e.Values[10]), Number(e.Values[50]), Number(e.Values[51]))));
        Assert.Equal([(94.75, 94.75), (109.25, 109.25)], holes.Where(e => e.Kind == "LINE").Select(e => (Number(e.Values[20]), Number(e.Values[21]))));
    }

    private static BracketDrawing Drawing() => new(_kit, AxleEnd.Front, _kit.Front!.LowerMount!, DisplayUnits.Metric);

    private static IEnumerable<(string Kind, Dictionary<int, string> Values)> Entities(byte[] dxf)
    {
        (int Code, string Value)[] pairs = [.. Encoding.ASCII.GetString(dxf).TrimEnd('\n').Split('\n').Chunk(2).Select(two => (int.Parse(two[0], CultureInfo.InvariantCulture), two[1]))];
        Assert.Equal((0, "EOF"), pairs[^1]);
        int at = Array.IndexOf(pairs, (2, "ENTITIES")) + 1;
        while (pairs[at] != (0, "ENDSEC"))
        {
            Dictionary<int, string> values = [];
            string kind = pairs[at++].Value;
            for (; pairs[at].Code != 0; at++) values[pairs[at].Code] = pairs[at].Value;
            yield return (kind, values);
        }
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
