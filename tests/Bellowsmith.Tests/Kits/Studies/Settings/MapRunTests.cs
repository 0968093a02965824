using Bellowsmith.Kits;
using Bellowsmith.Kits.Schemas;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;
using Bellowsmith.Physics;
using Bellowsmith.Tests.Examples;

namespace Bellowsmith.Tests.Kits.Studies.Settings;

/// <summary>A map grows coarse cells first, can be stopped, and comes to the same however it is cut into pieces.</summary>
public sealed class MapRunTests
{
    [Fact]
    public void Advance_InPieces_IsTheWholeAtOnce()
    {
        MapRun whole = new MapRun(Question()).All(TestContext.Current.CancellationToken), pieces = new(Question());
        while (!pieces.IsDone) pieces.Advance(7, TestContext.Current.CancellationToken);

        for (int row = 0; row < 6; row++)
            for (int column = 0; column < 16; column++)
            {
                Assert.Equal(whole.Value(column, row), pieces.Value(column, row));
                Assert.Equal(whole.Reason(column, row), pieces.Reason(column, row));
            }
    }

    [Fact]
    public void Advance_TheFirstCells_AreSpreadOverTheMap()
    {
        MapRun map = new(Question());
        map.Advance(2, TestContext.Current.CancellationToken);

        Assert.True(map.At(0, 0) is not null || map.Reason(0, 0) is not null);
        Assert.True(map.At(8, 0) is not null || map.Reason(8, 0) is not null);
        Assert.Null(map.At(1, 0));
        Assert.Equal((2, 96), (map.Driven, map.Cells));
    }

    [Fact]
    public void Advance_Cancelled_LeavesItsCellsToBeDriven()
    {
        MapRun map = new(Question());

        Assert.Throws<OperationCanceledException>(() => map.Advance(96, new CancellationToken(canceled: true)));
        Assert.Equal(0, map.Driven);
        Assert.False(double.IsNaN(map.All(TestContext.Current.CancellationToken).Value(8, 3)));
    }

    private static MapQuestion Question()
    {
        Kit kit = KitReader.Read(ExampleFolder.PathOf("kits/ostrane-street.json"));
        RideStrut strut = RideStruts.Of(kit, new StudyConditions())[0];
        return new MapQuestion(
            strut, [.. kit.Car.Loads.Select(load => strut.At(load, kit.Car))], MapAxis.Usual(MapVariable.Click, strut, kit.Car, 16)!,
            MapAxis.Usual(MapVariable.Height, strut, kit.Car, 6)!, RideQuantity.WeightedRms, new RoadQuestion(new RoadOfClass(RoadClass.C), 20, 7), new RideSetting());
    }
}
