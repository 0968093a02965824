using Bellowsmith.Physics;
using CsCheck;

namespace Bellowsmith.References;

/// <summary>
/// Closed forms of N toroidal convolutions, semicircular at 90 mm. All numbers DERIVED symbolically and checked by
/// quadrature; none is published.
/// </summary>
public sealed class ToroidalConvolutions
{
    private const double Height_m = 0.090;
    private const double GaugePressure_Pa = 0.5e6;
    private const double AbsolutePressure_Pa = 0.6013e6;
    private const double Exponent = 1.38;

    [Theory]
    [InlineData(1, 45.0, 3_790_136.8, 125.0, 17_132.7, 542.4)]
    [InlineData(2, 22.5, 2_704_421.2, 102.5, 19_362.8, 234.3)]
    public void At_SemicircularHeight_GivesTheClosedForm(
        int convolutions, double arcRadius_mm, double volume_mm3, double outerRadius_mm, double area_mm2, double narrowing_mm)
    {
        var shape = Semicircular(convolutions, 0.080);

        Assert.Equal(arcRadius_mm, shape.ArcRadius_m * 1e3, 1e-9);
        Assert.Equal(volume_mm3, shape.Volume_m3 * 1e9, 1e-6 * volume_mm3);
        Assert.Equal(outerRadius_mm, shape.OuterRadius_m * 1e3, 1e-9);
        Assert.Equal(area_mm2, shape.EffectiveArea_m2 * 1e6, 1e-4 * area_mm2);
        Assert.Equal(-narrowing_mm, shape.AreaSlope_m * 1e3, 1e-4 * narrowing_mm);
    }

    [Theory]
    [InlineData(1, 8566.4, 64.26, 271.20, 335.46, 3.119)]
    [InlineData(2, 9681.4, 115.04, 117.15, 232.19, 2.441)]
    public void Rate_AtHalfAMegapascal_GivesTheClosedForm(
        int convolutions, double force_N, double gas_N_per_mm, double area_N_per_mm, double rate_N_per_mm, double frequency_Hz)
    {
        var shape = Semicircular(convolutions, 0.080);

        var gas = GasRate(shape);
        var area = SealedAir.AreaRate_N_per_m(GaugePressure_Pa, shape.AreaSlope_m);

        Assert.Equal(force_N, Force(shape), 1e-4 * force_N);
        Assert.Equal(gas_N_per_mm, gas / 1e3, 2e-4 * gas_N_per_mm);
        Assert.Equal(area_N_per_mm, area / 1e3, 2e-4 * area_N_per_mm);
        Assert.Equal(rate_N_per_mm, (gas + area) / 1e3, 2e-4 * rate_N_per_mm);
        Assert.Equal(frequency_Hz, Natural.Frequency_Hz(gas + area, Force(shape)), 1e-3);
    }

    [Theory] // 10 kN each; ring radii chosen for an effective area of 20 000 mm².
    [InlineData(1, 85.514, 364.6, 3.010)]
    [InlineData(2, 81.258, 238.3, 2.433)]
    [InlineData(3, 80.445, 212.2, 2.296)]
    public void NaturalFrequency_AtEqualLoad_FallsWithTheNumberOfConvolutions(
        int convolutions, double ringRadius_mm, double rate_N_per_mm, double frequency_Hz)
    {
        var shape = Semicircular(convolutions, ringRadius_mm * 1e-3);

        var rate = GasRate(shape) + SealedAir.AreaRate_N_per_m(GaugePressure_Pa, shape.AreaSlope_m);

        Assert.Equal(10_000, Force(shape), 0.5);
        Assert.Equal(rate_N_per_mm, rate / 1e3, 0.06);
        Assert.Equal(frequency_Hz, Natural.Frequency_Hz(rate, Force(shape)), 1e-3);
    }

    [Theory] // At equal outer diameter, 2 × 110 mm, the rate ranks the other way round and the frequency does not.
    [InlineData(1, 264.8, 3.57)]
    [InlineData(2, 270.2, 2.40)]
    [InlineData(3, 288.3, 2.26)]
    public void NaturalFrequency_AtEqualOuterRadius_FallsThoughTheRateRises(
        int convolutions, double rate_N_per_mm, double frequency_Hz)
    {
        var shape = Semicircular(convolutions, 0.110 - Height_m / convolutions / 2);

        var rate = GasRate(shape) + SealedAir.AreaRate_N_per_m(GaugePressure_Pa, shape.AreaSlope_m);

        Assert.Equal(rate_N_per_mm, rate / 1e3, 0.06);
        Assert.Equal(frequency_Hz, Natural.Frequency_Hz(rate, Force(shape)), 0.006);
    }

    [Fact] // Exact for any proportions, from nearly straight to nearly closed arcs.
    public void At_AnyHeight_AreaAndSlopeAreTheDerivativesOfVolume() =>
        Gen.Select(Gen.Double[0.03, 0.15], Gen.Double[0.02, 0.25], Gen.Int[1, 4], Gen.Double[0.05, 0.98]).Sample(
            (ringRadius, arcLength, convolutions, share) =>
            {
                var bellows = new ToroidalBellows(ringRadius, arcLength, convolutions);
                var height = share * bellows.GreatestHeight_m;
                var shape = bellows.At(height)!;
                var scale = Math.PI * ringRadius * ringRadius;

                var area = Slope(bellows, height, other => other.Volume_m3);
                var slope = Slope(bellows, height, other => other.EffectiveArea_m2);

                Assert.Equal(area, shape.EffectiveArea_m2, 1e-7 * Math.Max(scale, shape.EffectiveArea_m2));
                Assert.Equal(slope, shape.AreaSlope_m, 1e-6 * Math.Max(ringRadius, Math.Abs(slope)));
            });

    [Theory]
    [InlineData(0.0, ToroidalLimit.PlatesMeet)]
    [InlineData(-0.01, ToroidalLimit.PlatesMeet)]
    [InlineData(double.NaN, ToroidalLimit.PlatesMeet)]
    [InlineData(0.090, ToroidalLimit.None)]
    [InlineData(0.120, ToroidalLimit.AreaVanishes)] // φ = 0.975: A = −8408 mm², DERIVED independently
    [InlineData(0.150, ToroidalLimit.WallTaut)] // the wall is 141.4 mm long
    public void LimitAt_Height_NamesWhyThereIsNoShape(double height_m, ToroidalLimit limit)
    {
        var bellows = ToroidalBellows.SemicircularAt(Height_m, 0.080, 1);

        Assert.Equal(limit, bellows.LimitAt(height_m));
        Assert.Equal(limit == ToroidalLimit.None, bellows.At(height_m) is not null);
    }

    [Fact]
    public void At_TheGreatestHeight_TheAreaHasVanished()
    {
        var bellows = ToroidalBellows.SemicircularAt(Height_m, 0.080, 1);

        var shape = bellows.At(bellows.GreatestHeight_m - 1e-9)!;

        Assert.InRange(shape.EffectiveArea_m2, 0, 1e-8);
    }

    [Theory] // One convolution of 141.4 mm wall: values DERIVED by an independent program.
    [InlineData(40, 2.396470, 2_446_773.69, 33_583.459, -167.71811, 131.175379)]
    [InlineData(75, 1.824580, 3_478_333.29, 24_068.071, -392.31677, 128.467479)]
    [InlineData(100, 1.390903, 3_932_094.19, 11_010.963, -691.76930, 121.727142)]
    public void At_OtherThanSemicircles_GivesTheIndependentValues(
        double height_mm, double angle, double volume_mm3, double area_mm2, double slope_mm, double outerRadius_mm)
    {
        var shape = ToroidalBellows.SemicircularAt(Height_m, 0.080, 1).At(height_mm * 1e-3)!;

        Assert.Equal(angle, shape.HalfAngle_rad, 1e-6);
        Assert.Equal(volume_mm3, shape.Volume_m3 * 1e9, 0.01);
        Assert.Equal(area_mm2, shape.EffectiveArea_m2 * 1e6, 1e-3);
        Assert.Equal(slope_mm, shape.AreaSlope_m * 1e3, 1e-4);
        Assert.Equal(outerRadius_mm, shape.OuterRadius_m * 1e3, 1e-5);
        Assert.Equal(angle > Math.PI / 2, shape.Overhang_m > 0);
    }

    [Theory]
    [InlineData(0, 0.1, 1)]
    [InlineData(0.08, 0, 1)]
    [InlineData(0.08, 0.1, 0)]
    public void Constructor_ImpossibleDimension_Throws(double ringRadius_m, double arcLength_m, int convolutions) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ToroidalBellows(ringRadius_m, arcLength_m, convolutions));

    private static ToroidalShape Semicircular(int convolutions, double ringRadius_m) =>
        ToroidalBellows.SemicircularAt(Height_m, ringRadius_m, convolutions).At(Height_m)!;

    private static double Force(ToroidalShape shape) => GaugePressure_Pa * shape.EffectiveArea_m2;

    private static double GasRate(ToroidalShape shape) => SealedAir.GasRate_N_per_m(
        Exponent, AbsolutePressure_Pa, shape.EffectiveArea_m2, shape.EffectiveArea_m2, shape.Volume_m3);

    // Central differences of two steps, extrapolated: the error is of fourth order.
    private static double Slope(ToroidalBellows bellows, double height_m, Func<ToroidalShape, double> value)
    {
        var step = 1e-4 * height_m;
        return (4 * Central(step) - Central(2 * step)) / 3;

        double Central(double by) =>
            (value(bellows.At(height_m + by)!) - value(bellows.At(height_m - by)!)) / (2 * by);
    }
}
