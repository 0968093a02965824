using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// How far the ideal gas errs. Real values from [Lemmon 2000], coefficients READ, kept in
/// references/air-compressibility.csv; the product itself uses the ideal gas.
/// </summary>
public sealed class RealAir
{
    private const double MolarGasConstant_J_per_mol_K = 8.314462618;

    // Second virial coefficient, K and cm³/mol, from the same equation of state.
    private static readonly (double Temperature_K, double Coefficient_cm3)[] Virial =
        [(273.15, -13.5622), (293.15, -9.12285), (300, -7.76211), (323.15, -3.66238)];

    public static TheoryData<double, double, double> Rows()
    {
        double[] absolutePressures_bar = [1, 5, 8, 10, 12, 15];
        var rows = new TheoryData<double, double, double>();
        foreach (var row in Repository.Table("air-compressibility.csv").Where(row => row[0] is >= 273.15 and <= 323.15))
            for (var column = 0; column < absolutePressures_bar.Length; column++)
                rows.Add(row[0], absolutePressures_bar[column], row[column + 1]);
        return rows;
    }

    [Theory] // The first virial term explains the table; at 20 bar, left out here, it is 1.3e-3 low at 0 °C.
    [MemberData(nameof(Rows))]
    public void Compressibility_FromTheVirialTerm_IsTheTable(double temperature_K, double absolutePressure_bar, double z) =>
        Assert.Equal(z, VirialEstimate(temperature_K, absolutePressure_bar * 1e5), 1e-3);

    [Fact] // 0.99439 against 0.995022: within 7e-4
    public void Compressibility_At15Bar20Degrees_IsTheQuotedEstimate() =>
        Assert.Equal(0.99439, VirialEstimate(293.15, 15e5), 1e-5);

    [Fact] // Real 13.137189 kg/m³ at 11.013 bar and 20 °C: the ideal gas is 0.38 % light.
    public void Density_OfTheIdealGas_ErrsByLessThanHalfAPercent()
    {
        var density = DryAir.Density_kg_per_m3(11.013e5, 293.15);

        Assert.Equal(13.087585, density, 5e-4); // DERIVED with R = 287.0491; ours is 287.0531
        Assert.InRange(density / 13.137189, 0.995, 0.999);
    }

    [Theory]
    [InlineData(0, 293.15)]
    [InlineData(1e5, 0)]
    public void Density_OfNothing_Throws(double absolutePressure_Pa, double temperature_K) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => DryAir.Density_kg_per_m3(absolutePressure_Pa, temperature_K));

    private static double VirialEstimate(double temperature_K, double absolutePressure_Pa) =>
        1 + Coefficient_cm3(temperature_K) * 1e-6 * absolutePressure_Pa / (MolarGasConstant_J_per_mol_K * temperature_K);

    private static double Coefficient_cm3(double temperature_K)
    {
        var upper = Math.Max(1, Array.FindIndex(Virial, point => point.Temperature_K >= temperature_K));
        var (low, high) = (Virial[upper - 1], Virial[upper]);
        var share = (temperature_K - low.Temperature_K) / (high.Temperature_K - low.Temperature_K);
        return low.Coefficient_cm3 + share * (high.Coefficient_cm3 - low.Coefficient_cm3);
    }
}
