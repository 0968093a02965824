using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.LowerMounting;

/// <summary>A strut with its lower mount, and the points of its axle.</summary>
/// <param name="Strut">Its design has a lower mount.</param>
/// <param name="Suspension">Gives the side force; null where the car's axle has no points.</param>
public sealed record LowerMountQuestion(StrutCase Strut, SuspensionPart? Suspension)
{
    /// <summary>
    /// Arm of the strut's force at which its top twists the tube in the clamp: a stiff bearing or a twisted bellows when the wheel is steered
    /// (common practice, no source).
    /// </summary>
    public double TwistArm_m { get; init; } = 0.005;
}

/// <summary>Does a lower mount fit the car, and does it hold?</summary>
public sealed record LowerMountResult
{
    public required LowerMountQuestion Question { get; init; }

    public required BoltFit Fit { get; init; }

    /// <summary>Share of random brackets and cars whose bolts all go in, every centre even over the disc its tolerance leaves it.</summary>
    public required double ShareThatGoIn { get; init; }

    /// <summary>Least diameter of the knuckle's holes, its bolts'; null where they go through.</summary>
    public double? KnuckleHole_m { get; init; }

    /// <summary>
    /// Least diameter of the bracket's holes with which all bolts go in for sure, the knuckle's bored to <see cref="KnuckleHole_m"/>; null where
    /// they do with the bracket's as they are.
    /// </summary>
    public double? HoleForSure_m { get; init; }

    /// <summary>The one hole of the bracket whose move leaves most; null where all go in for sure, a hole is narrower than its bolt or no move helps.</summary>
    public HoleMove? Move { get; init; }

    /// <summary>No bolt goes through the bracket's holes, wherever they stand.</summary>
    public bool BracketIsNarrow => Mount.Bracket.HoleDiameter_m < Mount.Bolts.Bolt.Diameter_m - BoltFit.Accuracy_m;

    public bool GoInForSure => Findings.Any(f => f is { Rule: LowerMountRule.BoltsGoInForSure, Holds: true });

    /// <summary>How it moves; null where the strut does not stand.</summary>
    public TravelResult? Travel { get; init; }

    /// <summary>What the joint was checked for; null where the strut does not stand.</summary>
    public MountLoad? Load { get; init; }

    /// <summary>Of the plate on each bolt, across it; empty where the strut does not stand.</summary>
    public IReadOnlyList<BoltForce> Bolts { get; init; } = [];

    public required IReadOnlyList<LowerMountFinding> Findings { get; init; }

    public LowerMount Mount => Question.Strut.Design.LowerMount!;
}

/// <summary>A bracket's hole made elsewhere, m in the bracket's axes.</summary>
/// <param name="Hole">Counted from 0.</param>
/// <param name="X_m">Outward +.</param>
/// <param name="Y_m">Up +.</param>
/// <param name="SureMargin_m">What it then leaves for sure; below 0 it does not mend it alone.</param>
public sealed record HoleMove(int Hole, double X_m, double Y_m, double SureMargin_m);

/// <summary>What the strut puts on its lower mount, in the plane of the bracket.</summary>
/// <param name="Axial_N">Along the strut, pushing down +: the greater of full bump and three times the drive load, as its thread is checked for.</param>
/// <param name="Side_N">Of the top mount, across the car, outward +; null where it is not known, and taken as none.</param>
/// <param name="AlongCar_N">Of the top mount along the car, which bends the bracket; not checked.</param>
/// <param name="TopHeight_m">Of the top over the lower datum, at full bump.</param>
/// <param name="Twist_Nm">Of the tube in its clamp.</param>
public sealed record MountLoad(double Axial_N, double? Side_N, double? AlongCar_N, double? TopHeight_m, double Twist_Nm);

/// <param name="Force_N">On it.</param>
/// <param name="Slips_N">What friction under it holds at most.</param>
public sealed record BoltForce(double Force_N, double Slips_N)
{
    public double Asked => Force_N / Slips_N;
}

public enum LowerMountRule { BoltsGoIn, BoltsGoInForSure, JointSlips, ClampSlips, HoleBearing, ThreadEngagement }

/// <summary>
/// One rule. Lengths in m must reach their limit, shares and stresses in Pa must not pass it. Holds is null where too little is known to check.
/// </summary>
public sealed record LowerMountFinding(LowerMountRule Rule, double? Value, double? Limit, bool? Holds)
{
    /// <summary>Whether a user may decide to live with it; a thread that strips drops the car.</summary>
    public bool CanBeWaived => Rule != LowerMountRule.ThreadEngagement;
}
