using System.Diagnostics;
using Microsoft.Playwright;

[assembly: AssemblyFixture(typeof(Bellowsmith.Browser.Served))]

namespace Bellowsmith.Browser;

/// <summary>The program serving its example workshop, started as a person starts it, and one browser.</summary>
public sealed class Served : IAsyncLifetime
{
    private static readonly string[] _arguments =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking",
        "--disable-component-update", "--disable-sync",
    ];

    private Process? _program;
    private IPlaywright? _playwright;
    private IBrowser? _browser;
    private string? _test;

    public static string Root { get; } = FindRoot();

    public const string Kit = "kit/fenwright/kits/ostrane-street.json";

    public Uri Address { get; private set; } = new("http://localhost");

    /// <summary>The copy of the examples the program works on.</summary>
    public string Folder { get; private set; } = "";

    public TimeSpan ReadyAfter { get; private set; }

    public int ProcessId => _program!.Id;

    public async ValueTask InitializeAsync()
    {
        Stopwatch watch = Stopwatch.StartNew();
        _program = Start("serve", "--demo", "--no-open", "--port", "0");
        string line = await _program.StandardOutput.ReadLineAsync() ?? throw new InvalidOperationException(await _program.StandardError.ReadToEndAsync());
        ReadyAfter = watch.Elapsed;
        Address = new Uri(new Uri(line.Split(' ')[3]).GetLeftPart(UriPartial.Authority) + "/");
        Folder = line.Split("working on ")[1].Split(". Ctrl")[0];
        _playwright = await Playwright.CreateAsync();
        _browser = await _playwright.Chromium.LaunchAsync(new() { ExecutablePath = "/usr/bin/chromium", Args = _arguments });
    }

    public static Process Start(params string[] arguments) => Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(Root, "artifacts/bellowsmith/bellowsmith.dll"), .. arguments])
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
    })!;

    /// <summary>A page of its own window, at a size and in a scheme; those of the test before are closed, so that none plays on behind it.</summary>
    public async Task<IPage> NewPage(int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light)
    {
        string? test = TestContext.Current.Test?.UniqueID;
        if (test != _test)
            foreach (IBrowserContext before in _browser!.Contexts.ToArray()) await before.CloseAsync();
        _test = test;
        IBrowserContext context = await _browser!.NewContextAsync(new() { ViewportSize = new() { Width = width, Height = height }, ColorScheme = scheme, BaseURL = Address.ToString() });
        return await context.NewPageAsync();
    }

    /// <summary>The kit's page, painted once.</summary>
    public async Task<IPage> Board(int width = 1440, int height = 900, ColorScheme scheme = ColorScheme.Light, string kit = Kit)
    {
        IPage page = await NewPage(width, height, scheme);
        await page.GotoAsync(kit);
        await page.WaitForSelectorAsync(".board[data-painted]");
        await page.WaitForTimeoutAsync(250);
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null) await _browser.DisposeAsync();
        _playwright?.Dispose();
        if (_program is null) return;
        _program.Kill();
        await _program.WaitForExitAsync();
        _program.Dispose();
    }

    private static string FindRoot()
    {
        string? folder = AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Bellowsmith.slnx"))) folder = Path.GetDirectoryName(folder);
        return folder ?? throw new InvalidOperationException("The tests do not stand in the repository.");
    }
}
