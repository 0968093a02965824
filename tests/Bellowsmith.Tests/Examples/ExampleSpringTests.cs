using Bellowsmith.Kits.Schemas;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Examples;

/// <summary>
/// The fit held against what the invented springs really are: the numbers are printed by
/// <c>dotnet run examples/generate.cs -- truth</c>, from a law that shares no code with the fit.
/// </summary>
public class ExampleSpringTests
{
    private const double TrueExponent = 1.36;

    [Theory]
    [InlineData("single-152", 55, 350, 114.99, 1087.6, 83.49)]
    [InlineData("single-152", 75, 250, 107.47, 1305.7, 52.98)]
    [InlineData("single-152", 75, 350, 108.32, 1316.9, 69.71)]
    [InlineData("single-152", 75, 450, 109.16, 1328.0, 86.58)]
    [InlineData("single-152", 95, 350, 97.52, 1529.9, 61.95)]
    [InlineData("single-140", 55, 350, 92.93, 837.0, 71.92)]
    [InlineData("single-140", 75, 250, 86.13, 1015.0, 45.32)]
    [InlineData("single-140", 75, 450, 86.23, 1019.0, 73.32)]
    [InlineData("single-140", 95, 350, 75.43, 1179.7, 52.59)]
    [InlineData("double-146", 70, 350, 112.73, 979.7, 85.18)]
    [InlineData("double-146", 90, 250, 107.08, 1193.1, 52.93)]
    [InlineData("double-146", 90, 450, 109.02, 1221.1, 85.55)]
    [InlineData("double-146", 115, 350, 98.25, 1475.3, 57.94)]
    public void Of_ExampleRows_FindsTheTrueSpring(
        string spring, double height_mm, double gaugePressure_kPa, double area_cm2, double volume_cm3, double rate_N_per_mm)
    {
        var fitted = Fit(spring).Spring;
        var (height, gauge) = (height_mm * 1e-3, gaugePressure_kPa * 1e3);
        var at = fitted.At(height, gauge);

        AssertWithin(area_cm2, at.EffectiveArea_m2 * 1e4, share: 0.0025);
        AssertWithin(volume_cm3, at.Volume_m3 * 1e6, share: 0.0025);
        AssertWithin(rate_N_per_mm, new StrutSpring(fitted).SealedRate_N_per_m(height, gauge, TrueExponent) * 1e-3, share: 0.01);
    }

    /// <summary>The true ∂Ae/∂pg is ½·c'(h): cm² per bar at the middle height.</summary>
    [Theory]
    [InlineData("single-152", 75, 0.844)]
    [InlineData("double-146", 90, 0.969)]
    [InlineData("single-140", 75, 0.050)]
    public void Of_WallThatStretches_ShowsHowTheAreaGrows(string spring, double height_mm, double growth_cm2_per_bar)
    {
        var fit = Fit(spring);

        Assert.True(fit.StretchMeasured);
        Assert.Equal(growth_cm2_per_bar, fit.Spring.At(height_mm * 1e-3, 350e3).AreaByGaugePressure_m2_per_Pa * 1e9, 0.12);
    }

    [Theory]
    [InlineData("single-152")]
    [InlineData("single-140")]
    [InlineData("double-146")]
    public void Exponent_FastSealedSweeps_CoversTheTrueOne(string spring)
    {
        var exponent = Fit(spring).Exponent!.Value;

        Assert.Equal(6, exponent.Sweeps);
        Assert.InRange(TrueExponent, exponent.Low, exponent.High);
        Assert.InRange(exponent.High - exponent.Low, 0.001, 0.02);
    }

    /// <summary>Line 68 says 4101 N where the frame read 4011 N.</summary>
    [Fact]
    public void SetAside_SwappedDigits_IsThatRowAlone()
    {
        var aside = Assert.Single(Fit("single-152").SetAside);

        Assert.Equal((68, 0.09199), (aside.Line, Math.Round(aside.Height_m, 6)));
        Assert.InRange(aside.Miss_N, 70, 100);
        Assert.Empty(Fit("single-140").SetAside);
        Assert.Empty(Fit("double-146").SetAside);
    }

    [Theory]
    [InlineData("single-152", 3)]
    [InlineData("single-140", 2)]
    [InlineData("double-146", 2)]
    public void SmallStrokes_ExampleSetPoints_AreAsMuchStifferAsTheRubber(string spring, int setPoints)
    {
        var strokes = Fit(spring).SmallStrokes;

        Assert.Equal(setPoints, strokes.Count);
        Assert.All(strokes, stroke => Assert.InRange(stroke.Ratio, 1.10, 1.20));
    }

    private static AirSpringFit Fit(string spring) =>
        AirSpringFit.Of(AirSpringReader.Read(ExampleFolder.PathOf($"springs/{spring}.json")).Data);

    private static void AssertWithin(double expected, double actual, double share) =>
        Assert.InRange(actual, expected * (1 - share), expected * (1 + share));
}
