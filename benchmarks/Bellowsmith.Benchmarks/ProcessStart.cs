using System.Diagnostics;

namespace Bellowsmith.Benchmarks;

/// <summary>Wall time from starting a process to its end.</summary>
internal static class ProcessStart
{
    private const int Warm = 3, Runs = 15;

    /// <summary>Medians of two commands run by turns, so that both meet the same machine.</summary>
    public static (Measured First, Measured Second) Compare(string[] first, string[] second)
    {
        double[] one = new double[Runs], other = new double[Runs];
        for (int run = -Warm; run < Runs; run++)
        {
            double a = Time_s(first), b = Time_s(second);
            if (run >= 0) (one[run], other[run]) = (a, b);
        }

        return (new(Median(one), null), new(Median(other), null));
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
