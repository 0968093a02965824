using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A linear corner (240 kg on 36 kg, 16 N/mm, 160 N/mm, 980 N·s/m) on waves of 1, 2 and 4 mm, driven in time, against the steady
/// answer of the two-mass system in closed form (derived). Its amplitude changes nothing. Within 0.5 %.
/// </summary>
public sealed class LinearCornerOnWaves
{
    private const double Body_kg = 240, Wheel_kg = 36, Rate_N_per_m = 16e3, Tyre_N_per_m = 160e3, Damping_N_s_per_m = 980;

    private static readonly RideResponse _driven = ResponseStudy.Answer(
        new RideStrut
        {
            End = AxleEnd.Front,
            Load = "one",
            SprungMass_kg = Body_kg,
            UnsprungMass_kg = Wheel_kg,
            TyreRate_N_per_m = Tyre_N_per_m,
            SpringRatio = MotionRatio.Constant(1),
            DamperRatio = MotionRatio.Constant(1),
            ParasiticRate_N_per_m = 0,
            Damper = Damper.Linear(Damping_N_s_per_m),
            Click = 0,
            LinearRate_N_per_m = Rate_N_per_m,
        },
        new RideSetting(), 2e-3)!;

    [Fact]
    public void BodyTransmissibility_OnEveryWave_IsTheClosedForm() =>
        Each((p, a, at) => Near(at.BodyAcceleration_per_s.Magnitude / Omega(p), p.BodyTransmissibility));

    [Fact]
    public void BodyRms_OnEveryWave_IsTheClosedForm() =>
        Each((p, a, at) => Near(at.BodyAcceleration_per_s.Magnitude * Omega(p) * a / Math.Sqrt(2), p.BodyRms_m_per_s2));

    [Fact]
    public void TravelAmplitude_OnEveryWave_IsTheClosedForm() =>
        Each((p, a, at) => Near(at.Travel_s.Magnitude * Omega(p) * a, p.TravelAmplitude_m));

    [Fact]
    public void TyreLoadAmplitude_OnEveryWave_IsTheClosedForm() =>
        Each((p, a, at) => Near(at.TyreForce_N_s_per_m.Magnitude * Omega(p) * a, p.TyreLoadAmplitude_N));

    [Fact]
    public void Waves_FromSlowToFast_AreSteadyAndCoverTheBand()
    {
        Each((p, _, _) => Assert.True(p is { Steady: true, StopTouched: false, LeavesRoad: false, OutsideMeasuredSpeed: false }));
        Assert.Equal((0.5, 25.0), (_driven.Asked.Points[0].Frequency_Hz, _driven.Asked.Points[^1].Frequency_Hz));
    }

    [Fact] // undamped eigenfrequencies 1.23824 and 11.13519 Hz, damping ratios 0.22 and 0.20
    public void BodyAndHop_AnswerMost_BesideTheEigenfrequencies()
    {
        Assert.InRange(_driven.Asked.Body.Frequency_Hz, 1.1, 1.35);
        Assert.InRange(_driven.Asked.Hop!.Frequency_Hz, 10, 13);
    }

    private static void Each(Action<WavePoint, double, TwoMassResponse> holds)
    {
        TwoMass closed = new(Body_kg, Wheel_kg, Rate_N_per_m, Damping_N_s_per_m, Tyre_N_per_m);
        foreach (WaveResponse wave in _driven.All)
            foreach (WavePoint point in wave.Points) holds(point, wave.Amplitude_m, closed.At(point.Frequency_Hz));
    }

    private static double Omega(WavePoint point) => 2 * Math.PI * point.Frequency_Hz;

    private static void Near(double closed, double driven) => Assert.Equal(closed, driven, 5e-3 * closed);
}
