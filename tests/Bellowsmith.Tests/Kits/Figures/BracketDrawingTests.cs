using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Tests.Examples;
using CsCheck;

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
        Assert.Contains(drawing.TitleBlock, row => row.Text == "ISO 2768-m (common practice)");
        Assert.Contains(new TitleRow("material", "S355J2"), drawing.TitleBlock);
        Assert.Contains(Slotted().With(3.5).TitleBlock, row => row is { Label: "material", Text: "not stated" });
        Assert.Contains(drawing.TitleBlock, row => row.Text == "broken 0.30 to 0.50, ISO 13715 (common practice)");
        Assert.Equal(["drawn", "date", "revision"], drawing.TitleBlock.Where(row => row.Text.Length == 0).Select(row => row.Label));
        Assert.Contains(drawing.TitleBlock, row => row.Text.StartsWith("not released", StringComparison.Ordinal));
        Assert.Contains(drawing.TitleBlock, row => row.Text.StartsWith("8.00 thick", StringComparison.Ordinal));
    }

    [Theory] // on paper 1 : 1, on a small sheet, and with three holes and a slot
    [InlineData(2.3, false)]
    [InlineData(6.9, false)]
    [InlineData(3.5, true)]
    public void Words_OfAnyDrawing_LieApartWithinTheFrameUncrossed(double text_mm, bool slotted) => Uncrossed((slotted ? Slotted() : Street(DisplayUnits.Metric)).With(text_mm));

    [Fact] // two to four holes, hose and sensor anywhere, with a clamp or without
    public void Words_OfAnyMount_LieApartWithinTheFrameUncrossed() => Gen.Select(
        Gen.Select(Gen.Double[36, 110], Gen.Double[8, 120]).Array[2, 4], Gen.Select(Gen.Double[0, 120], Gen.Double[0, 120]).Array[2], Gen.Bool, Gen.Bool, Gen.Double[2.3, 7]).Sample((holes, places, slot, clamp, text_mm) =>
    {
        LowerMount mount = Studies.SampleMount.With(holes, holes);
        PlanePoint[] at = [.. places.Select(place => new PlanePoint(place.Item1 * 1e-3, place.Item2 * 1e-3))];
        Uncrossed(new BracketDrawing(_kit, AxleEnd.Front, mount with
        {
            Bracket = mount.Bracket with { Slot_m = slot ? 0.02 : null },
            Clamp = clamp ? _kit.Front!.LowerMount!.Clamp : null,
            HoseBracket = at[0],
            SensorBracket = at[1],
        }, DisplayUnits.Metric).With(text_mm));
    }, iter: 500);

    // Every letter 0.55 of its height wide, as narrow as letters are; no straight line of the drawing runs into that.
    private static void Uncrossed(SheetDrawing drawing)
    {
        (DrawingText Text, DrawingBox Box)[] all = [.. drawing.Shapes.OfType<DrawingText>().Select(text => (text, Box(text)))];

        for (int i = 0; i < all.Length; i++)
            for (int j = 0; j < i; j++) Assert.False(all[i].Box.Overlaps(all[j].Box), $"{all[i].Text.Text} on {all[j].Text.Text}");
        Assert.All(all, one => Assert.True(
            one.Box.Left >= drawing.Frame.Left && one.Box.Right <= drawing.Frame.Right && one.Box.Bottom >= drawing.Frame.Bottom && one.Box.Top <= drawing.Frame.Top, one.Text.Text));
        foreach (DrawingPath path in drawing.Shapes.OfType<DrawingPath>())
            for (int k = path.Closed ? 0 : 1; k < path.Points.Count; k++)
                foreach ((DrawingText text, DrawingBox box) in all) Assert.False(Runs(path.Points[k == 0 ? ^1 : k - 1], path.Points[k], box), $"a line of {path.Part} through {text.Text}");
    }

    private static DrawingBox Box(DrawingText text)
    {
        double width = 0.55 * text.Height * text.Text.Length, left = text.At.X - (text.Anchor == TextAnchor.Middle ? width / 2 : 0);
        return new(left, text.At.Y - 0.45 * text.Height, left + width, text.At.Y + 0.45 * text.Height);
    }

    private static bool Runs(DrawingPoint from, DrawingPoint to, DrawingBox box) => Enumerable.Range(0, 401)
        .Select(k => new DrawingPoint(from.X + k * (to.X - from.X) / 400, from.Y + k * (to.Y - from.Y) / 400))
        .Any(at => at.X > box.Left && at.X < box.Right && at.Y > box.Bottom && at.Y < box.Top);

    [Fact] // 20 mm over its ends, 12.5 wide
    public void Slot_OfTheUpperHole_IsDrawnAndDimensioned()
    {
        Assert.Contains("slot 12.50 × 20.00", Slotted().With(3.5).Shapes.OfType<DrawingText>().Select(t => t.Text));
        Assert.Contains("2 × Ø 12.50", Slotted().With(3.5).Shapes.OfType<DrawingText>().Select(t => t.Text));
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
