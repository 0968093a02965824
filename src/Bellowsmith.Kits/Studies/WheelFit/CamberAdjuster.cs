using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>A change of camber made: where its adjuster stands, and the linkage then; none where the car's points are not known.</summary>
/// <param name="Camber_rad">The change, top out +.</param>
/// <param name="Setting">Of the adjuster in its own measure, m or rad; null about the hub.</param>
/// <param name="Within">Whether the adjuster reaches so far.</param>
/// <param name="Linkage">The linkage as adjusted.</param>
public sealed record CamberSet(double Camber_rad, double? Setting, bool Within, Linkage? Linkage);

/// <summary>Makes a change of camber where the kit says its adjuster is, and about the hub where it names none.</summary>
public sealed class CamberAdjuster
{
    private const double Close_rad = 1e-10, First = 1e-3;
    private const int MostSteps = 20;

    private readonly SuspensionPart? _part;
    private readonly AlignmentCase? _case;

    public CamberAdjuster(AxleEnd end, SuspensionPart? part, Adjusters? adjusters)
    {
        (_part, Linkage) = (part, part?.Linkage());
        if (part is null || adjusters is null) return;
        _case = new(end, part, adjusters);
        MadeAt = _case.Camber;
    }

    /// <summary>As the points were measured; null where they were not.</summary>
    public Linkage? Linkage { get; }

    /// <summary>What makes it; null about the hub.</summary>
    public AdjusterKind? MadeAt { get; }

    /// <summary>What the adjuster reaches; null about the hub.</summary>
    public AdjusterRange? Range => MadeAt is { } kind ? _case!.Range(kind) : null;

    /// <summary>What the knuckle turns about; null where it does not.</summary>
    public Point? Pivot => MadeAt == AdjusterKind.KnuckleSlot ? _case!.Adjusters.KnucklePivot : null;

    /// <summary>Whether the strut turns with the wheel, as where either end of a strut that leads the wheel is moved.</summary>
    public bool TurnsWithStrut => MadeAt is AdjusterKind.CamberSlide or AdjusterKind.EccentricBolt && Linkage!.Suspension is MacPherson;

    /// <summary>The least and the greatest change of camber it makes; null about the hub, and where its parts do not go together at an end.</summary>
    public (double Least_rad, double Greatest_rad)? Reach() =>
        Range is { } range && Camber_rad(range.Least) is { } one && Camber_rad(range.Greatest) is { } other ? (Math.Min(one, other), Math.Max(one, other)) : null;

    /// <summary>Null where no setting makes it.</summary>
    public CamberSet? At(double camber_rad)
    {
        if (MadeAt is null) return new(camber_rad, null, true, AboutTheHub(camber_rad));
        if (Setting(camber_rad) is not { } setting || Moved(setting) is not { } linkage) return null;
        return new(camber_rad, setting, Met.AtLeast(setting, Range!.Value.Least) && Met.AtMost(setting, Range.Value.Greatest), linkage);
    }

    private Linkage? AboutTheHub(double camber_rad) =>
        camber_rad == 0 || _part is null ? Linkage : (_part with { StaticCamber_rad = _part.StaticCamber_rad + camber_rad }).Linkage();

    // Camber goes nearly straight with every adjuster: the secant meets it in a few steps, or the parts come into line.
    private double? Setting(double camber_rad)
    {
        if (camber_rad == 0) return 0;
        double before = 0, at = First, missBefore = -camber_rad;
        for (int step = 0; step < MostSteps; step++)
        {
            if (Camber_rad(at) is not { } made) return null;
            double miss = made - camber_rad;
            if (Math.Abs(miss) < Close_rad) return at;
            double next = at - miss * (at - before) / (miss - missBefore);
            (before, missBefore, at) = (at, miss, next);
        }

        return null;
    }

    private double? Camber_rad(double setting) => Moved(setting) is { } moved ? moved.Rest.Camber_rad - Linkage!.Rest.Camber_rad : null;

    private Linkage? Moved(double setting) => setting == 0 ? Linkage
        : Linkage!.Suspension.Adjusted(_case!.Moved(Adjustment.None, MadeAt, setting)).Suspension is { } suspension ? new Linkage(suspension) : null;
}
