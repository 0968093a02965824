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
        foreach (string field in new[] { "height", "wanted", "thread" }) await Moves(page, field, "rate");
        await page.Locator(".tabs label", new() { HasText = "map" }).ClickAsync();
        await Moves(page, "height", "map");
        await page.Locator("[data-question=travel] > summary").ClickAsync();
        await Moves(page, "height", "travel");
        await page.Locator("[data-question=damping] > summary").ClickAsync();
        foreach (string field in new[] { "height", "ratio", "click" }) await Moves(page, field, "damping");
        await page.Locator("[data-question=ride] > summary").ClickAsync();
        foreach (string field in new[] { "height", "click", "speed", "bumpSpeed" }) await Moves(page, field, "ride");
        await page.Locator("[data-question=settings] > summary").ClickAsync();
        foreach ((string x, string y) in new[] { ("Click", "Height"), ("Height", "GaugePressure"), ("Height", "Speed") }) await Map(page, x, y);
        using Process program = Process.GetProcessById(served.ProcessId);
        Say($"program resident {program.WorkingSet64 >> 20} MiB");
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
        Say($"{field,-8} with {shown,-7} input to painted p50 {times[60]:0.0} ms, p95 {times[114]:0.0} ms, worst {times[^1]:0.0} ms");
    }

    private void Say(FormattableString text) => output.WriteLine(text.ToString(System.Globalization.CultureInfo.InvariantCulture));
}
