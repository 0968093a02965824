using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Alignment;

public sealed class AlignmentStudyTests
{
    private const double Degree_rad = Math.PI / 180;

    private static readonly AdjusterRange _wide = new(-0.03, 0.03);

    private static readonly Adjusters
        _slide = new() { CamberSlide = _wide, TieRod = _wide, KnuckleSlot = new(-0.05, 0.05), KnucklePivot = new(-0.006, 0.668, 0.400) },
        _slot = _slide with { CamberSlide = null },
        _bolt = new() { TieRod = _wide, EccentricBolt = _wide, EccentricPoint = "upperRearInner" };

    public static TheoryData<string> Ways => ["slide", "slot", "bolt"];

    [Theory] // walked to again from the measured points with the settings found
    [MemberData(nameof(Ways))]
    public void Answer_WithinTheRanges_MeetsBothThroughTheLinkage(string way)
    {
        AlignmentCase corner = Corner(way);
        foreach ((double camber, double toe) in ((double, double)[])[(-1.5, 0.1), (-0.2, -0.15), (-1.1, 0)])
        {
            AlignmentResult result = AlignmentStudy.Answer(corner, new(camber * Degree_rad, toe * Degree_rad));
            LinkageState aligned = new Linkage(corner.Part.Linkage().Suspension.Adjusted(result.Adjustment).Suspension!).Rest;

            Assert.True(result.Solved);
            Assert.Equal(camber, aligned.Camber_rad / Degree_rad, 1e-9);
            Assert.Equal(toe, aligned.Toe_rad / Degree_rad, 1e-9);
            Assert.Equal(2, result.Adjusters.Count);
        }
    }

    [Theory] // the slide first, then the knuckle, then the bolt
    [InlineData("slide", AdjusterKind.CamberSlide)]
    [InlineData("slot", AdjusterKind.KnuckleSlot)]
    [InlineData("bolt", AdjusterKind.EccentricBolt)]
    public void Camber_OfWhatTheKitHas_IsTheFirstThatLeadsTheWheel(string way, AdjusterKind kind) => Assert.Equal(kind, Corner(way).Camber);

    [Fact] // a slide over five links moves the strut, not the wheel
    public void Camber_WhereTheSlideLeadsNoWheel_IsNone() =>
        Assert.Null(new AlignmentCase(AxleEnd.Rear, SampleSuspension.Links, _slide).Camber);

    [Fact]
    public void Answer_WithoutCamber_LeavesItsAdjusterAlone()
    {
        AlignmentResult result = AlignmentStudy.Answer(Corner("slide"), new(Toe_rad: 0.2 * Degree_rad));

        Assert.Equal(0, result.Adjuster(AdjusterKind.CamberSlide)!.Setting);
        Assert.Equal(0.2, result.Toe_rad / Degree_rad, 1e-9);
    }

    [Fact]
    public void Answer_WithoutToe_PutsItBack()
    {
        AlignmentResult result = AlignmentStudy.Answer(Corner("slide"), new(Camber_rad: -1.5 * Degree_rad));

        Assert.Equal(SampleSuspension.Strut.StaticToe_rad, result.Toe_rad, 1e-11);
        Assert.NotEqual(0, result.Adjuster(AdjusterKind.TieRod)!.Setting, 1e-4);
    }

    [Fact]
    public void Answer_PastTheSlide_IsTheNearestThereIs()
    {
        AlignmentCase corner = Corner("slide") with { Adjusters = _slide with { CamberSlide = new(-0.005, 0.005) } };
        (double camber, double toe) = (-1.5 * Degree_rad, 0.1 * Degree_rad);
        AlignmentResult result = AlignmentStudy.Answer(corner, new(camber, toe));

        Assert.Equal(AlignmentShortfall.CamberEnds, result.Shortfall);
        Assert.Equal(-0.005, result.Adjuster(AdjusterKind.CamberSlide)!.Setting);
        Assert.True(result.Adjuster(AdjusterKind.CamberSlide)!.Needed < -0.005);
        Assert.Equal(toe, result.Toe_rad, 1e-10);
        Assert.All(Grid(corner), other => Assert.True(Miss(other) >= Miss(result.After.Suspension) - 1e-12));

        double Miss(Suspension at) => Math.Pow(at.Wheel.Camber_rad - camber, 2) + Math.Pow(at.Wheel.Toe_rad - toe, 2);
    }

    [Fact]
    public void Answer_PastTheTieRod_SaysSo()
    {
        AlignmentCase corner = Corner("slide") with { Adjusters = _slide with { TieRod = new(-0.001, 0.001) } };
        AlignmentResult result = AlignmentStudy.Answer(corner, new(-0.9 * Degree_rad, 1.5 * Degree_rad));

        Assert.Equal(AlignmentShortfall.TieRodEnds, result.Shortfall);
        Assert.Equal(0.001, result.Adjuster(AdjusterKind.TieRod)!.Setting);
        Assert.Equal(-0.9, result.Camber_rad / Degree_rad, 1e-9);
    }

    [Fact] // by settings a tenth of a millimetre apart
    public void Effects_OfEachAdjuster_AreTheDifferencesOfNeighbours()
    {
        AlignmentCase corner = Corner("slide");
        AlignmentResult result = AlignmentStudy.Answer(corner, new(-1.2 * Degree_rad, 0.05 * Degree_rad));
        foreach (AdjusterSetting adjuster in result.Adjusters)
        {
            LinkageWheel there = Wheel(1e-4), back = Wheel(-1e-4);
            Assert.Equal((there.Camber_rad - back.Camber_rad) / 2e-4, adjuster.CamberEffect, 1e-5);
            Assert.Equal((there.Toe_rad - back.Toe_rad) / 2e-4, adjuster.ToeEffect, 1e-5);

            LinkageWheel Wheel(double by) => corner.Part.Linkage().Suspension
                .Adjusted(corner.Moved(result.Adjustment, adjuster.Kind, adjuster.Setting + by)).Suspension!.Wheel;
        }
    }

    [Fact] // 18 in rim, 0.25°: 457.2·sin 0.25° = 1.995 mm; 1.5 mm pitch
    public void Answer_OfTheDemo_SaysToeAtTheRimAndTurns()
    {
        AlignmentQuestion question = new(-1.5 * Degree_rad, 0.25 * Degree_rad);
        AlignmentResult result = AlignmentStudy.Answer(AlignmentCase.Of(Demo(), AxleEnd.Front, question), question);

        Assert.Equal(1.99489, result.ToeAtRim_m!.Value * 1e3, 1e-4);
        Assert.Equal(result.StrutLonger_m * 1e3 / 1.5, result.ThreadTurns!.Value, 1e-9);
        Assert.InRange(result.StrutLonger_m, 0.001, 0.005);
    }

    [Fact]
    public void Of_WithoutPointsAndAdjusters_NamesBoth() => Assert.Equal(
        ["car.axles.rear.suspension", "struts.rear.adjusters"],
        Assert.Throws<FaultsException>(() => AlignmentCase.Of(Demo(), AxleEnd.Rear, new())).Faults.Select(fault => fault.Where));

    [Fact]
    public void Of_WithoutWhatDoesCamber_NamesIt()
    {
        Kit kit = Demo();
        kit = kit with { Front = kit.Front! with { Adjusters = new() { TieRod = _wide } } };

        Fault fault = Assert.Single(Assert.Throws<FaultsException>(() => AlignmentCase.Of(kit, AxleEnd.Front, new(Camber_rad: 0))).Faults);

        Assert.Contains("camberSlide", fault.Allowed, StringComparison.Ordinal);
        Assert.Null(AlignmentCase.Of(kit, AxleEnd.Front, new(Toe_rad: 0)).Camber);
    }

    private static Kit Demo() => KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));

    private static AlignmentCase Corner(string way) => way switch
    {
        "slide" => new(AxleEnd.Front, SampleSuspension.Strut, _slide),
        "slot" => new(AxleEnd.Front, SampleSuspension.Strut, _slot),
        _ => new(AxleEnd.Rear, SampleSuspension.Links, _bolt),
    };

    private static IEnumerable<Suspension> Grid(AlignmentCase corner)
    {
        for (double slide = -0.005; slide <= 0.005; slide += 0.001)
            for (double rod = -0.010; rod <= 0.010; rod += 0.001)
                yield return corner.Part.Linkage().Suspension.Adjusted(new() { StrutTopOutward_m = slide, TieRodLonger_m = rod }).Suspension!;
    }
}
