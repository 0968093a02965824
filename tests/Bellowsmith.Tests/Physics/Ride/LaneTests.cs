using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;
using CsCheck;

namespace Bellowsmith.Tests.Physics.Ride;

public sealed class LaneTests
{
    private static readonly TravelRange _range = new(-0.06, 0.04);

    [Fact]
    public void Over_EightCornersSideBySide_AreEachWhatTheyAreAlone()
    {
        Corner[] corners = [.. Enumerable.Range(0, 11).Select(k => Made(40e3 + 3e3 * k, 1200 + 150 * k, stop: k % 2 == 0))];
        double[] road = Road(7_000);

        RideFigures[] together = RideRun.Over(corners, road);

        Assert.All(together.Zip(corners), pair => Assert.Equal(RideRun.Over([pair.Second], road)[0], pair.First));
    }

    [Fact]
    public void KnotSum_AnyCurve_IsTheCurve() => Gen.Double[-3, 3].Sample(v =>
    {
        MonotoneCurve curve = MonotoneCurve.Through([-1, -0.3, -0.1, 0, 0.05, 0.4, 1.2], [-900, -500, -300, 0, 250, 800, 1500], 400, 700);

        Assert.Equal(curve.At(v).Value, Summed(curve, v), 1e-9);
    });

    [Fact] // a cell a thousandth as wide as the curve, a kink, a flat, a zero anywhere: 1e-6 of its span
    public void KnotSum_AnyKnots_IsTheCurve() =>
        Gen.Select(Gen.Double[5e-3, 0.5].Array[1, 10], Gen.Double[0, 500].Array[10], Gen.Int[0, 9], Gen.Double[-0.2, 1.2]).Sample((widths, rises, zero, at) =>
        {
            double[] x = new double[widths.Length + 1], y = new double[x.Length];
            for (int k = 0; k < widths.Length; k++) (x[k + 1], y[k + 1]) = (x[k] + widths[k], y[k] + rises[k]);
            double offset = y[Math.Min(zero, widths.Length)], middle = x[Math.Min(zero, widths.Length)], span = Math.Max(1, y[^1]);
            MonotoneCurve curve = MonotoneCurve.Through(Array.ConvertAll(x, place => place - middle), Array.ConvertAll(y, force => force - offset), 100, 300);
            double v = x[^1] * at - middle;

            Assert.Equal(curve.At(v).Value, Summed(curve, v), 1e-6 * span);
        });

    [Fact] // the same sums, gathered lane by lane while driving and from the kept steps afterwards
    public void Over_WeightedFigures_AreThoseOfTheKeptSteps()
    {
        Corner corner = Made(50e3, 1500, stop: true);
        double[] road = Road(30_000);

        RideFigures figures = RideRun.Over([corner], road)[0];
        WeightedVibration kept = WeightedVibration.Of(RideRun.Trace(corner, road).Acceleration_m_per_s2, 1000, RideWeighting.Vertical(1000), RideRun.Settling_s);

        Assert.Equal(kept.Rms_m_per_s2, figures.WeightedRms_m_per_s2, 1e-9);
        Assert.Equal(kept.Dose_m_per_s175, figures.VibrationDose_m_per_s175, 1e-9);
        Assert.Equal(kept.CrestFactor!.Value, figures.CrestFactor, 1e-9);
        Assert.InRange(figures.GreatestRunningRms_m_per_s2, 0.98 * kept.MaximumTransient_m_per_s2!.Value, 1.02 * kept.MaximumTransient_m_per_s2!.Value);
    }

    [Fact] // no damper, no heat, a road that never moves: what was given stays
    public void Trace_WithoutLosses_KeepsItsEnergy()
    {
        Corner corner = Made(50e3, 0, stop: false);
        double[] road = new double[20_000];
        Array.Fill(road, 0.005);

        double[] travel = RideRun.Trace(corner, road, 2e-4).Travel_m;

        Assert.Equal(travel.AsSpan(0, 5_000).ToArray().Max(), travel.AsSpan(15_000, 5_000).ToArray().Max(), 2e-4);
    }

    [Fact] // second order: halving the step quarters the error, seen from how the answers approach each other
    public void Trace_StepHalvedOnASmoothRoad_ComesFourTimesAsNear()
    {
        Corner corner = Made(50e3, 1500, stop: false);
        double After(double step_s)
        {
            double[] road = new double[(int)Math.Round(2.0 / step_s)];
            for (int k = 0; k < road.Length; k++) road[k] = 0.01 * Math.Pow(Math.Sin(9 * (k + 1) * step_s), 3);
            return RideRun.Trace(corner, road, step_s).Travel_m[^1];
        }

        double coarse = After(2e-3), middle = After(1e-3), fine = After(5e-4);

        Assert.InRange((coarse - middle) / (middle - fine), 3.8, 4.2);
    }

    [Fact] // nothing pushes where a stop is not met
    public void Over_AStopThatPushesFromTheStart_IsRefused()
    {
        Corner corner = Made(50e3, 1500, stop: true) with { BumpStop = MonotoneCurve.Through([0.01, 0.02], [100, 500], 0, 1e5) };

        Assert.Throws<ArgumentException>(() => RideRun.Over([corner], Road(10)));
    }

    [Fact]
    public void Trace_OnALevelRoad_StaysAtRest()
    {
        RideTrace trace = RideRun.Trace(Made(50e3, 1500, stop: true), new double[2_000]);

        Assert.All(trace.Travel_m, travel => Assert.Equal(0, travel, 1e-12));
        Assert.All(trace.StopForce_N, force => Assert.Equal(0, force));
    }

    [Theory]
    [InlineData(1.6)]
    [InlineData(20)]
    public void TravelPolynomial_OfASmoothLaw_HoldsItsTolerance(double power)
    {
        double Law(double w) => 3500 * Math.Pow(1 - 4 * w, -power / 4);

        TravelPolynomial fit = TravelPolynomial.Of(Law, _range, 0.1);

        Assert.True(fit.GreatestError <= 0.1);
        Assert.All(Enumerable.Range(0, 101), k => Assert.Equal(Law(_range.Travel_m(-1 + k / 50.0)), fit.At(-1 + k / 50.0), 0.2));
    }

    private static double Summed(MonotoneCurve curve, double x)
    {
        KnotCurves<Lane1> curves = new();
        curves.Load([Made(50e3, 0, stop: false) with { DamperForce = curve }], corner => corner.DamperForce);
        (Lane1 up, Lane1 down) = curves.Sum.At(Lane1.All(x));
        return (up + down).Value;
    }

    internal static Corner Made(double rate, double damping, bool stop)
    {
        TravelPolynomial Fit(Func<double, double> law) => TravelPolynomial.Of(law, _range, 1e-6);
        return new Corner
        {
            SprungMass_kg = 350,
            UnsprungMass_kg = 38,
            TyreRate_N_per_m = 225e3,
            Range = _range,
            Force = Fit(w => 350 * StandardGravity.Value_m_per_s2 + rate * w),
            ForceByEntropy = Fit(_ => 3600),
            ForceByEntropySquare = Fit(_ => 1800),
            Cooling = Fit(w => stop ? -2 * w : 0),
            CoolingByEntropy = Fit(_ => stop ? -1 : 0),
            TimeConstant_s = stop ? 0.5 : double.PositiveInfinity,
            DamperRatio = Fit(w => 0.95 + 0.3 * w),
            DamperForce = MonotoneCurve.Through([-1, 0, 1], [-damping * 0.6, 0, damping]),
            BumpStop = stop ? MonotoneCurve.Through([0.012, 0.02, 0.03], [0, 400, 3000], 0, 2e6) : null,
        };
    }

    internal static double[] Road(int steps)
    {
        double[] road = new double[steps];
        RoadProfile.Fill(road, 0.025, RoadClass.D, 3);
        return road;
    }
}
