using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Boards;

/// <summary>What the page is asked beside the kit: the wanted share of critical damping, a road and a bump. Never saved.</summary>
public sealed record Asked(double Ratio, RoadClass Road, double Speed_m_per_s, BumpShape Bump, double BumpSpeed_m_per_s)
{
    private const double Kilometre_per_hour = 1 / 3.6;

    /// <summary>Driven long enough for steady figures, short enough to answer a hand.</summary>
    public const double Time_s = 30;

    /// <summary>Half of critical, a good road, a hump as one meets it; common practice, no source.</summary>
    public static Asked First { get; } = new(0.5, RoadClass.B, 80 * Kilometre_per_hour, BumpShape.Round, 30 * Kilometre_per_hour);

    public CornerAsked Corner { get; init; } = CornerAsked.First;

    public MapAsked Map { get; init; } = MapAsked.First;

    public RoadQuestion Drive => new(new RoadOfClass(Road), Speed_m_per_s, Time_s);
}
