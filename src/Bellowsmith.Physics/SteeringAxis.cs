namespace Bellowsmith.Physics;

/// <summary>
/// What the wheel steers about: the line of the knuckle's joints, or where links leave none the axis it turns about as the rack
/// moves with the strut held at its length. Angles are projections on the planes across and along the car.
/// </summary>
/// <param name="Through">A point of it.</param>
/// <param name="Direction">Along it, upward.</param>
/// <param name="KingpinInclination_rad">Top inward +.</param>
/// <param name="Caster_rad">Top rearward +.</param>
/// <param name="ScrubRadius_m">At the contact point's level, across the wheel plane: axis inboard of the contact point +.</param>
/// <param name="MechanicalTrail_m">Along the wheel plane: axis ahead of the contact point +.</param>
public sealed record SteeringAxis(
    Point Through, Point Direction, double KingpinInclination_rad, double Caster_rad, double ScrubRadius_m, double MechanicalTrail_m)
{
    internal static SteeringAxis? Of(LinkageState state)
    {
        if (!state.Linkage.HasRack) return null;
        (Point through, Point along) = state.Linkage.Mechanism.SteeringJoints is { } joints ? Joined(state, joints) : Screw(state);
        double outward = state.Linkage.Suspension.Wheel.Outward;
        Point axis = along.Z < 0 ? -along : along, contact = state.ContactPoint, wheel = state.WheelAxis;
        Point onGround = through + (contact.Z - through.Z) / axis.Z * axis, off = onGround - contact;
        Point across = (wheel with { Z = 0 }).Unit(), ahead = outward * across.Cross(Point.Up);
        return new(
            through, axis.Unit(), Math.Atan2(-outward * axis.Y, axis.Z), Math.Atan2(-axis.X, axis.Z),
            -off.Dot(across), off.Dot(ahead));
    }

    private static (Point Through, Point Along) Joined(LinkageState state, (Point Lower, Point? Upper) joints)
    {
        Point lower = state.Knuckle.At(joints.Lower);
        Point upper = joints.Upper is { } joint ? state.Knuckle.At(joint) : state.Linkage.Mechanism.StrutTop;
        return (lower, upper - lower);
    }

    // Turning the rack with the wheel held at its height also works the strut; as much travel is taken out as keeps its length.
    private static (Point Through, Point Along) Screw(LinkageState state)
    {
        var (perTravel, perRack) = (state.Place.PerTravel, state.Place.PerRack);
        BodyMotion byRack = state.Knuckle with { Rate = perRack };
        var mechanism = state.Linkage.Mechanism;
        Point bottom = mechanism.StrutBottom;
        BodyMotion carrier = mechanism.StrutCarrier?.Follow(byRack) ?? byRack;
        double compression = state.Strut.Axis.Dot(carrier.VelocityOf(bottom));
        var motion = perRack + -compression / state.Strut.MotionRatio * perTravel;
        Point spin = motion.Spin;
        return (state.WheelCentre + spin.Cross(motion.Velocity) / spin.Dot(spin), spin);
    }
}
