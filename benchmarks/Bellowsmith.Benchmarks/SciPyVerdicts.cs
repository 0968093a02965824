using System.Diagnostics;
using System.Text.Json;
using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.Benchmarks;

/// <summary>A chart, a gauge trial and a pairing in NumPy and SciPy, timed in their own process on the same data.</summary>
internal sealed record SciPyVerdicts(Dictionary<string, Measured> Timed, int Signals, double GaugeRr, double Worst)
{
    public static SciPyVerdicts Run(string python, string script, BenchKit kit)
    {
        string data = Path.Combine(kit.Root, "verdicts.f64");
        File.WriteAllBytes(data, VerdictData.Bytes());
        ProcessStartInfo start = new(python, [script, data]) { RedirectStandardOutput = true };
        foreach (string slowing in new[] { "OPENBLAS_CORETYPE", "OPENBLAS_L2_SIZE" }) start.Environment.Remove(slowing);
        start.Environment["OPENBLAS_NUM_THREADS"] = "1";
        using Process process = Process.Start(start)!;
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException("The SciPy program of the verdicts failed.");
        JsonElement root = JsonDocument.Parse(text).RootElement, answers = root.GetProperty("answers");
        return new(
            root.GetProperty("median_s").EnumerateObject().ToDictionary(t => "SciPy " + t.Name, t => new Measured(t.Value.GetDouble(), null)),
            answers.GetProperty("chart").GetInt32(), answers.GetProperty("gauge").GetDouble(), answers.GetProperty("pairs").GetDouble());
    }

    /// <summary>Where the two disagree, in words; empty where they agree.</summary>
    public IEnumerable<string> Disagreements()
    {
        VerdictRegimes ours = new();
        ours.Prepare();
        (int signals, double gauge, double worst) = (ours.Chart(), CrossedAnova.Of(ours.Trial).Components.GaugeRr, ours.PairsByHand());
        if (signals != Signals) yield return $"{signals} signals here, {Signals} there";
        if (!(Math.Abs(gauge / GaugeRr - 1) <= 1e-9)) yield return $"gauge {gauge} here, {GaugeRr} there";
        if (!(Math.Abs(worst - Worst) <= 1e-9)) yield return $"worst pair {worst} here, {Worst} there";
    }
}
