using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// The straight lever of [Barton Fieldhouse 2018, eqs 3.29–3.33], READ, as a strut of a kit: the wheel at twice the spring's
/// arm, so a quarter of the spring rate stands at the wheel and the spring carries twice the wheel's load.
/// </summary>
public sealed class LeverUnderAStrut
{
    private const double SpringRate_N_per_m = 40_000, Height_m = 0.10;

    [Fact]
    public void WheelRate_WheelAtTwiceTheSpringsArm_IsAQuarter() =>
        Assert.Equal(10_000, Strut(TargetKind.SpringRate, SpringRate_N_per_m).WheelRate_N_per_m(SpringRate_N_per_m, Height_m));

    [Fact]
    public void SpringForce_WheelAtTwiceTheSpringsArm_IsTwiceTheLoad() =>
        Assert.Equal(2 * 400 * 9.80665, Strut(TargetKind.SpringRate, SpringRate_N_per_m).SpringForce_N(Height_m), 1e-9);

    [Fact]
    public void TargetSpringRate_OfTheQuarterAtTheWheel_IsTheWholeAtTheSpring() =>
        Assert.Equal(SpringRate_N_per_m, Strut(TargetKind.WheelRate, 10_000).TargetSpringRate_N_per_m(Height_m), 1e-9);

    [Fact] // a table of the same lever, strut travel = wheel travel / 2
    public void WheelRate_LeverGivenAsATable_IsAQuarter()
    {
        var strut = Strut(TargetKind.SpringRate, SpringRate_N_per_m) with
        {
            SpringRatio = MotionRatio.FromTable([-0.06, -0.03, 0, 0.03, 0.06], [-0.03, -0.015, 0, 0.015, 0.03]),
        };

        Assert.Equal(10_000, strut.WheelRate_N_per_m(SpringRate_N_per_m, Height_m), 1e-4);
    }

    private static StrutCase Strut(TargetKind kind, double wanted)
    {
        CharacteristicSpring data = new([.. new[] { 0.08, 0.09, 0.10, 0.11 }
            .Select(h => new CharacteristicRow(h, 0.012, 0.012 * h))]);
        AirSpringPart part = new("piston", "cylinder", 0.08, 0.11, 1e6, null, null, data, "piston.csv");
        return new StrutCase
        {
            End = AxleEnd.Front,
            Design = new StrutDesign(
                part, new LinearDamperPart(1500), new Target(kind, wanted), null, null, null, null, null, null, null, null, null, null,
                new TravelLimits()),
            Part = part,
            Fit = AirSpringFit.Of(data),
            Load = "empty",
            Sprung = (400, 400),
            SpringRatio = MotionRatio.Constant(0.5),
            DamperRatio = MotionRatio.Constant(0.5),
            Ambient_Pa = 101_325,
            Exponent = 1.38,
            ExponentSource = ExponentSource.InServiceDefault,
        };
    }
}
