using Bellowsmith.Physics;
using Bellowsmith.Physics.Ride;

namespace Bellowsmith.References;

/// <summary>
/// A nonlinear corner for 30 s on a C road at 80 km/h, with stop contacts: air in a cylinder that gives heat to its wall, a
/// digressive damper, a progressive stop, a tyre that may lift. Reference integrated by SciPy 1.10.1 (DOP853, relative
/// tolerance 1e-9, steps of 1 ms at most, the weighting as an analog filter): references/builders/ride_corner.py. COMPUTED.
/// </summary>
public sealed class CornerOverARoad
{
    private const double Body_kg = 360, Wheel_kg = 38, Tyre_N_per_m = 225e3, Ratio = 0.95;
    private const double Area_m2 = 6.5e-3, Volume_m3 = 1.1e-3, Contact_m = 0.015, Top_m = -0.055;
    private const double Static_N = Body_kg * StandardGravity.Value_m_per_s2 / Ratio, Ambient_Pa = 101_325;

    private static readonly RideFigures _figures = RideRun.Over([Made()], Road(RideRun.Step_s, 30))[0];

    [Fact]
    public void Rms_AtOneMillisecond_IsTheReference() => Near(2.09845928554067, _figures.Rms_m_per_s2, 2e-3);

    [Fact]
    public void WeightedRms_AtOneMillisecond_IsTheReference() => Near(1.4782799822538388, _figures.WeightedRms_m_per_s2, 2e-3);

    [Fact]
    public void VibrationDose_AtOneMillisecond_IsTheReference() => Near(4.572013710206632, _figures.VibrationDose_m_per_s175, 2e-3);

    [Fact]
    public void TravelRms_AtOneMillisecond_IsTheReference() => Near(0.015466956380264884, _figures.TravelRms_m, 2e-3);

    [Fact]
    public void TyreLoadRms_AtOneMillisecond_IsTheReference() => Near(1068.6264516875112, _figures.TyreLoadRms_N, 2e-3);

    [Fact]
    public void StopContacts_AtOneMillisecond_AreTheReferences() => Assert.Equal(50, _figures.StopContacts);

    [Fact]
    public void PeakStopForce_AtOneMillisecond_IsTheReference() => Near(2707.9008039760015, _figures.PeakStopForce_N, 1e-2);

    [Fact]
    public void GreatestTravel_AtOneMillisecond_IsTheReference()
    {
        Near(0.03075905124928223, _figures.GreatestTravel_m, 1e-2);
        Near(-0.05428615868839796, _figures.LeastTravel_m, 1e-2);
    }

    [Fact] // the order of the method: halving the step quarters the error
    public void Rms_StepHalved_ComesFourTimesAsNear()
    {
        double coarse = RideRun.Over([Made()], Road(2e-3, 30), 2e-3)[0].Rms_m_per_s2 - 2.09845928554067;
        double fine = _figures.Rms_m_per_s2 - 2.09845928554067;

        Assert.InRange(coarse / fine, 2.5, 7);
    }

    private static void Near(double reference, double value, double relative) => Assert.Equal(reference, value, relative * Math.Abs(reference));

    private static Corner Made()
    {
        TravelRange range = new(-0.075, 0.045);
        double absolute = Static_N / Area_m2 + Ambient_Pa;
        double Shrunk(double w) => Volume_m3 / (Volume_m3 - Area_m2 * Ratio * w);
        TravelPolynomial Fit(Func<double, double> law, double tolerance) => TravelPolynomial.Of(law, range, tolerance);
        return new Corner
        {
            SprungMass_kg = Body_kg,
            UnsprungMass_kg = Wheel_kg,
            TyreRate_N_per_m = Tyre_N_per_m,
            Range = range,
            Force = Fit(w => Ratio * Area_m2 * (absolute * Math.Pow(Shrunk(w), 1.4) - Ambient_Pa), 0.1),
            ForceByEntropy = Fit(w => Ratio * Area_m2 * absolute * Math.Pow(Shrunk(w), 1.4), 0.1),
            ForceByEntropySquare = Fit(w => Ratio * Area_m2 * absolute * Math.Pow(Shrunk(w), 1.4) / 2, 1),
            Cooling = Fit(w => Math.Pow(Shrunk(w), -0.4) - 1, 1e-5),
            CoolingByEntropy = Fit(w => -Math.Pow(Shrunk(w), -0.4), 1e-4),
            TimeConstant_s = 0.6,
            DamperRatio = Fit(_ => Ratio, 1e-9),
            DamperForce = Curve(-3, 3, 241, v => v >= 0 ? 2600 * v / (1 + v / 0.9) : 2600 * v / (1 - v / 0.45)),
            BumpStop = Curve(Contact_m, Contact_m + 0.03, 61, w => 3e4 * (w - Contact_m) + 9e6 * (w - Contact_m) * (w - Contact_m), below: 0),
            TopOut = MonotoneCurve.Through([Top_m - 1e-3, Top_m], [-400, 0], 4e5, 0),
        };
    }

    private static MonotoneCurve Curve(double from, double to, int points, Func<double, double> law, double? below = null)
    {
        double[] x = [.. Enumerable.Range(0, points).Select(k => from + (to - from) * k / (points - 1))];
        return MonotoneCurve.Through(x, [.. x.Select(law)], below);
    }

    // 400 harmonics from 0.01 to 10 cycles/m, phases by the golden ratio; one height a step, from the first step's end.
    private static double[] Road(double step_s, double time_s)
    {
        const int harmonics = 400;
        double[] heights = new double[(int)Math.Round(time_s / step_s)];
        for (int j = 0; j < harmonics; j++)
        {
            double low = 0.01 * Math.Pow(1000, (double)j / harmonics), high = 0.01 * Math.Pow(1000, (j + 1.0) / harmonics), wave = Math.Sqrt(low * high);
            double amplitude = Math.Sqrt(2 * 256e-6 * Math.Pow(wave / 0.1, -2) * (high - low));
            double phase = 2 * Math.PI * ((j + 1) * 0.6180339887498949 % 1), omega = 2 * Math.PI * wave * 80 / 3.6;
            for (int k = 0; k < heights.Length; k++) heights[k] += amplitude * Math.Sin(omega * (k + 1) * step_s + phase);
        }

        return heights;
    }
}
