using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies.BellowsShape;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Examples;

/// <summary>
/// The fit held against what the invented springs really are: the numbers are printed by
/// <c>dotnet run examples/generate.cs -- truth</c>, from the law the rows were made by, which shares no code with the fit.
/// </summary>
public class ExampleSpringTests
{
    private const double TrueExponent = 1.36;

    [Theory]
    [InlineData("single-152", 55, 350, 105.25, 1084.7, 72.67)]
    [InlineData("single-152", 75, 250, 95.15, 1283.2, 51.03)]
    [InlineData("single-152", 75, 350, 95.65, 1290.2, 67.79)]
    [InlineData("single-152", 75, 450, 96.15, 1297.2, 84.66)]
    [InlineData("single-152", 95, 350, 77.15, 1468.4, 66.29)]
    [InlineData("single-140", 50, 350, 82.26, 713.8, 65.58)]
    [InlineData("single-140", 68, 250, 74.70, 854.5, 46.41)]
    [InlineData("single-140", 68, 450, 74.80, 858.5, 76.13)]
    [InlineData("single-140", 86, 350, 59.54, 979.0, 60.01)]
    [InlineData("double-146", 70, 350, 113.05, 1005.7, 95.02)]
    [InlineData("double-146", 90, 250, 98.66, 1214.3, 59.48)]
    [InlineData("double-146", 90, 450, 99.66, 1230.3, 98.60)]
    [InlineData("double-146", 115, 350, 74.67, 1445.4, 59.77)]
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
    [InlineData("single-152", 75, 0.500)]
    [InlineData("double-146", 90, 0.500)]
    [InlineData("single-140", 68, 0.050)]
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

    /// <summary>Line 65 says 3676 N where the frame read 3766 N.</summary>
    [Fact]
    public void SetAside_SwappedDigits_IsThatRowAlone()
    {
        var aside = Assert.Single(Fit("single-152").SetAside);

        Assert.Equal((65, 0.07802), (aside.Line, Math.Round(aside.Height_m, 6)));
        Assert.InRange(aside.Miss_N, -100, -70);
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

    /// <summary>
    /// The rows were made by the mould's cords, plates of 12 mm and a wall that gives: what the wall adds to the area at the
    /// middle gauge pressure, ½·c'·pg, is 2 % at most, and without the plates the mould would miss by several times that.
    /// </summary>
    [Theory]
    [InlineData("single-152")]
    [InlineData("single-140")]
    [InlineData("double-146")]
    public void Answer_MouldAgainstItsSpring_MissesByWhatTheWallGives(string spring)
    {
        var mould = MouldReader.Read(ExampleFolder.PathOf($"moulds/{spring}.json"));
        var calibration = BellowsShapeStudy.Answer(mould, 0.058, Fit(spring)).Calibration!;

        Assert.InRange(calibration.DifferenceBefore, 0, 0.021);
        Assert.InRange(calibration.DifferenceAfter, 0, 0.003);
        Assert.True(BellowsShapeStudy.Answer(mould with { PlateThickness_m = null }, 0.058, Fit(spring)).Calibration!.DifferenceBefore > 0.05);
    }

    private static AirSpringFit Fit(string spring) =>
        AirSpringFit.Of(AirSpringReader.Read(ExampleFolder.PathOf($"springs/{spring}.json")).Data);

    private static void AssertWithin(double expected, double actual, double share) =>
        Assert.InRange(actual, expected * (1 - share), expected * (1 + share));
}
