using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Figures;

public sealed class BracketDrawingTests
{
    private static readonly Kit _kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));

    [Theory]
    [InlineData(2.3)]
    [InlineData(6.9)]
    public void Dimensions_OfTheStreetKit_AreTheDocuments(double text_mm)
    {
        SheetDrawing drawing = Street(DisplayUnits.Metric).With(text_mm);

        Assert.Equal(
            [("clampDiameter", 52), ("clampHeight", 62), ("height", 124), ("holeDiameter", 14.5), ("holeX2", 46), ("holeY1", 32), ("holeY2", 102), ("width", 40)],
            drawing.Dimensions.OrderBy(d => d.Id, StringComparer.Ordinal).Select(d => (d.Id, Math.Round(d.Value_m * 1e3, 9))));
        foreach (DrawingDimension d in drawing.Dimensions)
        {
            double across = d.Id is "holeX2" or "width" or "holeDiameter" or "clampDiameter" ? d.To.X - d.From.X : d.To.Y - d.From.Y;
            Assert.Equal(d.Value_m * 1e3, across, 1e-9);
            Assert.Equal(d.Value_m * 1e3, double.Parse(d.Text.Split(' ')[^1], CultureInfo.InvariantCulture), 0.005);
            Assert.Contains(drawing.Shapes.OfType<DrawingText>(), t => t.Part == d.Id && t.Text == d.Text);
        }
    }

    [Fact]
    public void Shapes_OfTheStreetKit_AreHolesOnCentreLinesInThePlate()
    {
        SheetDrawing drawing = Street(DisplayUnits.Metric).With(3.5);

        Assert.Equal([(46.0, 32.0, 7.25), (46, 102, 7.25)], drawing.Shapes.OfType<DrawingCircle>().Select(c => (Math.Round(c.Centre.X, 9), Math.Round(c.Centre.Y, 9), Math.Round(c.Radius, 9))));
        DrawingPath plate = drawing.Shapes.OfType<DrawingPath>().Single(p => p.Part == "plate");
        Assert.Equal([(26, 0), (66, 0), (66, 124), (26, 124)], plate.Points.Select(p => (Math.Round(p.X, 9), Math.Round(p.Y, 9))));
        Assert.Equal(2, drawing.Shapes.OfType<DrawingPath>().Count(p => p is { Part: "hole2", Role: DrawingRole.Centre }));
        Assert.Contains("hose 36.00 / 60.00", drawing.Shapes.OfType<DrawingText>().Select(t => t.Text));
        Assert.Contains(drawing.TitleBlock, row => row.Text == "ISO 2768-mK");
        Assert.Contains(drawing.TitleBlock, row => row.Text.StartsWith("not released", StringComparison.Ordinal));
        Assert.Contains(drawing.TitleBlock, row => row.Text.StartsWith("8.00 thick", StringComparison.Ordinal));
    }

    [Theory] // on paper 1 : 1, on a small sheet, and with three holes and a slot
    [InlineData(2.3, false)]
    [InlineData(6.9, false)]
    [InlineData(3.5, true)]
    public void Labels_OfAnyDrawing_LieApartWithinTheFrame(double text_mm, bool slotted)
    {
        SheetDrawing drawing = (slotted ? Slotted() : Street(DisplayUnits.Metric)).With(text_mm);
        DrawingDimension[] all = [.. drawing.Dimensions];

        for (int i = 0; i < all.Length; i++)
            for (int j = 0; j < i; j++) Assert.False(all[i].Label.Overlaps(all[j].Label), $"{all[i].Id} on {all[j].Id}");
        Assert.All(all, d => Assert.True(
            d.Label.Left >= drawing.Frame.Left && d.Label.Right <= drawing.Frame.Right && d.Label.Bottom >= drawing.Frame.Bottom && d.Label.Top <= drawing.Frame.Top, d.Id));
    }

    [Fact] // 20 mm over its ends, 12.5 wide
    public void Slot_OfTheUpperHole_IsDrawnAndDimensioned()
    {
        SheetDrawing drawing = Slotted().With(3.5);
        DrawingSlot slot = drawing.Shapes.OfType<DrawingSlot>().Single();

        Assert.Equal(20, slot.To.X - slot.From.X + 2 * slot.Radius, 1e-9);
        Assert.Equal(0.02, drawing.Dimensions.Single(d => d.Id == "slot").Value_m);
        DrawingPoint[] outline = [.. slot.Lines.Points];
        Assert.Equal((30.0, 50.0), (Math.Round(outline.Min(p => p.X), 6), Math.Round(outline.Max(p => p.X), 6)));
        Assert.Equal((83.75, 96.25), (Math.Round(outline.Min(p => p.Y), 6), Math.Round(outline.Max(p => p.Y), 6)));
    }

    [Fact] // 46 mm
    public void Dimensions_InInches_AreInInches() =>
        Assert.Equal("1.8110", Street(DisplayUnits.Imperial).With(3.5).Dimensions.Single(d => d.Id == "holeX2").Text);

    private static BracketDrawing Street(DisplayUnits units) => new(_kit, AxleEnd.Front, _kit.Front!.LowerMount!, units);

    private static BracketDrawing Slotted()
    {
        LowerMount mount = Studies.SampleMount.With([(40, 30), (40, 90), (75, 60)], [(0, 0), (0, 60), (35, 30)]);
        return new(_kit, AxleEnd.Front, mount with { Bracket = mount.Bracket with { Slot_m = 0.02 } }, DisplayUnits.Metric);
    }
}
