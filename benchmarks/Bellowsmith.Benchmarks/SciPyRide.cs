using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text.Json;
using Bellowsmith.Physics;

namespace Bellowsmith.Benchmarks;

/// <summary>The same corners over the same road by SciPy's LSODA and by RK4 in Numba, in their own process. Numba may be absent.</summary>
internal sealed record SciPyRide(Dictionary<string, Measured> Timed, string Versions, double ByScipy, double SciPyTime_s, double[]? ByNumba)
{
    private const double Tolerance = 5e-3;
    private const int Middle = RideDrive.Corners / 2;

    public static SciPyRide Run(string python, string script, BenchKit kit)
    {
        string data = Path.Combine(kit.Root, "ride.json"), road = Path.Combine(kit.Root, "road.f64");
        kit.Write("ride.json", JsonSerializer.Serialize(Question()));
        File.WriteAllBytes(road, MemoryMarshal.AsBytes(RideDrive.Road().AsSpan()).ToArray());
        ProcessStartInfo start = new(python, [script, data, road]) { RedirectStandardOutput = true };
        start.Environment["NUMBA_NUM_THREADS"] = "2";
        using Process process = Process.Start(start)!;
        string text = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0) throw new InvalidOperationException("The SciPy program of the ride failed.");
        JsonElement root = JsonDocument.Parse(text).RootElement, numba = root.GetProperty("numba_rms");
        return new(
            root.GetProperty("second_s").EnumerateObject().ToDictionary(t => t.Name, t => new Measured(t.Value.GetDouble(), null)),
            root.GetProperty("versions").GetString()!, root.GetProperty("scipy_rms").GetDouble(), root.GetProperty("scipy_time_s").GetDouble(),
            numba.ValueKind == JsonValueKind.Null ? null : [.. numba.EnumerateArray().Select(rms => rms.GetDouble())]);
    }

    /// <summary>Where the unweighted r.m.s. accelerations are further apart than half a per cent; empty where they agree.</summary>
    public IEnumerable<string> Disagreements()
    {
        double[] road = RideDrive.Road();
        RideFigures[] ours = RideRun.Over(RideDrive.All(), road);
        double shorter = RideRun.Over([RideDrive.Of(Middle)], road.AsSpan(0, (int)(SciPyTime_s / RideRun.Step_s)))[0].Rms_m_per_s2;
        if (!(Math.Abs(shorter / ByScipy - 1) <= Tolerance)) yield return $"{shorter} m/s² here, {ByScipy} by SciPy";
        for (int k = 0; k < ByNumba?.Length; k++)
            if (!(Math.Abs(ours[k].Rms_m_per_s2 / ByNumba[k] - 1) <= Tolerance)) yield return $"{ours[k].Rms_m_per_s2} m/s² here, {ByNumba[k]} by Numba";
    }

    private static Dictionary<string, object> Question() => new()
    {
        ["body"] = RideDrive.Body_kg,
        ["wheel"] = RideDrive.Wheel_kg,
        ["tyre"] = RideDrive.Tyre_N_per_m,
        ["ratio"] = RideDrive.Ratio,
        ["tau"] = RideDrive.WallTime_s,
        ["area"] = RideDrive.Area_m2,
        ["volume"] = RideDrive.Volume_m3,
        ["exponent"] = RideDrive.Exponent,
        ["gauge"] = RideDrive.GaugePressure_Pa,
        ["ambient"] = RideDrive.Ambient_Pa,
        ["droop"] = RideDrive.Droop_m,
        ["top_rate"] = RideDrive.TopOutRate_N_per_m,
        ["step"] = RideRun.Step_s,
        ["settling"] = RideRun.Settling_s,
        ["scales"] = Enumerable.Range(0, RideDrive.Corners).Select(RideDrive.Scale),
        ["damper"] = Table(MonotoneCurve.Through(RideDrive.Speeds_m_per_s, RideDrive.Forces_N)),
        ["stop"] = Table(RideDrive.Stop),
        ["stop_rate"] = RideDrive.Stop.At(1).Slope,
    };

    private static Dictionary<string, object> Table(MonotoneCurve curve) => new() { ["x"] = curve.X, ["y"] = curve.Y, ["slope"] = curve.Slopes };
}
