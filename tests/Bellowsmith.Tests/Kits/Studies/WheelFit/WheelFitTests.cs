using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.WheelFit;

/// <summary>Wheels tried at the invented workshop's front axle, its points and adjusters changed where a test says so.</summary>
public sealed class WheelFitTests
{
    private const double Degree = Math.PI / 180, SearchTolerance_m = 5e-5;
    private const string Wider = "18x9 ET36 235/40R18";

    private static readonly Kit _street = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json")) with { Rear = null };
    private static readonly Lazy<WheelCorner> _corner = new(() => Corner(_street));

    // Free radius of the measured tyre, 457.2/2 + 0.40·225.
    private const double Radius_m = 0.3186, Section_m = 0.230;

    [Fact] // a point 20 mm over the tread's middle at drive is nearer by the bump at full bump
    public void Arch_OverTheTread_IsNearerByTheTravel()
    {
        WheelCorner corner = Corner(With(part => part with { ArchEdge = [Centre(part) + new Point(0, 0, Radius_m + 0.020)] }));

        WheelGaps old = Ask(corner, "18x8 ET45 225/40R18").Old;

        Assert.Equal(0.020, old.ArchAtDrive!.Gap_m, 1e-9);
        Assert.Equal((WheelBody.Tyre, corner.FullBump_m), (old.Arch!.Of, old.Arch.Travel_m));
        Assert.Equal(0.020 - corner.FullBump_m, old.Arch.Gap_m, 5e-4); // the tread leans a little in bump
    }

    [Theory] // a point straight out from the sidewall's widest place is nearer by what the sidewall stands further out
    [InlineData("18x8 ET45 225/40R18", 0)]
    [InlineData("18x8 ET38 225/40R18", 7)]
    [InlineData("18x8.5 ET45 225/40R18", 2.54)] // half of 0.4 times half an inch
    public void Arch_BesideTheSidewall_IsNearerByTheOutwardShift(string wheel, double outward_mm)
    {
        double widest = 0.2286 + (Radius_m - 0.2286) / 2;
        WheelCorner corner = Corner(With(part => part with { ArchEdge = [Centre(part) + new Point(0, Section_m / 2 + 0.020, widest)] }));

        RoadWheel tried = WheelText.Wheel(wheel)!;
        tried = tried with { Tyre = tried.Tyre with { Catalogue = (Section_m, 8 * 0.0254) } };
        WheelFitResult result = WheelFitStudy.Answer(corner, new(corner.MeasuredWheel, tried));

        Assert.Equal(0.020 - outward_mm * 1e-3, result.New!.ArchAtDrive!.Gap_m, 1e-9);
    }

    [Theory] // what a board moves and what a kit says are one
    [InlineData(0.060)]
    [InlineData(0.072)]
    public void At_AnotherDriveHeight_IsTheCornerOfAKitThatSaysSo(double height_m)
    {
        WheelGaps moved = Ask(_corner.Value.At(height_m), Wider).New!, said = Ask(Corner(_street with { Front = _street.Front! with { DriveHeight_m = height_m } }), Wider).New!;

        Assert.Equal((said.Arch, said.Strut, said.Tower), (moved.Arch, moved.Strut, moved.Tower));
        Assert.NotEqual(_corner.Value.FullBump_m, _corner.Value.At(height_m).FullBump_m);
    }

    [Fact]
    public void Gaps_ASpacer_IsLessOffset()
    {
        WheelGaps spaced = Ask(_corner.Value, "18x9 ET41 235/40R18", spacer_m: 0.005).New!, less = Ask(_corner.Value, Wider).New!;

        Assert.Equal(less.Arch!.Gap_m, spaced.Arch!.Gap_m, 1e-12);
        Assert.Equal(less.Strut!.Gap_m, spaced.Strut!.Gap_m, SearchTolerance_m);
    }

    [Fact] // wheel and strut turn together about the lower ball joint; a degree takes some 12 mm at the top
    public void Camber_AtTheTopMount_LeavesTheStrutsGap()
    {
        WheelFitResult measured = Ask(_corner.Value, Wider), leaned = Ask(_corner.Value, Wider, -1 * Degree);

        Assert.Equal(AdjusterKind.CamberSlide, _corner.Value.Adjuster.MadeAt);
        Assert.InRange(leaned.New!.Setting!.Value, -0.0135, -0.0105);
        Assert.Equal(measured.New!.StrutAtDrive!.Gap_m, leaned.New.StrutAtDrive!.Gap_m, 2 * SearchTolerance_m);
        Assert.InRange(leaned.New.Arch!.Gap_m - measured.New.Arch!.Gap_m, 0.004, 0.009);
        Assert.InRange(leaned.Camber!.TyreOutward_m, -0.009, -0.006); // more than about the hub: the ball joint lies below it
        Assert.Equal((0, 0), (leaned.Camber.RimTowardStrut_m, leaned.Camber.TyreTowardStrut_m));
        Assert.True(leaned.New.Tower!.Gap_m < measured.New.Tower!.Gap_m - 0.003);
    }

    [Fact] // r·sin at the flange, 228.6 + 17.3 mm, and at the tread, 228.6 + 94 mm
    public void Camber_WithoutAnAdjuster_IsAboutTheHub()
    {
        WheelCorner corner = Corner(_street with { Front = _street.Front! with { Adjusters = null } });

        WheelFitResult result = Ask(corner, Wider, -1 * Degree);

        Assert.Null(corner.Adjuster.MadeAt);
        Assert.Null(result.New!.Setting);
        Assert.Equal(-0.2459 * Math.Sin(Degree), result.Camber!.RimOutward_m, 1e-12);
        Assert.Equal(0.3226 * Math.Sin(Degree), result.Camber.TyreTowardStrut_m, 1e-12);
        Assert.True(result.New.Strut!.Gap_m < Ask(corner, Wider).New!.Strut!.Gap_m - 0.001);
        Assert.NotEqual(WheelVerdict.FitsWithCamber, Ask(corner, Wider).Verdict); // nothing on the car makes that camber
    }

    [Fact] // turned on the strut about a bolt 100 mm below the hub, the tread comes 422.6 mm·sin nearer
    public void Camber_AtTheKnuckle_CostsTheStrutsGap()
    {
        Point pivot = new(-0.006, 0.640, 0.204);
        Adjusters slot = new() { KnuckleSlot = new(-3 * Degree, 1 * Degree), KnucklePivot = pivot };
        WheelCorner corner = Corner(_street with { Front = _street.Front! with { Adjusters = slot } });

        WheelFitResult measured = Ask(corner, Wider), leaned = Ask(corner, Wider, -1 * Degree);

        Assert.Equal(AdjusterKind.KnuckleSlot, corner.Adjuster.MadeAt);
        Assert.InRange(leaned.New!.Setting!.Value / Degree, -1.3, -0.8);
        Assert.Equal(-(0.3226 + 0.100) * Math.Sin(leaned.New.Setting.Value), leaned.Camber!.TyreTowardStrut_m, 1e-12);
        Assert.True(leaned.New.Strut!.Gap_m < measured.New!.Strut!.Gap_m - 0.003);
    }

    [Fact]
    public void LeastCamber_OfAWheelTooFarOut_GivesTheArchItsMargin()
    {
        WheelFitResult result = Ask(_corner.Value, Wider);

        Assert.Equal(WheelVerdict.FitsWithCamber, result.Verdict);
        Assert.Equal(WheelPlace.Arch, Assert.Single(result.Misses).Place);
        Assert.Equal(0.006, result.LeastCamber!.Arch!.Gap_m, 1e-5);
        Assert.Equal(WheelVerdict.Fits, WheelFitStudy.Again(result, result.LeastCamber.Camber_rad).Verdict);
        Assert.Equal(WheelVerdict.FitsWithCamber, WheelFitStudy.Again(result, result.LeastCamber.Camber_rad + 0.02 * Degree).Verdict);
    }

    [Fact]
    public void Offsets_AtEitherEnd_HaveTheirMargin()
    {
        WheelOffsets offsets = Ask(_corner.Value, "18x8.5 ET60 225/40R18").Offsets[0];

        WheelGaps least = Ask(_corner.Value, At(offsets.Least_m)).New!, greatest = Ask(_corner.Value, At(offsets.Greatest_m)).New!;

        Assert.Equal(0.006, least.Arch!.Gap_m, 1e-4);
        Assert.Equal(0.004, greatest.Strut!.Gap_m, 1e-4);

        static string At(double offset_m) => FormattableString.Invariant($"18x8.5 ET{offset_m * 1e3:0.0} 225/40R18");
    }

    [Fact] // between none and the slide's end lies the least camber with which one offset fits
    public void Offsets_WhereOnlyCamberHelps_HoldTheLeast()
    {
        WheelOffsets[] offsets = [.. Ask(_corner.Value, "18x9 ET38 235/40R18").Offsets];

        Assert.Equal([false, true, true], offsets.Select(known => known.Any));
        Assert.InRange(offsets[1].Camber_rad, offsets[2].Camber_rad, 0);
        Assert.Equal(offsets[1].Least_m, offsets[1].Greatest_m, 1e-4);
        Assert.True(offsets[2].Greatest_m - offsets[2].Least_m > 0.001);
    }

    [Fact]
    public void Verdict_OfAWheelTooWideForTheCorner_IsThatNoOffsetFits()
    {
        WheelFitResult result = Ask(_corner.Value, "18x10 ET40 265/35R18");

        Assert.Equal(WheelVerdict.DoesNotFit, result.Verdict);
        Assert.Equal([WheelPlace.Arch, WheelPlace.Strut], result.Misses.Select(miss => miss.Place));
        Assert.DoesNotContain(result.Offsets, offsets => offsets.Any);
    }

    [Fact]
    public void Verdict_CamberPastTheSlide_DoesNotFit()
    {
        WheelFitResult result = Ask(_corner.Value, "18x8 ET45 225/40R18", -1.5 * Degree);

        Assert.False(result.New!.WithinAdjuster);
        Assert.True(result.New.Setting < -0.014);
        Assert.NotEqual(WheelVerdict.Fits, result.Verdict);
    }

    [Fact]
    public void Verdict_MoreRoomAsked_IsMet()
    {
        WheelFitQuestion question = new(_corner.Value.MeasuredWheel, WheelText.Wheel("18x8 ET45 225/40R18")!);

        Assert.Equal(WheelVerdict.Fits, WheelFitStudy.Answer(_corner.Value, question).Verdict);
        Assert.Equal(WheelPlace.Strut, Assert.Single(WheelFitStudy.Answer(_corner.Value, question with { StrutMargin_m = 0.012 }).Misses).Place);
    }

    [Theory] // a point 20 mm over the tread, and where the search says the arch is nearest over the bump
    [InlineData(5e-10, true)]
    [InlineData(3e-9, false)]
    public void Margin_ARoundingMoreThanThereIs_IsMetByLookAndVerdictAlike(double more_m, bool met)
    {
        WheelCorner corner = Corner(With(part => part with { ArchEdge = [Centre(part) + new Point(0, 0, Radius_m + 0.020)] }));
        WheelFitQuestion question = new(corner.MeasuredWheel, corner.MeasuredWheel);
        WheelFitResult asked = WheelFitStudy.Answer(corner, question with { ArchMargin_m = 0.020 + more_m });
        double least = asked.New!.Arch!.Gap_m;

        Assert.Equal(met, WheelLook.Of(asked, 0)!.Gaps.Single(gap => gap.Place == WheelPlace.Arch).Holds);
        Assert.Equal(met, WheelFitStudy.Answer(corner, question with { ArchMargin_m = least + more_m }).Misses.All(miss => miss.Place != WheelPlace.Arch));
    }

    [Fact]
    public void TradeOff_OverCamber_GivesTheArchAndTakesFromTheTower()
    {
        IReadOnlyList<WheelGaps> rows = Ask(_corner.Value, Wider).TradeOff;

        Assert.Equal(17, rows.Count); // −3° to +1° by quarters
        Assert.Equal(rows.OrderByDescending(row => row.Arch!.Gap_m), rows);
        Assert.All(rows, row => Assert.Equal(row.Setting is >= -0.014 and <= 0.006, row.WithinAdjuster));
        Assert.True(rows[0].Tower!.Gap_m < rows[8].Tower!.Gap_m);
    }

    [Fact]
    public void Again_AtAnotherCamber_IsWhatAskingThereAnswers()
    {
        WheelFitResult asked = Ask(_corner.Value, Wider, -0.6 * Degree), again = WheelFitStudy.Again(Ask(_corner.Value, Wider), -0.6 * Degree);

        Assert.Equal(asked.New, again.New);
        Assert.Equal((asked.Camber, asked.Stance, asked.Verdict), (again.Camber, again.Stance, again.Verdict));
    }

    [Fact] // contact and axis as the linkage has them: half a degree of kingpin moves little against 9 mm of offset
    public void Stance_OfAnotherOffset_MovesTrackAndScrubByIt()
    {
        WheelStance stance = Ask(_corner.Value, "18x8 ET36 225/40R18").Stance!;

        Assert.Equal(0.009 * Math.Cos(0.8 * Degree), stance.TrackChange_m, 1e-5);
        Assert.Equal(0.009, stance.ScrubRadiusChange_m, 1e-4);
        Assert.Equal(0, stance.ToeChange_rad!.Value, 1e-9);
    }

    [Fact]
    public void Answer_WithoutPoints_SaysTheNumbersAndLeavesTheRestOpen()
    {
        WheelCorner corner = Corner(_street with { Car = _street.Car with { Front = _street.Car.Front! with { Suspension = null } } });

        WheelFitResult result = Ask(corner, Wider, -2 * Degree);

        Assert.Equal(WheelVerdict.NotKnown, result.Verdict);
        Assert.Null(result.New!.Arch);
        Assert.Empty(result.TradeOff);
        Assert.Equal(-0.3226 * Math.Sin(2 * Degree), result.Camber!.TyreOutward_m, 1e-12);
        Assert.Equal(0.009 + 0.3226 * Math.Sin(2 * Degree), result.Stance!.TrackChange_m, 1e-12);
    }

    [Fact]
    public void Answer_WithoutAnAirSpring_StillAsksTheArch()
    {
        WheelCorner corner = Corner(_street with { Front = _street.Front! with { Spring = new LinearSpringPart(25e3) } });

        WheelFitResult result = Ask(corner, "18x8 ET45 225/40R18");

        Assert.Equal((WheelCorner.UsualBump_m, false), (corner.FullBump_m, corner.FullBumpKnown));
        Assert.NotNull(result.New!.Arch);
        Assert.Null(result.New.Strut);
        Assert.NotEqual(WheelVerdict.Fits, result.Verdict);
    }

    [Fact]
    public void MeasuredWheel_OfACarThatNamesNone_IsAFault()
    {
        WheelCorner corner = Corner(_street with { Car = _street.Car with { Front = _street.Car.Front! with { Wheel = null } } });

        Assert.Equal("car.axles.front.wheel", Assert.Single(Assert.Throws<FaultsException>(() => corner.MeasuredWheel).Faults).Where);
    }

    private static WheelFitResult Ask(WheelCorner corner, string wheel, double camber_rad = 0, double spacer_m = 0) =>
        WheelFitStudy.Answer(corner, new(corner.Axle.Wheel!, WheelText.Wheel(wheel)!, spacer_m, camber_rad));

    private static WheelCorner Corner(Kit kit) => WheelCorner.Of(kit, new StudyConditions());

    private static Point Centre(SuspensionPart part) => part.Points["wheelCentre"];

    // Upright and straight ahead, so that closed forms hold.
    private static Kit With(Func<SuspensionPart, SuspensionPart> change)
    {
        Axle axle = _street.Car.Front!;
        return _street with { Car = _street.Car with { Front = axle with { Suspension = change(axle.Suspension! with { StaticCamber_rad = 0, StaticToe_rad = 0 }) } } };
    }
}
