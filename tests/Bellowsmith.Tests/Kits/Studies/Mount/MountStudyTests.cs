using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies.Mount;

public sealed class MountStudyTests
{
    private const double Degree = Math.PI / 180;

    private static readonly MountResult _plane = SampleMount.Answer();

    [Fact] // closed form in the plane
    public void Answer_StrutInAPlane_IsTheClosedForm()
    {
        SideLoads side = _plane.SideLoad!;

        Near(259.64, side.Drive.Side_N);
        Near(620.25, side.Drive.Rod!.Value.Guide_N);
        Near(360.61, side.Drive.Rod.Value.Piston_N);
        Near(98.09, side.Drive.Friction_N!.Value);
        Near(64.910, side.Drive.Rod.Value.Moment_Nm);
        Near(62.09e6, side.Drive.Rod.Value.Stress_Pa);
        Near(3.5569 * Degree, side.FreeTilt_rad);
        Near(3.5569 * Degree, side.FreeTiltOutward_rad);
        Assert.Equal(0, side.FreeTiltAhead_rad, 1e-12);
    }

    [Theory] // balance of the three unknown forces in the plane, worked out apart
    [InlineData(0, null, 259.6386)]
    [InlineData(3.5569, null, 0.0013)]
    [InlineData(2, null, 113.7762)]
    [InlineData(0, 10.0, 199.6001)]
    [InlineData(2, 10.0, 199.0857)]
    public void Answer_SpringLineTiltedOrOffset_LeavesWhatTheBalanceSays(double tilt_deg, double? offset_mm, double side_N)
    {
        SideLoads side = SampleMount.Answer(change: design => design with { SpringTilt_rad = tilt_deg * Degree, SpringOffset_m = offset_mm * 1e-3 }).SideLoad!;

        Assert.Equal(side_N, side.Drive.Outward_N, 1e-3);
        Near(3.5569 * Degree, side.FreeTilt_rad);
    }

    [Fact] // 98.09 N, 407.886 kg on a tyre of 200 N/mm with 40 kg below: by hand
    public void Friction_AtTheWheel_IsBreakawayAndBump()
    {
        StrutFriction friction = _plane.SideLoad!.Friction!;

        Near(98.09, friction.AtWheel_N);
        Near(0.24048, friction.Breakaway_m_per_s2);
        Near(0.53855e-3, friction.Still_m!.Value);
        Assert.Null(friction.RestBand_m); // no air spring, no wheel rate
    }

    [Fact] // d³ and d⁴ from 62.09 MPa and 0.98191 mm at 22 mm
    public void Rods_ASizeEitherWay_GoWithTheirPowers()
    {
        RodSize[] rods = [.. _plane.SideLoad!.Rods];

        Assert.Equal([0.020, 0.022, 0.025], rods.Select(rod => rod.Diameter_m));
        Near(82.64e6, rods[0].Stress_Pa);
        Near(42.315e6, rods[2].Stress_Pa);
        Near(1.43761e-3, rods[0].Deflection_m);
        Near(0.58886e-3, rods[2].Deflection_m);
    }

    [Fact] // a strut that is compressed has its guide nearer to the mount and its piston further from the guide
    public void Answer_OverTravel_MovesTheGuideWithTheStrut()
    {
        SideLoadPlace bump = _plane.SideLoad!.FullBump;
        double moved = bump.State.Strut.Compression_m;

        Assert.InRange(moved, 0.05, 0.06);
        Near(bump.Side_N * (0.250 - moved), bump.Rod!.Value.Moment_Nm);
        Near(bump.Side_N * (0.250 - moved) / (0.180 + moved), bump.Rod.Value.Piston_N);
    }

    [Fact]
    public void Answer_PistonPastItsGuideInDroop_HasNoRodThere()
    {
        SideLoads side = SampleMount.Answer(change: design => design with { Guides = new(0.250, 0.040) }).SideLoad!;

        Assert.Null(side.FullDroop.Rod);
        Assert.NotNull(side.Drive.Rod);
    }

    [Fact]
    public void Freed_AtDrive_LeavesNothing() =>
        Assert.Equal(0, _plane.SideLoad!.Curve.MinBy(both => Math.Abs(both.Now.Travel_m)).Freed.Side_N, 1e-6);

    [Theory] // in the plane the strut swings as its knuckle does: camber +1.449633° at 60 mm of droop, −0.819187° at as much bump
    [InlineData(0, 1.449633, -60)]
    [InlineData(2, 2.819187, 60)]
    [InlineData(-2, 3.449633, -60)]
    public void Greatest_OfAnUnsteeredStrut_IsItsCamberAndTheLean(double lean_deg, double tilt_deg, double travel_mm)
    {
        MountResult result = SampleMount.Answer(end: AxleEnd.Rear, mount: new() { SphericalBearing = SampleMount.Bearing, TiltAtDrive_rad = lean_deg * Degree });

        Assert.Equal(tilt_deg, result.Greatest.Tilt_rad / Degree, 1e-5);
        Assert.Equal(travel_mm, result.Greatest.Travel_m * 1e3, 1e-9);
        Assert.Equal(Math.Abs(lean_deg), result.Places.Single(place => place.Travel_m == 0).Tilt_rad / Degree, 1e-6);
    }

    [Theory]
    [InlineData(2.8, false)]
    [InlineData(2.9, true)]
    public void Findings_TiltAgainstItsLimit_HoldUpToIt(double limit_deg, bool holds)
    {
        MountResult result = SampleMount.Answer(end: AxleEnd.Rear, mount: new() { SphericalBearing = SampleMount.Bearing with { TiltLimit_rad = limit_deg * Degree }, TiltAtDrive_rad = 2 * Degree });

        Assert.Equal(holds, Of(result, MountRule.TiltWithinBearing).Holds);
        Assert.Equal(!holds, new MountWords(result, DisplayUnits.Metric).Answer().StartsWith("The bearing tilts 2.8°, past its 2.8°", StringComparison.Ordinal));
    }

    [Fact] // 30 kN under 5 kN: 216 million turns; ±5° 40 times a kilometre makes 97.2 million kilometres of it
    public void Lives_TurningBearing_IsTheRatingLife()
    {
        MountResult result = SampleMount.Answer(4778.95, mount: new() { TurningBearing = new(new(30e3, RollingBearing.Ball), null) });

        Near(5000, result.Lives.Load_N);
        Near(97.2e9, result.Lives.Turning!.Life_m);
        Assert.False(result.Lives.Turning.Dents);
        Assert.Null(result.Lives.Steering);
    }

    [Theory] // neighbours' paths meet from 360°/z on
    [InlineData(71, true)]
    [InlineData(72, false)]
    public void Lives_FewElements_Dent(int elements, bool dents)
    {
        MountResult result = SampleMount.Answer(mount: new() { TurningBearing = new(new(30e3, RollingBearing.Ball), elements) });

        Assert.Equal(dents, result.Lives.Turning!.Dents);
        Assert.Equal(!dents, Of(result, MountRule.SwingsFarEnough).Holds);
    }

    [Fact] // the catalogue's 12 kN on 48 kN and 35.5 mm, ±15°: 25 N/mm², 524 h at 10 a minute are 7870 km at 40 a kilometre
    public void Lives_WithoutTurningBearing_SlidesInTorsion()
    {
        MountResult result = SampleMount.Answer(
            11469.5, question: new() { Steer_rad = 15 * Degree }, mount: new() { SphericalBearing = SampleMount.Bearing, LifeFactor = 2 * 1 * 1.6 * 1.3 * 3.7 });

        Near(25e6, result.Lives.Steering!.SpecificLoad_Pa);
        Assert.Equal(7870e3, result.Lives.Steering.Life_m!.Value, 8e3);
        Assert.False(Of(result, MountRule.TurnsOnBearing).Holds);
        Assert.Contains("The bellows is twisted by the whole", new MountWords(result, DisplayUnits.Metric).Turning(), StringComparison.Ordinal);
    }

    [Fact] // over ±30 mm the camber goes from 0.654324° to −0.498799°: ±0.5765615°
    public void Lives_Tilting_SwingsWithTheCamber()
    {
        MountLives lives = _plane.Lives;

        Assert.Equal(0.5765615, lives.Tilting!.Amplitude_rad / Degree, 1e-5);
        Assert.InRange(lives.Spherical_m!.Value, 0, Math.Min(lives.Tilting.Life_m!.Value, lives.Steering!.Life_m!.Value));
        Near(1, lives.Spherical_m.Value / lives.Tilting.Life_m.Value + lives.Spherical_m.Value / lives.Steering.Life_m.Value);
    }

    [Theory]
    [InlineData(0.0450, true)]
    [InlineData(0.0452, false)]
    [InlineData(null, null)]
    public void Findings_PartsOfTheStack_AddUpToUpperStack(double? upper_m, bool? holds)
    {
        MountResult result = SampleMount.Answer(
            mount: new() { Parts = [new("plate", 0.018), new("seat", 0.027)] }, change: design => design with { UpperStack_m = upper_m });

        Assert.Equal(holds, Of(result, MountRule.StackAddsUp).Holds);
    }

    [Theory]
    [InlineData(0.018, true)]
    [InlineData(0.014, false)]
    public void Findings_RodOfAStrut_IsEighteenOrMore(double rod_m, bool holds)
    {
        MountResult result = SampleMount.Answer(change: design => design with { Damper = ((TelescopicDamperPart)design.Damper) with { RodDiameter_m = rod_m } });

        Assert.Equal(holds, Of(result, MountRule.RodDiameter).Holds);
    }

    [Fact] // half the wheel's travel at the strut: twice its load
    public void Answer_StrutThatLeadsNothing_HasNoSideLoad()
    {
        MountCase mount = SampleMount.Case(4000, AxleEnd.Rear, SampleSuspension.Lever, null, design => design with { Guides = null });
        MountResult result = MountStudy.Answer(mount, new());

        Assert.Null(result.SideLoad);
        Assert.True(result.Solved);
        Assert.DoesNotContain(result.Findings, finding => finding.Rule is MountRule.RodDiameter or MountRule.TurnsOnBearing);
        Assert.EndsWith("No side load: this strut does not lead the wheel.", new MountWords(result, DisplayUnits.Metric).Answer(), StringComparison.Ordinal);
        Assert.Null(new MountCharts(result, DisplayUnits.Metric).Side());
    }

    [Fact]
    public void Case_OfAKitThatLacksAll_NamesAll()
    {
        Kit kit = SampleMount.Kit(4000, AxleEnd.Front, SampleMount.Plane with { RackTravel_m = null }, SampleMount.Design with { Guides = null, Damper = new LinearDamperPart(1500) });

        FaultsException thrown = Assert.Throws<FaultsException>(() => MountCase.Of(kit, new()));

        Assert.Equal(["struts.front.topMount", "rackTravel", "struts.front.damper", "struts.front.guides"], thrown.Faults.Select(fault => fault.Where));
    }

    [Fact]
    public void Charts_OfAStrut_ShowTheSideForceWithAndWithoutAndEveryRack()
    {
        MountCharts charts = new(_plane, DisplayUnits.Metric);
        Chart side = charts.Side()!, tilt = charts.Tilt();

        Assert.Equal(("mountSide", "mountTilt"), (side.Id, tilt.Id));
        Assert.Equal(["spring line tilted 3.56°", "as it stands"], side.Curves.Select(curve => curve.Label));
        Assert.Equal((-60, 60), (side.X.Low, side.X.High));
        Assert.Equal(["rack right", "straight ahead", "rack left"], tilt.Curves.Select(curve => curve.Label));
        Assert.Equal(12, Assert.Single(tilt.Limits).Y[0], 1e-9);
    }

    private static MountFinding Of(MountResult result, MountRule rule) => result.Findings.Single(finding => finding.Rule == rule);

    private static void Near(double expected, double actual) => Assert.Equal(expected, actual, 1e-4 * Math.Abs(expected));
}
