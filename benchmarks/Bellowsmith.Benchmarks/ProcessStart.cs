using System.Diagnostics;

namespace Bellowsmith.Benchmarks;

/// <summary>Wall time from starting a process to its end.</summary>
internal static class ProcessStart
{
    private const int Warm = 2, Runs = 11;

    /// <summary>Commands run by turns, so that all meet the same machine.</summary>
    public static Measured[] Of(params string[][] commands)
    {
        double[][] times = [.. commands.Select(_ => new double[Runs])];
        for (int run = -Warm; run < Runs; run++)
        {
            for (int c = 0; c < commands.Length; c++)
            {
                double time = Time_s(commands[c]);
                if (run >= 0) times[c][run] = time;
            }
        }

        return [.. times.Select(t => new Measured(Median(t), null))];
    }

    private static double Time_s(string[] command)
    {
        ProcessStartInfo start = new(command[0], command[1..]) { RedirectStandardOutput = true };
        long begun = Stopwatch.GetTimestamp();
        using Process process = Process.Start(start)!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        double elapsed = Stopwatch.GetElapsedTime(begun).TotalSeconds;
        return process.ExitCode == 0 ? elapsed : throw new InvalidOperationException($"{string.Join(' ', command)} failed.");
    }

    private static double Median(double[] values)
    {
        Array.Sort(values);
        return values[values.Length / 2];
    }
}
