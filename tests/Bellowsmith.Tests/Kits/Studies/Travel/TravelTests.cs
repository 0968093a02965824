using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;
using static Bellowsmith.Tests.Kits.Studies.SampleStrut;

namespace Bellowsmith.Tests.Kits.Studies.Travel;

/// <summary>
/// A strut worked by hand. Motion ratio 0.8, 2640 N at the wheel, spring of 50 to 130 mm at 85 mm, damper 315 mm longer: 400 mm
/// at drive, 365 to 432 mm. Stop 30 mm free, solid at 12 mm, 10 mm of rod at the shortest: 45 mm of rod at drive, so
/// 15 mm of gap and solid at 367 mm. At the wheel: contact +18.75 mm, solid +41.25 mm, full length −40 mm.
/// </summary>
public sealed class TravelTests
{
    private const double Drive_m = 0.085;

    private static readonly StopForce[] _curve = [new(0, 0), new(0.006, 600), new(0.012, 2100), new(0.018, 6000)];

    private static readonly TelescopicDamperPart _damper = new(
        "sample", 0.022, 0.365, 0.432, null, null, new BumpStopPart(0.030, 0.012, 0.010, _curve), null);

    [Fact]
    public void Answer_ByHand_GivesEveryPosition()
    {
        var result = Answer(Strut());

        AssertState(result.Drive, 0, 85, 400, 15, 293_007.77, TravelEnd.LoadBalance);
        AssertState(result.FullBump, 41.25, 52, 367, -18, 818_201.57, TravelEnd.BumpStopSolid);
        AssertState(result.FullDroop, -40, 117, 432, 47, 136_022.24, TravelEnd.DamperFullLength);
        AssertState(result.Lifted, -37.607663, 115.086130, 430.086130, 45.086130, 4e5, TravelEnd.LoadBalance);
        Assert.Equal(18.75, result.StopContact_m * 1e3, 1e-6);
        Assert.True(result.DriveHeightGiven);
    }

    [Fact]
    public void AiredOut_StopStrongEnough_RestsWhereItCarriesTheStrut()
    {
        var state = Answer(Strut()).AiredOut;

        BumpStop stop = new(0.030, 0.012, [0, 0.006, 0.012, 0.018], [0, 600, 2100, 6000]);
        Assert.Equal(TravelEnd.OnBumpStop, state.End);
        Assert.Equal(3300, stop.Force_N(0.030 + state.StopGap_m!.Value), 1e-3); // 2640/0.8
        Assert.Equal(0, state.GaugePressure_Pa);
        Assert.InRange(state.WheelTravel_m!.Value, 0.03375, 0.04125); // between 12 and 18 mm squeezed
    }

    [Fact]
    public void AiredOut_StopTooWeak_RestsOnItsSolid()
    {
        var damper = _damper with { BumpStop = _damper.BumpStop! with { Curve = [.. _curve.Select(p => new StopForce(p.Compression_m, p.Force_N / 2))] } };

        var state = Answer(Strut(damper)).AiredOut;

        Assert.Equal(TravelEnd.BumpStopSolid, state.End);
        Assert.Equal(41.25, state.WheelTravel_m!.Value * 1e3, 1e-6);
    }

    [Fact]
    public void AiredOut_GasInTheDamper_HelpsTheStop() // 500 N constant: the stop carries 2800 N
    {
        var strut = Strut() with { Gas = new DamperGas(0.022, 0.432, 500 / (Math.PI / 4 * 0.022 * 0.022), null) };

        var state = Answer(strut).AiredOut;

        BumpStop stop = new(0.030, 0.012, [0, 0.006, 0.012, 0.018], [0, 600, 2100, 6000]);
        Assert.Equal(2800, stop.Force_N(0.030 + state.StopGap_m!.Value), 1e-3);
    }

    [Theory] // what comes first
    [InlineData(0.365, 0.010, 0.050, TravelEnd.BumpStopSolid, 41.25)]
    [InlineData(0.365, 0.020, 0.045, TravelEnd.DamperClosed, 43.75)] // solid only at 357 mm
    [InlineData(0.365, 0.010, 0.060, TravelEnd.SpringLeastHeight, 31.25)]
    public void FullBump_ThreeEnds_IsTheFirst(double shortest_m, double rod_m, double least_m, TravelEnd end, double travel_mm)
    {
        var damper = _damper with { Shortest_m = shortest_m, BumpStop = _damper.BumpStop! with { RodAtShortest_m = rod_m } };

        var state = Answer(Strut(damper, least_m)).FullBump;

        Assert.Equal(end, state.End);
        Assert.Equal(travel_mm, state.WheelTravel_m!.Value * 1e3, 1e-6);
    }

    [Fact]
    public void FullBump_WithoutStop_IsTheClosedDamper()
    {
        var result = Answer(Strut(_damper with { BumpStop = null }, least_m: 0.045));

        Assert.Equal(TravelEnd.DamperClosed, result.FullBump.End);
        Assert.Equal(43.75, result.FullBump.WheelTravel_m!.Value * 1e3, 1e-6);
        Assert.Equal(43.75, result.StopContact_m * 1e3, 1e-6);
        Assert.Null(result.FullBump.StopGap_m);
    }

    [Fact]
    public void FullDroop_SpringShorterThanTheDamper_EndsAtTheSpring() // 110 mm: 25/0.8 mm
    {
        var state = Answer(Strut(greatest_m: 0.110)).FullDroop;

        Assert.Equal(TravelEnd.SpringGreatestHeight, state.End);
        Assert.Equal(-31.25, state.WheelTravel_m!.Value * 1e3, 1e-6);
    }

    [Fact]
    public void Lifted_MoreThanTheDamperAllows_EndsAtFullLength() =>
        Assert.Equal(TravelEnd.DamperFullLength, Answer(Strut(maxGauge_Pa: 7e5)).Lifted.End);

    [Fact]
    public void Drive_OutsideTheData_HasNoAnswer()
    {
        CharacteristicSpring data = new([.. Enumerable.Range(0, 5).Select(k => 0.09 + 0.01 * k).Select(h => new CharacteristicRow(h, Area_m2(h), Volume_m3(h)))]);
        var strut = Of(data, SpringRate(1), 0.05, 0.13, 4e5, 0.8, _damper).Designed(d => d with { DriveHeight_m = Drive_m, SpringToDamper_m = 0.315 });

        Assert.Null(TravelStudy.Answer(strut));
    }

    [Fact]
    public void Answer_NoDriveHeight_TakesTheRecommended()
    {
        var strut = Strut().Designed(d => d with { DriveHeight_m = null, Target = SpringRate(115_000) });

        var result = Answer(strut);

        Assert.False(result.DriveHeightGiven);
        Assert.Equal(67.123010, result.Drive.SpringHeight_m!.Value * 1e3, 1e-5);
        Assert.Null(TravelStudy.Answer(strut.Designed(d => d with { Target = SpringRate(50_000) })));
    }

    [Fact]
    public void RideHeights_MoreGaugePressure_NeverSinks()
    {
        var heights = Answer(Strut()).RideHeights;

        Assert.Equal(0, heights[0].GaugePressure_Pa);
        Assert.Equal(4e5, heights[^1].GaugePressure_Pa, 1e-6);
        var known = heights.Where(h => h.WheelTravel_m is not null).ToArray();
        Assert.True(known.Length > 30);
        for (var k = 1; k < known.Length; k++)
        {
            Assert.True(known[k].WheelTravel_m <= known[k - 1].WheelTravel_m + 1e-12);
            Assert.True(known[k].StopForce_N <= known[k - 1].StopForce_N + 1e-6);
        }

        Assert.Equal(3300, heights[0].StopForce_N, 1e-3);
        Assert.Equal(0, heights[^1].StopForce_N);
    }

    [Theory] // 130 − 117, 52 − 50, 40 and 18.75 mm, a strut thread engaged 20 − (12 − 4) mm
    [InlineData(TravelRule.TopOutBeforeSpring, 13, 12.7, true)]
    [InlineData(TravelRule.SolidBeforeSpring, 2, 0, true)]
    [InlineData(TravelRule.DroopAtWheel, 40, 35, true)]
    [InlineData(TravelRule.StopContactAtWheel, 18.75, 25, false)]
    [InlineData(TravelRule.ThreadEngagement, 12, 17.3003, false)]
    public void Findings_ByHand_GiveValueLimitAndVerdict(TravelRule rule, double value_mm, double limit_mm, bool holds)
    {
        // The thread carries the stop's 6000 N and the spring's 9363.50 N at full bump, more than three times 3300 N. Basic
        // profile M52×1.5: π/1.5·52·(0.75 + 0.57735·0.974279) = 142.943 mm² a mm; at 6.2124 N/mm² 17.300 mm are needed.
        var finding = Answer(Threaded(6.2124e6)).Findings.Single(f => f.Rule == rule);

        Assert.Equal(value_mm, finding.Value_m!.Value * 1e3, 1e-6);
        Assert.Equal(limit_mm, finding.Limit_m!.Value * 1e3, 0.001);
        Assert.Equal(holds, finding.Holds);
    }

    [Fact]
    public void Findings_SolidOnlyPastTheClosedDamper_CountTheClosedDamper() // 50 mm at 365 mm damper length
    {
        var damper = _damper with { BumpStop = _damper.BumpStop! with { RodAtShortest_m = 0.020 } };

        Assert.Equal(0, Answer(Strut(damper)).Findings.Single(f => f.Rule == TravelRule.SolidBeforeSpring).Value_m!.Value, 1e-9);
    }

    [Theory] // at the limit holds, a thousandth of a millimetre past it does not
    [InlineData(0, true)]
    [InlineData(1e-6, false)]
    public void Findings_AtTheLimit_Hold(double past_m, bool holds)
    {
        TravelLimits limits = new(0.013 + past_m, 0.002 + past_m, 0.040 + past_m, 0.01875 + past_m);

        var findings = Answer(Strut().Designed(d => d with { Limits = limits })).Findings;

        Assert.Equal(4, findings.Count);
        Assert.All(findings, f => Assert.Equal(holds, f.Holds));
    }

    [Fact]
    public void Findings_ThreadNotDescribed_SayUnknownOrNothing()
    {
        Assert.DoesNotContain(Answer(Strut()).Findings, f => f.Rule == TravelRule.ThreadEngagement);

        var bare = Threaded(6e6).Designed(d => d with { Thread = d.Thread! with { ShearStrength_Pa = null } });
        Assert.Null(Answer(bare).Findings.Single(f => f.Rule == TravelRule.ThreadEngagement).Holds);
    }

    [Fact] // the user's limits reach four rules; the thread's need comes from force and strength alone
    public void Findings_EveryLimitWaived_StillAskForThreadEngagement()
    {
        TravelLimits waived = new(-1, -1, -1, -1);

        var findings = Answer(Threaded(6.2124e6).Designed(d => d with { Limits = waived })).Findings;

        Assert.Equal([TravelRule.ThreadEngagement], findings.Where(f => f.Holds == false).Select(f => f.Rule));
        Assert.Equal(4, typeof(TravelLimits).GetProperties().Count(p => p.PropertyType == typeof(double)));
    }

    [Fact] // by hand: 5 mm of damper travel mend 6.25 mm at the wheel
    public void Mends_OfAnEarlyStop_AreFiveMillimetresOfAnything()
    {
        var mends = Answer(Strut(wide: true)).Findings.Single(f => f.Rule == TravelRule.StopContactAtWheel).Mends;

        Assert.Equal(3, mends.Count); // no thread in this kit
        Assert.Equal(-5, mends.Single(m => m.Kind == MendKind.Body).Change_m * 1e3, 0.001);
        Assert.Equal(-5, mends.Single(m => m.Kind == MendKind.Stop).Change_m * 1e3, 0.001);
        Assert.Equal(5, mends.Single(m => m.Kind == MendKind.Perch).Change_m * 1e3, 0.001);
    }

    [Theory]
    [InlineData(0.004, 0, 0.025, 0.035)] // an early stop
    [InlineData(0, 0.008, 0.015, 0.035)] // solid too late for the spring
    [InlineData(0, 0, 0.015, 0.048)] // too little droop
    [InlineData(0.020, 0, 0.015, 0.035)] // topping out too near the spring's end
    [InlineData(0.020, 0.004, 0.025, 0.045)] // everything at once
    public void Mends_OfAMiss_MendItAndHalfOfThemDoNot(double topOut_m, double solid_m, double contact_m, double droop_m)
    {
        var strut = Threaded(6.2124e6).Designed(d => d with { Limits = new TravelLimits(topOut_m, solid_m, droop_m, contact_m) });
        var result = Answer(strut);
        var missed = result.Findings.Where(f => f.Holds == false).ToArray();
        var mends = 0;

        foreach (var finding in missed)
            foreach (var mend in finding.Mends)
            {
                var mended = Answer(Changed(strut, mend.Kind, mend.Change_m)).Findings;
                Assert.True(Holds(mended, finding.Rule), $"{finding.Rule} by {mend}");
                Assert.False(Holds(Answer(Changed(strut, mend.Kind, mend.Change_m / 2)).Findings, finding.Rule), $"half: {finding.Rule} by {mend}");
                Assert.All(mend.AlsoMends, rule => Assert.True(Holds(mended, rule)));
                Assert.All(mend.Breaks, rule => Assert.False(Holds(mended, rule)));
                mends++;
            }

        Assert.True(missed.Length >= 2 && mends >= 2, $"{missed.Length} missed, {mends} mends"); // the thread is one of them
        foreach (var mend in result.MendsAll)
            Assert.All(Answer(Changed(strut, mend.Kind, mend.Change_m)).Findings, f => Assert.True(f.Holds));
    }

    [Fact]
    public void MendsAll_OneChangeForTwoMisses_IsFound() // a shorter body: more bump, and it tops out earlier
    {
        var strut = Strut(wide: true).Designed(d => d with { Limits = new TravelLimits(TopOutMargin_m: 0.055, Droop_m: 0.02) });

        var result = Answer(strut);

        Assert.Equal([TravelRule.TopOutBeforeSpring, TravelRule.StopContactAtWheel], result.Findings.Where(f => f.Holds == false).Select(f => f.Rule));
        Assert.Contains(result.MendsAll, m => m.Kind == MendKind.Body && Math.Abs(m.Change_m + 0.005) < 1e-6);
    }

    private static TravelResult Answer(StrutCase strut) => TravelStudy.Answer(strut)!;

    // wide: a spring whose own ends are never in the way.
    private static StrutCase Strut(
        TelescopicDamperPart? damper = null, double least_m = 0.050, double greatest_m = 0.130, double maxGauge_Pa = 4e5, bool wide = false)
    {
        var strut = Of(SpringRate(100_000), 0.050, 0.130, maxGauge_Pa, 0.8, damper ?? _damper);
        (least_m, greatest_m) = wide ? (0.020, 0.170) : (least_m, greatest_m);
        return strut.Designed(d => d with { DriveHeight_m = Drive_m, SpringToDamper_m = 0.315 }) with
        {
            Part = strut.Part with { LeastHeight_m = least_m, GreatestHeight_m = greatest_m },
        };
    }

    private static StrutCase Threaded(double shearStrength_Pa) => Strut().Designed(d => d with
    {
        StrutLengthAtDrive_m = 0.367,
        UpperStack_m = 0.020,
        LowerStack_m = 0.250,
        Thread = new ThreadDesign(0.0015, 0, 0.030, 0.004, 0.052, 0.020, shearStrength_Pa),
    });

    /// <summary>The same change made to the documents, car height held.</summary>
    private static StrutCase Changed(StrutCase strut, MendKind kind, double change_m)
    {
        var damper = strut.Damper!;
        var stop = damper.BumpStop!;
        var share = (stop.FreeLength_m + change_m) / stop.FreeLength_m;
        return strut.Designed(d => kind switch
        {
            MendKind.Body => d with { Damper = damper with { Shortest_m = damper.Shortest_m + change_m, Longest_m = damper.Longest_m + change_m } },
            MendKind.Stop => d with
            {
                Damper = damper with
                {
                    BumpStop = stop with
                    {
                        FreeLength_m = stop.FreeLength_m + change_m,
                        SolidLength_m = stop.SolidLength_m * share,
                        Curve = [.. stop.Curve.Select(p => new StopForce(p.Compression_m * share, p.Force_N))],
                    },
                },
            },
            MendKind.Thread => d with { DriveHeight_m = d.DriveHeight_m - change_m },
            _ => d with { SpringToDamper_m = d.SpringToDamper_m + change_m },
        });
    }

    private static bool Holds(IReadOnlyList<TravelFinding> findings, TravelRule rule) => findings.Single(f => f.Rule == rule).Holds == true;

    private static void AssertState(
        TravelState state, double wheel_mm, double spring_mm, double damper_mm, double gap_mm, double gaugePressure_Pa, TravelEnd end)
    {
        Assert.Equal(wheel_mm, state.WheelTravel_m!.Value * 1e3, 1e-5);
        Assert.Equal(spring_mm, state.SpringHeight_m!.Value * 1e3, 1e-5);
        Assert.Equal(damper_mm, state.DamperLength_m!.Value * 1e3, 1e-5);
        Assert.Equal(gap_mm, state.StopGap_m!.Value * 1e3, 1e-5);
        Assert.Equal(gaugePressure_Pa, state.GaugePressure_Pa!.Value, 0.1);
        Assert.Equal(end, state.End);
    }
}
