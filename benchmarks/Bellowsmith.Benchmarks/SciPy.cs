using System.Diagnostics;
using System.Text.Json;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Physics;

namespace Bellowsmith.Benchmarks;

/// <summary>The same fit and the same solve in NumPy and SciPy, timed in their own process.</summary>
internal sealed record SciPy(string Versions, Dictionary<string, Measured> Timed, SciPy.Solution[] Solutions)
{
    private const double HeightTolerance_m = 5e-5, RateTolerance = 2e-3, BandTolerance = 2e-2;

    /// <summary>An installed height found there, with half its band.</summary>
    internal readonly record struct Solution(double Height_m, double Rate_N_per_m, double Half_N_per_m);

    /// <summary>Asks and times it on the rows and the strut of a kit.</summary>
    public static SciPy Run(string python, string script, BenchKit kit)
    {
        kit.Write("scipy.json", JsonSerializer.Serialize(Question(kit.Strut())));
        ProcessStartInfo start = new(python, [script, Path.Combine(kit.Root, "scipy.json")]) { RedirectStandardOutput = true };
        foreach (string slowing in new[] { "OPENBLAS_CORETYPE", "OPENBLAS_L2_SIZE" }) start.Environment.Remove(slowing);
        start.Environment["OPENBLAS_NUM_THREADS"] = "1";
        using Process process = Process.Start(start)!;
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException("The SciPy program failed.");
        JsonElement answer = JsonDocument.Parse(text).RootElement;
        return new SciPy(
            $"SciPy {answer.GetProperty("scipy")}, NumPy {answer.GetProperty("numpy")}, {answer.GetProperty("blas")}, Python {answer.GetProperty("python")}",
            answer.GetProperty("median_s").EnumerateObject().ToDictionary(t => t.Name, t => new Measured(t.Value.GetDouble(), null)),
            [.. answer.GetProperty("solutions").EnumerateArray().Select(s => new Solution(
                s.GetProperty("height_m").GetDouble(), s.GetProperty("rate_N_per_m").GetDouble(), s.GetProperty("half_N_per_m").GetDouble()))]);
    }

    /// <summary>Where the two disagree, in words; empty where they agree.</summary>
    public IEnumerable<string> Disagreements(InstalledHeightResult ours)
    {
        if (ours.Solutions.Count == 0 || ours.Solutions.Count != Solutions.Length)
            yield return $"{ours.Solutions.Count} solutions here, {Solutions.Length} there";
        foreach ((HeightSolution here, Solution there) in ours.Solutions.Zip(Solutions))
        {
            (double low, double high) = here.SpringRateBand_N_per_m!.Value;
            if (!(Math.Abs(here.Height_m - there.Height_m) <= HeightTolerance_m))
                yield return $"height {here.Height_m * 1e3} mm here, {there.Height_m * 1e3} mm there";
            if (!(Math.Abs(here.SpringRate_N_per_m / there.Rate_N_per_m - 1) <= RateTolerance))
                yield return $"rate {here.SpringRate_N_per_m} N/m here, {there.Rate_N_per_m} N/m there";
            if (!(Math.Abs((high - low) / 2 / there.Half_N_per_m - 1) <= BandTolerance))
                yield return $"half band {(high - low) / 2} N/m here, {there.Half_N_per_m} N/m there";
        }
    }

    private static Dictionary<string, object> Question(StrutCase strut)
    {
        IReadOnlyList<SpringRow> rows = ((MeasuredSpring)strut.Part.Data).Rows;
        double omega = 2 * Math.PI * strut.Design.Target!.Value.Value;
        return new()
        {
            ["height_m"] = rows.Select(r => r.Height_m),
            ["gauge_Pa"] = rows.Select(r => r.GaugePressure_Pa),
            ["force_N"] = rows.Select(r => r.Force_N),
            ["volume_m3"] = rows.Select(r => r.Volume_m3!.Value),
            ["direction"] = rows.Select(r => r.Direction == SweepDirection.Compressing ? 1 : -1),
            ["sweep"] = rows.Select(r => r.Sweep!),
            ["least_m"] = strut.LeastHeight_m,
            ["greatest_m"] = strut.GreatestHeight_m,
            ["ambient_Pa"] = strut.Ambient_Pa,
            ["exponent"] = strut.Exponent,
            ["wheelLoad_N"] = strut.WheelLoad_N,
            ["wheelRate_N_per_m"] = omega * omega * strut.SprungMass_kg,
            ["ratio"] = strut.SpringRatio.At(0),
            ["sealArea_m2"] = strut.Design.SealAreaInAir_m2!.Value,
            ["displaced_m3"] = strut.Design.DisplacedVolume_m3!.Value,
            ["line_m3"] = strut.Design.LineVolume_m3!.Value,
            ["springToDamper_m"] = strut.Design.SpringToDamper_m!.Value,
            ["rodArea_m2"] = strut.Gas.RodArea_m2,
            ["longest_m"] = strut.Gas.Longest_m,
            ["gasStated_Pa"] = strut.Gas.GaugePressure_Pa + StandardAtmosphere.SeaLevel_Pa,
            ["gasVolume_m3"] = strut.Gas.Volume_m3!.Value,
        };
    }
}
