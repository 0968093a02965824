using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A piston in a cylinder: 25 000 mm², 3.0 L, 0.5 MPa gauge at 101.325 kPa, n = 1.38. The area term is 0, the gas term
/// exact. DERIVED.
/// </summary>
public sealed class ConstantAreaCylinder
{
    private const double Area_m2 = 0.025;
    private const double Volume_m3 = 3.0e-3;
    private const double GaugePressure_Pa = 0.5e6;

    [Fact]
    public void GasRate_OfACylinder_IsTheClosedForm() => Assert.Equal(172.9, Rate(1.38) / 1e3, 0.05);

    [Fact]
    public void NaturalFrequency_OfACylinder_IsTheClosedForm() =>
        Assert.Equal(1.854, Natural.Frequency_Hz(Rate(1.38), GaugePressure_Pa * Area_m2), 5e-4);

    [Theory]
    [InlineData(1.0)]
    [InlineData(1.38)]
    [InlineData(1.4)]
    public void GasRate_AnyExponent_IsTheSlopeOfTheSealedForce(double exponent)
    {
        const double step_m = 1e-5;

        var rate = (Force(-step_m, exponent) - Force(step_m, exponent)) / (2 * step_m);

        Assert.Equal(rate, Rate(exponent), 1e-6 * rate);
    }

    private static double Rate(double exponent) => SealedAir.GasRate_N_per_m(
        exponent, GaugePressure_Pa + 101_325, Area_m2, Area_m2, Volume_m3);

    private static double Force(double extension_m, double exponent) => Area_m2 * (SealedAir.AbsolutePressure_Pa(
        GaugePressure_Pa + 101_325, Volume_m3, Volume_m3 + Area_m2 * extension_m, exponent) - 101_325);
}
