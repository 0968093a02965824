using Microsoft.Playwright;

namespace Bellowsmith.Browser;

/// <summary>Pictures of every page at every size and in both schemes, under artifacts/screenshots.</summary>
public sealed class Screenshots(Served served)
{
    [Theory]
    [InlineData("kit", Served.Kit, "")]
    [InlineData("travel", Served.Kit, "travel")]
    [InlineData("too-stiff", "kit/fenwright/kits/ostrane-too-stiff.json", "")]
    [InlineData("index", "", "")]
    public async Task Page_EverySizeAndScheme_IsPictured(string name, string address, string open)
    {
        foreach (ColorScheme scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
            foreach ((int width, int height) in new[] { (1440, 900), (820, 1180), (390, 844) })
            {
                IPage page = address.Length > 0 ? await served.Board(width, height, scheme, address) : await served.NewPage(width, height, scheme);
                if (address.Length == 0) await page.GotoAsync("");
                if (open.Length > 0) await page.Locator($"[data-question={open}] > summary").ClickAsync();
                await page.WaitForTimeoutAsync(200);
                string path = Path.Combine(Served.Root, "artifacts/screenshots", $"{name}-{width}-{scheme.ToString()!.ToLowerInvariant()}.png");
                await page.ScreenshotAsync(new() { Path = path });
                Assert.True(new FileInfo(path).Length > 0);
                await page.Context.CloseAsync();
            }
    }
}
