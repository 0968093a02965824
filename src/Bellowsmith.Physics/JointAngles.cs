using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>How far the joints at an arm's or a link's ends have swung from rest.</summary>
/// <param name="Part">The arm or link.</param>
/// <param name="Inner_rad">At the car or rack: what an arm has turned, what a link has swung.</param>
/// <param name="Outer_rad">At the knuckle: between the joint's stud, along the steering axis or across a link, and its housing.</param>
public sealed record JointAngles(LinkagePart Part, double Inner_rad, double Outer_rad)
{
    internal static IEnumerable<JointAngles> Of(Linkage linkage, BodyMotion knuckle, double rack_m)
    {
        Mechanism mechanism = linkage.Mechanism;
        foreach (Arm arm in mechanism.Arms)
        {
            BodyMotion turned = arm.Follow(knuckle);
            Point stud = Stud(mechanism);
            yield return new(arm.Part, Math.Abs(turned.Pose.Rotation.Twist_rad(arm.Axis)), turned.Direction(stud).AngleTo_rad(knuckle.Direction(stud)));
        }

        foreach (Rod rod in mechanism.Rods)
        {
            Point rest = rod.Outer - rod.Inner;
            Point now = knuckle.At(rod.Outer) - rod.Inner - (rod.OnRack ? rack_m * Point.Left : default);
            yield return new(rod.Part, now.AngleTo_rad(rest), now.AngleTo_rad(knuckle.Direction(rest)));
        }
    }

    private static Point Stud(Mechanism mechanism) =>
        mechanism.SteeringJoints is { } joints ? (joints.Upper ?? mechanism.StrutTop) - joints.Lower : Point.Up;
}
