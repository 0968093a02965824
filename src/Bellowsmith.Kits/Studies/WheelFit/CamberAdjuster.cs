using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

public enum CamberMadeAt { TopMount, KnuckleSlot, Hub }

/// <summary>A change of camber made: where its adjuster stands, and the linkage then; none where the car's points are not known.</summary>
/// <param name="Setting">Of the adjuster in its own measure, m or rad; null about the hub.</param>
/// <param name="Within">Whether the adjuster reaches so far.</param>
/// <param name="Linkage">The linkage as adjusted.</param>
public readonly record struct CamberSet(double? Setting, bool Within, Linkage? Linkage);

/// <summary>Makes a change of camber where the kit says its adjuster is, and about the hub where it names none.</summary>
public sealed class CamberAdjuster
{
    private readonly SuspensionPart? _part;

    public CamberAdjuster(SuspensionPart? part, Adjusters? adjusters)
    {
        _part = part;
        Linkage = part?.Linkage();
        MadeAt = CamberMadeAt.Hub;
        Range = null;
    }

    /// <summary>As the points were measured.</summary>
    public Linkage? Linkage { get; }

    public CamberMadeAt MadeAt { get; }

    /// <summary>What the adjuster reaches; null about the hub.</summary>
    public AdjusterRange? Range { get; }

    /// <summary>Null where no setting of the adjuster makes it.</summary>
    public CamberSet? At(double camber_rad) => camber_rad == 0 || _part is null
        ? new(Range is null ? null : 0, true, Linkage)
        : new(null, true, (_part with { StaticCamber_rad = _part.StaticCamber_rad + camber_rad }).Linkage());
}
