using Bellowsmith.Quality.Capability;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Normal tolerance factors [NIST Handbook 2012, section 7.2.6.3]: 43 readings, coverage 0.90, confidence 0.99 (printed: Howe
/// 2.2173, one-sided exact 1.8740), and further exact factors recomputed with R 4.2.2. The handbook's data file for that page
/// holds 25 readings, not 43: both are here. An older edition of the page printed the upper limit as 102.096, its standard
/// deviation misplaced by a factor of 100.
/// </summary>
public sealed class ToleranceFactors
{
    [Theory]
    [InlineData(0.90, 0.99, 43, 1.8739536059, 1e-9)]
    [InlineData(0.90, 0.99, 25, 2.1290089492, 1e-9)]
    [InlineData(0.95, 0.95, 10, 2.9109634, 1e-7)]
    [InlineData(0.95, 0.95, 20, 2.3960017, 1e-7)]
    [InlineData(0.95, 0.95, 30, 2.2198375, 1e-7)]
    [InlineData(0.95, 0.95, 50, 2.0649934, 1e-7)]
    [InlineData(0.99, 0.95, 10, 3.9811178, 1e-7)]
    [InlineData(0.99, 0.95, 20, 3.2951570, 1e-7)]
    [InlineData(0.99, 0.95, 30, 3.0639011, 1e-7)]
    [InlineData(0.99, 0.95, 50, 2.8624493, 1e-7)]
    public void OneSided_IsTheExact(double coverage, double confidence, int count, double factor, double tolerance) =>
        Assert.Equal(factor, ToleranceFactor.OneSided(coverage, confidence, count), tolerance);

    [Theory]
    [InlineData(0.90, 0.99, 43, 2.2228251738, 1e-9)]
    [InlineData(0.90, 0.99, 25, 2.5059269054, 1e-9)]
    [InlineData(0.95, 0.95, 10, 3.3934295, 1e-7)]
    [InlineData(0.95, 0.95, 20, 2.7603462, 1e-7)]
    [InlineData(0.95, 0.95, 30, 2.5548928, 1e-7)]
    [InlineData(0.95, 0.95, 50, 2.3815597, 1e-7)]
    [InlineData(0.99, 0.95, 10, 4.4369087, 1e-7)]
    [InlineData(0.99, 0.95, 20, 3.6209862, 1e-7)]
    [InlineData(0.99, 0.95, 30, 3.3545758, 1e-7)]
    [InlineData(0.99, 0.95, 50, 3.1287688, 1e-7)]
    public void TwoSided_IsTheExact(double coverage, double confidence, int count, double factor, double tolerance) =>
        Assert.Equal(factor, ToleranceFactor.TwoSided(coverage, confidence, count), tolerance);

    [Fact]
    public void TwoSidedApproximate_IsHowes() => Assert.Equal(2.2173158967, ToleranceFactor.TwoSidedApproximate(0.9, 0.99, 43), 1e-9);

    [Theory]
    [InlineData(0.95, 10, 3.3934295)]
    [InlineData(0.99, 10, 4.4369087)]
    [InlineData(0.95, 50, 2.3815597)]
    public void TwoSidedApproximate_AgainstTheExact_IsWithinHalfAPercent(double coverage, int count, double exact) =>
        Assert.InRange(ToleranceFactor.TwoSidedApproximate(coverage, 0.95, count) / exact, 0.995, 1.005);
}
