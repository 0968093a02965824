using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Physics;
using static Bellowsmith.Tests.Kits.Studies.SampleStrut;

namespace Bellowsmith.Tests.Kits.Studies.InstalledHeight;

public sealed class InstalledHeightTests
{
    // By hand at 80 mm: 1.38·0.0112·(3300 + 101 325·0.0115)/0.00075 + 3300/0.0115·0.04 = 92 019.6 + 11 478.3 N/m.
    private const double AtEighty_N_per_m = 103_497.87527;

    [Fact]
    public void Answer_RateOnBothBranches_GivesTwoSolutions()
    {
        var result = InstalledHeightStudy.Answer(Of(SpringRate(AtEighty_N_per_m)));

        Assert.Equal(2, result.Solutions.Count);
        AssertState(result.Solutions[0], 80.0, 286_956.5);
        AssertState(result.Solutions[1], 104.607076, 343_483.3);
        Assert.All(result.Solutions, s => Assert.Equal(AtEighty_N_per_m, s.SpringRate_N_per_m, 0.01));
        Assert.Equal(0.0115, result.Solutions[0].EffectiveArea_m2, 1e-9);
        Assert.Equal(0.00075, result.Solutions[0].Volume_m3, 1e-9);
        Assert.Single(result.Solutions, s => s.Recommended);
    }

    [Fact]
    public void Answer_RateOnOneBranch_GivesOneSolution()
    {
        var solution = Assert.Single(InstalledHeightStudy.Answer(Of(SpringRate(115_000))).Solutions);

        Assert.Equal(67.123010, solution.Height_m * 1e3, 1e-5);
        Assert.True(solution.Recommended);
    }

    [Theory]
    [InlineData(95_000, "softer than this spring can be", 92.62)]
    [InlineData(130_000, "stiffer than this spring can be", 60)]
    public void Answer_RateOutOfReach_GivesTheReasonAndTheNearest(double target_N_per_m, string reason, double nearest_mm)
    {
        var result = InstalledHeightStudy.Answer(Of(SpringRate(target_N_per_m)));

        Assert.Empty(result.Solutions);
        Assert.Null(result.Recommended);
        Assert.Contains(reason, Reason(result), StringComparison.Ordinal);
        Assert.Equal(nearest_mm, result.Nearest!.Height_m * 1e3, 0.25); // a 128th of the range
        Assert.Equal(3300, result.SpringForce_N, 1e-6);
    }

    [Fact]
    public void Answer_AnyTarget_GivesLeastAndGreatestRate()
    {
        var result = InstalledHeightStudy.Answer(Of(SpringRate(50_000), maxGauge_Pa: 1e5)); // no height is within the limit

        Assert.Equal(92.6196, result.Minimum!.Height_m * 1e3, 0.01);
        Assert.Equal(100_008.2324, result.Minimum.SpringRate_N_per_m, 0.01);
        Assert.Equal(60, result.Maximum!.Height_m * 1e3, 1e-9);
        Assert.Equal(126_161.1163, result.Maximum.SpringRate_N_per_m, 0.01);
        Assert.Equal(Math.Sqrt(100_008.2324 * 9.80665 / 3300) / (2 * Math.PI), result.Minimum.RideFrequency_Hz, 1e-6);
        // The least gauge pressure there is, 3300 N over the greatest area.
        Assert.Equal(Enumerable.Range(0, 6001).Min(k => 3300 / Area_m2(0.060 + k * 1e-5)), result.Nearest!.GaugePressure_Pa, 1);
    }

    [Fact]
    public void Answer_OneSolutionOverTheGaugePressureLimit_ListsItAndRecommendsTheOther()
    {
        var result = InstalledHeightStudy.Answer(Of(SpringRate(AtEighty_N_per_m), maxGauge_Pa: 3e5));

        Assert.Equal([true, false], result.Solutions.Select(s => s.WithinPressureLimit));
        Assert.Equal([true, false], result.Solutions.Select(s => s.Recommended));
    }

    [Fact]
    public void Answer_EverySolutionOverTheLimit_RecommendsNone()
    {
        var result = InstalledHeightStudy.Answer(Of(SpringRate(AtEighty_N_per_m), maxGauge_Pa: 2.8e5));

        Assert.Equal(2, result.Solutions.Count);
        Assert.DoesNotContain(result.Solutions, s => s.Recommended);
        Assert.StartsWith("Every height that gives 103.5 N/mm takes more than", Reason(result), StringComparison.Ordinal);
        Assert.Contains("2.87 bar gauge at 80.0 mm", Reason(result), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_FindingsAgainstEverySolution_StillRecommendsOne() // 200 mm of droop exist nowhere
    {
        var strut = Of(SpringRate(AtEighty_N_per_m)).Designed(d => d with { Limits = new TravelLimits(Droop_m: 0.2) });

        Assert.Single(InstalledHeightStudy.Answer(strut).Solutions, s => s.Recommended);
    }

    [Theory]
    [InlineData(1e-3)]
    [InlineData(1)]
    [InlineData(30)]
    public void Answer_PairAboutTheMinimum_IsFound(double above_N_per_m)
    {
        var result = InstalledHeightStudy.Answer(Of(SpringRate(100_008.23235 + above_N_per_m)));

        Assert.Equal(2, result.Solutions.Count);
        Assert.InRange(0.0926196, result.Solutions[0].Height_m, result.Solutions[1].Height_m);
    }

    [Fact]
    public void Answer_GasWithVolume_MovesSpringForceAndWantedRate()
    {
        // By hand: rod 22 mm, 10 bar and 60 cm³ at 460 mm; at 80 mm the damper is 400 mm long: 636.869 N, 9526.127 N/m.
        TelescopicDamperPart damper = new("gas", 0.022, 0.33, 0.46, 10e5, 60e-6, null, null);
        var strut = Of(new Target(TargetKind.WheelRate, AtEighty_N_per_m), damper: damper).Designed(d => d with { SpringToDamper_m = 0.32 }) with
        {
            Gas = new DamperGas(0.022, 0.46, 10e5, 60e-6),
        };

        var result = InstalledHeightStudy.Answer(strut);

        Assert.Equal(636.869, strut.GasForce_N(0.08), 0.001);
        Assert.Equal(3300 - 636.869, strut.SpringForce_N(0.08), 0.001);
        Assert.Equal(AtEighty_N_per_m - 9526.127, strut.TargetSpringRate_N_per_m(0.08), 0.001);
        Assert.Equal(72.082180, Assert.Single(result.Solutions).Height_m * 1e3, 1e-5);
        Assert.Equal(strut.GasForce_N(result.Solutions[0].Height_m), result.GasForce_N, 1e-9);
        Assert.Equal(3300, result.SpringForce_N + result.GasForce_N, 1e-9);
    }

    [Fact]
    public void Answer_SealAndDisplacedVolume_MoveTheHeights() // closed form with 15 cm² and 100 cm³
    {
        var strut = Of(SpringRate(AtEighty_N_per_m)).Designed(d => d with { SealAreaInAir_m2 = 15e-4, DisplacedVolume_m3 = 100e-6 });

        var heights = InstalledHeightStudy.Answer(strut).Solutions.Select(s => s.Height_m * 1e3).ToArray();

        Assert.Equal(77.712070, heights[0], 1e-5);
        Assert.Equal(101.797188, heights[1], 1e-5);
    }

    [Fact]
    public void Answer_LineVolume_CountsAgainstDisplaced()
    {
        var plain = InstalledHeightStudy.Answer(Of(SpringRate(AtEighty_N_per_m))).Solutions;
        var filled = InstalledHeightStudy.Answer(Of(SpringRate(AtEighty_N_per_m))
            .Designed(d => d with { DisplacedVolume_m3 = 70e-6, LineVolume_m3 = 70e-6 })).Solutions;

        Assert.Equal(plain[0].Height_m, filled[0].Height_m, 1e-9);
    }

    [Fact] // W = 2640 N at 0.8: Fspring = 3300 N; kw = 0.64·ks
    public void Answer_MotionRatio_StandsAsLoadOverRatioAndRateTimesItsSquare()
    {
        var result = InstalledHeightStudy.Answer(Of(new Target(TargetKind.WheelRate, 0.64 * AtEighty_N_per_m), motionRatio: 0.8));

        AssertState(result.Solutions[0], 80.0, 286_956.5);
        Assert.Equal(0.64 * AtEighty_N_per_m, result.Solutions[0].WheelRate_N_per_m, 0.01);
        Assert.Equal(Math.Sqrt(0.64 * AtEighty_N_per_m * 9.80665 / 2640) / (2 * Math.PI), result.Solutions[0].RideFrequency_Hz, 1e-8);
    }

    [Fact] // spring at 0.8, damper at 0.5, gas constant: 500 N
    public void WheelRate_SpringAndDamperApart_TakesEachThroughItsOwnRatio()
    {
        var strut = Of(new Target(TargetKind.WheelRate, 70_000), motionRatio: 0.8) with
        {
            DamperRatio = MotionRatio.Constant(0.5),
            Gas = new DamperGas(0.022, 0.46, 500 / (Math.PI / 4 * 0.022 * 0.022), null),
            ParasiticRate_N_per_m = 2000,
        };

        Assert.Equal((2640 - 500 * 0.5) / 0.8, strut.SpringForce_N(0.08), 1e-6); // 2987.5 N
        Assert.Equal(3300, strut.StrutForce_N, 1e-9);
        Assert.Equal(0.64 * 100_000 + 2000, strut.WheelRate_N_per_m(100_000, 0.08), 1e-6);
        Assert.Equal((70_000 - 2000) / 0.64, strut.TargetSpringRate_N_per_m(0.08), 1e-6);
    }

    [Fact] // s = 0.8·z + 1.5·z²: di/dz = 3 1/m; kw = 0.64·ks + 3300·3
    public void WheelRate_RatioThatChanges_AddsTheForceTerm()
    {
        double[] z = [.. Enumerable.Range(-6, 13).Select(k => k * 0.01)];
        var strut = Of(SpringRate(100_000), motionRatio: 0.8) with { SpringRatio = MotionRatio.FromTable(z, [.. z.Select(t => 0.8 * t + 1.5 * t * t)]) };

        Assert.Equal(64_000 + 9900, strut.WheelRate_N_per_m(100_000, 0.08), 1.0);
    }

    [Fact]
    public void RideFrequencyWithTyre_TyreInSeries_IsLower() // 66 240 N/m under 200 000 N/m: 49 760 N/m in series
    {
        var strut = Of(SpringRate(1), motionRatio: 0.8) with { TyreRate_N_per_m = 200_000 };

        Assert.Equal(Math.Sqrt(66_240.0 * 200_000 / 266_240 * 9.80665 / 2640) / (2 * Math.PI), strut.RideFrequencyWithTyre_Hz(66_240)!.Value, 1e-9);
        Assert.Null(Of(SpringRate(1)).RideFrequencyWithTyre_Hz(66_240));
    }

    [Fact]
    public void Answer_WheelRateAndFrequencyOfASolution_LeadBackToIt()
    {
        StrutCase With(Target target) => Of(target, motionRatio: 0.8) with { ParasiticRate_N_per_m = 3000 };
        var bySpring = InstalledHeightStudy.Answer(With(SpringRate(AtEighty_N_per_m))).Solutions[0];

        foreach (var target in new[] { new Target(TargetKind.WheelRate, bySpring.WheelRate_N_per_m), new Target(TargetKind.RideFrequency, bySpring.RideFrequency_Hz) })
            Assert.Equal(bySpring.Height_m, InstalledHeightStudy.Answer(With(target)).Solutions[0].Height_m, 1e-9);
        Assert.Equal(0.64 * AtEighty_N_per_m + 3000, bySpring.WheelRate_N_per_m, 0.01);
    }

    [Theory] // strut 380 mm, stacks 20 and 250 mm, spring 80 mm: 30 mm exposed; pitch 1.5, 4 mm at the stop
    [InlineData(0, 0.040, true, 30.0, 17.3333333)]
    [InlineData(0, 0.025, false, 30.0, 17.3333333)]
    public void Thread_AtAHeight_GivesExposedLengthAndTurns(double least_m, double greatest_m, bool reachable, double exposed_mm, double turns)
    {
        var thread = Threaded(least_m, greatest_m).Solutions[0].Thread!;

        Assert.Equal(exposed_mm, thread.Exposed_m * 1e3, 1e-6);
        Assert.Equal(turns, thread.Turns, 1e-6);
        Assert.Equal(reachable, thread.Reachable);
        if (reachable) Assert.Null(thread.Nearest);
    }

    [Fact] // 25 mm at most: the spring stays 5 mm higher, at 85 mm
    public void Thread_OutOfReach_GivesTheNearestItReaches()
    {
        var nearest = Threaded(0, 0.025).Solutions[0].Thread!.Nearest!;

        Assert.Equal(85, nearest.Height_m * 1e3, 1e-6);
        Assert.Equal(14, nearest.Turns, 1e-6);
        Assert.Equal(293_007.769, nearest.GaugePressure_Pa, 0.01);
        Assert.Equal(Rate_N_per_m(0.085, 3300), nearest.SpringRate_N_per_m, 0.01);
    }

    [Fact] // the thread ends 60 mm away from either height, where nothing was measured
    public void Shortfall_ThreadThatReachesNothingMeasured_CountsInFull()
    {
        var solutions = Threaded(0.09, 0.10).Solutions;

        Assert.All(solutions, s => Assert.Null(s.Thread!.Nearest));
        Assert.Equal(0.060, solutions[0].Room.Shortfall_m - Threaded(0, 0.04).Solutions[0].Room.Shortfall_m, 1e-6);
    }

    [Fact]
    public void Room_DamperElsewhere_IsCountedAsTravelOfTheSpring()
    {
        // At 80 mm the damper is 400 mm long, 30 mm from closed, 40 mm from full length; spring 0.8, damper 0.5.
        TelescopicDamperPart damper = new("apart", 0.022, 0.37, 0.44, null, null, null, null);
        var strut = Of(SpringRate(AtEighty_N_per_m), motionRatio: 0.8, damper: damper).Designed(d => d with { SpringToDamper_m = 0.32 }) with
        {
            DamperRatio = MotionRatio.Constant(0.5),
        };

        var room = InstalledHeightStudy.Answer(strut).Solutions[0].Room;

        Assert.Equal(0.048, room.DownToStop_m!.Value, 1e-9);
        Assert.Equal(0.064, room.UpToTopOut_m!.Value, 1e-9);
        Assert.Equal(0.020, room.DownToSpring_m, 1e-9);
        Assert.Equal(0.030, room.UpToSpring_m, 1e-9);
        Assert.Equal(0.020, room.ToDataEdge_m, 1e-9);
    }

    [Fact] // 300 and 360 kg: pg = m·g/0.0115
    public void SideGaugePressures_UnequalCorners_HoldEachSide()
    {
        var strut = Of(SpringRate(AtEighty_N_per_m)) with { Sprung = (2 * 3300 / 9.80665 - 360, 360) };

        var (left, right) = InstalledHeightStudy.Answer(strut).Solutions[0].SideGaugePressures;

        Assert.Equal((6600 - 360 * 9.80665) / 0.0115, left, 0.5);
        Assert.Equal(360 * 9.80665 / 0.0115, right, 0.5);
    }

    [Fact]
    public void RateWithAirSlowAndFast_StandBesideTheInServiceRate()
    {
        var solution = InstalledHeightStudy.Answer(Of(SpringRate(AtEighty_N_per_m))).Solutions[0];

        Assert.Equal(92_019.614 / 1.38 + 11_478.261, solution.SpringRateIsothermal_N_per_m, 0.01);
        Assert.Equal(92_019.614 / 1.38 * 1.4 + 11_478.261, solution.SpringRateAdiabatic_N_per_m, 0.01);
        Assert.Null(solution.SpringRateBand_N_per_m);
        Assert.Null(solution.HeightBand_m);
    }

    [Fact]
    public void Sensitivities_AgainstSolvingAgain_Agree()
    {
        const double seal = 4e-4, displaced = 60e-6, psi = 6894.757293168;
        var strut = Of(SpringRate(104_500)).Designed(d => d with { SealAreaInAir_m2 = seal, DisplacedVolume_m3 = displaced });

        var solution = InstalledHeightStudy.Answer(strut).Solutions[1]; // where the area narrows well: one psi is a small step
        double h = solution.Height_m, rate = Rate(h, 3300), pg = 3300 / (Area_m2(h) - seal);
        var s = solution.Sensitivities;

        Assert.Equal(Rate(h - 1e-3, 3300) - rate, s.RateByThread_N_per_m, 0.01);
        Assert.Equal(3300 / (Area_m2(h - 1e-3) - seal) - pg, s.GaugePressureByThread_Pa, 0.01);
        Assert.Equal(Rate(h, 3300 + 98.0665) - rate, s.RateByMass_N_per_m, 0.01);
        Assert.Equal(98.0665 / (Area_m2(h) - seal), s.GaugePressureByMass_Pa, 0.01);
        Assert.Equal((Rate(h + 1e-5, 3300) - Rate(h - 1e-5, 3300)) / 2e-5, s.RateSlope_N_per_m2, 1e-4 * Math.Abs(s.RateSlope_N_per_m2) + 1);
        Assert.Equal(Rate(h, 3300, 70e-6) - rate, s.RateByDisplaced_N_per_m, 0.01);
        Assert.Equal(0.02 / 1.38 * (rate + pg * AreaSlope_m(h)), s.RateByExponent_N_per_m, 0.01);

        // One psi more at the same thread: the car rises to where (pg + 1 psi)·(Ae − As) is 3300 N again.
        double low = h, high = h + 0.02;
        for (var step = 0; step < 60; step++)
        {
            var middle = (low + high) / 2;
            (low, high) = (pg + psi) * (Area_m2(middle) - seal) > 3300 ? (middle, high) : (low, middle);
        }

        Assert.Equal(low - h, s.RideHeightByGaugePressure_m, 1e-6);
        var rod = seal * s.RideHeightByGaugePressure_m; // comes out meanwhile
        var risen = h + s.RideHeightByGaugePressure_m;
        var slow = Exponent * (pg + psi + Ambient_Pa) * (0.0112 - seal) * (Area_m2(risen) - seal)
            / (Volume_m3(risen) - displaced - rod) - (pg + psi) * AreaSlope_m(risen);
        Assert.Equal(slow - rate, s.RateByGaugePressure_N_per_m, 0.01);

        static double Rate(double h, double force_N, double inside_m3 = displaced) => Rate_N_per_m(h, force_N, seal, inside_m3);
    }

    [Fact]
    public void Answer_FromScatteredRows_CarriesABand()
    {
        MeasuredSpring data = new(Tests.Physics.LoadFrame.Rows(Tests.Physics.KnownSpring.Single, 1, named: true));
        var result = InstalledHeightStudy.Answer(Of(data, SpringRate(124_000), 0.040, 0.075, 8e5));

        var solution = result.Solutions[0];
        var (low, high) = solution.SpringRateBand_N_per_m!.Value;

        Assert.InRange(124_000, low, high);
        Assert.InRange(high - low, 200, 10_000);
    }

    private static InstalledHeightResult Threaded(double least_m, double greatest_m) =>
        InstalledHeightStudy.Answer(Of(SpringRate(AtEighty_N_per_m)).Designed(d => d with
        {
            StrutLengthAtDrive_m = 0.380,
            UpperStack_m = 0.020,
            LowerStack_m = 0.250,
            Thread = new ThreadDesign(0.0015, least_m, greatest_m, 0.004),
        }));

    private static void AssertState(HeightSolution solution, double height_mm, double gaugePressure_Pa)
    {
        Assert.Equal(height_mm, solution.Height_m * 1e3, 1e-5);
        Assert.Equal(gaugePressure_Pa, solution.GaugePressure_Pa, 0.1);
    }

    private static string Reason(InstalledHeightResult result) => new HeightWords(result, DisplayUnits.Metric).Reason();
}
