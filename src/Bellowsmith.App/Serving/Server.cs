using System.Diagnostics;
using System.Net;
using Bellowsmith.App.Pages;
using Bellowsmith.App.Terminal;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Bellowsmith.App.Serving;

/// <summary>The pages on loopback: nothing listens to other machines and nothing is fetched from them.</summary>
internal static class Server
{
    private const int Stopped = 0, PortTaken = 1;
    private static readonly TimeSpan _shortestStop = TimeSpan.FromSeconds(1);

    /// <summary>Serves until Ctrl-C; 1 where the port is taken.</summary>
    public static int Run(string folder, bool demo, int port, bool open)
    {
        using Workshop workshop = demo ? Workshop.Demo() : Workshop.At(folder);
        using WebApplication app = Build(workshop, port);
        try
        {
            app.Start();
        }
        catch (IOException exception) when (exception.InnerException is AddressInUseException)
        {
            Screen.Error().Warn($"Port {port} is taken: stop what listens there, or choose another with --port.");
            return PortTaken;
        }

        string address = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First() + workshop.Entry;
        Console.WriteLine($"Bellowsmith is at {address} on this machine alone, working on {workshop.Folder}. Ctrl-C stops it.");
        if (open) OpenBrowser(address);
        app.WaitForShutdown();
        return Stopped;
    }

    private static WebApplication Build(Workshop workshop, int port)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions
        {
            ApplicationName = "bellowsmith",
            ContentRootPath = AppContext.BaseDirectory,
            EnvironmentName = Environments.Production,
        });
        builder.Logging.ClearProviders();
        builder.WebHost.UseUrls().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            if (port == 0) kestrel.Listen(IPAddress.Loopback, 0);
            else kestrel.ListenLocalhost(port);
        });
        builder.Services.Configure<HostOptions>(o => o.ShutdownTimeout = _shortestStop);
        builder.Services.AddSingleton(workshop);
        // Nothing that is protected outlives the process, so no key is written to anyone's home.
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();
        WebApplication app = builder.Build();
        app.Use(Guard.Request);
        app.UseAntiforgery();
        app.MapStaticAssets();
        Dropping.Map(app, workshop);
        app.MapRazorComponents<Shell>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
        return app;
    }

    private static void OpenBrowser(string address)
    {
        try
        {
            using Process? opened = OperatingSystem.IsWindows() ? Process.Start(new ProcessStartInfo(address) { UseShellExecute = true })
                : Process.Start(new ProcessStartInfo(OperatingSystem.IsMacOS() ? "open" : "xdg-open", [address]) { RedirectStandardError = true, RedirectStandardOutput = true });
        }
        catch (System.ComponentModel.Win32Exception)
        {
            // No browser to open: the address stands on the screen.
        }
    }
}
