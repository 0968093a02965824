using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>One number a ride is judged by.</summary>
/// <param name="Name">As in a ride's machine answer, ending with its unit.</param>
/// <param name="Title">In words.</param>
/// <param name="Unit">Of the named number, as people write it; empty for a bare one.</param>
/// <param name="Scale">From SI to that unit.</param>
/// <param name="Dimension">What a reader may choose another unit for; null where there is one only.</param>
/// <param name="Decimals">It deserves in that unit.</param>
/// <param name="Of">Its value in SI.</param>
public sealed record RideQuantity(
    string Name, string Title, string Unit, double Scale, Dimension? Dimension, int Decimals, Func<RideFigures, RoadQuestion, double> Of)
{
    public static RideQuantity WeightedRms { get; } = new("weightedRms_m_per_s2", "weighted acceleration", "m/s²", 1, null, 2, (f, _) => f.WeightedRms_m_per_s2);
    public static RideQuantity TyreLoad { get; } = new("tyreLoadRms_N", "tyre load about its mean", "N", 1, Units.Dimension.Force, 0, (f, _) => f.TyreLoadRms_N);
    public static RideQuantity StopContacts { get; } = new(
        "stopContactsPerKm", "stop contacts a kilometre", "", 1, null, 1, (f, road) => f.StopContactsPerKm(road.Speed_m_per_s));

    public static IReadOnlyList<RideQuantity> All { get; } =
    [
        WeightedRms,
        TyreLoad,
        StopContacts,
        new("rms_m_per_s2", "acceleration", "m/s²", 1, null, 2, (f, _) => f.Rms_m_per_s2),
        new("travelRms_mm", "wheel travel about its mean", "mm", 1e3, Units.Dimension.Length, 1, (f, _) => f.TravelRms_m),
        new("peakStopForce_N", "greatest stop force", "N", 1, Units.Dimension.Force, 0, (f, _) => f.PeakStopForce_N),
        new("liftOffShare", "share of time off the road", "", 1, null, 4, (f, _) => f.LiftOffShare),
        new("vdv_m_per_s175", "vibration dose", "m/s^1.75", 1, null, 2, (f, _) => f.VibrationDose_m_per_s175),
        new("mtvv_m_per_s2", "worst second", "m/s²", 1, null, 2, (f, _) => f.GreatestRunningRms_m_per_s2),
        new("crestFactor", "crest factor", "", 1, null, 1, (f, _) => f.CrestFactor),
        new("leastTravel_mm", "lowest wheel travel", "mm", 1e3, Units.Dimension.Length, 1, (f, _) => f.LeastTravel_m),
        new("greatestTravel_mm", "highest wheel travel", "mm", 1e3, Units.Dimension.Length, 1, (f, _) => f.GreatestTravel_m),
        new("greatestCompression_m_per_s", "fastest compression", "m/s", 1, null, 2, (f, _) => f.GreatestCompression_m_per_s),
        new("greatestRebound_m_per_s", "fastest rebound", "m/s", 1, null, 2, (f, _) => f.GreatestRebound_m_per_s),
    ];

    /// <summary>By its name, with or without the unit at its end; null where there is none.</summary>
    public static RideQuantity? Find(string name) => All.FirstOrDefault(q => q.Name == name) ?? All.FirstOrDefault(q => q.Name.Split('_')[0] == name);
}
