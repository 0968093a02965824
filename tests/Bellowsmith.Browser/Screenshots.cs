using Microsoft.Playwright;

namespace Bellowsmith.Browser;

/// <summary>Pictures of every page at every size and in both schemes, to be looked at; taken by ./pages pictures.</summary>
[Trait("Kind", "Looked")]
public sealed class Screenshots(Served served, ITestOutputHelper output)
{
    private const string TooStiff = "kit/fenwright/kits/ostrane-too-stiff.json";

    [Theory(Explicit = true)]
    [InlineData("kit", Served.Kit, null)]
    [InlineData("map", Served.Kit, "[data-question=height] .tabs label:last-of-type")]
    [InlineData("area", Served.Kit, "[data-question=height] .tabs label:nth-of-type(4)")]
    [InlineData("behind", Served.Kit, "[data-question=height] .opened > .more > summary")]
    [InlineData("travel", Served.Kit, "[data-question=travel] > summary")]
    [InlineData("damping", Served.Kit, "[data-question=damping] > summary")]
    [InlineData("ride", Served.Kit, "[data-question=ride] > summary")]
    [InlineData("settings", Served.Kit, "[data-question=settings] > summary")]
    [InlineData("sheet", Served.Kit, "[data-swipe=sheet]")]
    [InlineData("too-stiff", TooStiff, null)]
    [InlineData("print", Served.Kit, null)]
    [InlineData("index", "", null)]
    [InlineData("faults", "kit/faulty.json", null)]
    public async Task Page_EverySizeAndScheme_IsPictured(string name, string address, string? press)
    {
        string kit = await File.ReadAllTextAsync(Path.Combine(served.Folder, Served.Kit["kit/".Length..]));
        await File.WriteAllTextAsync(Path.Combine(served.Folder, "faulty.json"), kit.Replace("1.5 mm", "1.5 bar", StringComparison.Ordinal)
            .Replace("upperStack", "uperStack", StringComparison.Ordinal).Replace("../", "fenwright/", StringComparison.Ordinal));
        foreach (ColorScheme scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
            foreach ((int width, int height) in new[] { (1440, 900), (820, 1180), (390, 844) })
            {
                bool board = address.Length > 0 && name != "faults";
                IPage page = board ? await served.Board(width, height, scheme, address) : await served.NewPage(width, height, scheme);
                if (!board) await page.GotoAsync(address);
                if (press is not null && await page.Locator(press).IsVisibleAsync()) await page.Locator(press).ClickAsync();
                if (name == "print") await page.EmulateMediaAsync(new() { Media = Media.Print });
                await page.WaitForTimeoutAsync(press is null ? 200 : 700);
                string path = Path.Combine(Served.Root, "artifacts/screenshots", $"{name}-{width}-{scheme.ToString()!.ToLowerInvariant()}.png");
                await page.ScreenshotAsync(new() { Path = path });
                output.WriteLine(Path.GetRelativePath(Served.Root, path));
                await page.Context.CloseAsync();
            }

        File.Delete(Path.Combine(served.Folder, "faulty.json"));
    }
}
