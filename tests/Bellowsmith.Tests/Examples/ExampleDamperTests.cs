using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Examples;

/// <summary>
/// The dampers' curves held against the law the rows were made by in examples/generate.cs: force and equivalent damping at its
/// middle warmth, computed once from the law apart from the fit.
/// </summary>
public sealed class ExampleDamperTests
{
    [Theory]
    [InlineData("front-street", 0, 11177.1, 4965.8)]
    [InlineData("front-street", 6, 7086.9, 3978.0)]
    [InlineData("front-street", 12, 4524.7, 3196.1)]
    [InlineData("rear-street", 6, 6199.4, 3615.2)]
    [InlineData("rear-street", 8, 5337.4, 3361.2)]
    public void Equivalent_AtTheRatiosAmplitude_IsTheLaws(string damper, double click, double rebound, double compression)
    {
        var equivalent = Fit(damper).Damper!.Equivalent(click, 0.1);

        Assert.InRange(equivalent.Rebound_N_s_per_m / rebound, 0.985, 1.015);
        Assert.InRange(equivalent.Compression_N_s_per_m / compression, 0.985, 1.015);
    }

    [Theory] // between the measured speeds
    [InlineData("front-street", 6, 0.1, 686)]
    [InlineData("front-street", 6, 0.2, 1078)]
    [InlineData("front-street", 6, 0.4, 1384)]
    [InlineData("front-street", 6, 0.8, 1717)]
    [InlineData("front-street", 6, -0.1, -382)]
    [InlineData("front-street", 6, -0.2, -581)]
    [InlineData("front-street", 6, -0.4, -758)]
    [InlineData("front-street", 6, -0.8, -1016)]
    [InlineData("rear-street", 8, 0.4, 1036)]
    [InlineData("rear-street", 8, -0.8, -852)]
    public void Force_BetweenMeasuredSpeeds_IsTheLaws(string damper, double click, double velocity, double force) =>
        Assert.InRange(Fit(damper).Damper!.Force_N(click, velocity) / force, 0.96, 1.04);

    [Theory] // deviation 0.4 % of the force and 1.5 N, and 0.3 % from run to run
    [InlineData("front-street", 160)]
    [InlineData("rear-street", 80)]
    public void Repeatability_OfTheRuns_IsAFewNewtons(string damper, int degrees)
    {
        var fit = Fit(damper);

        Assert.InRange(fit.Repeatability_N!.Value, 3, 8);
        Assert.Equal(degrees, fit.RepeatabilityDegrees);
        Assert.Empty(fit.LeftOut);
        Assert.Empty(fit.MissingClicks);
        Assert.Equal(16, fit.Damper!.Clicks.Count);
    }

    private static DamperFit Fit(string damper) =>
        ((TelescopicDamperPart)DamperReader.Read(ExampleFolder.PathOf($"dampers/{damper}.json"))).Fit([])!;
}
