using Bellowsmith.Quality.Distributions;
using MathNet.Numerics.Distributions;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Normal, t, χ², F and beta against values computed with mpmath 1.2.1 at 30 digits (reference library, not product code).
/// The package's distribution functions and its normal and χ² quantiles hold 1e-11 and are used as they are; its t, F and beta
/// quantiles lose digits where the answer is small, and its t quantile fails in the far tail, so those three are our own.
/// </summary>
public sealed class StandardDistributions
{
    [Theory]
    [InlineData(-8, 6.2209605742717841e-16)]
    [InlineData(-3.5, 0.00023262907903552504)]
    [InlineData(-1, 0.15865525393145705)]
    [InlineData(0.3, 0.61791142218895264)]
    [InlineData(2.5, 0.99379033467422386)]
    [InlineData(6, 0.99999999901341235)]
    public void Normal_Probability_IsTheComputed(double z, double probability) => Near(probability, Normal.CDF(0, 1, z), 1e-13);

    [Theory]
    [InlineData(1e-9, -5.997807015007687)]
    [InlineData(0.001, -3.090232306167813)]
    [InlineData(0.025, -1.959963984540054)]
    [InlineData(0.2, -0.8416212335729143)]
    [InlineData(0.9, 1.2815515655446004)]
    [InlineData(0.995, 2.5758293035489004)]
    public void Normal_Quantile_IsTheComputed(double probability, double z) => Near(z, Normal.InvCDF(0, 1, probability), 1e-14);

    [Theory]
    [InlineData(-3, 1, 0.10241638234956673)]
    [InlineData(-12.5, 4, 0.0001178080234463499)]
    [InlineData(2.2, 4, 0.95367366491018268)]
    [InlineData(0.5, 28, 0.6895089781404698)]
    [InlineData(2.902292836, 28, 0.99642857142842731)]
    [InlineData(-4, 100, 6.0761822150380839e-5)]
    [InlineData(1.96, 1000, 0.97486340752212564)]
    [InlineData(1.96, 100000, 0.97500071840284918)]
    public void StudentT_Probability_IsTheComputed(double t, double degrees, double probability) =>
        Near(probability, StudentT.CDF(0, 1, degrees, t), 1e-11);

    [Theory]
    [InlineData(0.975, 1, 12.706204736174705)]
    [InlineData(0.999, 1, 318.30883898555044)]
    [InlineData(0.975, 2, 4.3026527297494646)]
    [InlineData(0.0001, 4, -13.033671720896457)]
    [InlineData(0.975, 28, 2.048407141795245)]
    [InlineData(0.995, 16.75186, 2.9035475376150863)]
    [InlineData(0.6, 50, 0.2546993429885882)]
    [InlineData(0.975, 200, 1.9718962236339093)]
    [InlineData(0.9999, 1000, 3.7328516045753677)]
    [InlineData(1e-6, 2, -707.1057205259337)]
    [InlineData(1e-8, 5, -62.40450611096729)]
    [InlineData(1e-12, 30, -11.397217523311411)]
    [InlineData(1e-5, 1, -31830.988607907093)]
    public void StudentT_Quantile_IsTheComputed(double probability, double degrees, double t) =>
        Near(t, Quantiles.StudentT(probability, degrees), 1e-11);

    [Theory]
    [InlineData(0.5, 1, 0.52049987781304654)]
    [InlineData(3, 2, 0.77686983985157017)]
    [InlineData(0.01, 3, 0.00026516505865560983)]
    [InlineData(42, 29, 0.94384080000301702)]
    [InlineData(100, 99, 0.54704148867906863)]
    [InlineData(1100, 1000, 0.98538559187370481)]
    public void ChiSquare_Probability_IsTheComputed(double x, double degrees, double probability) =>
        Near(probability, ChiSquared.CDF(degrees, x), 1e-12);

    [Theory]
    [InlineData(0.025, 1, 0.000982069117175256)]
    [InlineData(0.975, 1, 5.023886187314888)]
    [InlineData(0.05, 2, 0.10258658877510107)]
    [InlineData(0.025, 29, 16.047071695364885)]
    [InlineData(0.975, 29, 45.72228580417455)]
    [InlineData(0.01, 42, 23.650094677826196)]
    [InlineData(0.975, 99, 128.42198864384028)]
    [InlineData(0.025, 1000, 914.257153799259)]
    [InlineData(0.9999, 10, 35.56401394195211)]
    public void ChiSquare_Quantile_IsTheComputed(double probability, double degrees, double x) =>
        Near(x, ChiSquared.InvCDF(degrees, probability), 1e-12);

    [Theory]
    [InlineData(9.72384, 3, 16, 0.99931554615586085)]
    [InlineData(28.9, 4, 28, 0.99999999859103001)]
    [InlineData(0.2, 7, 28, 0.017161912638688068)]
    [InlineData(1.5, 100, 200, 0.99185252280970861)]
    public void F_Probability_IsTheComputed(double x, double numerator, double denominator, double probability) =>
        Near(probability, FisherSnedecor.CDF(numerator, denominator, x), 1e-13);

    [Theory]
    [InlineData(0.95, 3, 16, 3.2388715174535854)]
    [InlineData(0.975, 1, 1, 647.7890114778454)]
    [InlineData(0.05, 7, 28, 0.2953523088279735)]
    [InlineData(0.99, 100, 200, 1.4810559192611925)]
    [InlineData(0.001, 2, 50, 0.0010005203538689534)]
    [InlineData(0.9999, 2, 3, 694.7383250419168)]
    [InlineData(0.975, 38, 38, 1.9070036536955004)]
    public void F_Quantile_IsTheComputed(double probability, double numerator, double denominator, double x) =>
        Near(x, Quantiles.F(probability, numerator, denominator), 1e-12);

    [Theory]
    [InlineData(0.1, 0.5, 5, 0.68335708497998774)]
    [InlineData(0.7, 3, 2, 0.6517)]
    [InlineData(0.02, 1, 300, 0.99766749433204857)]
    [InlineData(0.5, 200, 210, 0.68948521342741615)]
    public void Beta_Probability_IsTheComputed(double x, double a, double b, double probability) =>
        Near(probability, Beta.CDF(a, b, x), 1e-12);

    [Theory]
    [InlineData(0.95, 1, 59, 0.049507609888226944)]
    [InlineData(0.025, 3, 40, 0.014979691670710005)]
    [InlineData(0.5, 0.5, 0.5, 0.5)]
    [InlineData(0.975, 200, 210, 0.5361608401853064)]
    [InlineData(1e-4, 1, 10000, 1.0000499983330833e-8)]
    [InlineData(0.975, 1, 100000, 3.6888114157924212e-5)]
    [InlineData(1e-6, 2.5, 7, 0.0008347181094954909)]
    [InlineData(0.999999, 50, 2, 0.9999719815796642)]
    public void Beta_Quantile_IsTheComputed(double probability, double a, double b, double x) =>
        Near(x, Quantiles.BetaOf(probability, a, b), 1e-10);

    private static void Near(double expected, double actual, double relative) =>
        Assert.InRange(actual, expected - relative * Math.Abs(expected), expected + relative * Math.Abs(expected));
}
