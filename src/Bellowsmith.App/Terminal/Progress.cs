using System.Diagnostics;
using System.Globalization;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.App.Terminal;

/// <summary>Long work at the prompt: how far it is and how long it still takes, on a terminal only, gone when it is done. Ctrl+C ends it.</summary>
internal static class Progress
{
    private const int CellsAtOnce = 256;
    private const double QuietFor_s = 1;

    public static void Drive(MapRun map) => Follow(() =>
    {
        map.Advance(CellsAtOnce);
        return (double)map.Driven / map.Cells;
    });

    /// <summary>Takes piece after piece until the share it returns is 1.</summary>
    public static void Follow(Func<double> piece)
    {
        Stopwatch time = Stopwatch.StartNew();
        bool shown = false;
        for (double share = piece(); share < 1; share = piece())
        {
            if (Console.IsErrorRedirected || time.Elapsed.TotalSeconds < QuietFor_s) continue;
            shown = true;
            Console.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{100 * share:F0} % driven, {time.Elapsed.TotalSeconds * (1 - share) / share:F0} s left "));
        }

        if (shown) Console.Error.Write("\r" + new string(' ', 32) + "\r");
    }
}
