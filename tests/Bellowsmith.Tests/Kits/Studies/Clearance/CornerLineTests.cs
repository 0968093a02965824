using Bellowsmith.Kits;
using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Kits.Studies.Clearance;

/// <summary>A level arm 800 mm long; its wheel raised by 300 mm stands √(800² − 300²) = 741.62 mm behind the axis.</summary>
public sealed class CornerLineTests
{
    private static readonly Linkage _lever = SampleSuspension.Lever.Linkage();

    [Theory]
    [InlineData(0, 50)] // 200 mm across
    [InlineData(300, -115.251)] // √(58.380² + 200² + 300²) = 365.251 mm
    public void Slack_Straight_IsLengthLessDistance(double travel_mm, double slack_mm)
    {
        CornerLine line = new("hose", 1e-3 * new Point(-800, 500, 300), [], 1e-3 * new Point(-800, 700, 300), 0.250);

        Assert.Equal(slack_mm, 1e3 * line.Slack_m(_lever.At(travel_mm / 1000).State!), 1e-3);
    }

    [Fact] // up 300 mm to the holder, then √(58.380² + 200²) = 208.347 mm
    public void Slack_OverAHolder_IsLengthLessBothStretches()
    {
        CornerLine line = new("hose", 1e-3 * new Point(-800, 500, 300), [1e-3 * new Point(-800, 500, 600)], 1e-3 * new Point(-800, 700, 300), 0.600);

        Assert.Equal(600 - 300 - 208.347, 1e3 * line.Slack_m(_lever.At(0.300).State!), 1e-3);
    }
}
