using System.Diagnostics;
using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>What a road is called.</summary>
public static class RoadWords
{
    /// <summary>"On a C road at 80 km/h".</summary>
    public static string Of(RoadQuestion road, DisplayUnits units) => $"{Surface(road.Surface, units)} at {BumpWords.Speed(road.Speed_m_per_s, units)}";

    /// <summary>The road without the speed.</summary>
    public static string Surface(RoadSurface surface, DisplayUnits units) => surface switch
    {
        RoadOfClass road => $"On {Class(road.Class)}",
        RoadOfVelocity road => $"On white road velocity of {road.Density.ToString("0.######", CultureInfo.InvariantCulture)} (m/s)²/Hz",
        RoadWithBump road => $"Over {BumpWords.Of(road.Bump, units)}",
        RoadAsMeasured road => $"On the road of {road.File}",
        _ => throw new UnreachableException(),
    };

    /// <summary>"a B road", "an A road".</summary>
    public static string Class(RoadClass road) => $"{(road is RoadClass.A or RoadClass.E or RoadClass.F or RoadClass.H ? "an" : "a")} {road} road";

    /// <summary>As a choice on a page. What the classes are like is common practice, no source.</summary>
    public static string Name(RoadClass road) => road switch
    {
        RoadClass.A => "A, motorway",
        RoadClass.B => "B, good road",
        RoadClass.C => "C, worn road",
        RoadClass.D => "D, poor road",
        _ => $"{road}, unpaved",
    };
}
