using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// Road classes, waviness 2 [ISO 8608 2016]. Geometric means at 0.1 cycle/m READ in several public sources; those at 1 rad/m, printed as
/// powers of four, and the class bounds MEMORY. FLAG: the printed 1, 4, 16 … at 1 rad/m are rounded by 0.5 %. FLAG: public code mixes
/// the scales and puts 1e-6 m³ at 0.1 cycle/m.
/// </summary>
public sealed class RoadClasses
{
    [Theory] // class, Gd at 0.1 cycle/m, at 1 rad/m (1e-6 m³)
    [InlineData(RoadClass.A, 16, 1)]
    [InlineData(RoadClass.B, 64, 4)]
    [InlineData(RoadClass.C, 256, 16)]
    [InlineData(RoadClass.D, 1024, 64)]
    [InlineData(RoadClass.E, 4096, 256)]
    [InlineData(RoadClass.F, 16384, 1024)]
    [InlineData(RoadClass.G, 65536, 4096)]
    [InlineData(RoadClass.H, 262144, 16384)]
    public void Of_EachClass_HasItsGeometricMeanOnBothScales(RoadClass roadClass, double perCycle, double perRadian)
    {
        var roughness = RoadRoughness.Of(roadClass);

        Assert.Equal(perCycle * 1e-6, roughness.AtSpatialFrequency_m3(0.1), 1e-12 * perCycle);
        Assert.Equal(perRadian * 1e-6, roughness.AtAngularFrequency_m3(1), 0.01 * 1e-6 * perRadian); // READ rounded
    }

    [Theory] // 2π·n0²·Gd(n0), DERIVED
    [InlineData(RoadClass.A, 1.00531e-6)]
    [InlineData(RoadClass.B, 4.02124e-6)]
    [InlineData(RoadClass.C, 16.085e-6)]
    public void AtAngularFrequency_OneRadianPerMetre_IsTheConversion(RoadClass roadClass, double density) =>
        Assert.Equal(density, RoadRoughness.Of(roadClass).AtAngularFrequency_m3(1), 5e-5 * density);

    [Theory] // (2π·n0)²·Gd(n0), DERIVED, m
    [InlineData(RoadClass.A, 6.3165e-6)]
    [InlineData(RoadClass.B, 25.266e-6)]
    [InlineData(RoadClass.C, 101.06e-6)]
    [InlineData(RoadClass.D, 404.26e-6)]
    public void Slope_OfAClass_IsTheSameAtEveryFrequency(RoadClass roadClass, double density) =>
        Assert.Equal(density, RoadRoughness.Of(roadClass).Slope_m, 5e-5 * density);

    [Fact] // DERIVED: class A at 20 m/s
    public void Velocity_OfClassAAt20MetresPerSecond_IsTheWhiteDensity() =>
        Assert.Equal(1.263309e-4, RoadRoughness.Of(RoadClass.A).Velocity_m2_per_s(20), 1e-10);

    [Theory] // bounds from memory: A to 32, B to 128, C to 512 … H from 131072, 1e-6 m³
    [InlineData(2, RoadClass.A)]
    [InlineData(31, RoadClass.A)]
    [InlineData(33, RoadClass.B)]
    [InlineData(127, RoadClass.B)]
    [InlineData(129, RoadClass.C)]
    [InlineData(511, RoadClass.C)]
    [InlineData(2047, RoadClass.D)]
    [InlineData(2049, RoadClass.E)]
    [InlineData(8193, RoadClass.F)]
    [InlineData(32769, RoadClass.G)]
    [InlineData(131073, RoadClass.H)]
    [InlineData(9e6, RoadClass.H)]
    public void Class_OfARoughness_LiesBetweenItsBounds(double density, RoadClass expected) =>
        Assert.Equal(expected, new RoadRoughness(density * 1e-6).Class);
}
