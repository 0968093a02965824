using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>Spherical plain bearings: [Spherical Plain Bearings 1993, p. 31], example 1: 12 kN, ±15°, 10 a minute, 100 N/mm² at C.</summary>
public sealed class PlainBearingLives
{
    private const double Load_N = 12e3, Amplitude_rad = 15 * Math.PI / 180, Frequency_Hz = 10.0 / 60;

    [Theory] // C kN, dk mm, b1·b2·b3·b4·b5, N/mm² exact, m/s within 0.5 % of the unrounded, hours 1 %
    [InlineData(48, 35.5, 2 * 1 * 1.6 * 1.3 * 3.7, 25, 0.0031, 0.0031, 524)] // GE 25 ES: READ 25, 0.0031, 520; RECOMPUTED 524
    [InlineData(30, 29, 2 * 1 * 1.5 * 1.1 * 3.7, 40, 0.0025, 0.00253, 158)] // GE 20 ES: READ 40, 0.0025; RECOMPUTED 157 to 159
    public void Life_SteelOnSteel_IsTheExample(
        double rating_kN, double sphere_mm, double factors, double load, double printed_m_per_s, double velocity_m_per_s, double hours)
    {
        SphericalPlainBearing bearing = new(rating_kN * 1e3, 100e6, sphere_mm * 1e-3, SlidingSurface.SteelOnSteel, 0.15);
        double velocity = bearing.SlidingVelocity_m_per_s(Amplitude_rad, Frequency_Hz);

        Assert.Equal(load, bearing.SpecificLoad_Pa(Load_N) / 1e6, 1e-12);
        Assert.Equal(velocity_m_per_s, velocity, 0.005 * velocity_m_per_s);
        Assert.Equal(printed_m_per_s, velocity, 5e-5);
        Assert.Equal(hours, bearing.Life_s(Load_N, Amplitude_rad, Frequency_Hz, factors)!.Value / 3600, 0.01 * hours);
    }

    [Fact] // DERIVED from the READ 5.82e-7, which is 2·10⁻³·(π/180)/60 rounded up by 0.03 %
    public void SlidingVelocity_InTheCataloguesUnits_IsItsConstant() =>
        Assert.Equal(5.82e-7, new SphericalPlainBearing(1, 1, 1e-3, SlidingSurface.SteelOnSteel, 0).SlidingVelocity_m_per_s(Math.PI / 180, 1.0 / 60), 3e-10);

    [Theory] // hours at 1 mm/s with every factor 1. DERIVED from the READ constants, apart from the code
    [InlineData(10, 70166.2)] // 1400/(10^1.3·0.001)
    [InlineData(100, 3516.6)]
    public void Life_SteelOnSinteredBronze_IsTheFormula(double load, double hours) => Assert.Equal(hours, Hours(SlidingSurface.SteelOnSinteredBronze, load)!.Value, 0.1);

    [Theory]
    [InlineData(16, 442248.9)] // 770/(16^0.2·0.001)
    [InlineData(64, 217637.6)] // 4000/(64^0.7·0.001)
    [InlineData(100, 159242.9)] // 40000/(100^1.2·0.001)
    public void Life_SteelOnFabric_IsTheFormulaOfItsRange(double load, double hours) => Assert.Equal(hours, Hours(SlidingSurface.SteelOnFabric, load)!.Value, 1e-6 * hours);

    [Fact]
    public void Life_BeyondTheLastRange_IsNone() => Assert.Null(Hours(SlidingSurface.SteelOnFabric, 301));

    [Fact] // KM/(p·v)
    public void Life_SteelOnFibreReinforced_IsTheFormula() => Assert.Equal(20000, Hours(SlidingSurface.SteelOnFibreReinforced(1000), 50)!.Value, 1e-6);

    [Fact] // 1/Gh = 0.25/100 + 0.75/300 = 1/200
    public void MixedLife_OfShares_IsTheirSum() => Assert.Equal(200, SphericalPlainBearing.MixedLife_s((0.25, 100), (0.75, 300)), 1e-9);

    [Fact]
    public void TiltLeft_EitherWay_CountsFromTheMiddle()
    {
        SphericalPlainBearing bearing = new(1, 1, 1, SlidingSurface.SteelOnSteel, 0.15);

        Assert.Equal(0.05, bearing.TiltLeft_rad(-0.1), 1e-15);
        Assert.Equal(-0.05, bearing.TiltLeft_rad(0.2), 1e-15);
    }

    // At C = 1 N and K = 1 N/mm², so that the load is the specific load; 1 mm/s.
    private static double? Hours(SlidingSurface surface, double load) => new SphericalPlainBearing(1, 1e6, 0.01, surface, 0).Life_s(load, 0.05, 1) / 3600;
}
