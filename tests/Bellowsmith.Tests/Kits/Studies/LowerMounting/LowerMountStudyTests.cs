using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.LowerMounting;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;
using Bellowsmith.Tests.Kits.Figures;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Studies.LowerMounting;

public sealed class LowerMountStudyTests
{
    private const double Micrometre = 1e-6;

    [Fact] // 60 mm against 60.4: 0.2 off at either, 0.5 of room; centres 0.3 and 0.1 off: 0.1 too little, holes of 12.7, or one hole 0.4 up: 0.1 left
    public void Answer_HolesTooFarApart_SaysOffsetsAndBothMends()
    {
        LowerMountResult result = Answer(SampleMount.Of((0, 0), (0, 60.4)));

        Assert.All(result.Fit.Holes, hole => Assert.Equal(0.2e-3, Math.Abs(hole.OffY_m), Micrometre));
        Assert.Equal(0.3e-3, result.Fit.Margin_m, Micrometre);
        Assert.Equal(-0.1e-3, result.Fit.SureMargin_m, Micrometre);
        Assert.Equal(12.7e-3, result.HoleForSure_m!.Value, 2 * Micrometre);
        Assert.Equal(0.4e-3, Math.Abs(result.Move!.Y_m), 3 * Micrometre);
        Assert.Equal(0.1e-3, result.Move.SureMargin_m, 3 * Micrometre);
        Assert.InRange(result.ShareThatGoIn, 0.9, 1);
        Assert.Equal((true, false), (Holds(result, LowerMountRule.BoltsGoIn), Holds(result, LowerMountRule.BoltsGoInForSure)));
    }

    [Fact] // 0.5 of room, 0.4 taken: 0.1 left for sure, nothing to mend; the knuckle turned and elsewhere
    public void Answer_HolesThatMeet_GoInForSure()
    {
        LowerMountResult result = Answer(SampleMount.Of((200, -30), (260, -30)));

        Assert.Equal(0.1e-3, result.Fit.SureMargin_m, Micrometre);
        Assert.Equal(1, result.ShareThatGoIn);
        Assert.Null(result.HoleForSure_m);
        Assert.Null(result.Move);
    }

    [Theory] // M12, 0.4 mm of tolerances: bored to 12 they lack 0.4 less half of what the other is over 12; a tapped knuckle needs 12.8
    [InlineData(11, 15, null, 12.0)]
    [InlineData(15, 11, 12.0, null)]
    [InlineData(11, 12, null, 12.8)]
    [InlineData(11, 11.5, 12.0, 12.8)]
    public void Answer_HoleNarrowerThanItsBolt_SaysWhatToBore(double bracket_mm, double knuckle_mm, double? knuckleBored_mm, double? bracketBored_mm)
    {
        LowerMount mount = Bored(SampleMount.Of((0, 0), (0, 60)), bracket_mm * 1e-3);
        LowerMountResult result = Answer(mount with { Knuckle = mount.Knuckle with { HoleDiameter_m = knuckle_mm * 1e-3 } });

        Assert.Equal((false, false), (Holds(result, LowerMountRule.BoltsGoIn), Holds(result, LowerMountRule.BoltsGoInForSure)));
        Assert.Equal(0, result.ShareThatGoIn);
        Assert.Null(result.Move);
        Assert.Equal(knuckleBored_mm, Rounded(result.KnuckleHole_m));
        Assert.Equal(bracketBored_mm, Rounded(result.HoleForSure_m));
    }

    [Fact] // holes that meet, 0.25 of room in 12 and 12.5, 0.4 of tolerance: none stands wrong
    public void Move_OfHolesThatMeet_IsNone()
    {
        LowerMountResult result = Answer(Bored(SampleMount.Of((0, 0), (0, 60)), 0.012));

        Assert.Equal(-0.15e-3, result.Fit.SureMargin_m, Micrometre);
        Assert.Null(result.Move);
        Assert.Equal(12.3, Rounded(result.HoleForSure_m));
    }

    [Fact] // three holes, the car's up to 1 mm off: with that diameter none is missed, with 20 µm less one is
    public void HoleForSure_OfAnyPattern_IsTheLeastThatDoes() => Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1]).Array[3].Sample(off =>
    {
        LowerMount mount = Pattern(off);
        if (Answer(mount).HoleForSure_m is not { } hole) return;

        Assert.InRange(Answer(Bored(mount, hole)).Fit.SureMargin_m, -2 * Micrometre, 2 * Micrometre);
        Assert.True(Answer(Bored(mount, hole - 20 * Micrometre)).Fit.SureMargin_m < 0);
    }, iter: 20);

    [Fact] // one hole at a time over a net of 0.1 mm; a finer one could find no more than a tenth of a net's step
    public void Move_OfThreeHoles_LeavesAsMuchAsAnyOnANet()
    {
        LowerMount mount = Pattern([(0.1, 0), (-0.2, 0.3), (0.9, -0.4)]);
        HoleMove move = Answer(mount).Move!;
        double best = double.NegativeInfinity;
        for (int hole = 0; hole < 3; hole++)
            for (int i = -12; i <= 12; i++)
                for (int j = -12; j <= 12; j++)
                    best = Math.Max(best, Fit(Moved(mount, hole, i * 1e-4, j * 1e-4)).SureMargin_m);

        Assert.Equal(2, move.Hole);
        Assert.Equal(Fit(Moved(mount, move.Hole, move.X_m, move.Y_m)).SureMargin_m, move.SureMargin_m, Micrometre);
        Assert.True(move.SureMargin_m > best - 5 * Micrometre);
    }

    [Fact] // by hand, without a side force: half of it down, and it times 40 mm over 60 mm across; M12 8.8 holds 0.2·0.7·800·84.27/1.25 = 7550 N
    public void Bolts_WithoutPoints_BearShareAndCouple()
    {
        LowerMountResult result = Answer(SampleMount.Of((0, 0), (0, 60)));

        Assert.Null(result.Load!.Side_N);
        double force = result.Load.Axial_N * Math.Sqrt(0.25 + 4.0 / 9);
        Assert.All(result.Bolts, bolt => Assert.Equal(force, bolt.Force_N, 1e-6));
        Assert.All(result.Bolts, bolt => Assert.Equal(7550, bolt.Slips_N, 5.0));
        Assert.Equal(force / result.Bolts[0].Slips_N, Value(result, LowerMountRule.JointSlips), 1e-9);
        Assert.Equal(force / (0.012 * 0.008), Value(result, LowerMountRule.HoleBearing), 1.0);
        Assert.Null(Holds(result, LowerMountRule.HoleBearing)); // nobody says what is allowed
    }

    [Fact] // a slot over 20 mm: 0.63 of a round hole's friction, in the upper hole alone
    public void Bolts_InASlot_HoldLess()
    {
        LowerMount mount = SampleMount.Of((0, 0), (0, 60));
        LowerMountResult result = Answer(mount with { Bracket = mount.Bracket with { Slot_m = 0.02 } });

        Assert.Equal(0.63, result.Bolts[1].Slips_N / result.Bolts[0].Slips_N, 1e-12);
    }

    [Fact] // M12 10.9: 0.7·1000·84.27 = 58 989 N; two of them round 52 mm at μ 0.15 hold 35 393 N; 5 mm of arm over 26 mm of radius: √(1 + 0.03698)
    public void Clamp_OfTwoBolts_IsAskedItsShare()
    {
        LowerMountResult result = Answer(SampleMount.Of((0, 0), (0, 60)) with { Clamp = new(0.052, 0.06, MetricBolt.Read("M12", "10.9")!, 2, null) });

        Assert.Equal(1.018324 * result.Load!.Axial_N / 35393, Value(result, LowerMountRule.ClampSlips), 1e-4);
    }

    [Fact] // the street kit's side load at full bump, as its own linkage has it; the force is the thread's
    public void Load_OfTheStreetKit_IsTheSideLoadAtItsForce()
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        SuspensionPart part = SuspensionReader.Read(ExampleFolder.PathOf("cars/ostrane-front.suspension.json"));
        LowerMountResult result = LowerMountStudy.Answer(new(strut, part));
        TravelResult travel = TravelStudy.Answer(strut)!;
        LinkageState bump = part.Linkage().At(travel.FullBump.WheelTravel_m!.Value).State!;
        StrutSideLoad held = StrutSideLoad.Of(bump, new Point(0, 0, 1e4))!;

        Assert.Equal(held.Side_N.Length / held.Spring_N, Math.Sqrt(Math.Pow(result.Load!.Side_N!.Value, 2) + Math.Pow(result.Load.AlongCar_N!.Value, 2)) / result.Load.Axial_N, 1e-9);
        Assert.True(result.Load.Side_N > 0); // the contact point stands outside the ball joint and tips the strut's top inward
        Assert.True(result.Load.Axial_N >= 3 * strut.StrutForce_N);
        TravelFinding thread = travel.Findings.Single(f => f.Rule == TravelRule.ThreadEngagement);
        Assert.Equal(new LowerMountFinding(LowerMountRule.ThreadEngagement, thread.Value_m, thread.Limit_m, thread.Holds), result.Findings.Single(f => f.Rule == LowerMountRule.ThreadEngagement));
    }

    [Fact]
    public void Answer_StrutThatDoesNotStand_StillFits()
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        LowerMountResult result = LowerMountStudy.Answer(new(strut with { Design = strut.Design with { Target = new(TargetKind.RideFrequency, 9) } }, null));

        Assert.Null(result.Load);
        Assert.True(Holds(result, LowerMountRule.BoltsGoIn)!.Value);
        Assert.All(result.Findings.Where(f => f.Rule > LowerMountRule.BoltsGoInForSure), finding => Assert.Null(finding.Holds));
    }

    private static double? Rounded(double? si) => si is { } known ? Math.Round(known * 1e3, 2) : null;

    private static LowerMount Pattern((double X, double Y)[] off_mm)
    {
        (double X, double Y)[] holes = [(40, 30), (40, 90), (75, 60)];
        return SampleMount.With(holes, [.. holes.Zip(off_mm, (hole, off) => (hole.X + off.X, hole.Y + off.Y))]);
    }

    private static LowerMount Bored(LowerMount mount, double hole_m) => mount with { Bracket = mount.Bracket with { HoleDiameter_m = hole_m } };

    private static LowerMount Moved(LowerMount mount, int moved, double x_m, double y_m) => mount with
    {
        Bracket = mount.Bracket with { Holes = [.. mount.Bracket.Holes.Select((hole, n) => n == moved ? new PlanePoint(hole.X_m + x_m, hole.Y_m + y_m) : hole)] },
    };

    private static BoltFit Fit(LowerMount mount) => BoltFit.Of([.. mount.Knuckle.Holes.Zip(mount.Bracket.Holes, (car, part) => new BoltPair(
        new(car.X_m, car.Y_m, 0.0125, 0.3e-3), new(part.X_m, part.Y_m, 0.0125, 0.1e-3), 0.012))]);

    private static LowerMountResult Answer(LowerMount mount)
    {
        StrutCase strut = ExampleStruts.At(AxleEnd.Front);
        return LowerMountStudy.Answer(new(strut with { Design = strut.Design with { LowerMount = mount } }, null));
    }

    private static double Value(LowerMountResult result, LowerMountRule rule) => result.Findings.Single(f => f.Rule == rule).Value!.Value;

    private static bool? Holds(LowerMountResult result, LowerMountRule rule) => result.Findings.Single(f => f.Rule == rule).Holds;
}
