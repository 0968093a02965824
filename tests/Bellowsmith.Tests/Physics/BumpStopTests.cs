using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

public sealed class BumpStopTests
{
    private static readonly double[] _squeezed = [0, 0.010, 0.020, 0.030], _force = [0, 200, 800, 3000];

    private static BumpStop Stop(double solid_m) => new(0.060, solid_m, _squeezed, _force);

    [Theory]
    [InlineData(0.080, 0)]
    [InlineData(0.060, 0)]
    [InlineData(0.055, 50)] // slopes of the parabolas through neighbours: 0, 40, 140, 300 N/mm
    [InlineData(0.050, 200)]
    [InlineData(0.045, 375)]
    [InlineData(0.040, 800)]
    [InlineData(0.035, 1700)]
    [InlineData(0.030, 3000)]
    [InlineData(0.010, 3000)] // past solid it is what it was there
    public void Force_AtALength_FollowsTheCurve(double length_m, double force_N) =>
        Assert.Equal(force_N, Stop(0.030).Force_N(length_m), 1e-9);

    [Fact]
    public void Force_Squeezed_NeverFalls()
    {
        var stop = Stop(0.030);
        for (var k = 0; k < 600; k++)
            Assert.True(stop.Force_N(0.0600 - (k + 1) * 5e-5) >= stop.Force_N(0.0600 - k * 5e-5));
    }

    [Theory]
    [InlineData(0.025, 0.030)] // the curve ends first
    [InlineData(0.030, 0.030)]
    [InlineData(0.040, 0.040)] // the stop is solid first
    public void SolidLength_CurveAndSolidLength_IsWhicheverComesFirst(double given_m, double solid_m) =>
        Assert.Equal(solid_m, Stop(given_m).SolidLength_m, 1e-12);

    [Fact]
    public void Force_SolidBeforeTheCurveEnds_StopsThere() => Assert.Equal(800, Stop(0.040).Force_N(0.031), 1e-9);
}
