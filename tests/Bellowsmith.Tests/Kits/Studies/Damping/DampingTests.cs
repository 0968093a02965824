using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Damping;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Kits.Schemas;
using CsCheck;

namespace Bellowsmith.Tests.Kits.Studies.Damping;

public sealed class DampingTests
{
    /// <summary>320 kg on 38 N/mm at the wheel: critical 6974.1 N·s/m; 5023 N·s/m at a ratio of 0.95 are 4533 at the wheel, 0.65.</summary>
    [Fact]
    public void Answer_LinearDamper_GivesItsRatioWithoutAClick()
    {
        var answer = DampingStudy.Answer(Corner(5023), 0.3);

        Assert.Equal(DampingRefusal.Nothing, answer.Refusal);
        Assert.Null(answer.Chosen!.Click);
        Assert.Equal(0.65, answer.Chosen.Ratio, 0.0005);
        Assert.Null(answer.Distinguishable);
    }

    /// <summary>Clicks of 6000, 5000, 4000 and 3000 N·s/m in both strokes: 0.7764, 0.6470, 0.5176 and 0.3882 of critical.</summary>
    [Theory]
    [InlineData(0.6, 1, 0.6470)]
    [InlineData(0.5, 2, 0.5176)]
    [InlineData(0.776, 0, 0.7764)]
    public void Answer_LinearClicks_ChoosesTheNearest(double wanted, double click, double ratio)
    {
        var answer = DampingStudy.Answer(Corner(Rows(6000, 5000, 4000, 3000)), wanted);

        Assert.Equal(click, answer.Chosen!.Click);
        Assert.Equal(ratio, answer.Chosen.Ratio, 0.0001);
        Assert.Equal(ratio, answer.Chosen.ReboundRatio, 0.0001);
        Assert.Equal(click == 0 ? null : click - 1, answer.Below?.Click);
        Assert.Equal(click + 1, answer.Above!.Click);
        Assert.Null(answer.Distinguishable);
        Assert.All(answer.Amplitudes, a => Assert.Equal(ratio, a.Ratio!.Value, 0.0001));
    }

    [Theory]
    [InlineData(0.9, DampingRefusal.EveryClickSofter, 0)]
    [InlineData(0.2, DampingRefusal.EveryClickHarder, 3)]
    public void Answer_NoClickReaches_NamesTheNearest(double wanted, DampingRefusal refusal, double nearest)
    {
        var answer = DampingStudy.Answer(Corner(Rows(6000, 5000, 4000, 3000)), wanted);

        Assert.Equal(refusal, answer.Refusal);
        Assert.Null(answer.Chosen);
        Assert.Equal(nearest, answer.Nearest!.Click);
        Assert.Contains(refusal == DampingRefusal.EveryClickSofter ? "every one damps less" : "every one damps more",
            new DampingWords(answer, DisplayUnits.Metric).Answer(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_ClickBetweenMeasuredOnes_IsMarked()
    {
        var rows = Rows(6000, 5000, 4000).Select(p => p with { Click = 2 * p.Click });
        var answer = DampingStudy.Answer(Corner(rows), 0.58);

        Assert.Equal((3, true), (answer.Chosen!.Click, answer.Chosen.Interpolated));
        Assert.Equal([false, true, false, true, false], answer.Clicks.Select(c => c.Interpolated));
    }

    [Fact]
    public void Answer_DynoThatStopsBelowTheAmplitude_SaysHowFarItWent()
    {
        var answer = DampingStudy.Answer(Corner(Rows(6000, 5000).Where(p => p.Velocity_m_per_s < 0.1)), 0.6);

        Assert.Equal(DampingRefusal.SpeedNotMeasured, answer.Refusal);
        Assert.Contains("0.05 m/s in rebound", new DampingWords(answer, DisplayUnits.Metric).Answer(), StringComparison.Ordinal);
    }

    [Fact]
    public void Answer_SpeedsNotMeasured_AreNullOverAmplitude()
    {
        var answer = DampingStudy.Answer(Corner(Rows(6000, 5000).Where(p => Math.Abs(p.Velocity_m_per_s) < 0.3)), 0.6);

        Assert.Equal([false, false, false, true, true, true], answer.Amplitudes.Select(a => a.Ratio is null));
    }

    /// <summary>
    /// Two runs in which the clicks scatter 100 N·s/m against each other: the two differences lie 200 to either side of their mean, whose
    /// standard error is 200 with one degree; t at 97.5 % is 12.7062, so limits lie 2541 to either side. A step of 3000 is real,
    /// one of 800 not shown. The same drift of 300 in both clicks of a run changes nothing.
    /// </summary>
    [Theory]
    [InlineData(3000, true)]
    [InlineData(800, false)]
    public void Distinguishable_StepAgainstScatter_IsByTheLimits(double step, bool distinct)
    {
        var rows = Rows(5000, 5000 - step).SelectMany(p =>
        {
            double against = (p.Click % 2 == 0 ? 100 : -100) * p.Velocity_m_per_s, drift = 150 * p.Velocity_m_per_s;
            return new[] { p with { Run = "1", Force_N = p.Force_N + against + drift }, p with { Run = "2", Force_N = p.Force_N - against - drift } };
        });
        var answer = DampingStudy.Answer(Corner(rows), 0.647);

        Assert.Equal(distinct, answer.Distinguishable);
        var limits = Assert.Single(answer.Steps);
        Assert.Equal(-step, limits.Step_N_s_per_m, 0.01);
        Assert.Equal(2541.2, limits.High_N_s_per_m - limits.Step_N_s_per_m, 1.0);
    }

    [Fact]
    public void Answer_EverythingScaled_ChoosesTheSameClick() => Gen.Select(Gen.Double[0.2, 5], Gen.Double[0.4, 0.75]).Sample((scale, wanted) =>
    {
        var corner = Corner(Rows(6000, 5000, 4000, 3000));
        var scaled = Corner(Rows(6000 * scale, 5000 * scale, 4000 * scale, 3000 * scale)) with
        {
            Drive = corner.Drive! with { WheelRate_N_per_m = corner.Drive!.WheelRate_N_per_m * scale * scale },
        };

        Assert.Equal(DampingStudy.Answer(corner, wanted).Chosen!.Click, DampingStudy.Answer(scaled, wanted).Chosen!.Click);
    });

    /// <summary>The two-mass ratios of 240 kg, 36 kg, 16 N/mm, 160 N/mm and 980 N·s/m: 0.21782 and 0.20126, derived.</summary>
    [Fact]
    public void ModeRatios_WithATyre_AreTheTwoMasses()
    {
        var corner = Corner(980) with
        {
            DamperRatio = 1,
            UnsprungMass_kg = 36,
            TyreRate_N_per_m = 160_000,
            Drive = new WheelState("a", 240, 16_000),
        };
        var answer = DampingStudy.Answer(corner, 0.25);

        Assert.Equal(0.21782, answer.Chosen!.BodyModeRatio!.Value, 1e-5);
        Assert.Equal(0.20126, answer.Chosen.WheelModeRatio!.Value, 1e-5);
        Assert.Equal(0.25005, answer.Chosen.Ratio, 1e-5);
    }

    [Fact]
    public void Of_DamperWithoutDyno_SaysWhatIsMissing()
    {
        using var folder = new SampleFolder();

        var faults = Assert.Throws<FaultsException>(() => DampingCases.Of(KitReader.Read(folder.PathOf("kit.json")), new StudyConditions())).Faults;

        Assert.Contains(faults, fault => fault.Where == "struts.front.damper");
    }

    /// <summary>25 N/mm at 0.75 of wheel travel are 14.06 N/mm at the wheel; 1500 N·s/m at 0.8 are 960.</summary>
    [Fact]
    public void Of_SpringAndDamperByNumbers_RunsWithoutLengths()
    {
        using var folder = new SampleFolder();
        var kit = KitReader.Read(folder.PathOf("kit.json"));
        var corner = Assert.Single(DampingCases.Of(kit with { Front = null }, new StudyConditions(Load: "empty")));

        Assert.Equal(14_062.5, corner.Drive!.WheelRate_N_per_m, 1e-6);
        Assert.Equal(267.5, corner.SprungMass_kg, 1e-9);
        Assert.Equal(960, DampingStudy.Answer(corner, 0.3).Chosen!.Damping_N_s_per_m, 1e-6);
        Assert.Equal(["empty", "two up"], corner.Loads.Select(load => load.Load));
    }

    internal static TelescopicDamperPart Part { get; } = new("sample", 0.014, 0.26, 0.39, null, null, null, "d.csv");

    internal static DynoPoint[] Rows(params double[] coefficients) =>
    [
        .. from click in Enumerable.Range(0, coefficients.Length)
           from v in new[] { 0.03, 0.05, 0.13, 0.26, 0.52 }
           from sign in new[] { -1, 1 }
           select new DynoPoint(click, sign * v, sign * v * coefficients[click], null, null, 2 + click),
    ];

    internal static DampingCase Corner(IEnumerable<DynoPoint> rows) => Corner(Part.Fit(new DynoPoints([.. rows], GasIn: false), []), null);

    internal static DampingCase Corner(double coefficient) => Corner(null, Damper.Linear(coefficient));

    internal static DampingCase Corner(DamperFit? fit, Damper? linear)
    {
        return new DampingCase
        {
            End = AxleEnd.Front,
            Load = "a",
            SprungMass_kg = 320,
            UnsprungMass_kg = 38,
            TyreRate_N_per_m = null,
            DamperRatio = 0.95,
            Fit = fit,
            Damper = fit?.Damper ?? linear!,
            Drive = new WheelState("a", 320, 38_000),
            Loads = [],
            Heights = [],
        };
    }
}
