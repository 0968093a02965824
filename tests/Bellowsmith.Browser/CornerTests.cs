using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Bellowsmith.Browser;

/// <summary>What the geometry does and which wheel fits: dragged, steered, aligned and tried.</summary>
public sealed class CornerTests(Served served)
{
    [Fact]
    public async Task Geometry_Demo_SaysWhatLoweringDidAndWhatMendsIt()
    {
        IPage page = await Opened("geometry");
        await Expect(Answer(page, "geometry")).ToHaveTextAsync(new Regex(
            @"^Lowered 45(\.0)? mm, the wheel now toes out 0\.\d\d° over the next 30(\.0)? mm of bump and the roll centre has fallen 11\d\.\d mm while the body fell 45\.0 mm: an outer tie-rod joint \d+\.\d mm lower takes the toe away; a ball joint"));
        foreach (string mend in new[] { "TieRodOuter", "TieRodInner", "LowerBallJoint", "Both" }) await Expect(page.Locator($"[data-mend={mend}]")).ToBeVisibleAsync();
        await Expect(page.Locator("[data-ratio]")).ToContainTextAsync("The measured table says 0.930");
    }

    [Fact]
    public async Task Wheel_DraggedUp_BumpsInEveryViewAndTable()
    {
        IPage page = await Opened("geometry");
        ILocator handle = page.Locator("[data-view=front] [data-handle=zw] .dot");
        await handle.ScrollIntoViewIfNeededAsync();
        double camber = Degrees(await Cell(page, 0, 0));
        LocatorBoundingBoxResult dot = (await handle.BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(dot.X + dot.Width / 2, dot.Y + dot.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(dot.X + dot.Width / 2, dot.Y + dot.Height / 2 - 12, new() { Steps = 6 });
        await page.Mouse.UpAsync();
        await BoardTests.Settled(page);

        string travel = await page.Locator(".value[data-type=zw]").InputValueAsync();
        Assert.InRange(double.Parse(travel.Split(' ')[0], CultureInfo.InvariantCulture), 15, 38);
        Assert.True(Degrees(await Cell(page, 0, 0)) < camber - 0.2, "bump takes camber off");
        Assert.Equal(camber, Degrees(await Cell(page, 0, 1)));
        // The dot stays under the hand.
        LocatorBoundingBoxResult now = (await handle.BoundingBoxAsync())!;
        Assert.InRange(now.Y, dot.Y - 14, dot.Y - 10);
        await page.Locator("[data-choose=atRest]").ClickAsync();
        await Expect(page.Locator(".value[data-type=zw]")).ToHaveValueAsync("0.0 mm");
        await Expect(page.Locator("[data-choose=atRest]")).ToBeHiddenAsync();
    }

    [Fact]
    public async Task Rack_ByKeyboard_SteersThePlan()
    {
        IPage page = await Opened("geometry");
        string plan = await Shapes(page, "plan"), side = await Shapes(page, "side");
        ILocator rack = page.Locator("[data-view=plan] [data-handle=rack]");
        LocatorBoundingBoxResult view = (await page.Locator("[data-view=plan]").BoundingBoxAsync())!, dot = (await rack.Locator(".dot").BoundingBoxAsync())!;
        Assert.InRange(dot.X, view.X, view.X + view.Width);
        Assert.InRange(dot.Y, view.Y, view.Y + view.Height);
        await rack.FocusAsync();
        for (int k = 0; k < 3; k++) await page.Keyboard.PressAsync("Shift+ArrowRight");
        await BoardTests.Settled(page);

        await Expect(page.Locator(".value[data-type=rack]")).ToHaveValueAsync("3.0 mm");
        Assert.InRange(Degrees(await Cell(page, 1, 0)), 1.1, 1.5); // 0.42° a mm, rack to the left toes the left wheel in
        Assert.NotEqual(plan, await Shapes(page, "plan"));
        Assert.NotEqual(side, await Shapes(page, "side"));
        await Expect(page.Locator("button[data-choose=undo]")).ToBeDisabledAsync(); // looking changes nothing
    }

    [Fact]
    public async Task Align_CamberTyped_SaysSettingsAndWhatIsLeft()
    {
        IPage page = await Opened("geometry");
        await Type(page, "camber", "-1.6 deg");
        await Expect(page.Locator(".align .said")).ToHaveTextAsync(new Regex(@"^Top mount 9\.9 mm inward, tie rod 0\.4 mm shorter: camber −1\.60° and toe 0\.05° per wheel"));
        await Expect(page.Locator(".adjusters")).ToContainTextAsync("4.1 mm left inward");
        await Type(page, "camber", "-3 deg");
        await Expect(page.Locator(".align .finding")).ToContainTextAsync("cannot be had");
        await Type(page, "camber", "-9 deg");
        await Expect(page.Locator("#field-camber-refused")).ToContainTextAsync("write an angle from −6.00° to 6.00°");
    }

    [Fact]
    public async Task Wheel_AnInchWider_GetsAVerdictAPictureAndItsCamber()
    {
        IPage page = await Opened("wheel");
        await Expect(Answer(page, "wheel")).ToHaveTextAsync(new Regex(@"^The car's own 18x8 ET45 225/40R18: It fits: [12]\d\.\d mm free at the arch"));
        await Type(page, "wheel", "18x9 ET36 235/40R18");
        await Expect(Answer(page, "wheel")).ToHaveTextAsync(new Regex(@"^It fits with −0\.5\d° of camber added: 6\.0 mm .*free at the arch"));
        await Expect(page.Locator("[data-view=fit] text.miss")).ToHaveTextAsync(new Regex(@"^arch 3\.\d mm"));
        await page.Locator("[data-choose=enough]").ClickAsync();
        await BoardTests.Settled(page);
        await Expect(page.Locator("[data-view=fit] text.miss")).ToHaveCountAsync(0);
        await Expect(page.Locator("[data-view=fit] text.accent", new() { HasText = "arch" })).ToHaveTextAsync(new Regex(@"^arch 6\.\d mm"));
        await Expect(Answer(page, "wheel")).ToHaveTextAsync(new Regex("^It fits"));
        await Expect(page.Locator("[data-choose=enough]")).ToBeHiddenAsync();
    }

    [Theory]
    [InlineData("wheel", "19x9 ET36 235/40R18", "The tyre is for a 18 in rim, the rim measures 19 in")]
    [InlineData("wheel", "nine by eighteen", "Write it as \"18x8.5 ET35 225/40R18\"")]
    [InlineData("spacer", "80 mm", "write a length from 0.0 mm to 30.0 mm")]
    public async Task Wheel_WhatCannotBe_IsRefusedBesideTheField(string field, string text, string words)
    {
        IPage page = await Opened("wheel");
        string answer = await Answer(page, "wheel").InnerTextAsync();
        await Type(page, field, text);
        await Expect(page.Locator($"#field-{field}-refused")).ToContainTextAsync(words);
        await Expect(Answer(page, "wheel")).ToHaveTextAsync(answer);
    }

    [Theory] // one hand, one column: nothing beyond the edge, nothing too low to press, no words on words or cut off
    [InlineData("geometry", 390, 44)]
    [InlineData("wheel", 390, 44)]
    [InlineData("touch", 390, 44)]
    [InlineData("touch", 820, 0)]
    [InlineData("wheel", 1440, 0)]
    public async Task Question_AtEachWidth_FitsAndCanBeReadAndPressed(string question, int width, int least)
    {
        IPage page = await served.Board(width, 844);
        await Open(page, question);
        if (question != "geometry") await TypeInto(page, question == "wheel" ? "#field-wheel" : "#field-touch-wheel", "18x9 ET36 235/40R18");
        await page.WaitForTimeoutAsync(300); // letters are told their size after the first frame
        await BoardTests.Settled(page);

        string[] found = await page.EvaluateAsync<string[]>(
            """
            ({ question, least }) => {
              const open = document.querySelector(`[data-question=${question}]`), found = [];
              const edge = document.querySelector("#questions").getBoundingClientRect(), name = e => e.textContent.trim().slice(0, 30) || e.getAttribute("aria-label") || e.id;
              for (const e of open.querySelectorAll("button, input, select, summary, .tabs label, p, figure, svg, .pairs, .places")) {
                const box = e.getBoundingClientRect();
                if (box.width < 2 || e.closest(".unseen, .tabs input") || e.matches(".tabs input")) continue;
                if (box.left < edge.left - 1 || box.right > edge.right + 1) found.push(`beyond the edge: ${e.tagName} ${name(e)}`);
                if (e.matches("button, input, select, summary, .tabs label") && box.height < least - 0.5) found.push(`${box.height} px high: ${e.tagName} ${name(e)}`);
              }
              for (const view of open.querySelectorAll("[data-view]")) {
                const paper = view.getBoundingClientRect(), words = [...view.querySelectorAll("text")].map(e => [e.textContent, e.getBoundingClientRect()]);
                for (const [k, [text, box]] of words.entries()) {
                  if (box.left < paper.left || box.right > paper.right || box.top < paper.top || box.bottom > paper.bottom) found.push(`cut off: ${text}`);
                  if (box.height < 10) found.push(`too small: ${text}`);
                  for (const [other, there] of words.slice(k + 1))
                    if (box.left < there.right && there.left < box.right && box.top + 3 < there.bottom && there.top + 3 < box.bottom) found.push(`${text} on ${other}`);
                }
              }
              return found;
            }
            """, new { question, least });
        Assert.Empty(found);
        await page.Context.CloseAsync();
    }

    [Fact] // the sentence, what is typed and its sliders on one screen
    public async Task Wheel_OnAPhone_ShowsVerdictAndSlidersTogether()
    {
        IPage page = await served.Board(390, 844);
        await Open(page, "wheel");
        await Type(page, "wheel", "18x9 ET36 235/40R18");

        foreach (string part in new[] { "[data-question=wheel] .answer", "#field-wheel", "[data-question=wheel] [data-slide=spacer]", "[data-question=wheel] [data-slide=camberChange]" })
            await Expect(page.Locator(part)).ToBeInViewportAsync(new() { Ratio = 1 });
        await page.Context.CloseAsync();
    }

    [Fact] // from the typed wheel down the page, every control by name, the dragged places moved by arrows
    public async Task Touch_ByKeyboard_IsReachedInOrderAndMoved()
    {
        IPage page = await Opened("touch");
        await page.Locator("#field-touch-wheel").FocusAsync();
        List<string> names = [];
        for (int k = 0; k < 9; k++)
        {
            await page.Keyboard.PressAsync("Tab");
            names.Add(await page.EvaluateAsync<string>("() => document.activeElement.getAttribute('aria-label') ?? document.activeElement.labels?.[0]?.textContent ?? document.activeElement.textContent"));
        }

        Assert.Equal(["spacer", "spacer", "camber change", "camber change", "what holds", "wheel travel", "rack", "wheel travel, bump +", "wheel travel, bump +"], names);
        await page.Locator("[data-handle=touchRack]").FocusAsync();
        string rack = await page.Locator("[data-type=touchRack]").InputValueAsync();
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await BoardTests.Settled(page);
        Assert.NotEqual(rack, await page.Locator("[data-type=touchRack]").InputValueAsync());
        await Expect(page.Locator("[data-handle=touchRack]")).ToHaveAttributeAsync("aria-orientation", "horizontal");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Touch_WiderWheel_ShowsWhereAndLetsOneLookThere()
    {
        IPage page = await Opened("touch");
        await TypeInto(page, "#field-touch-wheel", "18x9 ET36 235/40R18");
        await Expect(Answer(page, "touch")).ToHaveTextAsync(new Regex(@"^The tyre touches the arch edge at 37\.9 mm of bump"));
        await Expect(page.Locator("[data-view=touchFront] text.miss").First).ToHaveTextAsync("tyre to arch edge");
        await Expect(page.Locator("[data-view=touchFront] text.miss").Nth(1)).ToHaveTextAsync(new Regex(@"^−\d\.\d mm"));
        Assert.InRange(await page.Locator("rect.room.short").CountAsync(), 1, 200);
        await page.Locator("[data-place]", new() { HasText = "bellows to tower" }).ClickAsync();
        await BoardTests.Settled(page);
        await Expect(page.Locator("[data-question=touch] [data-say=\"touch.here\"]")).ToContainTextAsync("full ");
        await Expect(page.Locator("[data-choose=closest]")).ToBeVisibleAsync();
        string ring = (await page.Locator("circle.room.here").GetAttributeAsync("cy"))!;
        await page.Locator("rect.room.free").First.ClickAsync();
        await BoardTests.Settled(page);
        await Expect(page.Locator("[data-choose=closest]")).ToBeVisibleAsync();
        Assert.NotEqual(ring, await page.Locator("circle.room.here").GetAttributeAsync("cy"));
        await page.Locator("[data-choose=closest]").ClickAsync();
        await Expect(page.Locator("[data-choose=closest]")).ToBeHiddenAsync();
        await Expect(page.Locator("button[data-choose=undo]")).ToBeDisabledAsync();
    }

    [Fact] // the rear axle names no points
    public async Task Geometry_WithoutPoints_SaysWhatToMeasure()
    {
        IPage page = await served.Board();
        await page.Locator("[data-choose=end]").SelectOptionAsync("Rear");
        await BoardTests.Settled(page);
        await Expect(Answer(page, "geometry")).ToContainTextAsync("Measure the axle's points");
        await Open(page, "wheel");
        await Type(page, "wheel", "18x9 ET36 235/40R18");
        await Expect(Answer(page, "wheel")).ToContainTextAsync("Whether it fits stays open: the car's axle names no suspension document");
        await Expect(page.Locator("[data-question=wheel] .said").Nth(1)).ToContainTextAsync("21.7 mm further out and 3.7 mm nearer");
    }

    private static double Degrees(string text) => double.Parse(text.TrimEnd('°').Replace('−', '-'), CultureInfo.InvariantCulture);

    private static Task<string> Cell(IPage page, int row, int column) => page.Locator($"[data-say=\"place.{row}.{column}\"]").InnerTextAsync();

    private static Task<string> Shapes(IPage page, string view) => page.Locator($"[data-view={view}] [data-shapes]").InnerHTMLAsync();

    private static ILocator Answer(IPage page, string question) => page.Locator($"[data-question={question}] .answer");

    private static Task Type(IPage page, string field, string text) => TypeInto(page, $"#field-{field}", text);

    private static async Task TypeInto(IPage page, string place, string text)
    {
        await page.Locator(place).FillAsync(text);
        await page.Locator(place).PressAsync("Enter");
        await BoardTests.Settled(page);
    }

    private async Task<IPage> Opened(string question)
    {
        IPage page = await served.Board();
        await Open(page, question);
        return page;
    }

    private static async Task Open(IPage page, string question)
    {
        await page.Locator($"[data-question={question}] > summary").ClickAsync();
        await BoardTests.Settled(page);
    }
}
