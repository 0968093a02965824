namespace Bellowsmith.Physics;

/// <summary>What holds the wheel.</summary>
public enum LinkagePart
{
    Wheel, LowerArm, UpperArm, TieRod, Strut, TrailingArm, OtherTrailingArm, UpperLink, PanhardRod,
    LowerFrontLink, LowerRearLink, UpperFrontLink, UpperRearLink,
}
