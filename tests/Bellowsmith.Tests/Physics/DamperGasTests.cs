using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

/// <summary>
/// By hand: rod 22 mm, area 380.133 mm²; 24 bar gauge and 95 cm³ at 480 mm. At 400 mm the rod takes up 30.411 cm³, 64.589 cm³
/// stay: pabs = 2 501 325·95/64.589 = 3 679 020 Pa, gauge 3 577 695 Pa, force 1360.0 N; rate 1.38·pabs·Ar²/V = 11 358.5 N/m.
/// </summary>
public sealed class DamperGasTests
{
    private const double Ambient_Pa = 101_325;

    private static readonly DamperGas _gas = new(0.022, 0.480, 24e5, 95e-6);

    [Theory]
    [InlineData(0.480, 912.32)] // 380.133 mm² × 2.4 MPa
    [InlineData(0.400, 1360.0)]
    public void Force_AtALength_IsRodAreaTimesGasGaugePressure(double length_m, double force_N) =>
        Assert.Equal(force_N, _gas.Force_N(length_m, Ambient_Pa), 0.05);

    [Fact]
    public void Rate_AtALength_IsPolytropic() => Assert.Equal(11_358.5, _gas.Rate_N_per_m(0.400), 0.1);

    [Fact]
    public void Rate_AtALength_IsTheSlopeOfTheIsothermalForceTimesTheExponent() => Assert.Equal(
        1.38 * (_gas.Force_N(0.39999, Ambient_Pa) - _gas.Force_N(0.40001, Ambient_Pa)) / 2e-5, _gas.Rate_N_per_m(0.400), 0.1);

    [Fact]
    public void Force_WithoutGasVolume_IsConstantAndWithoutRate()
    {
        var gas = _gas with { Volume_m3 = null };

        Assert.Equal(912.32, gas.Force_N(0.480, Ambient_Pa), 0.01);
        Assert.Equal(912.32, gas.Force_N(0.350, Ambient_Pa), 0.01);
        Assert.Equal(0, gas.Rate_N_per_m(0.400));
    }

    [Fact]
    public void Force_WithoutGas_IsNothing()
    {
        Assert.Equal(0, default(DamperGas).Force_N(0.4, 80_000));
        Assert.Equal(0, (_gas with { GaugePressure_Pa = 0 }).Rate_N_per_m(0.4));
    }

    [Fact] // in thinner air the same charge pushes harder: 380.133 mm² × (101 325 − 80 000) Pa = 8.106 N
    public void Force_InThinnerAir_GrowsByTheAmbient() =>
        Assert.Equal(8.106, _gas.Force_N(0.4, 80_000) - _gas.Force_N(0.4, Ambient_Pa), 0.001);
}
