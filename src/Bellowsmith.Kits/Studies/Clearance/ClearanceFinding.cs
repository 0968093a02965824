namespace Bellowsmith.Kits.Studies.Clearance;

public enum ClearanceRule { LineTaut, LineNearTaut, TyreOnBellows, TowerOnBellows, BearingTilt, SolidBeforeSpring, ThreadEngagement, GaugePressure }

/// <summary>
/// One rule, what there is and what it asks: m, of the bearing's tilt rad, of gauge pressure Pa. Holds is null where the documents do not say
/// enough to check it.
/// </summary>
/// <param name="Rule">Which.</param>
/// <param name="Value">What there is.</param>
/// <param name="Limit">At least; of tilt and gauge pressure at most.</param>
/// <param name="Holds">Whether it is kept.</param>
/// <param name="Of">Which line or load case; null where there is one only.</param>
public sealed record ClearanceFinding(ClearanceRule Rule, double? Value, double? Limit, bool? Holds, string? Of = null)
{
    /// <summary>Whether a user may decide to live with it. What breaks a hose, a bellows, a bearing, a thread or a spring is not among those.</summary>
    public bool CanBeWaived => Rule == ClearanceRule.LineNearTaut;
}
