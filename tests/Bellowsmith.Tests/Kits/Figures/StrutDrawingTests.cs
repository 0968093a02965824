using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;

namespace Bellowsmith.Tests.Kits.Figures;

public class StrutDrawingTests
{
    // The kit says: strut 478, stacks 47 and 324, damper 247 longer than the spring, shortest 274, stop 22.
    [Theory]
    [InlineData(52, 55, 299, 3)]
    [InlineData(75, 32, 322, 26)]
    [InlineData(104, 3, 351, 55)]
    public void At_ThreeHeights_MeasuresWhatTheKitMakesOfThem(double height_mm, double exposed_mm, double damper_mm, double gap_mm)
    {
        StrutSection section = Drawing(AxleEnd.Front).At(height_mm / 1000);
        Assert.Equal(height_mm, Measured(section, "height"), 6);
        Assert.Equal(exposed_mm, Measured(section, "exposedThread"), 6);
        Assert.Equal(damper_mm, Measured(section, "damperLength"), 6);
        Assert.Equal(gap_mm, Measured(section, "stopGap"), 6);
        Assert.Equal(478, Measured(section, "strutLength"), 6);
        Assert.All(section.Dimensions.Where(d => d.Id != "outerDiameter"), d => Assert.Equal(
            Math.Abs(d.Value_m) * 1000, d.To.Y - d.From.Y, 6));
    }

    [Fact]
    public void At_AHeight_WritesItsNumbersInTheUnitsShown()
    {
        StrutSection section = new StrutDrawing(ExampleStruts.At(AxleEnd.Front), "kit", DisplayUnits.Imperial).At(0.0762);
        Assert.Equal("3.000", section.Dimensions.Single(d => d.Id == "height").Text);
        Assert.Contains(section.Shapes.OfType<DrawingText>(), t => t is { Text: "3.000", Role: DrawingRole.Accent });
        Assert.Contains(section.TitleBlock, row => row is { Label: "lengths", Text: "in" });
    }

    [Theory]
    [InlineData(60)]
    [InlineData(75)]
    [InlineData(110)]
    public void At_AHeight_SetsOuterFacesOfThePlatesSoFarApart(double height_mm)
    {
        StrutSection section = Drawing(AxleEnd.Front).At(height_mm / 1000);
        Assert.Equal(height_mm, Points(section, "upperPlate").Max(p => p.Y) - Points(section, "lowerPlate").Min(p => p.Y), 6);
        Assert.Equal(14, Points(section, "rod").Max(p => p.X) - Points(section, "rod").Min(p => p.X), 6);
        Assert.Equal(52, Points(section, "body").Max(p => p.X) - Points(section, "body").Min(p => p.X), 6);
        Assert.Equal(478, Points(section, "rod").Max(p => p.Y), 6);
        double wall = Points(section, "bellows").Max(p => p.X);
        Assert.InRange(section.Dimensions.Single(d => d.Id == "outerDiameter").Value_m * 500, wall - 0.1, wall + 0.1);
    }

    [Fact]
    public void At_LeastHeightWithoutMould_IsAsWideAsThePartSays()
    {
        // Taped at 168 mm, its least height 35 mm.
        StrutSection section = Drawing(_ => null).At(0.035);
        Assert.Equal(168, Measured(section, "outerDiameter"), 3);
    }

    [Fact]
    public void At_MouldWithThinnerPlates_DrawsThemSo()
    {
        StrutSection section = Drawing(mould => mould! with { PlateThickness_m = 0.004 }).At(0.075);
        Assert.Equal(4, Points(section, "lowerPlate").Max(p => p.Y) - Points(section, "lowerPlate").Min(p => p.Y), 6);
        Assert.Equal(4, Points(section, "upperPlate").Max(p => p.Y) - Points(section, "upperPlate").Min(p => p.Y), 6);
    }

    [Fact]
    public void At_StopTouched_SqueezesItOntoTheHead()
    {
        StrutSection section = Drawing(AxleEnd.Front).At(0.043);
        DrawingDimension gap = section.Dimensions.Single(d => d.Id == "stopGap");
        Assert.Equal(-0.006, gap.Value_m, 9);
        Assert.Equal("−6.0", gap.Text);
        Assert.Equal(Points(section, "head").Max(p => p.Y), Points(section, "stop").Min(p => p.Y), 6);
        Assert.Equal(16, Points(section, "stop").Max(p => p.Y) - Points(section, "stop").Min(p => p.Y), 6);
    }

    [Theory]
    [InlineData(AxleEnd.Front)]
    [InlineData(AxleEnd.Rear)]
    public void At_AnySetting_KeepsLabelsApartAndInTheFrame(AxleEnd end)
    {
        foreach (double text in new[] { 6.0, 9, 13 })
            for (double height = 0.040; height <= 0.118; height += 0.0013)
            {
                StrutSection section = Drawing(end, text).At(height);
                Assert.All(section.Dimensions, d => Assert.DoesNotContain(section.Shapes.OfType<DrawingPath>(), p =>
                    section.Dimensions.Any(other => other.Id == p.Part) && p.Points.Zip(p.Points.Skip(1)).Any(s => Crosses(d.Label, s.First, s.Second))));
                DrawingBox[] labels = [.. section.Dimensions.Select(d => d.Label)];
                for (int i = 0; i < labels.Length; i++)
                {
                    Assert.True(Holds(section.Frame, labels[i]), $"{section.Dimensions[i]} leaves {section.Frame}");
                    for (int j = 0; j < i; j++)
                        Assert.False(labels[i].Overlaps(labels[j]), $"{section.Dimensions[i]} lies on {section.Dimensions[j]} at {height}");
                }
            }
    }

    [Fact]
    public void At_AnotherHeight_KeepsFrameAndMountWhereTheyAre()
    {
        StrutSection low = Drawing(AxleEnd.Front).At(0.05), high = Drawing(AxleEnd.Front).At(0.11);
        Assert.Equal(low.Frame, high.Frame);
        Assert.Equal(Points(low, "mount").Max(p => p.Y), Points(high, "mount").Max(p => p.Y), 9);
    }

    [Theory]
    [InlineData("height")]
    [InlineData("thread")]
    public void Handle_DraggedUp_StandsThereAtTheValueItTells(string id)
    {
        SectionHandle before = Drawing(AxleEnd.Front).At(0.075).Handles.Single(h => h.Id == id);
        double change = 3 * before.ValuePerMillimetreUp;
        SectionHandle after = Drawing(AxleEnd.Front).At(id == "height" ? 0.075 + change : 0.075 - change).Handles.Single(h => h.Id == id);
        Assert.Equal(before.At.Y + 3, after.At.Y, 6);
        Assert.Equal(before.Value_m + change, after.Value_m, 9);
        Assert.Equal(id == "height" ? -0.001 : 0.001, before.ValuePerMillimetreUp);
    }

    [Fact]
    public void At_AnySetting_HatchesInsideItsPartAndTurnsBetweenNeighbours()
    {
        StrutSection section = Drawing(AxleEnd.Front).At(0.075);
        foreach (DrawingStrokes hatch in section.Shapes.OfType<DrawingStrokes>())
        {
            Assert.Equal(DrawingRole.Hatch, hatch.Role);
            Assert.All(hatch.Strokes, s => Assert.Equal(Math.Abs(s.To.X - s.From.X), Math.Abs(s.To.Y - s.From.Y), 6));
        }

        Assert.Equal(-Lean(section, "lowerPlate"), Lean(section, "perch"));
        Assert.Equal(-Lean(section, "lowerMount"), Lean(section, "lockRing"));
    }

    [Fact]
    public void At_KitThatKnowsLittle_DrawsWithoutTheDimensionsItLacks()
    {
        Bellowsmith.Kits.Studies.StrutCase full = ExampleStruts.At(AxleEnd.Front);
        StrutSection section = new StrutDrawing(full with
        {
            Design = full.Design with { StrutLengthAtDrive_m = null, UpperStack_m = null, SpringToDamper_m = null, Thread = null },
        }, "kit", DisplayUnits.Metric).At(0.075);
        Assert.Equal(["height", "outerDiameter"], section.Dimensions.Select(d => d.Id));
        Assert.Equal(["height"], section.Handles.Select(h => h.Id));
        Assert.All(section.Shapes.OfType<DrawingPath>().SelectMany(p => p.Points), p => Assert.True(double.IsFinite(p.X) && double.IsFinite(p.Y)));
    }

    private static StrutDrawing Drawing(AxleEnd end, double text = 9) => new(ExampleStruts.At(end), "Ostrane street", DisplayUnits.Metric, text);

    private static StrutDrawing Drawing(Func<Mould?, Mould?> mould)
    {
        Bellowsmith.Kits.Studies.StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        return new StrutDrawing(strut with { Part = strut.Part with { Mould = mould(strut.Part.Mould) } }, "kit", DisplayUnits.Metric);
    }

    private static double Measured(StrutSection section, string id)
    {
        DrawingDimension d = section.Dimensions.Single(d => d.Id == id);
        return Math.Sqrt(id == "outerDiameter" ? Math.Pow(d.To.X - d.From.X, 2) : Math.Pow(d.To.Y - d.From.Y, 2));
    }

    private static IEnumerable<DrawingPoint> Points(StrutSection section, string part) =>
        section.Shapes.OfType<DrawingPath>().Where(p => p.Part == part && p.Role is DrawingRole.Outline or DrawingRole.Rubber).SelectMany(p => p.Points);

    private static int Lean(StrutSection section, string part)
    {
        (DrawingPoint from, DrawingPoint to) = section.Shapes.OfType<DrawingStrokes>().Last(s => s.Part == part).Strokes[0];
        return Math.Sign((to.X - from.X) * (to.Y - from.Y));
    }

    private static bool Holds(DrawingBox frame, DrawingBox label) =>
        label.Left >= frame.Left && label.Right <= frame.Right && label.Bottom >= frame.Bottom && label.Top <= frame.Top;

    // Walked in steps of a half-percent: dimension lines are straight and labels larger than a step.
    private static bool Crosses(DrawingBox box, DrawingPoint a, DrawingPoint b) => Enumerable.Range(0, 201).Any(k =>
    {
        (double x, double y) = (a.X + (b.X - a.X) * k / 200, a.Y + (b.Y - a.Y) * k / 200);
        return x > box.Left && x < box.Right && y > box.Bottom && y < box.Top;
    });
}
