using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Bellowsmith.Browser;

/// <summary>Which setting is best: the map opens, follows every hand, and a cell of it becomes the setting.</summary>
public sealed partial class SettingsTests(Served served)
{
    private const string Plot = "[data-settings]";

    [Fact]
    public async Task Open_TheMap_IsPaintedAndSaid()
    {
        IPage page = await Opened();
        await Expect(Answer(page)).ToHaveTextAsync(AnAnswer());
        await Expect(page.Locator("#map-shared")).ToHaveTextAsync(new Regex("^Everywhere a B road, 80 km/h, \"driver, half tank\", driven 30 s"));
        await Expect(page.Locator("[data-question=settings] .reason:visible").First).ToHaveTextAsync(new Regex(@"^\w[\w ]+, \d+ % of the map: "));
        await Expect(page.Locator("[data-question=settings] .said").First).ToHaveTextAsync(new Regex(@"^One click aside: \d\.\d\d m/s².* at click 7; "));
        Assert.True(await Inked(page) > 0.02);
    }

    [Fact]
    public async Task Click_ACell_BecomesTheSettingAndIsUndone()
    {
        IPage page = await Opened();
        LocatorBoundingBoxResult plot = (await page.Locator(Plot).BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(plot.X + plot.Width * 0.7f, plot.Y + plot.Height * 0.46f);
        await Expect(page.Locator("[data-cell]")).ToHaveTextAsync(ACell());
        string cell = await page.Locator("[data-cell]").InnerTextAsync();
        (string click, string height) = (ACell().Match(cell).Groups[1].Value, ACell().Match(cell).Groups[2].Value);
        await page.Mouse.DownAsync();
        await page.Mouse.UpAsync();
        await BoardTests.Settled(page);
        await Expect(page.Locator("#field-click")).ToHaveValueAsync(click);
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync(height);
        await Expect(page.Locator("[data-question=height] .answer")).ToContainTextAsync(height);
        await page.Keyboard.PressAsync("Control+z");
        await BoardTests.Settled(page);
        await Expect(page.Locator("#field-click")).ToHaveValueAsync("8");
        await Expect(page.Locator("button[data-choose=undo]")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task Keyboard_Alone_MovesOverCellsAndTakesOne()
    {
        IPage page = await Opened();
        await page.Locator("#field-map-speed ~ .slide").FocusAsync();
        await page.Keyboard.PressAsync("Tab");
        await Expect(page.Locator(Plot)).ToBeFocusedAsync();
        await Expect(page.Locator("[data-cell]")).ToHaveTextAsync(new Regex("^Click 8 and "));
        await page.Keyboard.PressAsync("ArrowRight");
        await page.Keyboard.PressAsync("ArrowRight");
        await Expect(page.Locator("[data-cell]")).ToHaveTextAsync(new Regex("^Click 10 and "));
        await page.Keyboard.PressAsync("Home");
        await Expect(page.Locator("[data-cell]")).ToHaveTextAsync(new Regex("^Click 0 and "));
        await page.Keyboard.PressAsync("Enter");
        await BoardTests.Settled(page);
        await Expect(page.Locator("#field-click")).ToHaveValueAsync("0");
    }

    [Fact]
    public async Task Select_AnotherVariable_RepaintsAndSaysWhatCannotBeSet()
    {
        IPage page = await Opened();
        await page.Locator("#field-map-y").SelectOptionAsync("Stop");
        await Whole(page);
        await page.Locator("#field-map-show").SelectOptionAsync("peakStopForce_N");
        await Expect(Answer(page)).ToHaveTextAsync(new Regex(@"^Greatest stop force is \d+ N at this setting\."));
        await page.Locator(Plot).ClickAsync();
        await Expect(page.Locator("[data-question=settings] [data-shown='cell.refused']")).ToContainTextAsync("A stop's length is a part of the damper document");
        await Expect(page.Locator("button[data-choose=undo]")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task Speed_Dragged_RepaintsTheMap()
    {
        IPage page = await Opened();
        string before = await Answer(page).InnerTextAsync();
        LocatorBoundingBoxResult slide = (await page.Locator("#field-map-speed ~ .slide").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(slide.X + slide.Width / 2, slide.Y + slide.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(slide.X + slide.Width - 12, slide.Y + slide.Height / 2, new() { Steps = 12 });
        await Expect(page.Locator("#map-shared")).Not.ToContainTextAsync("80 km/h");
        await page.Mouse.UpAsync();
        await Whole(page);
        string speed = await page.Locator("#field-map-speed").InputValueAsync();
        await Expect(page.Locator("#map-shared")).ToContainTextAsync(speed);
        await Expect(Answer(page)).Not.ToHaveTextAsync(before);
    }

    private async Task<IPage> Opened()
    {
        IPage page = await served.Board();
        await page.Locator("[data-question=settings] > summary").ClickAsync();
        await Whole(page);
        return page;
    }

    private static Task Whole(IPage page) => Expect(page.Locator(".board")).ToHaveAttributeAsync("data-whole", "true", new() { Timeout = 60_000 });

    private static ILocator Answer(IPage page) => page.Locator("[data-question=settings] .answer");

    // The share of the canvas that carries more than paper.
    private static Task<double> Inked(IPage page) => page.EvaluateAsync<double>(
        """
        () => {
          const canvas = document.querySelector("[data-settings] canvas"), { data } = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height);
          let inked = 0;
          for (let k = 3; k < data.length; k += 4) if (data[k] > 20) inked++;
          return inked / (data.length / 4);
        }
        """);

    [GeneratedRegex(@"^Weighted acceleration is \d\.\d\d m/s² at this setting\. It is least, \d\.\d\d m/s², ")]
    private static partial Regex AnAnswer();

    [GeneratedRegex(@"^Click (\d+) and a spring height of (\d+\.\d mm): ")]
    private static partial Regex ACell();
}
