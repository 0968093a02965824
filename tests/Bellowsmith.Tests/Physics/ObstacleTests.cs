using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics;

public sealed class ObstacleTests
{
    [Theory] // 3.6 m long, 0.1 m high; heights at 0, 0.9, 1.8 and 2.7 m by hand
    [InlineData("cosine", 0, 0.05, 0.1, 0.05)]
    [InlineData("circular", 0, 0.0750578, 0.1, 0.0750578)]
    [InlineData("flat top", 0, 0.09, 0.1, 0.09)]
    [InlineData("pothole", 0, -0.09, -0.1, -0.09)]
    public void Height_OfAShape_IsItsOwn(string shape, double at0, double at1, double at2, double at3)
    {
        var obstacle = shape switch
        {
            "cosine" => Obstacle.CosineHump(3.6, 0.1),
            "circular" => Obstacle.CircularHump(3.6, 0.1),
            "flat top" => Obstacle.FlatTop(3.6, 0.1, 1.0),
            _ => Obstacle.Pothole(3.6, 0.1, 1.0),
        };
        double[] distances = [0, 0.9, 1.8, 2.7];

        Assert.Equal([at0, at1, at2, at3], distances.Select(x => Math.Round(obstacle.Height_m(x), 7)));
        Assert.Equal([0, 0], [obstacle.Height_m(-0.001), obstacle.Height_m(3.6)]);
    }

    [Fact]
    public void Height_OfASharpPotholeAndAStep_JumpsAtTheEdge()
    {
        Obstacle hole = Obstacle.Pothole(0.5, 0.06, 0), step = Obstacle.Step(-0.03);

        Assert.Equal([0, -0.06, -0.06, 0], [hole.Height_m(-1e-9), hole.Height_m(0), hole.Height_m(0.4999), hole.Height_m(0.5)]);
        Assert.Equal([0, -0.03, -0.03], [step.Height_m(-1e-9), step.Height_m(0), step.Height_m(1000)]);
    }

    [Fact]
    public void AddTo_ARoad_BeginsWhereItIsPut()
    {
        double[] road = [1, 1, 1, 1, 1];
        Obstacle.FlatTop(1, 0.2, 0).AddTo(road, 0.5, 0.75);

        Assert.Equal([1, 1, 1.2, 1.2, 1], road);
    }

    [Fact]
    public void Factories_ShapesThatCannotBe_Throw()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Obstacle.CosineHump(0, 0.1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Obstacle.CircularHump(1, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => Obstacle.FlatTop(1, 0.1, 0.6));
        Assert.Throws<ArgumentOutOfRangeException>(() => Obstacle.Pothole(1, 0.1, -0.1));
    }

    [Fact]
    public void MeasuredRoad_BetweenAndBeyondItsPoints_IsStraightAndLevel()
    {
        double[] road = new double[8];
        new MeasuredRoad([10, 11, 13], [0.1, 0.3, -0.1]).Fill(road, 0.5);

        Assert.Equal([0.1, 0.2, 0.3, 0.2, 0.1, 0, -0.1, -0.1], road.Select(z => Math.Round(z, 12)));
    }

    [Fact]
    public void MeasuredRoad_PointsThatMakeNone_Throw()
    {
        Assert.Throws<ArgumentException>(() => new MeasuredRoad([1], [0]));
        Assert.Throws<ArgumentException>(() => new MeasuredRoad([1, 1], [0, 0]));
        Assert.Throws<ArgumentException>(() => new MeasuredRoad([1, 2], [0]));
    }
}
