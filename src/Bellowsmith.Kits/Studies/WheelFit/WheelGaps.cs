using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

public enum WheelBody { Tyre, Rim }

public enum StrutBody { Bellows, Strut }

/// <summary>The least distance of two that pass each other, and where it first is so.</summary>
/// <param name="Gap_m">One through the other −.</param>
/// <param name="Travel_m">Of the wheel from drive height, bump +.</param>
public abstract record PassingGap(double Gap_m, double Travel_m)
{
    // Of parts that keep their distance over the travel, only the search's last digit differs.
    private const double Alike_m = 5e-5;

    /// <summary>Whether a gap of so much or more changes nothing of which one is the least.</summary>
    internal static bool IsBeyond(double gap_m, IEnumerable<PassingGap> found) => gap_m > found.Min(gap => gap.Gap_m) + Alike_m;

    internal static T? Least<T>(IEnumerable<T?> gaps) where T : PassingGap
    {
        T[] known = [.. gaps.OfType<T>()];
        if (known.Length == 0) return null;
        double least = known.Min(gap => gap.Gap_m);
        return known.First(gap => gap.Gap_m <= least + Alike_m);
    }
}

/// <summary>A wheel beside the arch's edge: what of the wheel, and which point of the edge.</summary>
public sealed record ArchGap(double Gap_m, double Travel_m, WheelBody Of, Point At) : PassingGap(Gap_m, Travel_m);

/// <summary>A wheel beside the strut: what of either.</summary>
public sealed record StrutGap(double Gap_m, double Travel_m, WheelBody Of, StrutBody To) : PassingGap(Gap_m, Travel_m);

/// <summary>The bellows beside the tower, and which point of the tower.</summary>
public sealed record TowerGap(double Gap_m, double Travel_m, Point At) : PassingGap(Gap_m, Travel_m);

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
