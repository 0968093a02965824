using Bellowsmith.Physics;

namespace Bellowsmith.Tests.Physics.Ride;

public sealed class RideThreadTests
{
    private static readonly double[] _road = LaneTests.Road(7_000);
    private static readonly Corner[] _corners = [.. Enumerable.Range(0, 37).Select(k => LaneTests.Made(40e3 + 700 * k, 1200 + 40 * k, stop: k % 3 != 0))];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Over_AnyNumberOfThreads_ChangesNothing(int threads)
    {
        RideFigures[] figures = new RideFigures[_corners.Length];

        RideRun.Over(_corners, _road, figures, threads, TestContext.Current.CancellationToken);

        Assert.Equal(RideRun.Over(_corners, _road), figures);
    }

    [Fact] // who stands beside whom, and how many are left for the last group
    public void Over_CornersInAnotherOrder_AreTheSame()
    {
        Corner[] turned = [.. _corners.Reverse().Skip(4)];

        Assert.Equal(RideRun.Over(_corners, _road).Reverse().Skip(4), RideRun.Over(turned, _road));
    }

    [Fact]
    public void Over_ARoadEach_IsEachCornerOnItsRoad()
    {
        double[][] roads = [.. Enumerable.Range(0, _corners.Length).Select(k => Array.ConvertAll(_road, height => height * (0.4 + 0.03 * k)))];
        RideFigures[] figures = new RideFigures[_corners.Length];

        RideRun.Over(_corners, roads, figures, 2, TestContext.Current.CancellationToken);

        Assert.All(_corners.Index(), c => Assert.Equal(RideRun.Over([c.Item], roads[c.Index])[0], figures[c.Index]));
    }

    [Fact]
    public void Over_RoadsOfDifferentLengths_AreRefused() => Assert.Throws<ArgumentException>(() => RideRun.Over(
        _corners.AsMemory(0, 2), new double[][] { [0, 0], [0] }, new RideFigures[2], 1, TestContext.Current.CancellationToken));

    [Fact]
    public async Task Over_CancelledOnTheWay_Stops()
    {
        using CancellationTokenSource source = new();
        Corner[] many = [.. Enumerable.Repeat(_corners, 200).SelectMany(c => c)];
        RideFigures[] figures = new RideFigures[many.Length];
        Task run = Task.Run(() => RideRun.Over(many, LaneTests.Road(60_000), figures, 2, source.Token), TestContext.Current.CancellationToken);
        SpinWait.SpinUntil(() => figures[0] is not null);

        await source.CancelAsync();

        await Assert.ThrowsAsync<OperationCanceledException>(() => run);
        Assert.Contains(figures, f => f is null);
    }
}
