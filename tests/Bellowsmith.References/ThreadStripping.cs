using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>Threads that strip: law of [FED-STD-H28 1978], an example from a handbook chapter, and the basic profile.</summary>
public sealed class ThreadStripping
{
    // Diameters as the chapter gives them. MEMORY: 9.968 is the *greatest* major diameter of M10-6g, the least is 9.732;
    // with that the length would be 24.9 mm. The row checks the law, not the example's choice of diameter.
    private static readonly ThreadEngagement Example = new(1.5e-3, 9.968e-3, 8.862e-3, 9.206e-3, 8.676e-3);

    [Fact] // M10×1.5-6g, class 10.9, in aluminium 6H, 130 MPa in shear; doi 10.1201/9781482273786-99: READ 21.6 mm
    public void LengthToHold_SteelBoltInAluminium_IsThePublishedLength()
    {
        var length_m = Example.LengthToHold_m(1200e6 * 58e-6, 130e6);

        Assert.Equal(21.55, length_m * 1e3, 0.05); // RECOMPUTED
        Assert.Equal(21.6, length_m * 1e3, 0.05); // READ
    }

    [Fact]
    public void HoleShearArea_OfTheExample_IsTheRecomputedArea() =>
        Assert.Equal(24.842, Example.HoleShearArea_m2_per_m * 1e3, 5e-4); // RECOMPUTED, mm² per mm

    [Fact] // The least diameter engages less: about 16 % more length.
    public void LengthToHold_WithTheLeastMajorDiameter_IsLonger() =>
        Assert.Equal(24.93, (Example with { ScrewMajorLeast_m = 9.732e-3 }).LengthToHold_m(69_600, 130e6) * 1e3, 0.01); // DERIVED

    [Fact]
    public void BasicProfile_OfM10_HasTheTabulatedDiameters()
    {
        var thread = ThreadEngagement.BasicProfile(10e-3, 1.5e-3);

        Assert.Equal(9.026, thread.ScrewPitchLeast_m * 1e3, 5e-4); // MEMORY: ISO 724
        Assert.Equal(8.376, thread.HoleMinorGreatest_m * 1e3, 5e-4); // MEMORY: ISO 724
        Assert.Equal(27.489, thread.HoleShearArea_m2_per_m * 1e3, 5e-4); // DERIVED
        Assert.Equal(19.736, thread.ScrewShearArea_m2_per_m * 1e3, 5e-4); // DERIVED
    }

    [Theory] // Equal strengths: the screw's smaller area decides. A soft hole: the hole decides. DERIVED from the areas above.
    [InlineData(130e6, 130e6, 27.127)]
    [InlineData(130e6, 700e6, 19.476)]
    public void LengthToHold_BothThreads_TakesTheWeakerOne(double hole_Pa, double screw_Pa, double length_mm) =>
        Assert.Equal(
            length_mm, ThreadEngagement.BasicProfile(10e-3, 1.5e-3).LengthToHold_m(69_600, hole_Pa, screw_Pa) * 1e3, 2e-3);

    [Fact]
    public void TensileStressArea_OfM10_IsTheTabulatedArea() =>
        Assert.Equal(57.99, ThreadEngagement.TensileStressArea_m2(10e-3, 1.5e-3) * 1e6, 0.005); // RECOMPUTED; printed 58

    [Theory]
    [InlineData(10e-3, 0)]
    [InlineData(1.5e-3, 1.5e-3)]
    public void BasicProfile_NoThreadLeft_Throws(double diameter_m, double pitch_m) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ThreadEngagement.BasicProfile(diameter_m, pitch_m));

    [Theory]
    [InlineData(-1, 130e6)]
    [InlineData(1, 0)]
    public void LengthToHold_NoSuchLoad_Throws(double force_N, double strength_Pa) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Example.LengthToHold_m(force_N, strength_Pa));
}
