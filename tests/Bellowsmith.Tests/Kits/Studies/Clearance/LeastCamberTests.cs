using Bellowsmith.Kits.Studies.Clearance;

namespace Bellowsmith.Tests.Kits.Studies.Clearance;

public sealed class LeastCamberTests
{
    private const double Degree = Math.PI / 180;
    private int _asked;

    [Theory] // from −1° to −6°, what clears beginning at an edge and ending at another
    [InlineData(-1.001, -6)]
    [InlineData(-1.004, -1.012)] // narrower than the strides that follow
    [InlineData(-2.37, -2.63)] // as wide as the longest stride
    [InlineData(-5.999, -6)]
    public void Of_WhatClearsFromAnEdgeOn_IsWithinItsClosenessAndSoon(double edge_deg, double end_deg)
    {
        double? found = Least(0.005, camber => camber <= edge_deg && camber >= end_deg);

        Assert.InRange(found!.Value, edge_deg - 0.005, edge_deg);
        Assert.InRange(_asked, 1, 40);
    }

    [Fact]
    public void Of_WhatClearsNowhere_LooksAtTheMostAndEnds()
    {
        double last = 0;

        Assert.Null(Least(0.005, camber => (last = camber) > 0));

        Assert.Equal(-6, last, 1e-12);
        Assert.InRange(_asked, 1, 40);
    }

    [Theory]
    [InlineData(double.NaN, -6)]
    [InlineData(-1, double.NaN)]
    public void Of_WhatIsNoNumber_Ends(double tooLittle, double most) => Assert.Null(LeastCamber.Of(tooLittle, most, LeastCamber.Longest_rad, _ => false));

    private double? Least(double stride_deg, Func<double, bool> clears) => LeastCamber.Of(-1 * Degree, -6 * Degree, stride_deg * Degree, camber =>
    {
        _asked++;
        return clears(camber / Degree);
    }) / Degree;
}
