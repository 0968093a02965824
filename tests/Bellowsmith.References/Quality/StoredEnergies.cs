using Bellowsmith.Quality.Leaks;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Energy stored in compressed air at 101 kPa outside and cp/cv 1.4, by the formulas of [ASME PCC-2 2008], [Brode 1959] and the two
/// isothermal ones. A public worked example (400 US gallons at 404.7 psi absolute, cp/cv 1.41) prints 27 574 000 ft·lbf with a power wrongly
/// evaluated and a decimal slipped; its own formula gives 4 699 380. The source's SI and US divisors for TNT disagree by 4 %, and others
/// use 4.62 MJ/kg: ours is the SI one.
/// </summary>
public sealed class StoredEnergies
{
    public static TheoryData<StoredEnergy, double[]> Vessels => new()
    {
        { new(1.131e6, 101e3, 0.019), [48925.0, 26782.253, 26800.841, 51911.772, 32341.772] },
        { new(1.601e6, 101e3, 0.005), [18750.0, 10925.423, 10932.594, 22119.922, 14619.922] },
        { new(1e6, 101e3, 1), [2247500, 1201444.84, 1202295.17, 2292634.76, 1393634.76] },
    };

    [Theory]
    [MemberData(nameof(Vessels))]
    public void Energy_OfAVessel_IsTheTabulated(StoredEnergy vessel, double[] expected)
    {
        double[] energies = [vessel.Brode_J, vessel.Isentropic_J, vessel.IsentropicRounded_J, vessel.Isothermal_J, vessel.NetIsothermal_J];

        for (int i = 0; i < expected.Length; i++) Assert.Equal(expected[i], energies[i], expected[i] > 1e6 ? 5e-3 : 5e-4);
    }

    [Theory]
    [InlineData(1.131e6, 0.019, 6.2767e-3, 5e-8)]
    [InlineData(1.601e6, 0.005, 2.5605e-3, 5e-8)]
    [InlineData(1e6, 1, 281.57e-3, 5e-6)]
    public void Tnt_OfAVessel_IsTheTabulated(double absolutePressure_Pa, double volume_m3, double expected_kg, double tolerance) =>
        Assert.Equal(expected_kg, new StoredEnergy(absolutePressure_Pa, 101e3, volume_m3).Tnt_kg, tolerance);

    [Fact]
    public void Water_InTheSameSpring_StoresTheTabulated() => Assert.Equal(2.56, new StoredEnergy(1.601e6, 101e3, 0.005).Water_J, 5e-3);

    [Fact] // 1 ft·lbf = 1.3558179483314004 J; gallon 231 in³; 14.7 psi outside
    public void Isentropic_OfThePublicExample_IsWhatItsFormulaGives()
    {
        const double psi = 6894.757293168361, gallon_m3 = 231 * 0.0254 * 0.0254 * 0.0254;
        StoredEnergy vessel = new(404.7 * psi, 14.7 * psi, 400 * gallon_m3, 1.41);

        Assert.Equal(0.38133, 1 - vessel.Isentropic_J * 0.41 / (vessel.AbsolutePressure_Pa * vessel.Volume_m3), 5e-5);
        Assert.Equal(6.3715e6, vessel.Isentropic_J, 6.4e3); // 0.1 %: the example rounds its volume
        Assert.Equal(4_699_380, vessel.Isentropic_J / 1.3558179483314004, 4.7e3);
    }
}
