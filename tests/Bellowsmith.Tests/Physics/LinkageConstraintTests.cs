using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

/// <summary>What no model is needed for: links keep their length, pivots their place, wheels their height. 1e-9 mm.</summary>
public sealed class LinkageConstraintTests
{
    private const double Exact_m = 1e-12;

    private static readonly Gen<(Suspension Suspension, double Travel_m, double Rack_m)> _cases =
        Gen.Select(LinkageSamples.Any, Gen.Double[-0.09, 0.09], Gen.Double[-0.04, 0.04]);

    [Fact]
    public void At_AnyTravelAndRack_EveryLinkKeepsItsLength() => _cases.Sample((suspension, travel, rack) =>
    {
        Linkage linkage = new(suspension);
        if (linkage.At(travel, rack).State is not { } state) return;
        foreach ((Point inner, Point outer, bool onRack) in Rods(suspension))
        {
            Point moved = onRack ? inner + rack * Point.Left : inner;
            Assert.Equal((outer - inner).Length, (state.Knuckle.At(outer) - moved).Length, Exact_m);
        }

        Assert.Equal(suspension.Wheel.Centre.Z + travel, state.WheelCentre.Z, Exact_m);
        Assert.Equal(travel, state.Travel_m);
    });

    [Fact]
    public void At_AnyTravelAndRack_TheStrutAxisRunsThroughItsTop() => _cases.Sample((suspension, travel, rack) =>
    {
        if (suspension is not MacPherson strut || new Linkage(strut).At(travel, rack).State is not { } state) return;
        Point along = state.Knuckle.At(strut.StrutTop) - state.Knuckle.At(strut.StrutAxisPoint);
        Point toTop = strut.StrutTop - state.Knuckle.At(strut.StrutAxisPoint);
        Assert.Equal(0, toTop.SquareTo(along.Unit()).Length, Exact_m);
    });

    [Fact]
    public void At_AnyTravel_AnArmsPivotsStay() => _cases.Sample((suspension, travel, _) =>
    {
        if (suspension is not TrailingArm arm || new Linkage(arm).At(travel).State is not { } state) return;
        Assert.Equal(0, (state.Knuckle.At(arm.PivotOuter) - arm.PivotOuter).Length, Exact_m);
        Assert.Equal(0, (state.Knuckle.At(arm.PivotInner) - arm.PivotInner).Length, Exact_m);
    });

    [Fact]
    public void At_AnyTravel_ABeamsOtherWheelFollows() => _cases.Sample((suspension, travel, _) =>
    {
        if (suspension is not BeamAxle beam || new Linkage(beam).At(travel).State is not { } state) return;
        Point other = beam.Wheel.Centre.Mirrored;
        Assert.Equal(other.Z + travel, state.Knuckle.At(other).Z, Exact_m);
    });

    // An arm is the two lengths from its pivots to its joint.
    private static IEnumerable<(Point Inner, Point Outer, bool OnRack)> Rods(Suspension suspension) => suspension switch
    {
        MacPherson s =>
        [
            (s.LowerArmFront, s.LowerBallJoint, false), (s.LowerArmRear, s.LowerBallJoint, false), (s.TieRodInner, s.TieRodOuter, true),
        ],
        DoubleWishbone w =>
        [
            (w.LowerArmFront, w.LowerBallJoint, false), (w.LowerArmRear, w.LowerBallJoint, false), (w.UpperArmFront, w.UpperBallJoint, false),
            (w.UpperArmRear, w.UpperBallJoint, false), (w.TieRodInner, w.TieRodOuter, true),
        ],
        FiveLink f =>
        [
            (f.LowerFrontInner, f.LowerFrontOuter, false), (f.LowerRearInner, f.LowerRearOuter, false), (f.UpperFrontInner, f.UpperFrontOuter, false),
            (f.UpperRearInner, f.UpperRearOuter, false), (f.TieRodInner, f.TieRodOuter, true),
        ],
        BeamAxle b =>
        [
            (b.TrailingArmFront, b.TrailingArmRear, false), (b.TrailingArmFront.Mirrored, b.TrailingArmRear.Mirrored, false),
            (b.UpperLinkFront, b.UpperLinkRear, false), (b.PanhardRodFrame, b.PanhardRodAxle, false),
        ],
        _ => [],
    };
}
