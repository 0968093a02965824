using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Microsoft.Playwright;

namespace Bellowsmith.Browser;

/// <summary>The drawing is the physics: what is taken off it with a ruler is what the studies say.</summary>
public sealed class SectionTests(Served served)
{
    [Theory]
    [InlineData(55)]
    [InlineData(74)]
    [InlineData(103)]
    public async Task Section_AtAHeight_HasTheStudiesDimensions(double height_mm)
    {
        IPage page = await served.Board();
        await BoardTests.Type(page, "height", string.Create(CultureInfo.InvariantCulture, $"{height_mm} mm"));
        (StrutCase strut, TravelResult travel) = Study(Path.Combine(Served.Root, "examples/fenwright/kits/ostrane-street.json"), height_mm / 1000);

        // Drawn: between the plates' outer faces as the browser laid them out, in mm of the strut.
        (double upperTop, _) = await Extent(page, "upperPlate");
        (_, double lowerBottom) = await Extent(page, "lowerPlate");
        Assert.Equal(height_mm, lowerBottom - upperTop, 0.15);

        // Written: each dimension's points and the number beside them.
        await Holds(page, "height", height_mm / 1000);
        await Holds(page, "stopGap", travel.Drive.StopGap_m!.Value);
        await Holds(page, "damperLength", travel.Drive.DamperLength_m!.Value);
        await Holds(page, "exposedThread", InstalledHeightStudy.At(strut, height_mm / 1000).Thread!.Exposed_m);
        await Holds(page, "strutLength", 0.478);
    }

    private static (StrutCase, TravelResult) Study(string file, double height_m)
    {
        Kit kit = KitReader.Read(file);
        StrutCase strut = StrutCases.Of(kit with { Rear = null, Front = kit.Front! with { DriveHeight_m = height_m } }, new StudyConditions(), TravelStudy.Needs)[0];
        return (strut, TravelStudy.Answer(strut)!);
    }

    private static async Task Holds(IPage page, string id, double expected_m)
    {
        ILocator dimension = page.Locator($"[data-dimension={id}]");
        double[] from = Numbers(await dimension.GetAttributeAsync("data-from")), to = Numbers(await dimension.GetAttributeAsync("data-to"));
        double value = Numbers(await dimension.GetAttributeAsync("data-value"))[0];
        Assert.Equal(expected_m, value, 1e-9);
        Assert.Equal(Math.Abs(expected_m * 1000), Math.Abs(to[1] - from[1]), 0.01);
        string written = await page.Locator($".drawing text[data-part={id}]").First.TextContentAsync() ?? "";
        Assert.Equal(expected_m * 1000, double.Parse(written.Replace('−', '-'), CultureInfo.InvariantCulture), 0.051);
    }

    // Top and bottom of a part in the drawing's own millimetres.
    private static async Task<(double Top, double Bottom)> Extent(IPage page, string part)
    {
        double[] extent = await page.Locator($".drawing path.outline[data-part={part}]").EvaluateAllAsync<double[]>(
            "all => { const boxes = all.map(e => e.getBBox()); return [Math.min(...boxes.map(b => b.y)), Math.max(...boxes.map(b => b.y + b.height))]; }");
        return (extent[0], extent[1]);
    }

    private static double[] Numbers(string? text) => [.. text!.Split(' ').Select(t => double.Parse(t, CultureInfo.InvariantCulture))];
}
