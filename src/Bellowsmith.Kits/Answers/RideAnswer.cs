using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>ride</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record RideAnswer(IReadOnlyDictionary<string, RideAnswer.Driven> Struts)
{
    public sealed record Driven(
        string Load, double? Click, double? Height_mm, double? GaugePressure_kPa,
        double? Rms_m_per_s2, double? WeightedRms_m_per_s2, double? TravelRms_mm, double? TyreLoadRms_N, double? StopContactsPerKm,
        double? PeakStopForce_N, double? LiftOffShare, double? Vdv_m_per_s175, double? Mtvv_m_per_s2, double? CrestFactor,
        double? PrimaryRms_m_per_s2, double? SecondaryRms_m_per_s2, IReadOnlyList<string> Comfort,
        double? StopContacts, double? GreatestUp_m_per_s2, double? GreatestDown_m_per_s2, double? LeastTravel_mm, double? GreatestTravel_mm, double? GreatestCompression_m_per_s, double? GreatestRebound_m_per_s,
        double? OutsideMeasuredSpeed, double? OutsideMeasuredHeight, double? GaugePressureLow_kPa, double? GaugePressureHigh_kPa,
        double? TemperatureLow_degC, double? TemperatureHigh_degC, double? HumpSpeed_km_per_h,
        IReadOnlyList<TravelShare> Travel, IReadOnlyList<SpeedShare> DamperSpeeds, IReadOnlyList<Beside> Neighbours, string Reason,
        IReadOnlyList<Note> Notes, double? DamperTemperature_degC, IReadOnlyList<Wave>? Response);

    public sealed record TravelShare(double Share, double Travel_mm);

    public sealed record SpeedShare(double From_m_per_s, double To_m_per_s, double Share);

    public sealed record Beside(
        string Change, double? WeightedRms_m_per_s2, double? TravelRms_mm, double? TyreLoadRms_N, double? StopContactsPerKm, double? PeakStopForce_N);

    /// <summary>One settled sine road; amplitudes are half of crest to trough.</summary>
    public sealed record Wave(
        double Frequency_Hz, double Amplitude_mm, double BodyTransmissibility, double BodyRms_m_per_s2, double TravelAmplitude_mm, double TyreLoadAmplitude_N,
        bool StopTouched, bool LeavesRoad, bool OutsideMeasuredSpeed, bool Steady);

    public static RideAnswer Of(IEnumerable<RideResult> results) => new(results.ToDictionary(r => Names.Of(r.Strut.End), Of));

    private static Driven Of(RideResult r)
    {
        (RideFigures? f, RideDetail? d) = (r.Figures, r.Detail);
        return new Driven(
            r.Strut.Load, r.Strut.Damper.Clicks.Count > 1 ? r.Setting.Click : null, r.Setting.Height_m * 1e3, r.Setting.GaugePressure_Pa * 1e-3,
            f?.Rms_m_per_s2, f?.WeightedRms_m_per_s2, f?.TravelRms_m * 1e3, f?.TyreLoadRms_N, f is null ? null : r.StopContactsPerKm(f),
            f?.PeakStopForce_N, f?.LiftOffShare, f?.VibrationDose_m_per_s175, f?.GreatestRunningRms_m_per_s2, f?.CrestFactor,
            d?.PrimaryRms_m_per_s2, d?.SecondaryRms_m_per_s2, f is null ? [] : [.. ComfortReaction.To(f.WeightedRms_m_per_s2).Select(c => c.Words)],
            f?.StopContacts, d?.GreatestUp_m_per_s2, d?.GreatestDown_m_per_s2, f?.LeastTravel_m * 1e3, f?.GreatestTravel_m * 1e3, f?.GreatestCompression_m_per_s, f?.GreatestRebound_m_per_s,
            d?.OutsideMeasuredSpeed, d?.OutsideMeasuredHeight, d?.GaugePressure_Pa?.Low * 1e-3, d?.GaugePressure_Pa?.High * 1e-3,
            d?.Temperature_K?.Low - 273.15, d?.Temperature_K?.High - 273.15, d?.HumpSpeed_m_per_s * 3.6,
            [.. d?.TravelShares.Select(t => new TravelShare(t.Share, t.Travel_m * 1e3)) ?? []],
            [.. d?.DamperSpeeds.Select(s => new SpeedShare(s.From_m_per_s, s.To_m_per_s, s.Share)) ?? []],
            [.. r.Neighbours.Select(n => Of(r, n))], r.Reason ?? "", [.. Answers.Notes.Of(r)],
            r.Strut.DamperTemperature_K - 273.15, r.Response is { } response ? [.. response.All.SelectMany(Of)] : null);
    }

    private static IEnumerable<Wave> Of(WaveResponse waves) => waves.Points.Select(p => new Wave(
        p.Frequency_Hz, waves.Amplitude_m * 1e3, p.BodyTransmissibility, p.BodyRms_m_per_s2, p.TravelAmplitude_m * 1e3, p.TyreLoadAmplitude_N,
        p.StopTouched, p.LeavesRoad, p.OutsideMeasuredSpeed, p.Steady));

    private static Beside Of(RideResult r, RideNeighbour n) => new(
        n.Change, n.Figures?.WeightedRms_m_per_s2, n.Figures?.TravelRms_m * 1e3, n.Figures?.TyreLoadRms_N,
        n.Figures is { } f ? r.StopContactsPerKm(f) : null, n.Figures?.PeakStopForce_N);
}
