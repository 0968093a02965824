using Bellowsmith.Kits;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A linear corner (240 kg on 36 kg, 16 N/mm, 160 N/mm, 980 N·s/m) driven in time for 600 s at 20 m/s, against the closed forms for
/// white road velocity, G = 1.263309e-4 (m/s)²/Hz for class A (derived from the Lyapunov equation, as [Turkay Akcay 2005]).
/// One seed scatters by about 1 %; 3 % is asked.
/// </summary>
public sealed class LinearCornerInTime
{
    private const double ClassA = 1.263309e-4;

    [Fact]
    public void Acceleration_OnWhiteVelocity_IsTheClosedForm() => Near(0.354270, Driven(new(new RoadOfVelocity(ClassA), 20, 605)).Rms_m_per_s2);

    [Fact]
    public void Travel_OnWhiteVelocity_IsTheClosedForm() => Near(2.982e-3, Driven(new(new RoadOfVelocity(ClassA), 20, 605)).TravelRms_m);

    [Fact]
    public void TyreLoad_OnWhiteVelocity_IsTheClosedForm() => Near(180.08, Driven(new(new RoadOfVelocity(ClassA), 20, 605)).TyreLoadRms_N);

    [Fact]
    public void Acceleration_OnAClassCRoad_IsFourTimesClassAs()
    {
        RideFigures c = Driven(new(new RoadOfClass(RoadClass.C), 20, 605));

        Near(1.41708, c.Rms_m_per_s2);
        Near(11.930e-3, c.TravelRms_m);
    }

    [Fact]
    public void Figures_OneClassRougher_AreTwice()
    {
        RideFigures a = Driven(new(new RoadOfClass(RoadClass.A), 20, 65)), b = Driven(new(new RoadOfClass(RoadClass.B), 20, 65));

        Assert.Equal(2, b.Rms_m_per_s2 / a.Rms_m_per_s2, 1e-6);
        Assert.Equal(2, b.TravelRms_m / a.TravelRms_m, 1e-6);
    }

    private static RideFigures Driven(RoadQuestion road) => RideStudy.Figures(
        new RideStrut
        {
            End = AxleEnd.Front,
            Load = "one",
            SprungMass_kg = 240,
            UnsprungMass_kg = 36,
            TyreRate_N_per_m = 160e3,
            SpringRatio = MotionRatio.Constant(1),
            DamperRatio = MotionRatio.Constant(1),
            ParasiticRate_N_per_m = 0,
            Damper = Damper.Linear(980),
            Click = 0,
            LinearRate_N_per_m = 16e3,
        },
        road, new RideSetting())!;

    private static void Near(double closed, double driven) => Assert.Equal(closed, driven, 0.03 * closed);
}
