using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Bellowsmith.Browser;

/// <summary>One action, many hands: what is dragged, slid, typed or pressed moves everything else, and can be undone.</summary>
public sealed partial class BoardTests(Served served)
{
    [Fact]
    public async Task FirstScreen_Demo_SaysWhatThisIsAndWhatToMove()
    {
        IPage page = await served.Board();
        await Expect(page.Locator("h1")).ToHaveTextAsync("Ostrane street");
        await Expect(page.Locator("[data-question=height] .asked")).ToHaveTextAsync("How high does it sit, on how much air?");
        await Expect(Answer(page)).ToHaveTextAsync(AnAnswer());
        await Expect(page.Locator(".hint")).ToBeInViewportAsync();
        await Expect(page.Locator("[data-handle=height] .dot")).ToBeInViewportAsync();
        await Expect(page.Locator("[data-question=travel] .answer")).ToHaveTextAsync(new Regex("droop and .* bump at the wheel"));
    }

    [Fact]
    public async Task Drag_HandleUp_LowersTheSpringEverywhere()
    {
        IPage page = await served.Board();
        double before = await Height(page);
        double plate = await Top(page, "[data-part=lowerPlate]");
        LocatorBoundingBoxResult dot = (await page.Locator("[data-handle=height] .dot").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(dot.X + dot.Width / 2, dot.Y + dot.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(dot.X + dot.Width / 2, dot.Y + dot.Height / 2 - 30, new() { Steps = 6 });
        await Expect(page.Locator(".value[data-type=height]")).Not.ToHaveValueAsync(Millimetres(before));
        await page.Mouse.UpAsync();
        await Settled(page);
        double after = await Height(page);
        Assert.True(after < before - 5, $"from {before} to {after} mm");
        await Expect(Answer(page)).ToContainTextAsync($"At {Millimetres(after)}");
        Assert.Equal(after, double.Parse(await page.Locator("[data-slide=height]").InputValueAsync(), CultureInfo.InvariantCulture), 1);
        Assert.True(await Top(page, "[data-part=lowerPlate]") < plate - 5);
        // The dot stays under the hand.
        LocatorBoundingBoxResult now = (await page.Locator("[data-handle=height] .dot").BoundingBoxAsync())!;
        Assert.InRange(now.Y, dot.Y - 33, dot.Y - 27);
        await Expect(page.Locator(".state")).ToHaveTextAsync("changed, not saved");
    }

    [Fact] // a window that changes its size asks for new letters, and every frame writes every field
    public async Task Type_WhileAFrameArrives_KeepsWhatWasBegun()
    {
        IPage page = await served.Board();
        await page.Locator(".value[data-type=height]").FillAsync("66 mm");
        string? painted = await page.Locator(".board").GetAttributeAsync("data-painted");
        await page.SetViewportSizeAsync(900, 700);
        await Expect(page.Locator(".board")).Not.ToHaveAttributeAsync("data-painted", painted!);
        await Settled(page);

        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync("66 mm");
        await page.Locator(".value[data-type=height]").PressAsync("Enter");
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync("66.0 mm");
    }

    [Theory]
    [InlineData("height", "2.6 in", "66.0 mm")]
    [InlineData("height", "65,8 mm", "65.8 mm")]
    [InlineData("height", "6.5 cm", "65.0 mm")]
    [InlineData("height", "70", "70.0 mm")]
    [InlineData("wanted", "1.9 Hz", "1.90 Hz")]
    [InlineData("wanted", "125 cpm", "2.08 Hz")]
    [InlineData("thread", "20 turns", "34.0 mm")]
    public async Task Type_AnyUnit_IsUnderstood(string field, string text, string shown)
    {
        IPage page = await served.Board();
        await Type(page, field, text);
        await Expect(page.Locator($".value[data-type={field}]")).ToHaveValueAsync(shown);
        await Expect(Answer(page)).ToHaveTextAsync(new Regex("^(At|No installed)"));
    }

    [Theory]
    [InlineData("height", "2 km", "write a number and a unit")]
    [InlineData("height", "300 mm", "allowed 36.0 mm to 114.0 mm")]
    [InlineData("wanted", "soft", "write a ride frequency or a spring rate")]
    [InlineData("gauge", "40 bar", "allowed 0 to 7.00 bar")]
    public async Task Type_WhatCannotBe_IsRefusedBesideTheField(string field, string text, string words)
    {
        IPage page = await served.Board();
        string answer = await Answer(page).InnerTextAsync();
        await Type(page, field, text);
        await Expect(page.Locator($"#field-{field}-refused")).ToContainTextAsync(words);
        await Expect(page.Locator($"#field-{field}-refused")).ToContainTextAsync($"Found {(words.StartsWith("write", StringComparison.Ordinal) ? "\"" : "")}{text}");
        await Expect(Answer(page)).ToHaveTextAsync(answer);
    }

    [Fact]
    public async Task Undo_AfterThreeHands_GoesBackStepByStep()
    {
        IPage page = await served.Board();
        string start = await Answer(page).InnerTextAsync();
        await Type(page, "height", "70 mm");
        await page.Locator("[data-slide=thread]").FocusAsync();
        await page.Keyboard.PressAsync("ArrowRight");
        await Settled(page);
        await page.Locator("[data-choose=load]").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await Settled(page);
        string end = await Answer(page).InnerTextAsync();
        string load = await page.Locator("[data-choose=load]").InputValueAsync();
        await page.Keyboard.PressAsync("Control+z");
        await Settled(page);
        await Expect(page.Locator("[data-choose=load]")).Not.ToHaveValueAsync(load);
        await page.Keyboard.PressAsync("Control+z");
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync("70.0 mm");
        await page.Locator("[data-choose=undo]").ClickAsync();
        await Expect(Answer(page)).ToHaveTextAsync(start);
        await Expect(page.Locator("[data-choose=undo]")).ToBeDisabledAsync();
        for (int k = 0; k < 3; k++)
        {
            await page.Keyboard.PressAsync("Control+y");
            await Settled(page);
        }

        await Expect(Answer(page)).ToHaveTextAsync(end);
        await Expect(page.Locator("[data-choose=redo]")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task Keyboard_Alone_MovesTheStrutAndOpensTheNextQuestion()
    {
        IPage page = await served.Board();
        double before = await Height(page);
        await Tab(page, "[data-handle=height]");
        await page.Keyboard.PressAsync("Shift+ArrowUp");
        await page.Keyboard.PressAsync("ArrowUp");
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync(Millimetres(before - 1.1));
        await Expect(page.Locator("[data-handle=height]")).ToHaveAttributeAsync("aria-valuetext", Millimetres(before - 1.1));
        await Tab(page, ".value[data-type=height]");
        await page.Keyboard.PressAsync("PageUp");
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync(Millimetres(before - 0.1));
        await Tab(page, "[data-question=travel] > summary");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".ladder")).ToBeVisibleAsync();
        await Expect(page.Locator("[data-question=height] .fields")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Wanted_OutOfReach_SaysWhyAndWhatCanBeHad()
    {
        IPage page = await served.Board();
        await Type(page, "wanted", "3.1 Hz");
        await Expect(Answer(page)).ToContainTextAsync("No installed height.");
        await Expect(Answer(page)).ToContainTextAsync("is stiffer than this spring can be");
        await Expect(page.Locator(".why")).ToContainTextAsync("Drawn at the nearest that can be had");
        await Type(page, "wanted", "1 N/mm");
        await Expect(Answer(page)).ToContainTextAsync("is softer than this spring can be");
    }

    [Fact]
    public async Task WhatIf_MoreGaugePressure_SaysHowHighTheCarStands()
    {
        IPage page = await served.Board();
        await Type(page, "gauge", "60 psi");
        await Expect(page.Locator(".whatif p")).ToHaveTextAsync(new Regex(@"^On 4\.14 bar gauge, the thread left as it is, the car stands \d+\.\d mm higher, spring \d+\.\d mm"));
    }

    [Fact]
    public async Task Units_Imperial_AreSpokenEverywhere()
    {
        IPage page = await served.Board();
        await page.Locator("[data-choose=units]").SelectOptionAsync("imperial");
        await Expect(Answer(page)).ToHaveTextAsync(new Regex(@"^At \d\.\d{3} in and \d+\.\d psi gauge the spring gives \d+ lbf/in"));
        await Expect(page.Locator(".drawing text.accent").First).ToHaveTextAsync(new Regex(@"^\d\.\d{3}$"));
        await Type(page, "height", "2.75");
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync("2.750 in");
    }

    [Fact]
    public async Task Recommended_AfterADrag_IsOnePressAway()
    {
        IPage page = await served.Board();
        double recommended = await Height(page);
        await Type(page, "height", "60 mm");
        await Expect(page.Locator(".why")).ToContainTextAsync("The wanted 2.12 Hz is had at");
        await page.Locator("[data-choose=recommend]").ClickAsync();
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync(Millimetres(recommended));
        await Expect(page.Locator("[data-choose=recommend]")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Keys_OneAfterAnother_AreOneStepBack()
    {
        IPage page = await served.Board();
        double before = await Height(page);
        await page.Locator("[data-handle=height]").FocusAsync();
        for (int k = 0; k < 5; k++) await page.Keyboard.PressAsync("ArrowUp");
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync(Millimetres(before - 0.5));
        await page.Keyboard.PressAsync("Control+z");
        await Expect(page.Locator(".value[data-type=height]")).ToHaveValueAsync(Millimetres(before));
        await Expect(page.Locator("[data-choose=undo]")).ToBeDisabledAsync();
    }

    [Fact]
    public async Task Strut_Rear_IsAnotherSheetAndOtherAnswers()
    {
        IPage page = await served.Board();
        await page.Locator("[data-choose=end]").SelectOptionAsync("Rear");
        await Expect(Answer(page)).ToContainTextAsync("2.29 Hz at the wheel");
        await Expect(page.Locator(".title-block [data-row=kit]")).ToContainTextAsync("rear");
        await Settled(page);
        LocatorBoundingBoxResult dot = (await page.Locator("[data-handle=height] .dot").BoundingBoxAsync())!;
        Assert.InRange(dot.Width, 16, 24);
        await page.Locator("[data-question=travel] > summary").ClickAsync();
        foreach (ILocator finding in await page.Locator("[data-finding]").AllAsync())
            Assert.Equal((await finding.Locator(".verdict").InnerTextAsync()).Trim(), await finding.GetAttributeAsync("data-verdict"));
    }

    [Fact]
    public async Task Sheet_Pressed_IsAPdfOfTheSetting()
    {
        IPage page = await served.Board();
        await Type(page, "height", "70 mm");
        IDownload download = await page.RunAndWaitForDownloadAsync(() => page.Locator("[data-sheet]").ClickAsync());
        Assert.Equal("ostrane-street.pdf", download.SuggestedFilename);
        byte[] pdf = await File.ReadAllBytesAsync(await download.PathAsync());
        Assert.Equal("%PDF-"u8.ToArray(), pdf[..5]);
    }

    [Fact]
    public async Task Kit_WithoutTargetAndDamper_AsksForBoth()
    {
        string text = await File.ReadAllTextAsync(Path.Combine(served.Folder, "fenwright/kits/ostrane-street.json"));
        string file = Path.Combine(served.Folder, "fenwright/kits/bare.json");
        await File.WriteAllTextAsync(file, TargetLine().Replace(text, "", 1)
            .Replace("\"../dampers/front-street.json\"", "{ \"coefficient\": \"1500 N*s/m\" }", StringComparison.Ordinal));
        try
        {
            IPage page = await served.Board(kit: "kit/fenwright/kits/bare.json");
            await Expect(page.Locator(".why")).ToContainTextAsync("Say what you want");
            await Expect(page.Locator("[data-question=travel] .answer")).ToContainTextAsync("Not answered yet");
            await Type(page, "wanted", "2.3 Hz");
            await Expect(page.Locator(".why")).ToContainTextAsync("Recommended.");
            await Expect(page.Locator("[data-slide=wanted]")).ToBeVisibleAsync();
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task Figure_PressedAtAHeight_MovesTheSettingThere()
    {
        IPage page = await served.Board();
        double before = await Height(page);
        LocatorBoundingBoxResult plot = (await page.Locator("[data-plot=rate]").BoundingBoxAsync())!;
        await page.Mouse.ClickAsync(plot.X + plot.Width * 0.75f, plot.Y + 100);
        await Settled(page);
        Assert.True(await Height(page) > before + 5);
        foreach (string tab in new[] { "gauge pressure", "ride frequency", "effective area", "map of rate" })
        {
            await page.Locator(".tabs label", new() { HasText = tab }).ClickAsync();
            await Expect(page.Locator("[data-question=height] figure:visible canvas")).ToBeVisibleAsync();
        }
    }

    internal static ILocator Answer(IPage page) => page.Locator("[data-question=height] .answer");

    internal static async Task Type(IPage page, string field, string text)
    {
        ILocator value = page.Locator($".value[data-type={field}]");
        await value.FillAsync(text);
        await value.PressAsync("Enter");
        await Settled(page);
    }

    /// <summary>Until every call is answered and nothing has been painted for a moment.</summary>
    internal static async Task Settled(IPage page)
    {
        string? painted = null;
        for (string? now; (now = await page.Locator(".board").GetAttributeAsync("data-painted")) != painted; painted = now)
        {
            await page.WaitForTimeoutAsync(painted is null ? 550 : 150);
            await page.Locator(".board:not([aria-busy])").WaitForAsync();
        }
    }

    internal static async Task<double> Height(IPage page) => double.Parse(
        (await page.Locator(".value[data-type=height]").InputValueAsync()).Split(' ')[0], CultureInfo.InvariantCulture);

    private static string Millimetres(double value) => string.Create(CultureInfo.InvariantCulture, $"{value:0.0} mm");

    private static async Task<double> Top(IPage page, string part) => (await page.Locator($".drawing {part}").First.BoundingBoxAsync())!.Y;

    private static async Task Tab(IPage page, string to)
    {
        for (int k = 0; k < 60; k++)
        {
            if (await page.Locator(to).EvaluateAsync<bool>("e => e === document.activeElement")) return;
            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"The Tab key does not reach {to}.");
    }

    [GeneratedRegex(@".*""target"".*\n")]
    private static partial Regex TargetLine();

    [GeneratedRegex(@"^At \d+\.\d mm and \d\.\d\d bar gauge the spring gives \d+\.\d N/mm \(\d+\.\d to \d+\.\d\): 2\.12 Hz at the wheel\.$")]
    private static partial Regex AnAnswer();
}
