using System.Diagnostics;
using Microsoft.Playwright;

namespace Bellowsmith.Browser;

/// <summary>What the pages cost, printed by ./pages measure; nothing here is a test.</summary>
[Trait("Kind", "Looked")]
public sealed class Measured(Served served, ITestOutputHelper output)
{
    // From the input event until the screen's frame that shows its answer is done: a message posted in an animation frame is
    // heard only after it.
    private const string Move =
        """
        async ({ field, moves }) => {
          const root = document.querySelector(".board"), slide = root.querySelector(`[data-slide=${field}]`), times = [];
          const low = Number(slide.min), high = Number(slide.max);
          for (let k = 0; k < moves; k++) {
            const painted = new Promise(done => new MutationObserver((_, seen) => { seen.disconnect(); done(); }).observe(root, { attributeFilter: ["data-painted"] }));
            const start = performance.now();
            slide.value = low + (high - low) * (0.5 + 0.4 * Math.sin(k / 7));
            slide.dispatchEvent(new Event("input", { bubbles: true }));
            await painted;
            await new Promise(done => requestAnimationFrame(() => { const shown = new MessageChannel(); shown.port1.onmessage = done; shown.port2.postMessage(0); }));
            times.push(performance.now() - start);
          }
          slide.dispatchEvent(new Event("change", { bubbles: true }));
          return times;
        }
        """;

    // What a hand drags in the questions about the car's corner, and the drive height while each is open.
    private static readonly (string Question, string[] Fields)[] Corner =
    [
        ("geometry", ["zw", "rack", "camber", "height"]),
        ("wheel", ["spacer", "camberChange", "lookedAt", "height"]),
        ("touch", ["touchTravel", "touchRack", "spacer", "camberChange", "height"]),
    ];

    [Fact(Explicit = true)]
    public async Task Board_InTheHand_IsMeasured()
    {
        long bytes = 0;
        IPage page = await served.NewPage();
        ICDPSession wire = await page.Context.NewCDPSessionAsync(page);
        await wire.SendAsync("Network.enable");
        wire.Event("Network.loadingFinished").OnEvent += (_, e) => bytes += (long)e!.Value.GetProperty("encodedDataLength").GetDouble();
        await page.GotoAsync(Served.Kit);
        await page.WaitForSelectorAsync(".board[data-painted]");
        await page.WaitForTimeoutAsync(500);
        Say($"ready after {served.ReadyAfter.TotalSeconds:0.00} s; page {bytes / 1024.0:0} KiB over the wire");
        await Loads();
        foreach (string field in new[] { "height", "wanted", "thread" }) await Moves(page, field, "rate");
        await page.Locator(".tabs label", new() { HasText = "map" }).ClickAsync();
        await Moves(page, "height", "map");
        await page.Locator("[data-question=travel] > summary").ClickAsync();
        await Moves(page, "height", "travel");
        await page.Locator("[data-question=damping] > summary").ClickAsync();
        foreach (string field in new[] { "height", "ratio", "click" }) await Moves(page, field, "damping");
        await page.Locator("[data-question=ride] > summary").ClickAsync();
        foreach (string field in new[] { "height", "click", "speed", "bumpSpeed" }) await Moves(page, field, "ride");
        foreach ((string question, string[] fields) in Corner)
        {
            await page.Locator($"[data-question={question}] > summary").ClickAsync();
            await BoardTests.Settled(page);
            foreach (string field in fields) await Moves(page, field, question);
        }

        await page.Locator("[data-question=settings] > summary").ClickAsync();
        foreach ((string x, string y) in new[] { ("Click", "Height"), ("Height", "GaugePressure"), ("Height", "Speed") }) await Map(page, x, y);
        using Process program = Process.GetProcessById(served.ProcessId);
        Say($"program resident {program.WorkingSet64 >> 20} MiB");
    }

    // From the address to the board painted, and to its answer after a hand that moved the drive height lets go.
    private async Task Loads()
    {
        List<double> loads = [], releases = [];
        for (int k = 0; k < Repeats; k++)
        {
            IPage page = await served.NewPage();
            Stopwatch watch = Stopwatch.StartNew();
            await page.GotoAsync(Served.Kit);
            await page.WaitForSelectorAsync(".board[data-painted]");
            loads.Add(watch.Elapsed.TotalMilliseconds);
            await page.WaitForTimeoutAsync(300);
            releases.AddRange(await page.EvaluateAsync<double[]>(Release, 3));
            await page.Context.CloseAsync();
        }

        Say($"page painted after p50 {loads.Order().ElementAt(Repeats / 2):0} ms, least {loads.Min():0} ms; let go to painted p50 {releases.Order().ElementAt(releases.Count / 2):0} ms, least {releases.Min():0} ms");
    }

    // From the press that asks for a map to its first cells and to all of them on the canvas.
    private async Task Map(IPage page, string x, string y)
    {
        double[] times = await page.EvaluateAsync<double[]>(
            """
            async ([x, y]) => {
              const root = document.querySelector(".board"), times = [];
              const seen = () => new Promise(done => new MutationObserver((_, watch) => { watch.disconnect(); done(); }).observe(root, { attributeFilter: ["data-mapped"] }));
              const ask = (side, value) => { const select = document.querySelector(`#field-map-${side}`); select.value = value; select.dispatchEvent(new Event("change", { bubbles: true })); };
              ask("y", "Road");
              ask("x", x);
              await new Promise(done => setTimeout(done, 1500));
              const start = performance.now();
              root.dataset.whole = "false";
              ask("y", y);
              await seen();
              times.push(performance.now() - start);
              while (root.dataset.whole !== "true") await seen();
              times.push(performance.now() - start);
              return times;
            }
            """,
            new[] { x, y });
        Say($"map {x} x {y}: first cells {times[0]:0} ms, all of them {times[1]:0} ms");
    }

    private const int Repeats = 7;

    // A slide, then what the settled answer takes from the moment it is asked for.
    private const string Release =
        """
        async times => {
          const root = document.querySelector(".board"), slide = root.querySelector("[data-slide=height]"), found = [];
          const painted = () => new Promise(done => new MutationObserver((_, seen) => { seen.disconnect(); done(); }).observe(root, { attributeFilter: ["data-painted"] }));
          for (let k = 0; k < times; k++) {
            let next = painted();
            slide.value = slide.valueAsNumber + 0.3;
            slide.dispatchEvent(new Event("input", { bubbles: true }));
            await next;
            next = painted();
            const start = performance.now();
            slide.dispatchEvent(new Event("change", { bubbles: true }));
            await next;
            // Key presses that follow each other are one step, so the program is asked 400 ms later.
            found.push(performance.now() - start - 400);
          }
          return found;
        }
        """;

    [Fact(Explicit = true)]
    public async Task Board_HeldForTenMinutes_StaysSmall()
    {
        IPage page = await served.Board();
        using Process program = Process.GetProcessById(served.ProcessId);
        Stopwatch held = Stopwatch.StartNew();
        while (held.Elapsed < TimeSpan.FromMinutes(10))
        {
            await page.EvaluateAsync<double[]>(Move, new { field = "height", moves = 1500 });
            program.Refresh();
            Say($"{held.Elapsed.TotalMinutes:0.0} min in the hand: program resident {program.WorkingSet64 >> 20} MiB");
        }
    }

    private async Task Moves(IPage page, string field, string shown)
    {
        await page.EvaluateAsync<double[]>(Move, new { field, moves = 20 });
        double[] times = [.. (await page.EvaluateAsync<double[]>(Move, new { field, moves = 120 })).Order()];
        Say($"{field,-12} with {shown,-8} input to painted p50 {times[60]:0.0} ms, p95 {times[114]:0.0} ms, worst {times[^1]:0.0} ms");
    }

    private void Say(FormattableString text) => output.WriteLine(text.ToString(System.Globalization.CultureInfo.InvariantCulture));
}
