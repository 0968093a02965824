namespace Bellowsmith.Physics;

/// <summary>What the lower end of a strut stands on.</summary>
public enum StrutCarrier { Upright, LowerArm, UpperArm, TrailingArm, LowerRearLink }
