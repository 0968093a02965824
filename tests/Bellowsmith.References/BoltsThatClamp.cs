using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>Slip of preloaded bolts, law of [EN 1993-1-8 2005, 3.9]: tables of [Bolt Slip Tables 2017], class 8.8, one plane. 0.5 %.</summary>
public sealed class BoltsThatClamp
{
    [Theory] // d, P mm, μ, γM3, kN
    [InlineData(12, 1.75, 0.2, ClampedJoint.Ultimate, 7.55)] // READ
    [InlineData(16, 2, 0.2, ClampedJoint.Ultimate, 14.1)] // READ
    [InlineData(20, 2.5, 0.2, ClampedJoint.Ultimate, 22.0)] // READ
    [InlineData(20, 2.5, 0.5, ClampedJoint.Ultimate, 54.9)] // READ
    [InlineData(24, 3, 0.2, ClampedJoint.Ultimate, 31.6)] // READ
    [InlineData(30, 3.5, 0.2, ClampedJoint.Ultimate, 50.3)] // READ
    [InlineData(20, 2.5, 0.2, ClampedJoint.Serviceability, 24.9)] // READ
    [InlineData(20, 2.5, 0.5, ClampedJoint.Serviceability, 62.4)] // READ
    public void SlipResistance_OfOneBolt_IsTheTables(double d_mm, double pitch_mm, double friction, double partialFactor, double resistance_kN) =>
        Assert.Equal(resistance_kN, Joint(d_mm, pitch_mm, 800e6, friction, 1).SlipResistance_N(partialFactor) / 1e3, 0.005 * resistance_kN);

    [Fact] // M20 10.9 in two planes, μ 0.4: a structural design page, READ
    public void SlipResistance_OfTwoPlanes_IsThePublishedOne()
    {
        ClampedJoint joint = Joint(20, 2.5, 1000e6, 0.4, 2);

        Assert.Equal(171.5, joint.Preload_N / 1e3, 0.005 * 171.5);
        Assert.Equal(109.76, joint.SlipResistance_N() / 1e3, 0.005 * 109.76);
        Assert.Equal(658.56, 6 * joint.SlipResistance_N() / 1e3, 0.005 * 658.56);
    }

    [Fact] // DERIVED: 171.5 kN − 0.8·50 kN = 131.5; nothing is left from 214.4 kN on
    public void SlipResistance_UnderTension_LosesFourFifthsOfIt()
    {
        ClampedJoint joint = new(1000e6, 245e-6, 0.4, 2);

        Assert.Equal(84.16, joint.SlipResistance_N(tension_N: 50e3) / 1e3, 1e-9);
        Assert.Equal(0, joint.SlipResistance_N(tension_N: 215e3));
    }

    [Theory] // mm²; ISO 898-1, from memory
    [InlineData(8, 1.25, 36.6)]
    [InlineData(12, 1.5, 88.1)]
    [InlineData(14, 1.5, 125)]
    [InlineData(16, 2, 157)]
    public void TensileStressArea_OfAThread_IsTheTabulated(double d_mm, double pitch_mm, double area_mm2) =>
        Assert.Equal(area_mm2, ThreadEngagement.TensileStressArea_m2(d_mm * 1e-3, pitch_mm * 1e-3) * 1e6, 0.005 * area_mm2);

    [Fact] // DERIVED: 20 kN round 54 mm at μ 0.15; between two lines and a band
    public void TubeClamp_ByEquilibrium_HoldsBetweenTwoEnds()
    {
        TubeClamp clamp = new(0.054, 20e3, 0.15);

        Assert.Equal(6000, clamp.LeastAxial_N, 1e-9);
        Assert.Equal(18849.556, clamp.GreatestAxial_N, 1e-3);
        Assert.Equal(162, clamp.LeastTorque_Nm, 1e-9);
        Assert.Equal(508.938, clamp.GreatestTorque_Nm, 1e-3);
        Assert.Equal(0.625, clamp.Asked(3000, 60.75), 1e-12); // 0.5 and 0.375
    }

    private static ClampedJoint Joint(double d_mm, double pitch_mm, double strength_Pa, double friction, int planes) =>
        new(strength_Pa, ThreadEngagement.TensileStressArea_m2(d_mm * 1e-3, pitch_mm * 1e-3), friction, planes);
}
