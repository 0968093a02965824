using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

public enum MendKind
{
    /// <summary>The tie rod's outer joint at another height takes the toe change away.</summary>
    TieRodOuter,

    /// <summary>The rack, or the tie rod's inner joint, at another height does.</summary>
    TieRodInner,

    /// <summary>The lower ball joint at another height puts the roll centre back under the body.</summary>
    LowerBallJoint,

    /// <summary>First the ball joint, then the outer tie-rod joint.</summary>
    Both,
}

/// <summary>A joint moved up, m, down −.</summary>
/// <param name="Point">By the suspension document's name.</param>
/// <param name="Up_m">How far.</param>
/// <param name="Tape_m">± what a tape's error in every point leaves of it; null where it was not gone into.</param>
public readonly record struct JointMove(string Point, double Up_m, double? Tape_m = null);

/// <summary>Joints at other heights; camber and toe at drive height are set again as they were.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Moves">What moves how far; the nearest where none within the bounds is right.</param>
/// <param name="Holds">It does what it is for; else the moves are the nearest.</param>
/// <param name="Part">The suspension with its points there.</param>
public sealed record JointMend(MendKind Kind, IReadOnlyList<JointMove> Moves, bool Holds, SuspensionPart Part)
{
    public required Linkage Linkage { get; init; }

    public required ToeOverTravel WorkingToe { get; init; }

    /// <summary>How much further the roll centre stands below the body than before the car was lowered, m; null where that is not known.</summary>
    public required double? RollCentreLeft_m { get; init; }

    public double ToeSlope_rad_per_m => Linkage.Rest.ToeSlope_rad_per_m;

    /// <summary>How much longer the lower arm would have to be; one left as it is draws the joint in by that. Null where the arm's joint stays.</summary>
    public double? ArmLonger_m { get; init; }

    public double Up_m(string point) => Moves.Where(move => move.Point == point).Sum(move => move.Up_m);
}
