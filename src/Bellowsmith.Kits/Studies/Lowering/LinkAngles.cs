using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

/// <summary>How arms and rods lie across the car, from level, outer end up +, rad; null where a suspension has none such.</summary>
public static class LinkAngles
{
    public static double? LowerArm_rad(SuspensionPart part, LinkageState state) =>
        part.Points.TryGetValue("lowerBallJoint", out Point joint) ? Lies(Pivot(part, joint), state.Knuckle.At(joint)) : null;

    public static double? TieRod_rad(SuspensionPart part, LinkageState state) =>
        part.Points.TryGetValue("tieRodOuter", out Point outer) ? Lies(part.Points["tieRodInner"], state.Knuckle.At(outer)) : null;

    // The point of the arm's axis straight in from its joint.
    private static Point Pivot(SuspensionPart part, Point joint)
    {
        (Point front, Point rear) = (part.Points["lowerArmFront"], part.Points["lowerArmRear"]);
        Point axis = (front - rear).Unit();
        return rear + (joint - rear).Dot(axis) * axis;
    }

    private static double Lies(Point inner, Point outer) => Math.Atan2(outer.Z - inner.Z, Math.Abs(outer.Y - inner.Y));
}
