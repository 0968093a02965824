using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// The same springs as in the checks of single laws, but as a user meets them: a table of height, effective area and volume
/// goes in, the strut's force, rate and natural frequency come out.
/// </summary>
public sealed class SpringsFromCharacteristics
{
    private const double Inch_m = 0.0254;
    private const double PoundForce_N = 4.4482216152605;
    private const double Psi_Pa = PoundForce_N / (Inch_m * Inch_m);
    private const double PoundPerInch_N_per_m = PoundForce_N / Inch_m;
    private const double Exponent = 1.38;

    [Fact]
    public void SealedRate_OfThePublishedConvolutes_IsThePublishedRate() // [EMDG198 1998, p. 23], READ
    {
        var rate = Published().SealedRate_N_per_m(9.5 * Inch_m, 80 * Psi_Pa, Exponent);

        Assert.Equal(1373, rate / PoundPerInch_N_per_m, 0.005 * 1373);
    }

    [Fact]
    public void GaugePressureFor_ThePublishedLoad_IsThePublishedOne() // [EMDG198 1998, pp. 12, 22]: 4100 lb at 76.6 psi, READ
    {
        var gaugePressure_Pa = Published().GaugePressureFor_Pa(4100 * PoundForce_N, 9.5 * Inch_m);

        Assert.Equal(76.6, gaugePressure_Pa / Psi_Pa, 0.05);
    }

    [Fact]
    public void NaturalFrequency_OfThePublishedConvolutes_IsThePublishedFrequency() // p. 23: 106 cpm, READ
    {
        var strut = Published();

        var rate = strut.SealedRate_N_per_m(9.5 * Inch_m, strut.GaugePressureFor_Pa(4280 * PoundForce_N, 9.5 * Inch_m), Exponent);

        Assert.Equal(106, 60 * Natural.Frequency_Hz(rate, 4280 * PoundForce_N), 1.0);
    }

    [Fact]
    public void SealedRate_OfACylinder_IsTheClosedForm() // DERIVED: 25 000 mm², 3.0 L at 120 mm, 0.5 MPa
    {
        CharacteristicRow[] rows = [.. new[] { 0.08, 0.10, 0.12, 0.14 }
            .Select(h => new CharacteristicRow(h, 0.025, 3.0e-3 + 0.025 * (h - 0.12)))];
        StrutSpring strut = new(AirSpring.FromCharacteristic(rows));

        var rate = strut.SealedRate_N_per_m(0.12, 0.5e6, Exponent);

        Assert.Equal(172.9, rate / 1e3, 0.05);
        Assert.Equal(1.854, Natural.Frequency_Hz(rate, strut.Force_N(0.12, 0.5e6)), 5e-4);
        Assert.Equal(0, strut.RegulatedRate_N_per_m(0.12, 0.5e6), 1e-6);
    }

    [Theory] // DERIVED; ring radius 80 mm, semicircles at 90 mm, 0.5 MPa gauge, 0.6013 MPa absolute
    [InlineData(1, 3_790_136.8, 17_132.7, 8566.4, 335.46, 3.119)]
    [InlineData(2, 2_704_421.2, 19_362.8, 9681.4, 232.19, 2.441)]
    public void At_ToroidsSemicircularHeight_GivesTheClosedForm(
        int convolutions, double volume_mm3, double area_mm2, double force_N, double rate_N_per_mm, double frequency_Hz)
    {
        var strut = Toroids(convolutions, 0.080);

        var at = strut.Spring.At(0.090, 0.5e6);
        var rate = strut.SealedRate_N_per_m(0.090, 0.5e6, Exponent);

        Assert.Equal(volume_mm3, at.Volume_m3 * 1e9, 1e-6 * volume_mm3);
        Assert.Equal(area_mm2, at.EffectiveArea_m2 * 1e6, 1e-4 * area_mm2);
        Assert.Equal(force_N, strut.Force_N(0.090, 0.5e6), 1e-4 * force_N);
        Assert.Equal(rate_N_per_mm, rate / 1e3, 0.002 * rate_N_per_mm);
        Assert.Equal(frequency_Hz, Natural.Frequency_Hz(rate, force_N), 0.003);
    }

    [Fact] // DERIVED: 3.010, 2.433, 2.296 Hz at 10 kN
    public void NaturalFrequency_AtEqualLoad_FallsWithTheNumberOfConvolutions()
    {
        double[] frequencies = [AtTenKilonewtons(1, 0.085514), AtTenKilonewtons(2, 0.081258), AtTenKilonewtons(3, 0.080445)];

        Assert.Equal(3.010, frequencies[0], 0.003);
        Assert.Equal(2.433, frequencies[1], 0.003);
        Assert.Equal(2.296, frequencies[2], 0.003);
    }

    private static double AtTenKilonewtons(int convolutions, double ringRadius_m)
    {
        var strut = Toroids(convolutions, ringRadius_m);
        return Natural.Frequency_Hz(
            strut.SealedRate_N_per_m(0.090, strut.GaugePressureFor_Pa(10_000, 0.090), Exponent), 10_000);
    }

    private static StrutSpring Published()
    {
        const double area_m2 = Inch_m * Inch_m, volume_m3 = Inch_m * Inch_m * Inch_m;
        return new(
            AirSpring.FromCharacteristic(
            [
                new(9.0 * Inch_m, 58.4 * area_m2, 752 * volume_m3),
                new(9.5 * Inch_m, 53.5 * area_m2, 782 * volume_m3),
                new(10.0 * Inch_m, 47.6 * area_m2, 809 * volume_m3),
            ]),
            Ambient_Pa: 14.7 * Psi_Pa);
    }

    /// <summary>A characteristic of nine rows about the semicircle; area is dV/dH by differencing the closed volume.</summary>
    private static StrutSpring Toroids(int convolutions, double ringRadius_m)
    {
        const double differencing = 1e-4, ambient_Pa = 0.1013e6;
        var arc_m = Math.PI / 2 * 0.090 / convolutions;
        IEnumerable<CharacteristicRow> rows =
            from k in Enumerable.Range(-4, 9)
            let angle = Math.PI / 2 - 0.02 * k
            let narrow = Meridian(angle + differencing)
            let wide = Meridian(angle - differencing)
            let middle = Meridian(angle)
            select new CharacteristicRow(
                middle.Height_m, (wide.Volume_m3 - narrow.Volume_m3) / (wide.Height_m - narrow.Height_m), middle.Volume_m3);
        return new(AirSpring.FromCharacteristic([.. rows]), Ambient_Pa: ambient_Pa);

        // V1 = πr[2a² sinφ + 2ar(φ + sinφ cosφ) + r²(2 sinφ − ⅔ sin³φ)], a = R − r cosφ, r = ℓ/2φ
        (double Height_m, double Volume_m3) Meridian(double angle)
        {
            var (sine, cosine) = Math.SinCos(angle);
            var r = arc_m / (2 * angle);
            var a = ringRadius_m - r * cosine;
            var volume = Math.PI * r * (2 * a * a * sine + 2 * a * r * (angle + sine * cosine)
                + r * r * (2 * sine - 2.0 / 3 * sine * sine * sine));
            return (convolutions * 2 * r * sine, convolutions * volume);
        }
    }
}
