using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>height</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record HeightAnswer(IReadOnlyDictionary<string, HeightAnswer.Strut> Struts)
{
    public sealed record Strut(
        string Load, double? SprungMass_kg, double? SpringForce_N, double? GasForce_N, double? StrutForce_N, double? MotionRatio,
        double? MotionRatioSlope_per_m, double? Exponent, string ExponentSource, double? Ambient_kPa, double? TargetSpringRate_N_per_mm,
        IReadOnlyList<Solution> Solutions, RatePoint? MinimumRate, RatePoint? MaximumRate, RatePoint? Nearest, string Reason,
        IReadOnlyList<Note> Notes);

    public sealed record Solution(
        double? Height_mm, double? GaugePressure_kPa, double? SpringRate_N_per_mm, double? SpringRateLow_N_per_mm,
        double? SpringRateHigh_N_per_mm, double? HeightLow_mm, double? HeightHigh_mm, double? SpringRateIsothermal_N_per_mm,
        double? SpringRateAdiabatic_N_per_mm, double? WheelRate_N_per_mm, double? RideFrequency_Hz, double? RideFrequencyWithTyre_Hz,
        double? EffectiveArea_cm2, double? Volume_cm3, bool WithinPressureLimit, bool WithinTestedPressure, bool Recommended,
        double? LeftGaugePressure_kPa, double? RightGaugePressure_kPa, Thread? Thread, Room Room, Sensitivities Sensitivities);

    public sealed record RatePoint(
        double? Height_mm, double? SpringRate_N_per_mm, double? RideFrequency_Hz, double? GaugePressure_kPa);

    public sealed record Thread(double? Exposed_mm, double? Turns, bool Reachable, Reach? NearestReachable);

    public sealed record Reach(
        double? Exposed_mm, double? Turns, double? Height_mm, double? GaugePressure_kPa, double? SpringRate_N_per_mm);

    public sealed record Room(double? Down_mm, double? Up_mm, double? ToDataEdge_mm, double? Shortfall_mm);

    public sealed record Sensitivities(
        double? MillimetreOfThread_springRate_N_per_mm, double? MillimetreOfThread_gaugePressure_kPa,
        double? PsiAtFixedThread_rideHeight_mm, double? PsiAtFixedThread_springRate_N_per_mm,
        double? TenKilograms_springRate_N_per_mm, double? TenKilograms_gaugePressure_kPa,
        double? ExponentPlus002_springRate_N_per_mm, double? TenCubicCentimetres_springRate_N_per_mm,
        double? SpringRateSlope_N_per_mm_per_mm);

    public static HeightAnswer Of(IEnumerable<InstalledHeightResult> results) =>
        new(results.ToDictionary(r => Names.Of(r.Case.End), Of));

    private static Strut Of(InstalledHeightResult r)
    {
        StrutCase strut = r.Case;
        return new Strut(
            strut.Load, strut.SprungMass_kg, Finite(r.SpringForce_N), Finite(r.GasForce_N), Finite(strut.StrutForce_N),
            strut.SpringRatio.At(0), strut.SpringRatio.SlopeAt(0), strut.Exponent, Names.Of(strut.ExponentSource),
            strut.Ambient_Pa / 1e3, Milli(r.TargetSpringRate_N_per_m), [.. r.Solutions.Select(Of)], Of(r.Minimum), Of(r.Maximum),
            Of(r.Nearest), new HeightWords(r, DisplayUnits.Metric).Reason(), [.. Answers.Notes.Of(r, DisplayUnits.Metric)]);
    }

    private static Solution Of(HeightSolution s) => new(
        Kilo(s.Height_m), Milli(s.GaugePressure_Pa), Milli(s.SpringRate_N_per_m), Milli(s.SpringRateBand_N_per_m?.Low),
        Milli(s.SpringRateBand_N_per_m?.High), Kilo(s.HeightBand_m?.Low), Kilo(s.HeightBand_m?.High),
        Milli(s.SpringRateIsothermal_N_per_m), Milli(s.SpringRateAdiabatic_N_per_m), Milli(s.WheelRate_N_per_m),
        Finite(s.RideFrequency_Hz), Finite(s.RideFrequencyWithTyre_Hz), Finite(s.EffectiveArea_m2 * 1e4), Finite(s.Volume_m3 * 1e6),
        s.WithinPressureLimit, s.WithinTestedPressure, s.Recommended,
        Milli(s.SideGaugePressures.Left_Pa), Milli(s.SideGaugePressures.Right_Pa), Of(s.Thread),
        new Room(Kilo(s.Room.Down_m), Kilo(s.Room.Up_m), Kilo(s.Room.ToDataEdge_m), Kilo(s.Room.Shortfall_m)), Of(s.Sensitivities));

    private static Sensitivities Of(HeightSensitivities s) => new(
        Milli(s.RateByThread_N_per_m), Milli(s.GaugePressureByThread_Pa), Kilo(s.RideHeightByGaugePressure_m),
        Milli(s.RateByGaugePressure_N_per_m), Milli(s.RateByMass_N_per_m), Milli(s.GaugePressureByMass_Pa),
        Milli(s.RateByExponent_N_per_m), Milli(s.RateByDisplaced_N_per_m), Finite(s.RateSlope_N_per_m2 * 1e-6));

    private static Thread? Of(ThreadSetting? t) => t is null ? null : new(
        Kilo(t.Exposed_m), Finite(t.Turns), t.Reachable, t.Nearest is not { } n ? null : new(
            Kilo(n.Exposed_m), Finite(n.Turns), Kilo(n.Height_m), Milli(n.GaugePressure_Pa), Milli(n.SpringRate_N_per_m)));

    private static RatePoint? Of(RatePlace? p) => p is null ? null : new(
        Kilo(p.Height_m), Milli(p.SpringRate_N_per_m), Finite(p.RideFrequency_Hz), Milli(p.GaugePressure_Pa));

    private static double? Kilo(double? si) => Finite(si * 1e3);

    private static double? Milli(double? si) => Finite(si * 1e-3);

    private static double? Finite(double? value) => value is { } v && double.IsFinite(v) ? v : null;
}
