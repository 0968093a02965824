using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.References.Quality;

/// <summary>
/// Parts to test, <c>ln(1 − C)/ln R</c> and its exact binomial with failures allowed; formula read, integers recomputed with R and SciPy.
/// Extended life: R 95 %, C 90 % with shape 1 and 3 from a published case of testing with a known shape, the rest computed.
/// </summary>
public sealed class SuccessRuns
{
    [Theory]
    [InlineData(0.50, 0.90, 7)]
    [InlineData(0.50, 0.95, 14)]
    [InlineData(0.50, 0.99, 69)]
    [InlineData(0.80, 0.90, 16)]
    [InlineData(0.80, 0.95, 32)]
    [InlineData(0.80, 0.99, 161)]
    [InlineData(0.90, 0.80, 11)]
    [InlineData(0.90, 0.90, 22)]
    [InlineData(0.90, 0.95, 45)]
    [InlineData(0.90, 0.99, 230)]
    [InlineData(0.95, 0.90, 29)]
    [InlineData(0.95, 0.95, 59)]
    [InlineData(0.95, 0.99, 299)]
    [InlineData(0.99, 0.90, 44)]
    [InlineData(0.99, 0.95, 90)]
    [InlineData(0.99, 0.99, 459)]
    public void PartsNeeded_WithoutFailures_IsTheSuccessRun(double confidence, double reliability, int parts) =>
        Assert.Equal(parts, ReliabilityDemonstration.PartsNeeded(reliability, confidence));

    [Theory]
    [InlineData(0.90, 0.90, new[] { 22, 38, 52, 65 })]
    [InlineData(0.95, 0.90, new[] { 45, 77, 105, 132 })]
    [InlineData(0.90, 0.95, new[] { 29, 46, 61, 76 })]
    [InlineData(0.99, 0.90, new[] { 230, 388, 531, 667 })]
    public void Plan_WithFailuresAllowed_IsTheExactBinomial(double reliability, double confidence, int[] parts) =>
        Assert.Equal(parts, LifeTestPlan.Of(reliability, confidence).Choices.Select(choice => choice.Parts!.Value));

    [Theory]
    [InlineData(0.95, 0.90, 1, 1, 45)]
    [InlineData(0.95, 0.90, 1.5, 1, 30)]
    [InlineData(0.95, 0.90, 1.5, 3, 14)]
    [InlineData(0.90, 0.90, 2, 1.5, 8)]
    [InlineData(0.90, 0.90, 2, 2, 6)]
    [InlineData(0.90, 0.90, 2, 3, 3)]
    public void Plan_OverALongerLife_TakesFewer(double reliability, double confidence, double lifeRatio, double shape, int parts) =>
        Assert.Equal(parts, LifeTestPlan.Of(reliability, confidence, 0, lifeRatio, shape).Parts);

    [Fact]
    public void Shown_ByThirteenSurvivors_IsTheirRoot() => Assert.Equal(0.83768, ReliabilityDemonstration.Shown(13, 0, 0.90), 5e-6);
}
