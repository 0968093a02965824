using Bellowsmith.Kits.Studies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// One strut at its load over every height that spring and data share, in SI, each height taken as the installed one. It does
/// not depend on the setting: a page computes it once per load and shows it at every setting.
/// </summary>
public sealed class HeightSweep
{
    public const int Places = 65;

    private HeightSweep(StrutCase strut) => Case = strut;

    public StrutCase Case { get; }

    public double[] Height_m { get; } = new double[Places];

    /// <summary>Gauge pressure that carries the load; NaN where none does.</summary>
    public double[] GaugePressure_Pa { get; } = new double[Places];

    public double[] SpringRate_N_per_m { get; } = new double[Places];
    public double[] RideFrequency_Hz { get; } = new double[Places];
    public double[] EffectiveArea_m2 { get; } = new double[Places];

    /// <summary>The rate the target asks for, which moves a little with height where the damper's gas does; NaN without one.</summary>
    public double[] TargetSpringRate_N_per_m { get; } = new double[Places];

    /// <summary>True where the gauge pressure was tested. With one level of it tested none is told apart.</summary>
    public bool[] Tested { get; } = new bool[Places];

    /// <summary>95 % bands; empty where the data carry no scatter.</summary>
    public (double Low, double High)[] GaugePressureBand_Pa { get; private set; } = [];

    public (double Low, double High)[] SpringRateBand_N_per_m { get; private set; } = [];

    public static HeightSweep Of(StrutCase strut)
    {
        HeightSweep sweep = new(strut);
        if (strut.Fit.HasBand)
            (sweep.GaugePressureBand_Pa, sweep.SpringRateBand_N_per_m) = (new (double, double)[Places], new (double, double)[Places]);
        for (int k = 0; k < Places; k++) sweep.Settle(k);
        return sweep;
    }

    private void Settle(int k)
    {
        double height = Case.LeastHeight_m + (Case.GreatestHeight_m - Case.LeastHeight_m) * k / (Places - 1);
        double force = Case.SpringForce_N(height);
        double gauge = GaugeFor(Case.Spring(), height, force), rate = RateAt(Case.Spring(), height, gauge);
        Height_m[k] = height;
        GaugePressure_Pa[k] = gauge;
        SpringRate_N_per_m[k] = rate;
        RideFrequency_Hz[k] = Case.RideFrequency_Hz(Case.WheelRate_N_per_m(rate, height));
        EffectiveArea_m2[k] = double.IsNaN(gauge) ? double.NaN : Case.Fit.Spring.At(height, gauge).EffectiveArea_m2;
        TargetSpringRate_N_per_m[k] = Case.Design.Target is null ? double.NaN : Case.TargetSpringRate_N_per_m(height);
        Tested[k] = Case.Fit.PressureLevels < 2 || gauge >= Case.Fit.LeastGaugePressure_Pa && gauge <= Case.Fit.GreatestGaugePressure_Pa;
        if (GaugePressureBand_Pa.Length > 0) Band(k, height, force);
    }

    private void Band(int k, double height, double force)
    {
        (double, double) none = (double.NaN, double.NaN);
        GaugePressureBand_Pa[k] = Case.Fit.Band(s => GaugeFor(Case.SpringOf(s), height, force)) ?? none;
        SpringRateBand_N_per_m[k] = Case.Fit.Band(s =>
        {
            StrutSpring spring = Case.SpringOf(s);
            return RateAt(spring, height, GaugeFor(spring, height, force));
        }) ?? none;
    }

    private double RateAt(in StrutSpring spring, double height, double gauge) =>
        double.IsNaN(gauge) ? double.NaN : spring.SealedRate_N_per_m(height, gauge, Case.Exponent);

    private static double GaugeFor(in StrutSpring spring, double height, double force)
    {
        double gauge = spring.GaugePressureFor_Pa(force, height);
        return gauge > 0 ? gauge : double.NaN;
    }
}
