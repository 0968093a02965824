using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics.Clearances;

public sealed class AllocationTests
{
    [Fact]
    public void GapTo_AnyKind_TakesNoMemory()
    {
        RevolvedBody tyre = new(BodySamples.Tyre, default, Point.Left), bellows = new(BodySamples.Bellows, new(0, -0.2, 0.3), Point.Up), within = new(BodySamples.Tube, new(0, 0, 0.28), Point.Up);
        RoundBar rod = new(new(-0.1, -0.2, 0), new(0.2, 0.1, 0.3), 0.008);
        double sum = Gaps();
        long before = GC.GetAllocatedBytesForCurrentThread();
        sum += Gaps();

        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.True(double.IsFinite(sum));

        double Gaps() => tyre.GapTo(bellows).Distance_m + tyre.GapTo(within).Distance_m + tyre.GapTo(rod).Distance_m + tyre.GapTo(rod.Start).Distance_m + rod.GapTo(rod).Distance_m;
    }
}
