using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Simultaneous limits of neighbouring steps against the same integral done otherwise (Chebyshev series of degree 160 on ±9 and
/// 400 Gauss points over the deviation, NumPy and SciPy 1.10.1), three means with bivariate normal quadrature (mpmath 1.2.1),
/// two means with the t table, and no bound at all with 1/k!, the chance of one order. Published deterministic values of eight means and
/// 28 degrees: 2.84417431 and 2.59923862, right to 3e-8; R's qmvt at default tolerance gives 2.8445, 3e-4 off.
/// </summary>
public sealed class AdjacentStepLimits
{
    private const double Infinite = double.PositiveInfinity;

    [Theory]
    [InlineData(0.95, 8, 28, 2.84417431, 1e-7)]
    [InlineData(0.95, 8, 28, 2.8441743354407505, 1e-10)]
    [InlineData(0.95, 3, 2, 5.417852786053093, 1e-10)]
    [InlineData(0.95, 20, 76, 3.074397144707611, 1e-10)]
    [InlineData(0.99, 12, 55, 3.4874282011786564, 1e-10)]
    [InlineData(0.95, 2, 28, 2.048407141795245, 1e-11)]
    [InlineData(0.95, 2, 1, 12.706204736174705, 1e-10)]
    [InlineData(0.95, 2, Infinite, 1.959963984540054, 1e-11)]
    public void TwoSidedQuantile_IsTheComputed(double probability, int means, double degrees, double critical, double tolerance) =>
        Assert.Equal(critical, AdjacentSteps.TwoSidedQuantile(probability, means, degrees), tolerance);

    [Theory]
    [InlineData(0.95, 8, 28, 2.59923862, 1e-7)]
    [InlineData(0.95, 8, 28, 2.5992386436869377, 1e-10)]
    [InlineData(0.9999, 2, 4, 13.033671720896457, 1e-8)]
    public void OneSidedQuantile_IsTheComputed(double probability, int means, double degrees, double critical, double tolerance) =>
        Assert.Equal(critical, AdjacentSteps.OneSidedQuantile(probability, means, degrees), tolerance);

    [Theory]
    [InlineData(2.5, 3, 4, 0.8893313960187611)]
    [InlineData(1, 4, 3, 0.32456081766620015)]
    [InlineData(3.1, 20, 76, 0.9535007809415611)]
    [InlineData(2, 8, Infinite, 0.750566467394456)]
    [InlineData(2, 3, Infinite, 0.91711185261964255)]
    [InlineData(3.5, 50, 200, 0.9734236168529258)]
    [InlineData(8, 3, 1, 0.891977036870148)]
    [InlineData(0.3, 8, Infinite, 0.00013518954204523053)]
    [InlineData(3.6, 100, 396, 0.9662733235473726)]
    public void TwoSidedCdf_IsTheComputed(double critical, int means, double degrees, double probability) =>
        Assert.Equal(probability, AdjacentSteps.TwoSidedCdf(critical, means, degrees), 1e-11);

    [Theory]
    [InlineData(1.5, 5, 8, 0.6907723645068087)]
    [InlineData(0.8, 20, Infinite, 0.0026926674802739805)]
    [InlineData(0, 3, 5, 1.0 / 6)]
    [InlineData(0, 5, 5, 1.0 / 120)]
    [InlineData(0, 8, 28, 1.0 / 40320)]
    public void OneSidedCdf_IsTheComputed(double critical, int means, double degrees, double probability) =>
        Assert.Equal(probability, AdjacentSteps.OneSidedCdf(critical, means, degrees), 1e-11);
}
