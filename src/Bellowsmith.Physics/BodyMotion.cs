using Bellowsmith.Physics.Linkages;

namespace Bellowsmith.Physics;

/// <summary>
/// Where a rigid part of a linkage is and how it moves with the wheel: first and second derivatives by wheel travel, rack held.
/// Times the wheel centre's vertical velocity and its square they are velocities and accelerations (of a wheel not accelerated
/// vertically).
/// </summary>
public readonly record struct BodyMotion
{
    internal Point Rest { get; init; }

    internal Pose Pose { get; init; }

    /// <summary>Of the point it was laid down with, m/m and 1/m.</summary>
    internal Twist Rate { get; init; }

    internal Twist Bend { get; init; }

    /// <summary>Angular velocity over vertical wheel velocity, rad/m.</summary>
    public Point Spin_rad_per_m => Rate.Spin;

    /// <summary>Its derivative by travel, rad/m².</summary>
    public Point SpinRate_rad_per_m2 => Bend.Spin;

    /// <summary>Where a point of the part is that stands so at rest, m.</summary>
    public Point At(Point atRest) => Pose.Position + Arm(atRest);

    /// <summary>m of the point per m of wheel travel.</summary>
    public Point VelocityOf(Point atRest) => Rate.Of(Arm(atRest));

    /// <summary>1/m.</summary>
    public Point AccelerationOf(Point atRest)
    {
        Point arm = Arm(atRest);
        return Bend.Of(arm) + Spin_rad_per_m.Cross(Spin_rad_per_m.Cross(arm));
    }

    internal Point Direction(Point atRest) => Pose.Rotation.Of(atRest);

    private Point Arm(Point atRest) => Pose.Rotation.Of(atRest - Rest);
}
