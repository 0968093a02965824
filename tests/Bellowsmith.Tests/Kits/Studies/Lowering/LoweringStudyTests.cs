using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Lowering;

public sealed class LoweringStudyTests
{
    private static readonly LoweringQuestion _lowered = new(0.035);
    private static readonly LoweringResult _result = LoweringStudy.Answer(SampleSuspension.Strut, _lowered);

    [Fact] // the linkage built anew from the mended points, and its toe a tenth of a millimetre to either side
    public void TieRodMend_RunAgain_HoldsTheToeStill()
    {
        foreach (MendKind kind in (MendKind[])[MendKind.TieRodOuter, MendKind.TieRodInner, MendKind.Both])
        {
            Linkage linkage = Again(_result.Mend(kind)!);

            Assert.Equal(0, linkage.Rest.ToeSlope_rad_per_m, 1e-9);
            Assert.Equal(linkage.At(-1e-4).State!.Toe_rad, linkage.At(1e-4).State!.Toe_rad, 1e-10);
            Assert.Equal(SampleSuspension.Strut.StaticToe_rad, linkage.Rest.Toe_rad, 1e-12);
        }
    }

    [Fact]
    public void BallJointMend_RunAgain_PutsTheRollCentreBackUnderTheBody()
    {
        LinkageState old = SampleSuspension.Strut.Linkage().At(-0.035).State!;
        foreach (MendKind kind in (MendKind[])[MendKind.LowerBallJoint, MendKind.Both])
        {
            LinkageState rest = Again(_result.Mend(kind)!).Rest;

            Assert.Equal(old.ContactPoint.Z + old.RollCentreHeight_m, rest.ContactPoint.Z + rest.RollCentreHeight_m, 1e-9);
            Assert.Equal(0, _result.Mend(kind)!.RollCentreLeft_m!.Value, 1e-9);
        }
    }

    [Fact] // the body came down by what the wheel went up, but for the tyre's tilt
    public void RollCentre_OfALoweredStrut_FallsFasterThanTheBody()
    {
        RollCentreFall fall = _result.RollCentre!;

        Assert.Equal(0.035, fall.BodyFell_m, 1e-4);
        Assert.Equal(_result.Old!.RollCentreHeight_m - _result.Now.RollCentreHeight_m, fall.Fell_m, 1e-15);
        Assert.True(fall.ArmGrew_m > 0.01);
    }

    [Fact]
    public void Toe_OverTheWorkingTravel_IsThatOfItsEnds()
    {
        Linkage linkage = SampleSuspension.Strut.Linkage();

        Assert.Equal(linkage.At(0.03).State!.Toe_rad - linkage.Rest.Toe_rad, _result.WorkingToe.AtTo_rad, 1e-12);
        Assert.Equal(linkage.At(-0.03).State!.Toe_rad - linkage.Rest.Toe_rad, _result.WorkingToe.AtFrom_rad, 1e-12);
        Assert.True(_result.WholeToe.Range_rad >= _result.WorkingToe.Range_rad);
    }

    [Fact]
    public void Answer_NotLowered_AsksNothingOfTheBallJoint()
    {
        LoweringResult result = LoweringStudy.Answer(SampleSuspension.Strut, new(0));

        Assert.Equal(0, result.RollCentre!.Fell_m);
        Assert.Equal(0, result.Mend(MendKind.LowerBallJoint)!.Up_m("lowerBallJoint"));
    }

    [Fact]
    public void Answer_LoweredTooFarForAJoint_IsTheNearest()
    {
        LoweringResult result = LoweringStudy.Answer(SampleSuspension.Strut, new(0.15));
        JointMend mend = result.Mend(MendKind.LowerBallJoint)!;

        Assert.False(mend.Holds);
        Assert.False(result.Solved);
        Assert.Equal(-0.040, mend.Up_m("lowerBallJoint"), 1e-12);
        Assert.True(mend.RollCentreLeft_m > 0);
    }

    [Fact]
    public void Answer_PastTheLinkagesEnd_SaysWhereItEnds()
    {
        LoweringResult result = LoweringStudy.Answer(SampleSuspension.Strut, new(0.6));

        Assert.Null(result.Old);
        Assert.Null(result.RollCentre);
        Assert.Equal(LinkagePart.LowerArm, result.Limit!.Part);
        Assert.NotNull(result.Mend(MendKind.TieRodOuter));
        Assert.Null(result.Mend(MendKind.LowerBallJoint));
    }

    [Fact]
    public void Mends_OfOtherKinds_AreWhatTheyCanHave()
    {
        Assert.Equal([MendKind.TieRodOuter, MendKind.TieRodInner], LoweringStudy.Answer(SampleSuspension.Links, _lowered).Mends.Select(mend => mend.Kind));
        Assert.Empty(LoweringStudy.Answer(SampleSuspension.Lever, _lowered).Mends);
    }

    [Fact] // arm of 800 mm, strut half way: at travel z its foot stands at 400 mm·(cos θ, sin θ), sin θ = z/800 mm
    public void Ratio_OfALever_IsHeldAgainstTheMeasuredOne()
    {
        RatioComparison ratio = LoweringStudy.Answer(SampleSuspension.Lever, new(0) { Measured = MotionRatio.Constant(0.49) }).Ratio!;

        Assert.Equal(0.5, ratio.FromPoints, 1e-12);
        Assert.Equal(0.5 / 0.49 - 1, ratio.Share, 1e-12);
        Assert.Equal(-0.08, ratio.At_m, 1e-12);
        double angle = Math.Asin(-0.08 / 0.8), aside = 0.4 - 0.4 * Math.Cos(angle), up = 0.4 - 0.4 * Math.Sin(angle);
        Assert.Equal(0.4 - Math.Sqrt(aside * aside + up * up) + 0.49 * 0.08, ratio.Parting_m, 1e-12);
    }

    [Fact] // dial gauge 56.5 mm at 60 mm of bump, the points 1.4 mm more: the tape is good to 2 mm
    public void Ratio_OfTheDemo_PartsDeepInBump()
    {
        (SuspensionPart part, LoweringQuestion question) = LoweringQuestion.Of(Demo(), AxleEnd.Front);
        RatioComparison ratio = LoweringStudy.Answer(part, question).Ratio!;

        Assert.Equal(0.060, ratio.At_m, 1e-9);
        Assert.Equal(0.0013, ratio.Parting_m, 1e-4);
        Assert.False(ratio.Explained);
        Assert.Equal(0.93, ratio.Measured, 2e-3);
    }

    [Fact]
    public void Of_ADocumentThatSaysNotHowFar_NamesIt()
    {
        Kit kit = Demo();
        Axle front = kit.Car.Front!;
        kit = kit with { Car = kit.Car with { Front = front with { Suspension = front.Suspension! with { LoweredBy_m = null } } } };

        Assert.Equal("loweredBy", Assert.Single(Assert.Throws<FaultsException>(() => LoweringQuestion.Of(kit, AxleEnd.Front)).Faults).Where);
        Assert.Equal(0.02, LoweringQuestion.Of(kit, AxleEnd.Front, 0.02).Question.Lowered_m);
        Assert.Equal("car.axles.rear.suspension", Assert.Single(Assert.Throws<FaultsException>(() => LoweringQuestion.Of(kit, AxleEnd.Rear)).Faults).Where);
    }

    private static Linkage Again(JointMend mend)
    {
        SuspensionPart part = SampleSuspension.Strut;
        foreach (JointMove move in mend.Moves) part = part.Moved(move.Point, new(0, 0, move.Up_m));
        return part.Linkage();
    }

    private static Kit Demo() => KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));
}
