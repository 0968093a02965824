using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

public sealed class LinkageTests
{
    public static TheoryData<string> Kinds => [.. LinkageSamples.All.Select(kind => kind.GetType().Name)];

    [Fact] // one stride or many, up or down first: the same place
    public void At_AnyNumberOfSteps_IsTheSame() =>
        Gen.Select(LinkageSamples.Any, Gen.Double[-0.09, 0.09], Gen.Double[-0.04, 0.04], Gen.Int[2, 60]).Sample((suspension, travel, rack, steps) =>
        {
            Linkage linkage = new(suspension);
            double[] travels = [.. Enumerable.Range(0, steps + 1).Select(k => travel * k / steps), -travel];
            var points = new LinkagePoint[travels.Length];
            linkage.Sweep(travels, rack, points);
            LinkagePoint alone = linkage.At(travels[^2], rack);

            Assert.Equal(alone.State is null, points[^2].State is null);
            if (alone.State is not { } state || points[^2].State is not { } swept) return;
            Assert.Equal(0, (state.WheelCentre - swept.WheelCentre).Length, 1e-12);
            Assert.Equal(0, (state.WheelAxis - swept.WheelAxis).Length, 1e-12);
        });

    [Theory]
    [InlineData(double.PositiveInfinity, 0)]
    [InlineData(double.NegativeInfinity, 0)]
    [InlineData(double.NaN, 0)]
    [InlineData(0, double.PositiveInfinity)]
    [InlineData(0, double.NaN)]
    public void At_NoPlace_IsNotReached(double travel, double rack) =>
        Assert.All(Kinds, kind => Assert.True(Of(kind.Data) is { HasRack: false } && travel == 0 || Of(kind.Data).At(travel, rack).State is null));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Slopes_AnyPlace_AreTheDifferencesOfNeighbours(string kind)
    {
        Linkage linkage = Of(kind);
        double rack = linkage.HasRack ? 0.015 : 0;
        foreach (double travel in (double[])[-0.06, -0.01, 0.03, 0.07])
        {
            LinkageState at = linkage.At(travel, rack).State!;

            Near(Slope(s => s.Camber_rad), at.CamberSlope_rad_per_m, 1e-6);
            Near(Slope(s => s.Toe_rad), at.ToeSlope_rad_per_m, 1e-6);
            Near(Slope(s => s.TrackChange_m), at.TrackSlope, 1e-7);
            Near(Slope(s => s.Strut.Compression_m), at.Strut.MotionRatio, 1e-7);
            Near(Slope(s => s.Strut.MotionRatio), at.Strut.MotionRatioSlope_per_m, 1e-5);

            double Slope(Func<LinkageState, double> value) => (4 * Central(value, 5e-4) - Central(value, 1e-3)) / 3;

            double Central(Func<LinkageState, double> value, double by) =>
                (value(linkage.At(travel + by, rack).State!) - value(linkage.At(travel - by, rack).State!)) / (2 * by);
        }
    }

    [Theory] // to the last bit; a rack that goes left on one side goes right on the other
    [MemberData(nameof(Kinds))]
    public void At_MirroredCar_IsTheMirrorImage(string kind)
    {
        Linkage left = Of(kind), right = new(LinkageSamples.Mirrored(left.Suspension));
        foreach (double travel in (double[])[-0.07, 0.02, 0.08])
        {
            double rack = left.HasRack ? 0.02 : 0;
            LinkageState one = left.At(travel, rack).State!, other = right.At(travel, -rack).State!;

            Assert.Equal(one.WheelCentre, other.WheelCentre.Mirrored);
            Assert.Equal(Numbers(one), Numbers(other));
        }
    }

    [Theory] // the rod that lies behind the axle pushes the wheel's rear out when the rack goes left: the left wheel turns right, toe in
    [InlineData("MacPherson")]
    [InlineData("DoubleWishbone")]
    [InlineData("FiveLink")]
    public void At_RackToTheLeft_TurnsTheLeftWheelToTheRight(string kind)
    {
        LinkageState state = Of(kind).At(0, 0.03).State!;

        Assert.InRange(state.Toe_rad, 0.1, 0.4);
        if (state.Strut.Turn_rad is { } turn) Assert.InRange(turn, -0.4, -0.1);
    }

    [Fact] // pairs of links that share their outer joints are arms
    public void FiveLink_WithSharedJoints_IsTheDoubleWishbone()
    {
        DoubleWishbone w = LinkageSamples.Wishbones with { StrutOn = StrutCarrier.Upright };
        Linkage arms = new(w), links = new(new FiveLink(w.Wheel)
        {
            LowerFrontInner = w.LowerArmFront,
            LowerFrontOuter = w.LowerBallJoint,
            LowerRearInner = w.LowerArmRear,
            LowerRearOuter = w.LowerBallJoint,
            UpperFrontInner = w.UpperArmFront,
            UpperFrontOuter = w.UpperBallJoint,
            UpperRearInner = w.UpperArmRear,
            UpperRearOuter = w.UpperBallJoint,
            TieRodInner = w.TieRodInner,
            TieRodOuter = w.TieRodOuter,
            StrutTop = w.StrutTop,
            StrutBottom = w.StrutBottom,
            StrutOn = StrutCarrier.Upright,
        });
        LinkageState one = arms.At(0.05, -0.02).State!, other = links.At(0.05, -0.02).State!;

        Assert.Equal(one.Camber_rad, other.Camber_rad, 1e-12);
        Assert.Equal(one.Toe_rad, other.Toe_rad, 1e-12);
        Assert.Equal(one.Strut.MotionRatio, other.Strut.MotionRatio, 1e-12);
    }

    [Fact] // with the strut on an arm and its length kept, both ball joints stand still: the wheel turns about their line
    public void Steering_OfLinksThatShareJoints_IsTheLineOfTheJoints()
    {
        DoubleWishbone w = LinkageSamples.Wishbones;
        LinkageState links = new Linkage(new FiveLink(w.Wheel)
        {
            LowerFrontInner = w.LowerArmFront,
            LowerFrontOuter = w.LowerBallJoint,
            LowerRearInner = w.LowerArmRear,
            LowerRearOuter = w.LowerBallJoint,
            UpperFrontInner = w.UpperArmFront,
            UpperFrontOuter = w.UpperBallJoint,
            UpperRearInner = w.UpperArmRear,
            UpperRearOuter = w.UpperBallJoint,
            TieRodInner = w.TieRodInner,
            TieRodOuter = w.TieRodOuter,
            StrutTop = w.StrutTop,
            StrutBottom = w.LowerBallJoint,
            StrutOn = StrutCarrier.Upright,
        }).Rest;
        SteeringAxis line = new Linkage(w).Rest.Steering!, screw = links.Steering!;

        Assert.Equal(line.KingpinInclination_rad, screw.KingpinInclination_rad, 1e-9);
        Assert.Equal(line.Caster_rad, screw.Caster_rad, 1e-9);
        Assert.Equal(line.ScrubRadius_m, screw.ScrubRadius_m, 1e-9);
        Assert.Equal(line.MechanicalTrail_m, screw.MechanicalTrail_m, 1e-9);
    }

    [Fact] // the arm of 345 mm points straight down at most
    public void At_DroopTooFar_SaysHowFarAndWhatHolds()
    {
        Linkage linkage = new(LinkageSamples.Strut);
        LinkagePoint point = linkage.At(-0.6);

        Assert.Null(point.State);
        Assert.Equal(LinkagePart.LowerArm, point.Limit!.Part);
        Assert.InRange(point.Limit.Travel_m, -0.45, -0.2);
        Assert.NotNull(linkage.At(point.Limit.Travel_m + 1e-4).State);
        Assert.Null(linkage.At(point.Limit.Travel_m - 1e-4).State);
    }

    [Fact] // up to its end and no further, whatever the points
    public void At_AnyLimit_IsWhereTheWayEnds() => Gen.Select(LinkageSamples.Any, Gen.Double[-0.04, 0.04], Gen.Bool).Sample((suspension, rack, up) =>
    {
        Linkage linkage = new(suspension);
        LinkagePoint far = linkage.At(up ? 0.9 : -0.9, rack);
        Assert.Null(far.State);
        if (far.Limit!.Rack_m != rack && linkage.HasRack) return;
        double inward = up ? -1e-5 : 1e-5;
        Assert.NotNull(linkage.At(far.Limit.Travel_m + inward, rack).State);
        Assert.Null(linkage.At(far.Limit.Travel_m - inward, rack).State);
    });

    [Fact] // parallel arms of 510 mm and a Panhard rod of 950 mm carry the axle without turning it: closed form of two circles
    public void BeamAxle_OfParallelArms_GoesWithoutTurning()
    {
        BeamAxle beam = LinkageSamples.Beam with
        {
            TrailingArmFront = LinkageSamples.At(520, 520, 240),
            TrailingArmRear = LinkageSamples.At(10, 520, 240),
            UpperLinkFront = LinkageSamples.At(540, 0, 420),
            UpperLinkRear = LinkageSamples.At(30, 0, 420),
            PanhardRodFrame = LinkageSamples.At(-90, 480, 330),
            PanhardRodAxle = LinkageSamples.At(-90, -470, 330),
        };
        const double arm = 0.510, rod = 0.950, travel = 0.08, k = 1 / (4 * arm * arm) + 1 / (4 * rod * rod);
        double square = (1 - Math.Sqrt(1 - 4 * k * travel * travel)) / (2 * k);

        LinkageState state = new Linkage(beam).At(travel).State!;

        Assert.Equal(square / (2 * arm), state.WheelForward_m, 1e-12);
        Assert.Equal(square / (2 * rod), state.TrackChange_m, 1e-12);
        Assert.Equal(-0.012, state.Camber_rad, 1e-12);
        Assert.Null(state.Steering);
    }

    [Fact] // the rod falls 30 mm over 950 mm: 360 − 30·480/950 = 344.842 mm, over a contact point 0.31·(1 − cos 0.012) m off the floor
    public void RollCentre_OfABeamAxle_IsWhereThePanhardRodCrossesTheMiddle() =>
        Assert.Equal(0.34481978, new Linkage(LinkageSamples.Beam).Rest.RollCentreHeight_m, 1e-7);

    [Fact]
    public void At_RackTooFar_SaysTheTieRodHolds()
    {
        LinkagePoint point = new Linkage(LinkageSamples.Strut).At(0.02, 0.3);

        Assert.Null(point.State);
        Assert.Equal(LinkagePart.TieRod, point.Limit!.Part);
        Assert.InRange(point.Limit.Rack_m, 0.05, 0.2);
        Assert.Equal(0, point.Limit.Travel_m);
    }

    [Fact] // inner joint on the arm's axis level with the wheel centre: the shaft is an arm of its own
    public void Halfshaft_OverTravel_PlungesAndBends()
    {
        LinkageState state = new Linkage(LinkageSamples.SemiTrailing with { HalfshaftInner = LinkageSamples.At(0, 160, 310) }).At(0.06).State!;
        Point shaft = state.WheelCentre - LinkageSamples.At(0, 160, 310);

        Assert.Equal(shaft.Length - 0.6, state.Halfshaft!.Plunge_m, 1e-12);
        Assert.Equal(Math.Acos(shaft.Y / shaft.Length), state.Halfshaft.Inner_rad, 1e-9);
        Assert.Equal(Math.Acos(shaft.Dot(state.WheelAxis) / shaft.Length), state.Halfshaft.Outer_rad, 1e-9);
        Assert.Null(new Linkage(LinkageSamples.SemiTrailing).Rest.Halfshaft);
    }

    [Fact]
    public void Joints_AtRest_HaveNotSwung()
    {
        foreach (Suspension suspension in LinkageSamples.All)
            Assert.All(new Linkage(suspension).Rest.Joints, joint => Assert.Equal(0, joint.Inner_rad + joint.Outer_rad, 1e-12));
    }

    [Fact] // axis parallel to x: 345.326 mm of arm raise the ball joint by what their turn says
    public void Joints_OfAnArm_AreItsTurn()
    {
        MacPherson level = LinkageSamples.Strut with { LowerArmFront = LinkageSamples.At(100, 370, 215), LowerArmRear = LinkageSamples.At(-300, 370, 215) };
        LinkageState state = new Linkage(level).At(0.05).State!;
        Point before = level.LowerBallJoint - level.LowerArmFront, after = state.Knuckle.At(level.LowerBallJoint) - level.LowerArmFront;
        double turned = Math.Atan2(after.Z, after.Y) - Math.Atan2(before.Z, before.Y);

        Assert.Equal(turned, state.Joints.First().Inner_rad, 1e-9);
        Assert.InRange(state.Joints.First().Outer_rad, 0.05, turned + 0.05);
    }

    [Fact] // both pivots in one place: the arm holds the joint no longer on a circle
    public void Constructor_PointsThatDoNotHoldTheWheel_Throws() => Assert.Throws<ArgumentException>(() =>
        new Linkage(LinkageSamples.Strut with { LowerArmRear = LinkageSamples.Strut.LowerArmFront }));

    private static Linkage Of(string kind) => new(LinkageSamples.All.First(known => known.GetType().Name == kind));

    private static void Near(double expected, double actual, double tolerance) => Assert.Equal(expected, actual, tolerance * Math.Max(1, Math.Abs(expected)));

    private static double?[] Numbers(LinkageState s) =>
    [
        s.Camber_rad, s.Toe_rad, s.CamberSlope_rad_per_m, s.ToeSlope_rad_per_m, s.TrackChange_m, s.TrackSlope, s.WheelForward_m, s.RollCentreHeight_m,
        s.Steering?.KingpinInclination_rad, s.Steering?.Caster_rad, s.Steering?.ScrubRadius_m, s.Steering?.MechanicalTrail_m,
        s.Strut.Length_m, s.Strut.Angle_rad, s.Strut.Tilt_rad, s.Strut.MotionRatio, s.Strut.MotionRatioSlope_per_m,
        .. s.Joints.SelectMany(joint => (double?[])[joint.Inner_rad, joint.Outer_rad]),
    ];
}
