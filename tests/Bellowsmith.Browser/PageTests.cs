using System.Diagnostics;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Bellowsmith.Browser;

/// <summary>What holds of every page: read aloud, at every width, with nothing from outside, with faults where they are.</summary>
public sealed class PageTests(Served served)
{
    [Theory]
    [InlineData("", "")]
    [InlineData(Served.Kit, "")]
    [InlineData(Served.Kit, "travel")]
    [InlineData(Served.Kit, "geometry")]
    [InlineData(Served.Kit, "wheel")]
    [InlineData(Served.Kit, "touch")]
    [InlineData(Served.Kit, "damping")]
    [InlineData(Served.Kit, "ride")]
    [InlineData(Served.Kit, "settings")]
    [InlineData("kit/fenwright/kits/ostrane-too-stiff.json", "")]
    public async Task Axe_EveryPageInBothSchemes_FindsNothingSerious(string address, string open)
    {
        foreach (ColorScheme scheme in new[] { ColorScheme.Light, ColorScheme.Dark })
        {
            IPage page = address.Length > 0 ? await served.Board(scheme: scheme, kit: address) : await served.NewPage(scheme: scheme);
            if (address.Length == 0) await page.GotoAsync("");
            await Assertions.Expect(page).Not.ToHaveTitleAsync(""); // Blazor takes it away and gives it back when it comes alive
            await NothingSerious(page, open, $"{scheme}");
        }
    }

    [Theory]
    [InlineData("geometry")]
    [InlineData("wheel")]
    [InlineData("touch")]
    public async Task Axe_OnAPhone_FindsNothingSerious(string open) => await NothingSerious(await served.Board(390, 844), open, "phone");

    private static async Task NothingSerious(IPage page, string open, string where)
    {
        if (open.Length > 0)
        {
            await page.Locator($"[data-question={open}] > summary").ClickAsync();
            await BoardTests.Settled(page);
        }

        foreach (ILocator more in await page.Locator("details.more:visible > summary").AllAsync()) await more.ClickAsync();
        AxeResult result = await page.RunAxe();
        Assert.Empty(result.Violations.Where(v => v.Impact is "serious" or "critical")
            .Select(v => $"{where} {v.Id}: {v.Help}: {string.Join("; ", v.Nodes.Take(3).Select(n => n.Html))}"));
        await page.Context.CloseAsync();
    }

    [Fact] // a figure that was drawn wide must not hold its question open wider than the window or the paper
    public async Task Figure_InAWindowMadeNarrow_StaysInItsQuestion()
    {
        IPage page = await served.Board();

        await page.SetViewportSizeAsync(1120, 900);
        await page.EmulateMediaAsync(new() { Media = Media.Print });

        await page.WaitForTimeoutAsync(600);

        double beyond = await page.EvaluateAsync<double>(
            "() => document.querySelector('[data-plot=rate] canvas').getBoundingClientRect().right - document.querySelector('.board > main').getBoundingClientRect().right");
        Assert.True(beyond <= 0, $"The figure reaches {beyond} px past the page.");
        await page.Context.CloseAsync();
    }

    [Fact]
    public async Task Page_UsedForAWhile_AsksNothingOfAnyOtherMachineAndKeepsItsPolicy()
    {
        IPage page = await served.NewPage();
        List<string> elsewhere = [], complaints = [];
        page.Context.Request += (_, request) =>
        {
            Uri uri = new(request.Url);
            if (uri.Scheme is not ("data" or "blob") && uri.Authority != served.Address.Authority) elsewhere.Add(request.Url);
        };
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning") complaints.Add(message.Text);
        };
        page.PageError += (_, error) => complaints.Add(error);
        IResponse response = (await page.GotoAsync(Served.Kit))!;
        await page.WaitForSelectorAsync(".board[data-painted]");
        await BoardTests.Type(page, "height", "70 mm");
        foreach (string tab in new[] { "gauge pressure", "effective area", "map of rate" }) await page.Locator(".tabs label", new() { HasText = tab }).ClickAsync();
        foreach (string question in new[] { "travel", "geometry", "wheel", "touch", "damping", "settings", "ride" }) await page.Locator($"[data-question={question}] > summary").ClickAsync();
        await page.Locator("[data-play]").ClickAsync();
        await page.Locator(".all").ClickAsync();
        await Expect(page.Locator(".documents").First).ToBeVisibleAsync();
        Assert.Empty(elsewhere);
        Assert.Empty(complaints);
        string policy = await response.HeaderValueAsync("content-security-policy") ?? "";
        Assert.Contains("script-src 'self';", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("unsafe", policy, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("http://elsewhere.example", "localhost", 403)]
    [InlineData(null, "elsewhere.example", 403)]
    [InlineData(null, "localhost", 200)]
    public async Task Request_FromAnotherSiteOrName_IsRefused(string? origin, string host, int status)
    {
        using HttpClient client = new();
        using HttpRequestMessage request = new(HttpMethod.Get, served.Address);
        request.Headers.Host = $"{host}:{served.Address.Port}";
        if (origin is not null) request.Headers.Add("Origin", origin);
        using HttpResponseMessage response = await client.SendAsync(request);
        Assert.Equal(status, (int)response.StatusCode);
    }

    [Theory]
    [InlineData(1440, 900)]
    [InlineData(820, 1180)]
    [InlineData(390, 844)]
    public async Task Page_AtEachWidth_FitsAndCanBeDragged(int width, int height)
    {
        IPage page = await served.Board(width, height);
        Assert.True(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth <= innerWidth"), "The page is wider than its window.");
        await Expect(BoardTests.Answer(page)).ToBeInViewportAsync();
        if (width == 390)
        {
            await Expect(page.Locator(".sheet")).Not.ToBeInViewportAsync();
            await page.Locator("[data-swipe=sheet]").ClickAsync();
            await page.WaitForTimeoutAsync(600);
        }

        LocatorBoundingBoxResult sheet = (await page.Locator(".paper").BoundingBoxAsync())!;
        if (width == 820) Assert.True(sheet.Y + sheet.Height < height * 0.5);
        double before = await BoardTests.Height(page);
        LocatorBoundingBoxResult dot = (await page.Locator("[data-handle=height] .dot").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(dot.X + dot.Width / 2, dot.Y + dot.Height / 2);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(dot.X + dot.Width / 2, dot.Y + dot.Height / 2 - 10, new() { Steps = 4 });
        await page.Mouse.UpAsync();
        await BoardTests.Settled(page);
        Assert.True(await BoardTests.Height(page) < before - 2);
    }

    [Fact]
    public async Task BadKit_InTheFolder_ShowsItsFaultsBesideTheLines()
    {
        string good = await File.ReadAllTextAsync(Path.Combine(served.Folder, "fenwright/kits/ostrane-street.json"));
        string bad = good.Replace("\"pitch\": \"1.5 mm\"", "\"pitch\": \"1.5 bar\"", StringComparison.Ordinal).Replace("\"upperStack\"", "\"uperStack\"", StringComparison.Ordinal);
        string file = Path.Combine(served.Folder, "fenwright/kits/bad.json");
        await File.WriteAllTextAsync(file, bad);
        try
        {
            IPage page = await served.NewPage();
            await page.GotoAsync("kit/fenwright/kits/bad.json");
            ILocator faults = page.Locator(".faults");
            await Expect(faults).ToContainTextAsync("4 things to mend before anything is computed.");
            await Expect(faults.GetByRole(AriaRole.Row, new() { Name = "struts.front.thread.pitch" })).ToContainTextAsync("1.5 bar");
            await Expect(faults.Locator(".line code").First).ToHaveTextAsync("\"uperStack\": \"47 mm\",");
            await page.GotoAsync("");
            await Expect(page.Locator(".documents li", new() { HasText = "bad.json" }).Locator(".faults")).ToBeVisibleAsync();
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task Drop_BadRow_ShowsTheRowAndItsFault()
    {
        IPage page = await served.NewPage();
        await page.GotoAsync("");
        await page.WaitForLoadStateAsync(LoadState.NetworkIdle);
        string spring = (await File.ReadAllTextAsync(Path.Combine(served.Folder, "fenwright/springs/single-140.json")))
            .Replace("\"mould\": \"../moulds/single-140.json\",", "", StringComparison.Ordinal); // not dropped with it
        string[] rows = await File.ReadAllLinesAsync(Path.Combine(served.Folder, "fenwright/springs/single-140.csv"));
        int row = Array.FindIndex(rows, r => r.Contains("regulated", StringComparison.Ordinal));
        rows[row] = rows[row].Replace("regulated", "regulatet", StringComparison.Ordinal);
        await page.EvaluateAsync(
            """
            ({ spring, rows }) => {
              const data = new DataTransfer();
              data.items.add(new File([spring], "single-140.json"));
              data.items.add(new File([rows], "single-140.csv"));
              document.body.dispatchEvent(new DragEvent("drop", { dataTransfer: data, bubbles: true, cancelable: true }));
            }
            """, new { spring, rows = string.Join('\n', rows) });
        await page.WaitForURLAsync("**/dropped/*");
        await Expect(page.Locator(".faults .line .number")).ToHaveTextAsync((row + 1).ToString(System.Globalization.CultureInfo.InvariantCulture));
        await Expect(page.Locator(".faults .line code")).ToContainTextAsync("regulatet");
    }

    [Fact]
    public async Task Save_AfterADrag_WritesOnlyTheHeight()
    {
        string from = Path.Combine(served.Folder, "fenwright/kits/ostrane-street.json"), file = Path.Combine(served.Folder, "fenwright/kits/saved.json");
        string before = await File.ReadAllTextAsync(from);
        await File.WriteAllTextAsync(file, before);
        try
        {
            IPage page = await served.Board(kit: "kit/fenwright/kits/saved.json");
            await BoardTests.Type(page, "height", "2.6 in");
            await page.Locator("[data-choose=save]").ClickAsync();
            await Expect(page.Locator(".state")).ToHaveTextAsync("Saved to saved.json.");
            string[] was = before.Split('\n'), now = (await File.ReadAllTextAsync(file)).Split('\n');
            Assert.Equal(was.Length + 1, now.Length);
            Assert.Equal(["      \"driveHeight\": \"2.6 in\","], now.Except(was));
            await File.AppendAllTextAsync(file, "\n");
            await BoardTests.Type(page, "height", "70 mm");
            await page.Keyboard.PressAsync("Control+s");
            await Expect(page.Locator(".state")).ToContainTextAsync("has been changed elsewhere");
        }
        finally
        {
            File.Delete(file);
        }
    }

    [Fact]
    public async Task Serve_TakenPort_SaysSoInOneSentence()
    {
        using Process second = Served.Start("serve", Served.Root, "--no-open", "--port", served.Address.Port.ToString(System.Globalization.CultureInfo.InvariantCulture));
        string error = await second.StandardError.ReadToEndAsync();
        await second.WaitForExitAsync();
        Assert.Equal(1, second.ExitCode);
        Assert.StartsWith($"  Port {served.Address.Port} is taken", error.ReplaceLineEndings(" "), StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Serve_Interrupted_StopsCleanlyAndLeavesNothing()
    {
        using Process program = Served.Start("serve", "--demo", "--no-open", "--port", "0");
        string line = (await program.StandardOutput.ReadLineAsync())!;
        string folder = line.Split("working on ")[1].Split(". Ctrl")[0];
        Assert.True(Directory.Exists(folder));
        using Process interrupt = Process.Start("kill", ["-INT", program.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]);
        await program.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(10));
        Assert.Equal(0, program.ExitCode);
        Assert.Empty(await program.StandardError.ReadToEndAsync());
        Assert.False(Directory.Exists(folder));
    }
}
