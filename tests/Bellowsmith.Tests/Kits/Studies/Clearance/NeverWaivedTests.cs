using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies.Clearance;

/// <summary>What nobody may waive appears when it is provoked, and not before.</summary>
public sealed class NeverWaivedTests
{
    [Fact]
    public void Findings_OfTheDemo_AllHold() => Assert.All(Findings(Corners.Front).Where(finding => !finding.CanBeWaived), finding => Assert.True(finding.Holds));

    [Fact]
    public void LineTaut_ALineTooShort_IsFound() =>
        Assert.Equal(-0.01, Provoked(ClearanceRule.LineTaut, Corners.With(part => part with { Lines = [part.Lines[0] with { Length_m = part.Lines[0].Length_m - Slack(part) - 0.01 }] })).Value!.Value, 1e-9);

    [Fact] // 5 mm of slack: a caution, which may be waived
    public void LineNearTaut_ALineWithLittleSlack_IsACaution()
    {
        ClearanceFinding finding = Findings(Corners.With(part => part with { Lines = [part.Lines[0] with { Length_m = part.Lines[0].Length_m - Slack(part) + 0.005 }] }))
            .Single(finding => finding.Rule == ClearanceRule.LineNearTaut);

        Assert.Equal((false, true), (finding.Holds, finding.CanBeWaived));
    }

    [Fact] // a tall tyre 140 mm further in
    public void TyreOnBellows_AWheelFarIn_IsFound()
    {
        RoadWheel wheel = Corners.Front.Corner.MeasuredWheel;
        wheel = wheel with { Rim = wheel.Rim with { Offset_m = wheel.Rim.Offset_m + 0.14 }, Tyre = new(0.225, 0.95, wheel.Rim.Diameter_m) };

        Provoked(ClearanceRule.TyreOnBellows, Corners.Front, Corners.Gaps with { Wheel = wheel });
    }

    [Fact] // sheet on the strut's axis, in the middle of the bellows
    public void TowerOnBellows_SheetInTheBellows_IsFound() =>
        Provoked(ClearanceRule.TowerOnBellows, Corners.With(part => part with { Tower = [1e-3 * new Point(-22, 548, 765)] }));

    [Fact]
    public void BearingTilt_ALimitBelowWhatItTilts_IsFound() => Provoked(ClearanceRule.BearingTilt, Corners.With(strut =>
        strut with { TopMount = strut.TopMount! with { SphericalBearing = strut.TopMount.SphericalBearing! with { TiltLimit_rad = 0.03 } } }));

    [Fact] // without its stop the damper closes only below the spring's least height
    public void SolidBeforeSpring_NoStop_IsFound() => Provoked(ClearanceRule.SolidBeforeSpring, Corners.With(strut =>
        strut with { Damper = (TelescopicDamperPart)strut.Damper with { BumpStop = null } }));

    [Fact]
    public void ThreadEngagement_ANutOfWax_IsFound() => Provoked(ClearanceRule.ThreadEngagement, Corners.With(strut =>
        strut with { Thread = strut.Thread! with { ShearStrength_Pa = 2e6 } }));

    [Fact] // 3.63 bar at drive and 3.79 bar with four up, on the same air
    public void GaugePressure_AMakersLimitBetweenTwoLoads_IsFoundForTheHeavierAlone()
    {
        ClearanceFinding[] found = [.. Findings(Corners.With(strut => strut with { Spring = (AirSpringPart)strut.Spring with { MaxGaugePressure_Pa = 3.7e5 } }))
            .Where(finding => finding.Rule == ClearanceRule.GaugePressure)];

        Assert.Equal([true, false], found.Select(finding => finding.Holds));
        Assert.All(found, finding => Assert.False(finding.CanBeWaived));
    }

    [Fact] // the two heights that give the demo's rate take 3.26 and 3.63 bar: with 3 bar allowed the strut stands nowhere
    public void GaugePressure_EveryHeightOverTheMakersLimit_IsFoundAndNotAnswered()
    {
        ClearanceCase corner = Corners.With(strut => strut with { Spring = (AirSpringPart)strut.Spring with { MaxGaugePressure_Pa = 3e5 } });

        Assert.Equal(3.26e5, Provoked(ClearanceRule.GaugePressure, corner).Value!.Value, 1e3);
        Assert.Null(Findings(corner).Single(finding => finding.Rule == ClearanceRule.ThreadEngagement).Holds);
        Assert.False(ClearanceStudy.Answer(corner, Corners.Gaps).Solved);
        Assert.True(ClearanceStudy.Answer(Corners.Front, Corners.Gaps).Solved);
    }

    [Fact]
    public void BearingTilt_NoTopMount_IsNotChecked() =>
        Assert.Null(Findings(Corners.With(strut => strut with { TopMount = null })).Single(finding => finding.Rule == ClearanceRule.BearingTilt).Holds);

    [Fact] // the tie rod ends the way before a rack of 200 mm does
    public void Answer_PartsThatDoNotGoEverywhere_IsNotSolvedAndSaysSo()
    {
        ClearanceResult result = ClearanceStudy.Answer(Corners.With(part => part with { RackTravel_m = 0.2 }), Corners.Gaps);

        Assert.InRange(result.Unreached, 0.05, 0.6);
        Assert.False(result.Solved);
        Assert.Contains("% of the places asked for", new ClearanceWords(result, DisplayUnits.Metric).Answer(), StringComparison.Ordinal);
    }

    private static ClearanceFinding Provoked(ClearanceRule rule, ClearanceCase corner, ClearanceQuestion? question = null)
    {
        ClearanceFinding finding = Findings(corner, question).Single(finding => finding.Rule == rule);
        Assert.Equal((false, false), (finding.Holds, finding.CanBeWaived));
        return finding;
    }

    private static IReadOnlyList<ClearanceFinding> Findings(ClearanceCase corner, ClearanceQuestion? question = null) => ClearanceStudy.Answer(corner, question ?? Corners.Gaps).Findings;

    private static double Slack(SuspensionPart part) => ClearanceStudy.Answer(Corners.Front, Corners.Gaps).Lines.Single(line => line.Name == part.Lines[0].Name).Slack_m;
}
