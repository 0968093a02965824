using Bellowsmith.Physics;

namespace Bellowsmith.References;

/// <summary>
/// A double-convoluted spring of 9.5 in design height, worked through in [EMDG198 1998, pp. 12, 22, 23]. Numbers are
/// READ there and kept in inches and pounds, as printed; 80 psi gauge unless a name says otherwise.
/// </summary>
public sealed class ConvolutedBellows
{
    private const double Inch_m = 0.0254;
    private const double PoundForce_N = 4.4482216152605;
    private const double Psi_Pa = PoundForce_N / (Inch_m * Inch_m);
    private const double PoundPerInch_N_per_m = PoundForce_N / Inch_m;

    private const double Ambient_psi = 14.7;
    private const double Exponent = 1.38;
    private const double Load_lb = 4280;

    // Half an inch below, at and half an inch above design height.
    private const double AreaBelow_in2 = 58.4, Area_in2 = 53.5, AreaAbove_in2 = 47.6;
    private const double VolumeBelow_in3 = 752, Volume_in3 = 782, VolumeAbove_in3 = 809;

    [Theory]
    [InlineData(76.6, 1321.9, 0.05)] // p. 22, RECOMPUTED: the page's own last line could not be read
    [InlineData(80, 1377.0, 0.5)] // p. 22 law, RECOMPUTED
    [InlineData(80, 1373, 0.005 * 1373)] // p. 23, READ: published rate
    public void FiniteDifferenceRate_AtDesignHeight_IsThePublishedRate(double gauge_psi, double rate, double tolerance) =>
        Assert.Equal(rate, FiniteDifferenceRate(gauge_psi, Ambient_psi, Exponent), tolerance);

    [Fact]
    public void SealedRate_FromSlopesAtDesignHeight_IsThePublishedRate() =>
        Assert.Equal(1373, SealedRate(80, 80 + Ambient_psi, Exponent, areaSlopeSign: 1), 0.005 * 1373); // p. 23, READ

    [Fact]
    public void NaturalFrequency_AtThePublishedLoad_IsThePublishedFrequency()
    {
        var rate = SealedRate(80, 80 + Ambient_psi, Exponent, areaSlopeSign: 1) * PoundPerInch_N_per_m;

        var frequency_Hz = Natural.Frequency_Hz(rate, Load_lb * PoundForce_N);

        Assert.Equal(106, 60 * frequency_Hz, 1.0); // p. 23, READ
    }

    [Theory] // What goes wrong most easily must leave the published ±0.5 %: the check can tell.
    [InlineData(80 + Ambient_psi, 80, 1.38, 1)] // gauge and absolute swapped: +5.8 %
    [InlineData(80, 80 + Ambient_psi, 1.0, 1)] // isothermal: −10 %
    [InlineData(80, 80 + Ambient_psi, 1.38, -1)] // area slope of the wrong sign: negative
    public void SealedRate_OfAMutatedLaw_MissesThePublishedRate(double gauge_psi, double absolute_psi, double n, int sign) =>
        Assert.NotInRange(SealedRate(gauge_psi, absolute_psi, n, sign), 0.995 * 1373, 1.005 * 1373);

    [Theory]
    [InlineData(0, 1.38)] // gauge taken for absolute: −5.5 %
    [InlineData(Ambient_psi, 1.0)]
    public void FiniteDifferenceRate_OfAMutatedLaw_MissesThePublishedRate(double ambient_psi, double n) =>
        Assert.NotInRange(FiniteDifferenceRate(80, ambient_psi, n), 0.995 * 1373, 1.005 * 1373);

    private static double SealedRate(double gauge_psi, double absolute_psi, double n, int areaSlopeSign)
    {
        var volumeSlope_m2 = Slope(VolumeBelow_in3, VolumeAbove_in3) * Inch_m * Inch_m;
        var areaSlope_m = areaSlopeSign * Slope(AreaBelow_in2, AreaAbove_in2) * Inch_m;
        var gas = SealedAir.GasRate_N_per_m(
            n, absolute_psi * Psi_Pa, Area_in2 * Inch_m * Inch_m, volumeSlope_m2, Volume_in3 * Inch_m * Inch_m * Inch_m);
        return (gas + SealedAir.AreaRate_N_per_m(gauge_psi * Psi_Pa, areaSlope_m)) / PoundPerInch_N_per_m;
    }

    /// <summary>[EMDG198 1998, p. 22]: force half an inch below less force half an inch above.</summary>
    private static double FiniteDifferenceRate(double gauge_psi, double ambient_psi, double n) =>
        ForceSealed(gauge_psi, ambient_psi, AreaBelow_in2, VolumeBelow_in3, n)
        - ForceSealed(gauge_psi, ambient_psi, AreaAbove_in2, VolumeAbove_in3, n);

    private static double ForceSealed(double gauge_psi, double ambient_psi, double area_in2, double volume_in3, double n) =>
        area_in2 * (SealedAir.AbsolutePressure_Pa(gauge_psi + ambient_psi, Volume_in3, volume_in3, n) - ambient_psi);

    // The slope at the middle of a parabola through three points an inch apart end to end: the middle one drops out.
    private static double Slope(double below, double above) => above - below;
}
