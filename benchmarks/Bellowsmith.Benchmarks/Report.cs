using System.Globalization;
using System.Runtime.InteropServices;
using System.Text;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Physics;

namespace Bellowsmith.Benchmarks;

/// <summary>One line of the table. A target is in seconds, bytes or times faster than the baseline; what has none, or no baseline, holds.</summary>
internal sealed record Line(
    string Regime, Measured Measured, string Baseline, Measured? Beside, double? MostTime_s = null, long? MostBytes = null, double? LeastTimesFaster = null)
{
    public bool Holds => !(Measured.Median_s > MostTime_s) && !(Measured.Allocated_bytes > MostBytes) && !(Beside?.Median_s / Measured.Median_s < LeastTimesFaster);
}

/// <summary>The machine, the table of ratios, and whether SciPy agrees, as Markdown.</summary>
internal static class Report
{
    // A second thread makes the fit in SciPy 1.1 to 20 times slower; with one, the two other variables hardly matter.
    private const string AtItsFastest =
        "at its fastest: OPENBLAS_CORETYPE and OPENBLAS_L2_SIZE unset, OPENBLAS_NUM_THREADS 1";

    public static string Machine(SciPy? scipy, string sdk, string busy, int rounds) => $"""
        - machine: {Processor()}, {Environment.ProcessorCount} cores, {RuntimeInformation.OSDescription}; load average before {busy}
        - .NET SDK {sdk}, {RuntimeInformation.FrameworkDescription}, {RuntimeInformation.ProcessArchitecture}
        - {(scipy is null ? "SciPy: not compared (Debian's python3-scipy could not be had)" : $"{scipy.Versions}; {AtItsFastest}")}
        - each time is the median in the quietest of {rounds} rounds; a ratio below 1 is faster than the baseline

        """;

    public static string Table(IReadOnlyList<Line> lines)
    {
        string[][] cells = [
            ["regime", "median", "allocated", "baseline in the same run", "its median", "time / baseline", "target"],
            .. lines.Select(Cells)];
        int[] widths = [.. Enumerable.Range(0, cells[0].Length).Select(c => cells.Max(row => row[c].Length))];
        StringBuilder text = new();
        foreach (string[] row in cells)
        {
            text.Append("| ").AppendJoin(" | ", row.Select((cell, c) => cell.PadRight(widths[c]))).AppendLine(" |");
            if (row == cells[0]) text.Append('|').AppendJoin('|', widths.Select(w => new string('-', w + 2))).AppendLine("|");
        }

        return text.ToString();
    }

    public static string Agreement(InstalledHeightResult ours, SciPy scipy)
    {
        string[] against = [.. scipy.Disagreements(ours)];
        IEnumerable<string> found = ours.Solutions.Zip(scipy.Solutions, (here, there) => Text(
            $"{here.Height_m * 1e3:0.0000} / {there.Height_m * 1e3:0.0000} mm, {here.SpringRate_N_per_m / 1e3:0.0000} / {there.Rate_N_per_m / 1e3:0.0000} N/mm, ±{(here.SpringRateBand_N_per_m!.Value.High - here.SpringRate_N_per_m) / 1e3:0.0000} / ±{there.Half_N_per_m / 1e3:0.0000} N/mm"));
        return (against.Length == 0 ? "Both agree (height within 0.05 mm, rate within 0.2 %, band within 2 %): " : $"THEY DISAGREE ({string.Join("; ", against)}): ")
            + $"here / SciPy {string.Join("; ", found)}.";
    }

    /// <summary>The ride engine in times real time, and its share of what the machine can multiply and add.</summary>
    public static string Ride(Dictionary<string, Measured> timed)
    {
        double operations = CountedLane.PerStep(), perSecond = operations / RideRun.Step_s / timed["OnOneThread"].Median_s, peak = 16 / timed["MultiplyAdd"].Median_s;
        return Text($"Ride: {1 / timed["OnTwoThreads"].Median_s:#,0} x real time on two threads, {1 / timed["OnOneThread"].Median_s:#,0} x on one; ")
            + Text($"{operations:0} floating-point operations a step, {perSecond * 1e-9:0.0} of the {peak * 1e-9:0.0} Gflop/s that one core multiplies and adds at its peak: {perSecond / peak:0 %}.");
    }

    /// <summary>Load average over a minute; near 0 on a machine fit to measure on.</summary>
    public static string Busy() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";

    private static string[] Cells(Line line) =>
    [
        line.Regime,
        Time(line.Measured.Median_s),
        line.Measured.Allocated_bytes is { } bytes ? Text($"{bytes:#,0} B") : "",
        line.Baseline,
        line.Beside is { } beside ? Time(beside.Median_s) : "not compared",
        line.Beside is { } b ? Ratio(line.Measured.Median_s / b.Median_s) : "",
        Target(line),
    ];

    private static string Ratio(double ratio) => ratio < 0.01 ? Text($"1 / {1 / ratio:#,0}") : Text($"{ratio:0.000}");

    private static string Target(Line line)
    {
        List<string> targets = [];
        if (line.MostTime_s is { } time) targets.Add($"under {Time(time)}");
        if (line.MostBytes is { } bytes) targets.Add($"{bytes} B");
        if (line.LeastTimesFaster is { } times && line.Beside is not null) targets.Add(Text($"1 / {times:#,0}"));
        return targets.Count == 0 ? "" : $"{string.Join(", ", targets)}: {(line.Holds ? "holds" : "MISSED")}";
    }

    private static string Time(double time_s) => time_s switch
    {
        < 1e-6 => Text($"{time_s * 1e9:0.00} ns"),
        < 1e-3 => Text($"{time_s * 1e6:0.00} µs"),
        _ => Text($"{time_s * 1e3:0.00} ms"),
    };

    private static string Processor() => File.Exists("/proc/cpuinfo")
        ? File.ReadLines("/proc/cpuinfo").First(l => l.StartsWith("model name", StringComparison.Ordinal)).Split(':')[1].Trim()
        : RuntimeInformation.ProcessArchitecture.ToString();

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
