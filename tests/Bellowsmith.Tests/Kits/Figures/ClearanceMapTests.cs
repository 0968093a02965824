using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Tests.Kits.Studies.Clearance;

namespace Bellowsmith.Tests.Kits.Figures;

public sealed class ClearanceMapTests
{
    [Fact]
    public void Of_TheDemo_HasTheGridInTheUnitsShownAndItsPairs()
    {
        ClearanceResult result = ClearanceStudy.Answer(Corners.Front, Corners.Gaps);
        ClearanceMap map = ClearanceMap.Of(result, DisplayUnits.Imperial)!;

        Assert.Equal((13, 22), (map.X.Count, map.Y.Count));
        Assert.Equal(62 / 25.4, map.X.Values[^1], 1e-9);
        Assert.Equal(result.Grid.Room_m[5] / 0.0254, map.Room[5], 1e-5);
        Assert.Equal(result.Grid.Room_m.Count, map.Pair.Length);
        Assert.Equal("rim to lower arm", map.Pairs[map.Pair[Array.IndexOf(map.Room, map.Room.Min())]]);
        Assert.Equal(result.Pairs[0].Rack_m / 0.0254, map.Worst.X, 1e-9);
    }

    [Fact]
    public void Of_NothingSwept_IsNone() =>
        Assert.Null(ClearanceMap.Of(ClearanceStudy.Answer(Corners.Front, Corners.Gaps with { Camber_rad = Math.PI / 3 }), DisplayUnits.Metric));
}
