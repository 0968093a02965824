using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.Tests.Physics;

/// <summary>What no model is needed for: adjusting moves what it says and keeps every other length.</summary>
public sealed class AdjustmentTests
{
    private const double Exact_m = 1e-9;

    private static readonly Gen<(Suspension Suspension, Adjustment By)> _cases =
        Gen.Select(LinkageSamples.Any, Gen.Double[-0.015, 0.015], Gen.Double[-0.03, 0.03], Gen.Double[-0.008, 0.008], Gen.Double[-0.006, 0.006], Gen.Int[0, 3]).Select(
            (suspension, top, turned, rod, bolt, which) => (suspension, Fitting(suspension, top, turned, rod, bolt, which)));

    [Fact]
    public void Adjusted_Anyhow_KeepsEveryLengthButTheTieRods() => _cases.Sample(sample =>
    {
        if (sample.Suspension.Adjusted(sample.By).Suspension is not { } now) return;
        foreach ((Length before, Length after) in Lengths(sample.Suspension).Zip(Lengths(now)))
            Assert.Equal(before.Value_m + (before.IsTieRod ? sample.By.TieRodLonger_m : 0), after.Value_m, Exact_m);
        Assert.Equal(sample.Suspension.Wheel.Centre.Z, now.Wheel.Centre.Z, 1e-12);
    });

    [Fact] // ball joints, rods' outer ends and the wheel's place and axis stay to each other as they are
    public void Adjusted_Anyhow_TheKnuckleStaysRigid() => _cases.Sample(sample =>
    {
        if (sample.Suspension.Adjusted(sample.By).Suspension is not { } now) return;
        Point[] before = OnKnuckle(sample.Suspension), after = OnKnuckle(now);
        for (int one = 0; one < before.Length; one++)
            for (int other = 0; other < one; other++)
                Assert.Equal((before[one] - before[other]).Length, (after[one] - after[other]).Length, Exact_m);
    });

    [Fact]
    public void Adjusted_Anyhow_TheStrutsAxisTurnsAgainstTheKnuckleAsAsked() => _cases.Sample(sample =>
    {
        if (sample.Suspension is not MacPherson before || before.Adjusted(sample.By).Suspension is not MacPherson after) return;
        Assert.Equal(before.StrutTop.Y + sample.By.StrutTopOutward_m, after.StrutTop.Y, 1e-15);
        Assert.Equal(sample.By.KnuckleTurned_rad, StrutToSpin(after) - StrutToSpin(before), Exact_m);
        if (sample.By.KnucklePivot is { } pivot && before.Adjusted(sample.By) is { } adjusted)
            Assert.Equal((before.StrutAxisPoint - pivot).Length, (after.StrutAxisPoint - adjusted.Knuckle.At(pivot)).Length, Exact_m);

        static double StrutToSpin(MacPherson strut) => (strut.StrutTop - strut.StrutAxisPoint).AngleTo_rad(strut.Wheel.Axis);
    });

    [Theory] // an arm or link whose pivots stay carries the strut's foot as it is
    [InlineData(StrutCarrier.LowerArm)]
    [InlineData(StrutCarrier.UpperArm)]
    public void Adjusted_ByTheTieRod_AnArmKeepsTheStrutsFoot(StrutCarrier carrier)
    {
        DoubleWishbone before = LinkageSamples.Wishbones with { StrutOn = carrier, StrutBottom = LinkageSamples.At(20, 590, 330) };
        var after = (DoubleWishbone)before.Adjusted(new Adjustment { TieRodLonger_m = 0.02 }).Suspension!;

        Assert.All(Arm(before).Zip(Arm(after)), pair => Assert.Equal(
            (before.StrutBottom - pair.First).Length, (after.StrutBottom - pair.Second).Length, Exact_m));
        Assert.True((after.StrutBottom - before.StrutBottom).Length > 1e-5);

        Point[] Arm(DoubleWishbone w) => carrier == StrutCarrier.LowerArm
            ? [w.LowerArmFront, w.LowerArmRear, w.LowerBallJoint] : [w.UpperArmFront, w.UpperArmRear, w.UpperBallJoint];
    }

    [Fact]
    public void Adjusted_ByNothing_IsWhereItWas() => _cases.Sample(sample =>
        Assert.All(Points(sample.Suspension).Zip(Points(sample.Suspension.Adjusted(0 * sample.By).Suspension!)), pair =>
            Assert.Equal(0, (pair.First - pair.Second).Length, 1e-12)));

    [Fact]
    public void Adjusted_ThereAndBack_IsWhereItWas() => _cases.Sample(sample =>
    {
        AdjustedSuspension there = sample.Suspension.Adjusted(sample.By);
        if (there.Suspension is not { } now) return;
        Adjustment back = -1.0 * sample.By;
        if (back.KnucklePivot is { } pivot) back = back with { KnucklePivot = there.Knuckle.At(pivot) };

        Suspension again = now.Adjusted(back).Suspension!;

        Assert.All(Points(sample.Suspension).Zip(Points(again)), pair => Assert.Equal(0, (pair.First - pair.Second).Length, Exact_m));
    });

    [Fact] // to the last bit
    public void Adjusted_OfTheMirroredCar_IsTheMirrorImage() => _cases.Sample(sample =>
    {
        Adjustment mirrored = sample.By.KnucklePivot is { } pivot ? sample.By with { KnucklePivot = pivot.Mirrored } : sample.By;
        Suspension? left = sample.Suspension.Adjusted(sample.By).Suspension, right = LinkageSamples.Mirrored(sample.Suspension).Adjusted(mirrored).Suspension;

        Assert.Equal(left is null, right is null);
        if (left is null || right is null) return;
        Assert.Equal(Points(left), Points(right).Select(point => point.Mirrored));
        Assert.Equal((left.Wheel.Camber_rad, left.Wheel.Toe_rad), (right.Wheel.Camber_rad, right.Wheel.Toe_rad));
    });

    [Fact] // the rest of the new linkage is what was set, and it goes on from there
    public void Adjusted_ANewLinkage_StandsThere()
    {
        Suspension now = LinkageSamples.Strut.Adjusted(new Adjustment { StrutTopOutward_m = -0.01, TieRodLonger_m = 0.002 }).Suspension!;
        Linkage linkage = new(now);

        Assert.InRange(linkage.Rest.Camber_rad, -0.035, -0.020); // −0.012 and 10 mm over the 680 mm from ball joint to top
        Assert.Equal(now.Wheel.Camber_rad, linkage.Rest.Camber_rad, 1e-15);
        Assert.NotNull(linkage.At(0.06, 0.02).State);
    }

    [Fact] // no rod of 330 mm reaches so far round its joint
    public void Adjusted_OutOfReach_SaysHowFarItGoes()
    {
        AdjustedSuspension adjusted = LinkageSamples.Strut.Adjusted(new Adjustment { TieRodLonger_m = 0.4 });

        Assert.Null(adjusted.Suspension);
        Assert.InRange(adjusted.Share, 0.1, 0.9);
    }

    [Fact]
    public void Adjusted_WhatItHasNot_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => LinkageSamples.SemiTrailing.Adjusted(new Adjustment { TieRodLonger_m = 0.001 }));
        Assert.Throws<ArgumentException>(() => LinkageSamples.Wishbones.Adjusted(new Adjustment { StrutTopOutward_m = 0.001 }));
        Assert.Throws<ArgumentException>(() => LinkageSamples.Strut.Adjusted(new Adjustment { EccentricOutward_m = 0.001, EccentricPoint = InnerPoint.UpperArmFront }));
        Assert.Throws<ArgumentException>(() => LinkageSamples.Strut.Adjusted(new Adjustment { KnuckleTurned_rad = 0.001 }));
    }

    private static Adjustment Fitting(Suspension suspension, double top, double turned, double rod, double bolt, int which) => suspension switch
    {
        MacPherson => new()
        {
            StrutTopOutward_m = top,
            KnuckleTurned_rad = turned,
            KnucklePivot = LinkageSamples.At(-6, 668, 400),
            TieRodLonger_m = rod,
            EccentricOutward_m = bolt,
            EccentricPoint = which % 2 == 0 ? InnerPoint.LowerArmFront : InnerPoint.LowerArmRear,
        },
        DoubleWishbone => new() { TieRodLonger_m = rod, EccentricOutward_m = bolt, EccentricPoint = InnerPoint.LowerArmFront + which },
        FiveLink => new() { TieRodLonger_m = rod, EccentricOutward_m = bolt, EccentricPoint = InnerPoint.LowerFrontInner + which },
        _ => Adjustment.None,
    };

    // Arms and links from the inner ends where they now are.
    private static IEnumerable<Length> Lengths(Suspension suspension) => suspension switch
    {
        MacPherson s => [new(s.LowerArmFront, s.LowerBallJoint), new(s.LowerArmRear, s.LowerBallJoint), new(s.TieRodInner, s.TieRodOuter, IsTieRod: true)],
        DoubleWishbone w =>
        [
            new(w.LowerArmFront, w.LowerBallJoint), new(w.LowerArmRear, w.LowerBallJoint), new(w.UpperArmFront, w.UpperBallJoint),
            new(w.UpperArmRear, w.UpperBallJoint), new(w.TieRodInner, w.TieRodOuter, IsTieRod: true),
        ],
        FiveLink f =>
        [
            new(f.LowerFrontInner, f.LowerFrontOuter), new(f.LowerRearInner, f.LowerRearOuter), new(f.UpperFrontInner, f.UpperFrontOuter),
            new(f.UpperRearInner, f.UpperRearOuter), new(f.TieRodInner, f.TieRodOuter, IsTieRod: true),
        ],
        _ => [],
    };

    private static Point[] OnKnuckle(Suspension suspension)
    {
        Point[] joints = suspension switch
        {
            MacPherson s => [s.LowerBallJoint, s.TieRodOuter],
            DoubleWishbone w => [w.LowerBallJoint, w.UpperBallJoint, w.TieRodOuter, .. w.StrutOn == StrutCarrier.Upright ? new[] { w.StrutBottom } : []],
            FiveLink f => [f.LowerFrontOuter, f.LowerRearOuter, f.UpperFrontOuter, f.UpperRearOuter, f.TieRodOuter],
            _ => [],
        };
        return [.. joints, suspension.Wheel.Centre, suspension.Wheel.Centre + suspension.Wheel.Axis];
    }

    private static IEnumerable<Point> Points(Suspension suspension) =>
    [
        .. suspension.GetType().GetProperties().Where(known => known.PropertyType == typeof(Point)).Select(known => (Point)known.GetValue(suspension)!),
        suspension.Wheel.Centre, suspension.Wheel.Axis,
    ];

    private readonly record struct Length(Point One, Point Other, bool IsTieRod = false)
    {
        public double Value_m => (One - Other).Length;
    }
}
