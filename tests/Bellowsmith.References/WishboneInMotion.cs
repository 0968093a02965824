using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A double wishbone with the damper on its upper arm [Blundell Harty 2004, §4.10, pp. 208–232]: the wheel base point rises at 3366 mm/s
/// without acceleration. Velocities, angular velocities and the accelerations READ as magnitudes (the text has lost its minus signs);
/// signs and the geometry's mirror RECOMPUTED. Tolerances: 0.15 mm/s, one unit of the last digit for angular velocities, 0.1 % for
/// accelerations.
/// </summary>
public sealed class WishboneInMotion
{
    private const double Rise_mm_per_s = 3366;

    private static readonly Point _damperFoot = At(-19, -129, 193), _lowerJoint = At(0, 0, 0), _upperJoint = At(-19, -31, 216),
        _tieRodOuter = At(-163, -75, 267), _tieRodInner = At(-163, -303, 275), _base = At(-7, 58, -176);

    // The wheel base point stands in as the centre whose height is told; it belongs to the knuckle as that does.
    private static readonly Linkage _linkage = new(new DoubleWishbone(new LinkageWheel(_base, 0.3))
    {
        LowerArmFront = At(115, -275, 9),
        LowerArmRear = At(-115, -275, 9),
        LowerBallJoint = _lowerJoint,
        UpperArmFront = At(96, -270, 231),
        UpperArmRear = At(-134, -270, 217),
        UpperBallJoint = _upperJoint,
        TieRodInner = _tieRodInner,
        TieRodOuter = _tieRodOuter,
        StrutTop = _damperFoot + At(3, 9, 436),
        StrutBottom = _damperFoot,
        StrutOn = StrutCarrier.UpperArm,
    });

    public static TheoryData<string, double, double, double, double, double, double> Velocities => new()
    {
        { "lower ball joint", 0, 0, 0, 0, 110.394, 3373.150 },
        { "upper ball joint", -19, -31, 216, -204.345, 112.260, 3355.321 },
        { "tie rod outer", -163, -75, 267, -252.524, 112.968, 3219.588 },
        { "wheel base", -7, 58, -176, 166.468, 108.859, 3366.0 },
    };

    [Theory]
    [MemberData(nameof(Velocities))]
    public void VelocityOf_KnucklePoint_IsThePublished(string point, double x_mm, double y_mm, double z_mm, double vx, double vy, double vz)
    {
        _ = point;
        Near(new(vx, vy, vz), Rise_mm_per_s * _linkage.Rest.Knuckle.VelocityOf(At(x_mm, y_mm, z_mm)), 0.15);
    }

    [Fact]
    public void VelocityOf_TheDamperFoot_IsThePublished() =>
        Near(new(-120.555, 435.157, 1979.499), Rise_mm_per_s * Arm(LinkagePart.UpperArm).VelocityOf(_damperFoot), 0.15);

    [Theory] // along the arm's axis, rad/s; the lower arm's about x, the upper's (14.039, 0, 0.855)
    [InlineData(LinkagePart.LowerArm, 12.266, 0.0)]
    [InlineData(LinkagePart.UpperArm, 14.039, 0.855)]
    public void Spin_OfAnArm_IsThePublished(LinkagePart arm, double x_rad_per_s, double z_rad_per_s) =>
        Near(new(x_rad_per_s, 0, z_rad_per_s), Rise_mm_per_s * 1e-3 * Arm(arm).Spin_rad_per_m, 1e-3);

    [Theory] // rad/s²
    [InlineData(LinkagePart.LowerArm, -11.790, 0.0)]
    [InlineData(LinkagePart.UpperArm, -18.819, -1.145)]
    public void SpinRate_OfAnArm_IsThePublished(LinkagePart arm, double x_rad_per_s2, double z_rad_per_s2) => Near(
        new(x_rad_per_s2, 0, z_rad_per_s2), Math.Pow(Rise_mm_per_s * 1e-3, 2) * Arm(arm).SpinRate_rad_per_m2, 1e-3 * Math.Abs(x_rad_per_s2));

    [Fact] // rad/s, square to the rod
    public void Spin_OfTheTieRod_IsThePublished()
    {
        Point rod = _tieRodOuter - _tieRodInner;
        Point velocity = Rise_mm_per_s * 1e-3 * _linkage.Rest.Knuckle.VelocityOf(_tieRodOuter);

        Near(new(14.121, 0.03881, 1.1062), rod.Cross(velocity) / rod.Dot(rod), 1e-3);
    }

    [Fact] // rad/s; DERIVED
    public void Spin_OfTheKnuckle_IsTheDerived() =>
        Near(new(-0.008774, -0.945366, -0.001446), Rise_mm_per_s * 1e-3 * _linkage.Rest.Knuckle.Spin_rad_per_m, 1e-6);

    [Fact] // rad/s²
    public void SpinRate_OfTheKnuckle_IsThePublished() => Near(
        new(29.386, 3.737, -20.847), Math.Pow(Rise_mm_per_s * 1e-3, 2) * _linkage.Rest.Knuckle.SpinRate_rad_per_m2, 1e-3 * 29.386);

    [Fact] // mm/s²
    public void AccelerationOf_TheWheelBase_IsThePublished()
    {
        Point acceleration = 1e-3 * Rise_mm_per_s * Rise_mm_per_s * _linkage.Rest.Knuckle.AccelerationOf(_base);

        Assert.Equal(558.211, acceleration.X, 1e-3 * 558.211);
        Assert.Equal(-36_163.671, acceleration.Y, 1e-3 * 36_163.671);
        Assert.Equal(0, acceleration.Z, 1e-6);
    }

    [Fact] // DERIVED: 16.93 kN in the damper for 10 kN at the wheel
    public void MotionRatio_OfTheDamper_IsTheDerived()
    {
        Assert.Equal(0.5906, _linkage.Rest.Strut.MotionRatio, 3e-4);
        Assert.Equal(16.93, 10 / _linkage.Rest.Strut.MotionRatio, 0.01);
    }

    [Theory] // DERIVED; camber top out, toe in, the spin axis across the car at rest
    [InlineData(50, -0.176, 0.136)]
    [InlineData(-50, -0.208, 0.131)]
    [InlineData(100, -0.749, 0.576)]
    [InlineData(-100, -0.961, 0.537)]
    public void At_Travel_IsTheDerived(double travel_mm, double camber_deg, double toe_deg)
    {
        LinkageState state = _linkage.At(travel_mm * 1e-3).State!;

        Assert.Equal(camber_deg, state.Camber_rad * 180 / Math.PI, 6e-4);
        Assert.Equal(toe_deg, state.Toe_rad * 180 / Math.PI, 6e-4);
    }

    private static BodyMotion Arm(LinkagePart part) => _linkage.Rest.Arm(part)!.Value;

    private static Point At(double x_mm, double y_mm, double z_mm) => 1e-3 * new Point(x_mm, y_mm, z_mm);

    private static void Near(Point expected, Point actual, double tolerance)
    {
        Assert.Equal(expected.X, actual.X, tolerance);
        Assert.Equal(expected.Y, actual.Y, tolerance);
        Assert.Equal(expected.Z, actual.Z, tolerance);
    }
}
