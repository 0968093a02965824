using Bellowsmith.Quality.Leaks;
using CsCheck;

namespace Bellowsmith.Tests.Quality.Leaks;

public sealed class LeakJudgementTests
{
    private static readonly DecayTest _test = new()
    {
        Volume_m3 = new(2e-3, 1e-5),
        StartAbsolutePressure_Pa = new(9e5, 100),
        StartTemperature_K = new(300, 0.1),
        EndAbsolutePressure_Pa = new(8.9e5, 100),
        EndTemperature_K = new(297, 0.1),
        Time_s = new(3600, 1),
    };

    [Fact] // 9e5 − 8.9e5·300/297
    public void CorrectedLoss_AtTheStartTemperature_IsWhatCoolingLeaves() => Assert.Equal(1010.10101, _test.Estimate().CorrectedLoss_Pa, 1e-5);

    [Fact] // limit as a leak rate: 2e-3·293.15/300·1010.101/3600
    public void Rate_AndCorrectedLoss_AreOneThing() => Assert.Equal(5.4835e-4, _test.Rate.Value_Pa_m3_per_s, 1e-8);

    [Theory]
    [InlineData(2200, LeakVerdict.Conforms, LeakReason.Shown)]
    [InlineData(1100, LeakVerdict.NotDecidable, LeakReason.TooUncertain)]
    [InlineData(100, LeakVerdict.DoesNotConform, LeakReason.Shown)]
    public void Of_ALimit_NeedsNinetyFivePercent(double limit_Pa, LeakVerdict verdict, LeakReason reason)
    {
        LeakJudgement judgement = LeakJudgement.Of(_test.Estimate(), limit_Pa, _test.PascalsPerKelvin);

        Assert.Equal((verdict, reason), (judgement.Verdict, judgement.Reason));
        Assert.Equal(verdict == LeakVerdict.NotDecidable, judgement.Remedy is not null);
    }

    [Fact]
    public void Of_NoLimit_JudgesNothing() => Assert.Equal(LeakReason.NoLimit, LeakJudgement.Of(_test.Estimate(), null, 3000).Reason);

    [Fact]
    public void Of_AGainBeyondDoubt_IsNotDecidable()
    {
        LeakEstimate gained = (_test with { EndTemperature_K = new(290, 0.1) }).Estimate();

        Assert.True(gained.CorrectedLoss_Pa < 0);
        Assert.Equal((LeakVerdict.NotDecidable, LeakReason.Gained), LeakJudgement.Of(gained, 5000, 3000) is var j ? (j.Verdict, j.Reason) : default);
    }

    [Fact] // u² of the rest is 30² + 40²; (1000 − 900)/1.6448536 = 60.7957, whose square less 2500 leaves 1196.1 for two
    public void Remedy_OfAnOpenTest_WouldJustDecideIt()
    {
        LeakEstimate open = new(new(1e-4, 293.15), 900, 3600,
        [
            new(LeakSource.StartGauge, 0, 30), new(LeakSource.EndGauge, 0, 40),
            new(LeakSource.StartTemperature, 0, 300), new(LeakSource.EndTemperature, 0, 400),
        ]);
        LeakRemedy remedy = LeakJudgement.Of(open, 1000, 3000).Remedy!;

        Assert.Equal(24.4553 / 3000, remedy.TemperatureUncertainty_K!.Value, 1e-6);
        Assert.Null(remedy.GaugeUncertainty_Pa);
        Assert.Equal(502.494 / 60.7957, remedy.TimeFactor!.Value, 1e-4);
    }

    [Fact]
    public void Volume_OfAnyUncertainty_LeavesTheVerdictAlone() => Assert.Equal(
        _test.Estimate().LossUncertainty_Pa, (_test with { Volume_m3 = new(2e-3, 1e-3) }).Estimate().LossUncertainty_Pa);

    [Fact] // 9e5·0.0002
    public void Creep_IsASourceOfItsOwn() => Assert.Equal(
        180, (_test with { CreepUncertainty = 2e-4 }).Estimate().LossUncertaintyOf_Pa(LeakSource.Creep), 1e-9);

    [Fact]
    public void Probability_InAnotherUnit_IsTheSame() => Gen.Double[0.1, 10].Select(Gen.Double[100, 3000]).Sample((factor, limit) =>
    {
        DecayTest scaled = _test with
        {
            StartAbsolutePressure_Pa = new(9e5 * factor, 100 * factor),
            EndAbsolutePressure_Pa = new(8.9e5 * factor, 100 * factor),
        };

        Assert.Equal(
            LeakJudgement.Of(_test.Estimate(), limit, _test.PascalsPerKelvin).ConformanceProbability!.Value,
            LeakJudgement.Of(scaled.Estimate(), limit * factor, scaled.PascalsPerKelvin).ConformanceProbability!.Value, 1e-9);
    });

    [Theory]
    [InlineData(1, 10, 0.95, 1.6448536)]
    [InlineData(1, 4, 0.95, 1.7805)]
    public void GuardBand_BetweenTwoLimits_IsTheOneSidedOneWhereTheyAreFar(double uncertainty, double tolerance, double probability, double expected)
    {
        double band = Conformance.GuardBand(uncertainty, 0, tolerance, probability)!.Value;

        Assert.Equal(probability, Conformance.Between(band, uncertainty, 0, tolerance), 1e-9);
        Assert.Equal(expected, band, 2e-2);
    }

    [Fact]
    public void GuardBand_OfATightTolerance_DoesNotExist() => Assert.Null(Conformance.GuardBand(1, 0, 3, 0.95));

    [Theory]
    [InlineData(0, 0, 1)]
    [InlineData(1, 0, 0)]
    public void Below_WithoutUncertainty_IsYesOrNo(double estimate, double limit, double expected) => Assert.Equal(expected, Conformance.Below(estimate, 0, limit));

    [Fact]
    public void Findings_OfACoarseGauge_Miss()
    {
        MethodFinding[] findings = [.. MethodCheck.Of(_test, 2000, 500, 0.01, held: true)];

        Assert.Equal([true, false, true, true, false, true], findings.Select(f => f.Holds));
        Assert.Equal(500, findings[1].Value);
        Assert.Equal(200, findings[1].Limit);
    }

    [Fact]
    public void Estimate_OfNoVolume_Throws() => Assert.Throws<ArgumentException>(() => (_test with { Volume_m3 = new(0, 0) }).Estimate());
}
