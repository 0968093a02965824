using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>[US Standard Atmosphere 1976], READ; the table stands in references/standard-atmosphere.csv.</summary>
public sealed class AmbientAir
{
    public static TheoryData<double, double> Rows()
    {
        var rows = new TheoryData<double, double>();
        foreach (var row in Repository.Table("standard-atmosphere.csv")) rows.Add(row[0], row[1]);
        return rows;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void AbsolutePressure_AtAltitude_IsTheTable(double altitude_m, double absolutePressure_Pa) =>
        Assert.Equal(absolutePressure_Pa, StandardAtmosphere.AbsolutePressure_Pa(altitude_m), 0.01);

    [Theory] // MEMORY: 11 km is the tabulated foot of the next layer, 226.32 hPa
    [InlineData(11_000, 22_632, 0.1)]
    public void AbsolutePressure_AtTheTopOfTheLayer_IsItsFoot(double altitude_m, double absolutePressure_Pa, double tolerance) =>
        Assert.Equal(absolutePressure_Pa, StandardAtmosphere.AbsolutePressure_Pa(altitude_m), tolerance);

    [Theory]
    [InlineData(-501)]
    [InlineData(11_001)]
    [InlineData(double.NaN)]
    public void AbsolutePressure_OutsideTheLayer_Throws(double altitude_m) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StandardAtmosphere.AbsolutePressure_Pa(altitude_m));
}
