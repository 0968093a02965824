using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>damper</c>: unrounded; forces are + where they resist, velocity + in rebound, clicks from closed.</summary>
public sealed record DynoAnswer(
    string Name, double GreatestRebound_m_per_s, double GreatestCompression_m_per_s, double? Repeatability_N, int RepeatabilityDegrees,
    double? GasForce_N, double? Friction_N, double? FrictionSlowestSpeed_m_per_s, double? LeastTemperature_degC, double? GreatestTemperature_degC,
    double? ForceByTemperature_percent_per_K, double? ForceByTemperatureLow_percent_per_K, double? ForceByTemperatureHigh_percent_per_K,
    double? ForceByTemperatureLeast_degC, double? ForceByTemperatureGreatest_degC, double? ReferenceTemperature_degC, bool? TemperatureMixedWithRuns,
    IReadOnlyList<DynoAnswer.ClickForces> Clicks, IReadOnlyList<int> MissingClicks, IReadOnlyList<DynoAnswer.SweepLoop> Loops,
    string? ComparedWith, IReadOnlyList<DynoAnswer.UnitDifference> Differences, IReadOnlyList<DynoAnswer.Omission> LeftOut, string? Reason, IReadOnlyList<Note> Notes)
{
    public sealed record ClickForces(double Click, bool Interpolated, IReadOnlyList<SpeedForce> Forces);

    public sealed record SpeedForce(double Speed_m_per_s, double? Rebound_N, double? Compression_N, double? Asymmetry);

    public sealed record SweepLoop(
        double Click, string? Run, double Stroke_mm, double Frequency_Hz, double PeakVelocity_m_per_s, double? MidStrokeMean_N,
        double? HysteresisRebound_N, double? HysteresisCompression_N);

    public sealed record UnitDifference(double Click, double Velocity_m_per_s, double Force_N, double OtherForce_N, double Difference_N, double? Percent);

    public sealed record Omission(double Click, IReadOnlyList<int> Rows, string Found, string Fix);

    public static DynoAnswer Of(DynoResult r)
    {
        DynoWords words = new(r, DisplayUnits.Metric);
        ForceByTemperature? warmth = r.Fit.Temperature;
        double? slope = 100 * warmth?.Slope_per_K, half = 100 * warmth?.HalfInterval_per_K;
        return new(
            r.Part.Name, r.Damper.GreatestRebound_m_per_s, r.Damper.GreatestCompression_m_per_s, r.Fit.Repeatability_N, r.Fit.RepeatabilityDegrees,
            r.Fit.GasForce_N, r.Fit.Friction?.Force_N, r.Fit.Friction?.SlowestSpeed_m_per_s, r.Temperatures?.Least_K - 273.15, r.Temperatures?.Greatest_K - 273.15,
            slope, slope - half, slope + half, warmth?.Least_K - 273.15, warmth?.Greatest_K - 273.15, warmth?.Reference_K - 273.15, warmth?.MixedWithRuns,
            [.. r.Clicks.Select(c => new ClickForces(c.Click, c.Interpolated, [.. c.Forces.Select(f => new SpeedForce(f.Speed_m_per_s, f.Rebound_N, f.Compression_N, f.Asymmetry))]))],
            r.Fit.MissingClicks, [.. r.Fit.Loops.Select(Of)], r.Other?.Name,
            [.. r.Differences.Select(d => new UnitDifference(d.Click, d.Velocity_m_per_s, d.Force_N, d.OtherForce_N, d.Difference_N, d.Share * 100))],
            [.. r.Fit.LeftOut.Select(left => new Omission(left.Click, left.Lines, Tables.DynoFaults.Of("", left).Found, Tables.DynoFaults.Of("", left).Fix))],
            r.Clicks.Count == 0 ? words.Answer() : null, [.. words.Notes()]);
    }

    private static SweepLoop Of(DynoLoop loop)
    {
        (double rebound, double compression) = loop.Hysteresis();
        return new(loop.Sweep.Click, loop.Sweep.Run, loop.Stroke_m * 1e3, loop.Frequency_Hz, loop.PeakVelocity_m_per_s,
            Finite(loop.MidStrokeMean_N), Finite(rebound), Finite(compression));
    }

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}
