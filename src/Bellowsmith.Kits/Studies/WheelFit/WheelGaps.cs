using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

public enum WheelBody { Tyre, Rim }

public enum StrutBody { Bellows, Strut }

/// <summary>Where a wheel comes nearest to an arch edge.</summary>
/// <param name="Gap_m">Through it −.</param>
/// <param name="Travel_m">Of the wheel from drive height, bump +.</param>
/// <param name="Of">What of the wheel.</param>
/// <param name="At">The edge's point.</param>
public sealed record ArchGap(double Gap_m, double Travel_m, WheelBody Of, Point At);

/// <summary>Where a wheel comes nearest to the strut; through it −.</summary>
public sealed record StrutGap(double Gap_m, double Travel_m, WheelBody Of, StrutBody To);

/// <summary>Where the bellows comes nearest to the tower; through it −.</summary>
public sealed record TowerGap(double Gap_m, double Travel_m, Point At);

/// <summary>
/// What a wheel leaves free at one change of camber, straight ahead, over the travel from drive height to full bump. Null where the points
/// or the strut that would say so are not known.
/// </summary>
public sealed record WheelGaps
{
    /// <summary>Change of camber, top out +.</summary>
    public required double Camber_rad { get; init; }

    /// <summary>Where the adjuster stands for it, in the adjuster's own measure; null where it is made about the hub.</summary>
    public double? Setting { get; init; }

    /// <summary>Whether the adjuster reaches so far.</summary>
    public bool WithinAdjuster { get; init; } = true;

    public ArchGap? Arch { get; init; }

    public ArchGap? ArchAtDrive { get; init; }

    public StrutGap? Strut { get; init; }

    public StrutGap? StrutAtDrive { get; init; }

    public TowerGap? Tower { get; init; }

    public TowerGap? TowerAtDrive { get; init; }
}
