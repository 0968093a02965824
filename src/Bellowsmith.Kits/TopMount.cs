using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>What holds the strut's upper end to the body: a joint that lets it tilt, a bearing that lets it turn. Either may be missing.</summary>
public sealed record TopMount
{
    /// <summary>Lets the strut tilt, and turn too where there is no turning bearing.</summary>
    public SphericalPlainBearing? SphericalBearing { get; init; }

    /// <summary>Product of its maker's factors b1·b2·…; 1 where not given.</summary>
    public double LifeFactor { get; init; } = 1;

    public TurningBearing? TurningBearing { get; init; }

    /// <summary>The strut against the spherical bearing's axis at drive height, seen from ahead, its foot outward +, rad.</summary>
    public double TiltAtDrive_rad { get; init; }

    /// <summary>What stands between the mount face and the spring's upper plate, from above; empty where the kit does not say.</summary>
    public IReadOnlyList<StackPart> Parts { get; init; } = [];

    /// <summary>Sum of its parts; null without any.</summary>
    public double? StackHeight_m => Parts.Count == 0 ? null : Parts.Sum(part => part.Height_m);
}

/// <summary>A rolling bearing the strut turns on.</summary>
/// <param name="Bearing">Its rating.</param>
/// <param name="Elements">How many balls or rollers; null where not known.</param>
public sealed record TurningBearing(RollingBearing Bearing, int? Elements);

public sealed record StackPart(string Name, double Height_m);

/// <summary>Where the rod is led, at drive height.</summary>
/// <param name="TopToGuide_m">From the top mount's joint to the middle of the guide in the damper's head.</param>
/// <param name="GuideToPiston_m">From there to the middle of the piston; shorter as the strut extends.</param>
/// <param name="Friction">Coefficient of both; common practice, no source, where not given.</param>
public sealed record RodGuides(double TopToGuide_m, double GuideToPiston_m, double Friction = RodGuides.UsualFriction)
{
    /// <summary>Of an oiled seal and guide. Common practice, no source.</summary>
    public const double UsualFriction = 0.1;
}
