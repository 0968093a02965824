using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Alignment;

public enum AlignmentShortfall
{
    /// <summary>Camber and toe are both met.</summary>
    None,

    /// <summary>The range of camber's adjuster ends before.</summary>
    CamberEnds,

    /// <summary>The tie rod's range does.</summary>
    TieRodEnds,

    /// <summary>Both do.</summary>
    BothEnd,
}

/// <summary>Where an adjuster is to stand, m or rad from where the points were measured.</summary>
/// <param name="Kind">Which adjuster.</param>
/// <param name="Setting">Where it is to stand.</param>
/// <param name="Range">How far it goes.</param>
/// <param name="Needed">Where it would have to stand for what is wanted; null where no setting does that.</param>
/// <param name="CamberEffect">What a unit of it does to camber there, rad/m or rad/rad.</param>
/// <param name="ToeEffect">To toe.</param>
public sealed record AdjusterSetting(AdjusterKind Kind, double Setting, AdjusterRange Range, double? Needed, double CamberEffect, double ToeEffect)
{
    public double LeastLeft => Setting - Range.Least;

    public double GreatestLeft => Range.Greatest - Setting;

    /// <summary>A turn, in rad, not a length in m.</summary>
    public bool IsAngle => Kind == AdjusterKind.KnuckleSlot;
}

/// <summary>A wheel aligned, or as near as its adjusters allow, and what that changes besides.</summary>
public sealed record AlignmentResult
{
    public required AlignmentCase Case { get; init; }

    public required AlignmentQuestion Question { get; init; }

    public required Linkage Before { get; init; }

    /// <summary>With the adjusters set: its rest is the aligned wheel at drive height.</summary>
    public required Linkage After { get; init; }

    public required Adjustment Adjustment { get; init; }

    public required IReadOnlyList<AdjusterSetting> Adjusters { get; init; }

    public required AlignmentShortfall Shortfall { get; init; }

    public double Camber_rad => After.Rest.Camber_rad;

    public double Toe_rad => After.Rest.Toe_rad;

    /// <summary>What camber was asked to be; null where its adjuster was left alone.</summary>
    public double? WantedCamber_rad => Question.Camber_rad;

    public double WantedToe_rad => Question.Toe_rad ?? Before.Rest.Toe_rad;

    /// <summary>How much further apart front and rear of the rim stand than they would straight ahead, one wheel, m; null where no wheel is named.</summary>
    public double? ToeAtRim_m => Case.Wheel is { } wheel ? wheel.Rim.Diameter_m * Math.Sin(Toe_rad) : null;

    public bool Solved => Shortfall == AlignmentShortfall.None;

    /// <summary>Of the strut at drive height, m, longer +.</summary>
    public double StrutLonger_m => After.Rest.Strut.Length_m - Before.Rest.Strut.Length_m;

    /// <summary>What the height thread has to follow so that the car keeps its height, more exposed +; null where the kit has no thread.</summary>
    public double? ThreadTurns => Case.Thread is { } thread ? StrutLonger_m / thread.Pitch_m : null;

    /// <summary>Outward + at the contact point, this side only, m.</summary>
    public double TrackChange_m =>
        Before.Suspension.Wheel.Outward * (After.Rest.ContactPoint.Y - Before.Rest.ContactPoint.Y);

    public AdjusterSetting? Adjuster(AdjusterKind? kind) => Adjusters.FirstOrDefault(known => known.Kind == kind);
}
