using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Bellowsmith.Browser;

/// <summary>How hard should it be damped, and how does it ride: asked, slid, taken, saved and played.</summary>
public sealed partial class DamperTests(Served served)
{
    [Fact]
    public async Task Damping_WantedSlid_ChoosesAnotherClickAndPaintsIt()
    {
        IPage page = await Opened("damping");
        string before = await Answer(page, "damping").InnerTextAsync();
        string figure = await Painted(page, "dampingRatio");
        await page.Locator("[data-slide=ratio]").FocusAsync();
        for (int k = 0; k < 10; k++) await page.Keyboard.PressAsync("ArrowRight");
        await BoardTests.Settled(page);
        await Expect(page.Locator(".value[data-type=ratio]")).ToHaveValueAsync("0.60");
        await Expect(Answer(page, "damping")).ToHaveTextAsync(new Regex(@"^Click 3 from closed damps it at 0\.60 of critical: "));
        Assert.NotEqual(before, await Answer(page, "damping").InnerTextAsync());
        Assert.NotEqual(figure, await Painted(page, "dampingRatio"));
        await Expect(page.Locator("[data-judged=click] .verdict")).ToHaveTextAsync(new Regex("real|not shown|not known"));
    }

    [Fact]
    public async Task TakeClick_Pressed_IsSetSaidAndUndone()
    {
        IPage page = await Opened("damping");
        ILocator take = page.Locator("[data-choose=click]"), click = page.Locator("#field-click");
        await Expect(click).ToHaveValueAsync("8");
        await Expect(take).ToHaveTextAsync("Take click 6");
        string ride = await Answer(page, "ride").InnerTextAsync();
        await take.ClickAsync();
        await BoardTests.Settled(page);
        await Expect(click).ToHaveValueAsync("6");
        await Expect(take).ToBeHiddenAsync();
        await Expect(Answer(page, "damping").Locator(".setting").First).ToHaveTextAsync("Click 6");
        await Expect(Answer(page, "ride")).Not.ToHaveTextAsync(ride);
        await page.Keyboard.PressAsync("Control+z");
        await BoardTests.Settled(page);
        await Expect(click).ToHaveValueAsync("8");
        await Expect(Answer(page, "ride")).ToHaveTextAsync(ride);
        await Expect(page.Locator("button[data-choose=undo]")).ToBeDisabledAsync();
    }

    [Theory]
    [InlineData("damping", "ratio", "6", "write a share of critical from 0.01 to 5")]
    [InlineData("damping", "click", "16", "allowed 0 to 15 from closed")]
    [InlineData("ride", "speed", "400 km/h", "write a speed from 5 km/h to 160 km/h")]
    [InlineData("ride", "bumpSpeed", "soft", "write a speed from")]
    public async Task Type_WhatCannotBe_IsRefusedBesideTheField(string question, string field, string text, string words)
    {
        IPage page = await Opened(question);
        string answer = await Answer(page, question).InnerTextAsync();
        await Type(page, question, field, text);
        await Expect(page.Locator($"#field-{field}-refused")).ToContainTextAsync(words);
        await Expect(Answer(page, question)).ToHaveTextAsync(answer);
    }

    [Fact]
    public async Task Ride_RoadSpeedAndUnits_AreDrivenAndSaid()
    {
        IPage page = await Opened("ride");
        await Expect(Answer(page, "ride")).ToHaveTextAsync(new Regex(@"^On a B road at 80 km/h: \d\.\d\d m/s² weighted, "));
        string figure = await Painted(page, "rideSpeeds");
        await page.Locator("#field-road").SelectOptionAsync("D");
        await Type(page, "ride", "speed", "60 mph");
        await Expect(Answer(page, "ride")).ToHaveTextAsync(new Regex(@"^On a D road at 97 km/h: .*; the stop is touched \d+\.\d times a kilometre, at most with \d+ N\.$"));
        Assert.NotEqual(figure, await Painted(page, "rideSpeeds"));
        await Expect(page.Locator("[data-question=ride] .numbers .this td").First).ToHaveTextAsync(ThreeDecimals());
        Assert.Equal(6, await page.Locator("[data-question=ride] .numbers tbody tr:visible").CountAsync());
        await page.Locator("[data-choose=units]").SelectOptionAsync("imperial");
        await Expect(Answer(page, "ride")).ToContainTextAsync("at 60 mph");
        await Expect(page.Locator(".value[data-type=bumpSpeed]")).ToHaveValueAsync("19 mph");
    }

    [Fact]
    public async Task Ride_Closed_CatchesUpWhenTheHandLetsGo()
    {
        IPage page = await served.Board();
        string before = await Answer(page, "ride").InnerTextAsync(), damping = await Answer(page, "damping").InnerTextAsync();
        LocatorBoundingBoxResult slide = (await page.Locator("[data-slide=height]").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(slide.X + slide.Width / 2, slide.Y + slide.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(slide.X + slide.Width - 12, slide.Y + slide.Height / 2, new() { Steps = 5 });
        await page.WaitForTimeoutAsync(700);
        await Expect(Answer(page, "ride")).ToHaveTextAsync(before);
        await page.Mouse.UpAsync();
        await Expect(Answer(page, "ride")).Not.ToHaveTextAsync(before);
        await Expect(Answer(page, "damping")).Not.ToHaveTextAsync(damping);
    }

    [Fact]
    public async Task Save_AfterAClick_WritesTheClick()
    {
        string from = Path.Combine(served.Folder, "fenwright/kits/ostrane-street.json"), file = Path.Combine(served.Folder, "fenwright/kits/clicked.json");
        string before = await File.ReadAllTextAsync(from);
        await File.WriteAllTextAsync(file, before);
        try
        {
            IPage page = await served.Board(kit: "kit/fenwright/kits/clicked.json");
            await page.Locator("[data-question=damping] > summary").ClickAsync();
            await Type(page, "damping", "click", "click 5");
            await page.Locator("[data-choose=save]").ClickAsync();
            await Expect(page.Locator(".state")).ToHaveTextAsync("Saved to clicked.json.");
            string[] was = before.Split('\n'), now = (await File.ReadAllTextAsync(file)).Split('\n');
            Assert.Equal(["      \"click\": 5,"], now.Except(was));
            Assert.Equal(was.Length + 1, now.Length);
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task Bump_PlayedAndPaused_MovesOnlyWhilePlaying()
    {
        IPage page = await Opened("ride", ReducedMotion.Reduce);
        ILocator play = page.Locator("[data-play]"), time = page.Locator("[data-scrub]");
        await page.WaitForTimeoutAsync(400);
        await Expect(play).ToHaveTextAsync("Play");
        await Expect(time).ToHaveAttributeAsync("aria-valuetext", "0.00 s of 5.00 s");
        string still = await Scene(page);
        await play.ClickAsync();
        await Expect(play).ToHaveTextAsync("Pause");
        await page.WaitForTimeoutAsync(700);
        await play.ClickAsync();
        await Expect(play).ToHaveTextAsync("Play");
        string paused = await Scene(page);
        Assert.True(await time.EvaluateAsync<double>("e => e.valueAsNumber") > 0.3);
        Assert.NotEqual(still, paused);
        await page.WaitForTimeoutAsync(400);
        Assert.Equal(paused, await Scene(page));
        await time.FocusAsync();
        await page.Keyboard.PressAsync("Home");
        await Expect(page.Locator("[data-clock]")).ToHaveTextAsync("0.00 s of 5.00 s");
        Assert.Equal(still, await Scene(page));
    }

    [Fact]
    public async Task Bump_StillnessNotAskedFor_PlaysOnceAndEnds()
    {
        IPage page = await Opened("ride", ReducedMotion.NoPreference);
        await Expect(page.Locator("[data-play]")).ToHaveTextAsync("Pause");
        await Expect(page.Locator("[data-play]")).ToHaveTextAsync("Play", new() { Timeout = 15000 });
        await Expect(page.Locator("[data-clock]")).ToHaveTextAsync("5.00 s of 5.00 s");
        await page.Locator("#field-bump").SelectOptionAsync("Pothole");
        await Expect(page.Locator("[data-question=ride] .bump .said")).ToContainTextAsync("Over a pothole");
        await Expect(page.Locator("[data-play]")).ToHaveTextAsync("Pause");
    }

    [Fact]
    public async Task Kit_WithoutDynoAndTyre_SaysWhatBothQuestionsLack()
    {
        string kit = await File.ReadAllTextAsync(Path.Combine(served.Folder, "fenwright/kits/ostrane-street.json"));
        string car = await File.ReadAllTextAsync(Path.Combine(served.Folder, "fenwright/cars/ostrane.json"));
        string damper = await File.ReadAllTextAsync(Path.Combine(served.Folder, "fenwright/dampers/front-street.json"));
        string[] files = [.. new[] { "kits/lacking.json", "cars/tyreless.json", "dampers/undyno.json" }.Select(f => Path.Combine(served.Folder, "fenwright", f))];
        await File.WriteAllTextAsync(files[0], kit.Replace("ostrane.json", "tyreless.json", StringComparison.Ordinal).Replace("front-street.json", "undyno.json", StringComparison.Ordinal));
        await File.WriteAllTextAsync(files[1], TyreLine().Replace(car, ""));
        await File.WriteAllTextAsync(files[2], DynoLines().Replace(damper, ""));
        try
        {
            IPage page = await served.Board(kit: "kit/fenwright/kits/lacking.json");
            await Expect(Answer(page, "damping")).ToContainTextAsync("Not answered yet: Name the dyno file in the damper's document");
            await Expect(Answer(page, "ride")).ToContainTextAsync("give tyreRate in the car document");
            await page.Locator("[data-question=ride] > summary").ClickAsync();
            await Expect(page.Locator("[data-question=ride] .faults")).ToContainTextAsync("car.axles.front.tyreRate");
        }
        finally
        {
            foreach (string file in files) File.Delete(file);
        }
    }

    private static ILocator Answer(IPage page, string question) => page.Locator($"[data-question={question}] .answer");

    private async Task<IPage> Opened(string question, ReducedMotion motion = ReducedMotion.Reduce)
    {
        IPage page = await served.NewPage();
        await page.EmulateMediaAsync(new() { ReducedMotion = motion });
        await page.GotoAsync(Served.Kit);
        await page.WaitForSelectorAsync(".board[data-painted]");
        await page.WaitForTimeoutAsync(250);
        await page.Locator($"[data-question={question}] > summary").ClickAsync();
        if (motion == ReducedMotion.Reduce) await BoardTests.Settled(page);
        return page;
    }

    private static async Task Type(IPage page, string question, string field, string text)
    {
        ILocator value = page.Locator($"[data-question={question}] .value[data-type={field}]");
        await value.FillAsync(text);
        await value.PressAsync("Enter");
        await BoardTests.Settled(page);
    }

    // What a figure's canvas shows once its tab is chosen.
    private static async Task<string> Painted(IPage page, string id)
    {
        await page.Locator($".tabs label:has(input[value={id}])").ClickAsync();
        await page.WaitForTimeoutAsync(150);
        return await page.Locator($"[data-plot={id}] canvas").EvaluateAsync<string>("c => c.toDataURL()");
    }

    private static Task<string> Scene(IPage page) => page.Locator("[data-scene] canvas").EvaluateAsync<string>("c => c.toDataURL()");

    [GeneratedRegex(@"^\d\.\d{3}$")]
    private static partial Regex ThreeDecimals();

    [GeneratedRegex(@".*""tyreRate"".*\n")]
    private static partial Regex TyreLine();

    [GeneratedRegex(@".*""(dyno|dynoSign|dynoClicks|dynoGas|clickCount)"".*\n")]
    private static partial Regex DynoLines();
}
