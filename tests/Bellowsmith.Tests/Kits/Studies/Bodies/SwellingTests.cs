using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Kits.Studies.Clearance;

namespace Bellowsmith.Tests.Kits.Studies.Bodies;

/// <summary>The demo's spring was load-framed from 2 to 5 bar gauge and taped, apart from that, at 50 mm and 7 bar: 168 mm.</summary>
public sealed class SwellingTests
{
    private static readonly StrutCase _strut = Corners.Front.Corner.Travel!.Case;
    private static readonly BellowsWall _wall = new(_strut, 2 * StrutLayout.PlateOf_mm(_strut));

    [Fact]
    public void OuterDiameter_AtTheGaugePressureTaped_IsWhatWasTaped()
    {
        Assert.Equal(168, _wall.OuterDiameter_mm(50, 7e5), 1.0);
        Assert.True(_wall.OuterDiameter_mm(50, 7e5) - _wall.OuterDiameter_mm(50, 2e5) > 1);
    }

    [Fact] // an unknown gauge pressure leaves the wall as calibrated; the swelling is in proportion
    public void Meridian_AnyGaugePressure_WidensInProportion()
    {
        double calibrated = Widest(double.NaN), middle = Widest(3.5e5), more = Widest(5.5e5), most = Widest(7.5e5);

        Assert.InRange(calibrated, Widest(3e5), Widest(4e5));
        Assert.Equal(more - middle, most - more, 1e-9);
        Assert.Equal(_wall.OuterDiameter_mm(70, 7.5e5) / 2, most + _wall.Thickness_mm / 2, 0.05);

        static double Widest(double gauge) => _wall.Meridian(70, gauge).Max(point => point.Radius_mm);
    }

    [Fact] // valve shut: bump raises gauge pressure, droop lowers it
    public void Bellows_OverTravel_IsAsWideAsItsGaugePressureThere()
    {
        CornerBodies bodies = Corners.Front.Corner.Bodies!;
        LinkageState bump = Corners.Front.Corner.Adjuster.Linkage!.At(0.05, 0).State!;
        double height = bodies.SpringHeight_m(bump);

        Assert.True(bodies.GaugePressure_Pa(height) > bodies.GaugePressure_Pa(bodies.DriveHeight_m) + 1e5);
        Assert.Equal(_strut.GaugePressure_Pa(bodies.DriveHeight_m), bodies.GaugePressure_Pa(bodies.DriveHeight_m), 1e-3);
        Assert.Equal(_wall.OuterDiameter_mm(height * 1000, bodies.GaugePressure_Pa(height)) / 2000, bodies.Bellows(bump).Profile.Radius_m.ToArray().Max(), 1e-4);
    }
}
