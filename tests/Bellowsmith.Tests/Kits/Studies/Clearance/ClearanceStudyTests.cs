using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies.Clearance;

public sealed class ClearanceStudyTests
{
    private static readonly ClearanceResult _own = ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Rules = GroundRuleTable.Usual });

    [Theory] // places four times as dense both ways, none of them followed
    [InlineData("18x8 ET45 225/40R18")]
    [InlineData("18x9 ET36 235/40R18")]
    public void Pairs_OfTheFullDensity_AreNoWorseBetweenItsPlaces(string wheel)
    {
        ClearanceQuestion question = Corners.Gaps with { Wheel = WheelText.Wheel(wheel) };
        CornerShapes shapes = CornerShapes.Of(Corners.Front, question, Corners.Front.Corner.Adjuster.Linkage!);
        ClearanceSweep dense = ClearanceSweep.Of(shapes, Spread(Corners.Front.Travel_m.Least_m, Corners.Front.Travel_m.Greatest_m, 81), Spread(-0.062, 0.062, 49));

        foreach (PairGap found in ClearanceStudy.Answer(Corners.Front, question).Pairs.Where(pair => pair.Room_m < 0.018))
        {
            int pair = shapes.Pairs.ToList().IndexOf(found.Pair);
            Assert.InRange(found.Gap.Distance_m, double.NegativeInfinity, Enumerable.Range(0, dense.States.Length).Min(cell => dense[pair, cell]!.Value.Distance_m) + 6e-5);
        }
    }

    [Fact]
    public void Pairs_OfTheLiveDensity_AreTheSameNearTheirMargins()
    {
        IReadOnlyList<PairGap> live = ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Density = Density.Live }).Pairs;

        foreach (PairGap full in _own.Pairs.Where(pair => pair.Room_m < 0.01)) Assert.Equal(full.Gap.Distance_m, live.First(pair => pair.Pair == full.Pair).Gap.Distance_m, 6e-5);
    }

    [Fact]
    public void Margins_OfTheirOwn_MoveTheRoomAndNoGap()
    {
        ClearanceMargins margins = ClearanceMargins.Usual.With(new Dictionary<MarginKind, double> { [MarginKind.TyreToArch] = 0.011 });
        PairGap usual = Arch(_own), own = Arch(ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Margins = margins }));

        Assert.Equal((0.006, 0.011), (usual.Margin_m, own.Margin_m));
        Assert.Equal(usual.Gap.Distance_m, own.Gap.Distance_m, 6e-5);
        Assert.Equal((MarginSource.TradeGuide, MarginSource.User), (ClearanceMargins.Usual.SourceOf(MarginKind.TyreToArch), margins.SourceOf(MarginKind.TyreToArch)));
    }

    [Fact] // on the other side of the car nothing is nearer: the wheel goes out by the spacer, along its axis
    public void Spacer_MovesTheWheelFromTheStrutToTheArch()
    {
        ClearanceResult spaced = ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Spacer_m = 0.005 });

        Assert.InRange(Arch(spaced).Gap.Distance_m - Arch(_own).Gap.Distance_m, -0.005, -0.001);
        Assert.InRange(Strut(spaced).Gap.Distance_m - Strut(_own).Gap.Distance_m, 0.004, 0.005);
        static PairGap Strut(ClearanceResult result) => Of(result, BodyKind.Rim, BodyKind.Strut);
    }

    [Fact]
    public void Grid_ItsLeastCell_IsTheWorstPairs()
    {
        ClearanceGrid grid = _own.Grid;
        double least = grid.Room_m.Min();

        Assert.Equal(grid.Travels_m.Count * grid.Racks_m.Count, grid.Room_m.Count);
        Assert.Contains(0, grid.Travels_m);
        Assert.InRange(_own.Pairs[0].Room_m, least - 1e-3, least);
        Assert.Equal(_own.Pairs[0].Pair, grid.Pairs[grid.Pair[grid.Room_m.ToList().IndexOf(least)]]);
    }

    [Fact] // as many cores as there are change nothing
    public void Answer_Twice_IsTheSameToTheLastBit() =>
        Assert.Equal(_own.Pairs, ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Rules = GroundRuleTable.Usual }).Pairs);

    [Fact] // same air at the same temperature: pabs·V is what it was at drive height
    public void Loads_OnTheSameAir_KeepPressureTimesVolume()
    {
        LoadStance heavy = _own.Loads.Single(load => load.Load == "four up, luggage"), drive = _own.Loads.Single(load => load.Load == "driver, half tank");
        var strut = Corners.Front.Corner.Travel!.Case;
        double height = Corners.Front.Corner.Bodies!.DriveHeight_m, lower = height - strut.SpringRatio.StrutTravel_m(heavy.Travel_m!.Value);
        StrutSpring spring = strut.Spring(height);

        Assert.Equal(0, drive.Travel_m!.Value, 1e-9);
        Assert.InRange(heavy.Travel_m.Value, 0.001, 0.02);
        Assert.Equal(Air(height, drive.GaugePressure_Pa!.Value), Air(lower, heavy.GaugePressure_Pa!.Value), 1e-6 * Air(height, drive.GaugePressure_Pa.Value));
        double Air(double at, double gauge) => (gauge + strut.Ambient_Pa) * spring.Volume_m3(at, gauge);
    }

    [Fact] // the lowest point at 104 mm, wheel centre at 304 mm on 304 mm at −0.8°, flange 245.9 mm and 114.3 mm to the edge
    public void Ground_AtDrive_IsOverRoadAndRim()
    {
        GroundClearance drive = _own.Ground.Single(ground => ground.State == GroundState.Drive);
        double lean = 0.8 * Math.PI / 180;

        Assert.Equal(104 - 304 * (1 - Math.Cos(lean)), 1e3 * drive.OverRoad_m, 1e-3);
        Assert.Equal(104 - 304 + 245.9 * Math.Cos(lean) + 114.3 * Math.Sin(lean), 1e3 * drive.OverRim_m, 1e-3);
        Assert.Equal([false, true, null, true, true, true, true], _own.GroundFindings.Select(finding => finding.Holds));
    }

    [Fact] // another tyre 5.4 mm higher lifts the car by as much
    public void Ground_OnALargerTyre_IsHigherByItsFreeRadius()
    {
        ClearanceResult larger = ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Wheel = WheelText.Wheel("18x8 ET45 225/45R18") });

        Assert.Equal(0.225 * 0.05, larger.Ground[0].OverRoad_m - _own.Ground[0].OverRoad_m, 1e-12);
    }

    [Fact]
    public void Camber_ThatClears_IsTheLeastThatDoes()
    {
        RoadWheel wider = WheelText.Wheel("18x9 ET36 225/40R18")!;
        double enough = ClearanceStudy.Answer(Corners.Front, new() { Wheel = wider }).Camber!.Camber_rad!.Value;

        Assert.True(Clear(enough));
        Assert.False(Clear(enough + 0.02 * Math.PI / 180));
        bool Clear(double camber) => ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Wheel = wider, Camber_rad = camber }).Pairs.Where(pair => pair.Pair.IsOfWheel).All(pair => pair.Holds);
    }

    [Fact]
    public void Camber_OfAWheelFarTooWide_IsNoneAndSaysWhatIsLeft()
    {
        CamberToClear camber = ClearanceStudy.Answer(Corners.Front, new() { Wheel = WheelText.Wheel("18x9 ET36 235/40R18") }).Camber!;

        Assert.Null(camber.Camber_rad);
        Assert.InRange(camber.Most_rad, -1.3 * Math.PI / 180, -1.0 * Math.PI / 180);
        Assert.Contains(camber.Gaps, pair => pair is { Holds: false, Pair: { One.Kind: BodyKind.Tyre, Other.Kind: BodyKind.ArchEdge } });
    }

    [Fact] // each against the same question asked alone
    public void Sensitivities_AreDifferencesOfTwoSweeps()
    {
        ClearanceResult result = ClearanceStudy.Answer(Corners.Front, new());
        ClearanceResult thread = ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Thread_m = 0.003 });

        int tower = result.Pairs.ToList().FindIndex(pair => pair.Pair is { One.Kind: BodyKind.Bellows, Other.Kind: BodyKind.Tower });
        Assert.Equal(Of(thread, BodyKind.Bellows, BodyKind.Tower).Gap.Distance_m - result.Pairs[tower].Gap.Distance_m, result.Sensitivities.Single(s => s.Change == ClearanceChange.Thread).Gaps_m[tower], 1e-12);
        Assert.InRange(result.Sensitivities.Single(s => s.Change == ClearanceChange.Thread).Gaps_m[tower], -0.002, -1e-4); // lower and fatter
    }

    [Fact]
    public void Answer_CamberNoSettingMakes_SweepsNothing()
    {
        ClearanceResult result = ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Camber_rad = Math.PI / 3 });

        Assert.Null(result.Set);
        Assert.Empty(result.Pairs);
    }

    [Fact]
    public void Of_NoRackTravel_IsSweptStraightAhead()
    {
        ClearanceResult result = ClearanceStudy.Answer(Corners.With(part => part with { RackTravel_m = null }), Corners.Gaps);

        Assert.Equal([0.0], result.Grid.Racks_m);
        Assert.All(result.Pairs, pair => Assert.Equal(0, pair.Rack_m));
    }

    [Fact] // without the damper's length nothing says how far it goes, nor where bellows and strut stand
    public void Of_AKitThatDoesNotSayHowFarItGoes_IsSweptSixtyEitherWayWithoutItsStrut()
    {
        ClearanceCase corner = Corners.With(strut => strut with { SpringToDamper_m = null });
        ClearanceResult result = ClearanceStudy.Answer(corner, Corners.Gaps);

        Assert.Equal((false, (-0.06, 0.06)), (corner.TravelKnown, corner.Travel_m));
        Assert.DoesNotContain(result.Pairs, pair => pair.Pair.One.Kind is BodyKind.Bellows or BodyKind.Strut || pair.Pair.Other.Kind is BodyKind.Bellows or BodyKind.Strut);
        Assert.Contains(result.Pairs, pair => pair.Pair is { One.Kind: BodyKind.Tyre, Other.Kind: BodyKind.ArchEdge });
        Assert.Null(result.Findings.Single(finding => finding.Rule == ClearanceRule.SolidBeforeSpring).Holds);
    }

    [Fact] // the strut of a lever stands on its arm; nothing steers it
    public void Pairs_OfAStrutOnItsArm_LeaveThatArmOut()
    {
        ClearanceResult result = ClearanceStudy.Answer(Corners.With(_ => SampleSuspension.Lever), Corners.Gaps);

        Assert.Contains(result.Pairs, pair => pair.Pair is { One.Kind: BodyKind.Tyre, Other.Kind: BodyKind.Strut });
        Assert.Contains(result.Pairs, pair => pair.Pair is { One.Kind: BodyKind.Tyre, Other: { Kind: BodyKind.Link, Part: LinkagePart.TrailingArm } });
        Assert.DoesNotContain(result.Pairs, pair => pair.Pair is { One.Kind: BodyKind.Bellows or BodyKind.Strut, Other.Kind: BodyKind.Link });
    }

    [Fact]
    public void Pairs_OfFiveLinks_AreWithEach()
    {
        ClearanceResult result = ClearanceStudy.Answer(Corners.With(_ => SampleSuspension.Links), Corners.Gaps);

        Assert.Equal(5, result.Pairs.Count(pair => pair.Pair is { One.Kind: BodyKind.Bellows, Other.Kind: BodyKind.Link }));
    }

    [Fact]
    public void Of_AnAxleWithoutAWheel_IsAFault() => Assert.Equal("car.axles.front.wheel",
        Assert.Single(Assert.Throws<FaultsException>(() => Corners.WithAxle(axle => axle with { Wheel = null })).Faults).Where);

    private static PairGap Arch(ClearanceResult result) => Of(result, BodyKind.Tyre, BodyKind.ArchEdge);

    private static PairGap Of(ClearanceResult result, BodyKind one, BodyKind other) => result.Pairs.Single(pair => pair.Pair.One.Kind == one && pair.Pair.Other.Kind == other);

    private static double[] Spread(double least, double greatest, int count) => [.. Enumerable.Range(0, count).Select(k => least + (greatest - least) * k / (count - 1))];
}
