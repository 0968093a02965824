using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies;

/// <summary>
/// A strut that carries 3300 N at motion ratio 1 on a spring known in closed form, x = h − 80 mm:
/// Ae = 0.0115 − 0.04·x − 1.5·x² m², V = 0.00075 + 0.0112·x m³ (which not-a-knot splines reproduce). Its rate at that load
/// falls from 126.16 N/mm at 60 mm to 100.008 at 92.62 mm and rises to 107.81 at 110 mm.
/// </summary>
internal static class SampleStrut
{
    public const double Load_N = 3300, Exponent = 1.38, Ambient_Pa = 101_325;

    public static double Area_m2(double h) => 0.0115 - 0.04 * (h - 0.08) - 1.5 * (h - 0.08) * (h - 0.08);

    public static double AreaSlope_m(double h) => -0.04 - 3 * (h - 0.08);

    public static double Volume_m3(double h) => 0.00075 + 0.0112 * (h - 0.08);

    /// <summary>The rate at a spring force in closed form, seal and displaced volume taken off.</summary>
    public static double Rate_N_per_m(double h, double force_N, double seal_m2 = 0, double displaced_m3 = 0)
    {
        double area = Area_m2(h) - seal_m2, pg = force_N / area;
        return Exponent * (pg + Ambient_Pa) * (0.0112 - seal_m2) * area / (Volume_m3(h) - displaced_m3) - pg * AreaSlope_m(h);
    }

    public static StrutCase Of(
        Target target, double least_m = 0.06, double greatest_m = 0.11, double maxGauge_Pa = 8e5, double motionRatio = 1,
        DamperPart? damper = null)
    {
        CharacteristicSpring data = new([.. Enumerable.Range(0, 11).Select(k => least_m + (greatest_m - least_m) * k / 10)
            .Select(h => new CharacteristicRow(h, Area_m2(h), Volume_m3(h)))]);
        return Of(data, target, least_m, greatest_m, maxGauge_Pa, motionRatio, damper);
    }

    public static StrutCase Of(
        SpringData data, Target target, double least_m, double greatest_m, double maxGauge_Pa, double motionRatio = 1,
        DamperPart? damper = null)
    {
        AirSpringPart part = new("sample", "sample", least_m, greatest_m, maxGauge_Pa, null, null, data, "sample.csv");
        var sprung = Load_N * motionRatio / 9.80665;
        return new StrutCase
        {
            End = AxleEnd.Front,
            Design = new StrutDesign(
                part, damper ?? new LinearDamperPart(1500), target, null, null, null, null, null, null, null, null, null, null, new TravelLimits()),
            Part = part,
            Fit = AirSpringFit.Of(data),
            Load = "empty",
            Sprung = (sprung, sprung),
            SpringRatio = MotionRatio.Constant(motionRatio),
            DamperRatio = MotionRatio.Constant(motionRatio),
            Ambient_Pa = Ambient_Pa,
            Exponent = Exponent,
            ExponentSource = ExponentSource.InServiceDefault,
        };
    }

    public static StrutCase Designed(this StrutCase strut, Func<StrutDesign, StrutDesign> change) =>
        strut with { Design = change(strut.Design) };

    public static Target SpringRate(double rate_N_per_m) => new(TargetKind.SpringRate, rate_N_per_m);
}
