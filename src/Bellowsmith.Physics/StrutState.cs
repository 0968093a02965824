using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>
/// The strut of a linkage at one place. Motion ratio i = strut compression per wheel travel; for a strut of rate ks and force F the
/// wheel rate is ks·i² + F·di/dzw.
/// </summary>
public sealed record StrutState
{
    internal StrutState(Linkage linkage, in BodyMotion knuckle)
    {
        Mechanism mechanism = linkage.Mechanism;
        BodyMotion carrier = mechanism.StrutCarrier?.Follow(knuckle) ?? knuckle;
        Bottom = carrier.At(mechanism.StrutBottom);
        Point along = mechanism.StrutTop - Bottom, rest = mechanism.StrutTop - mechanism.StrutBottom;
        Point velocity = carrier.VelocityOf(mechanism.StrutBottom), acceleration = carrier.AccelerationOf(mechanism.StrutBottom);
        Length_m = along.Length;
        Axis = along / Length_m;
        MotionRatio = Axis.Dot(velocity);
        // Moving across the axis lengthens: L'' = (v² − L'²)/L − axis·a.
        MotionRatioSlope_per_m = Axis.Dot(acceleration) - (velocity.Dot(velocity) - MotionRatio * MotionRatio) / Length_m;
        Compression_m = rest.Length - Length_m;
        Angle_rad = Axis.AngleTo_rad(Point.Up);
        Tilt_rad = Axis.AngleTo_rad(rest);
        Turn_rad = mechanism.StrutSteers ? carrier.Pose.Rotation.Twist_rad(rest.Unit()) : null;
    }

    /// <summary>Where its lower point is; the upper one stands on the car.</summary>
    public Point Bottom { get; }

    /// <summary>From bottom to top.</summary>
    public Point Axis { get; }

    public double Length_m { get; }

    /// <summary>Since rest, m.</summary>
    public double Compression_m { get; }

    public double MotionRatio { get; }

    /// <summary>di/dzw, 1/m.</summary>
    public double MotionRatioSlope_per_m { get; }

    /// <summary>From upright.</summary>
    public double Angle_rad { get; }

    /// <summary>What the top mount tilts from rest, 0 to π.</summary>
    public double Tilt_rad { get; }

    /// <summary>
    /// What the top bearing turns from rest about the strut, to the left (seen from above against the clock) +; null where the strut does
    /// not steer.
    /// </summary>
    public double? Turn_rad { get; }
}
