using Bellowsmith.Physics.Fitting;

namespace Bellowsmith.Tests.Physics.Fitting;

public sealed class SweepRegressionTests
{
    [Fact] // Five points worked by hand: Σx=15, Σy=24.5, Σxx=55, Σxy=88.7 → slope 1.52, intercept 0.34, residuals² 0.056.
    public void Solve_WithoutPenalties_IsOrdinaryLeastSquares()
    {
        var line = Line([1, 2, 3, 4, 5], [2.0, 3.2, 4.9, 6.4, 8.0]);

        line.Solve();

        Assert.Equal(0.34, line.Coefficients[0], 1e-9);
        Assert.Equal(1.52, line.Coefficients[1], 1e-9);
        Assert.Equal(0.056 / 3, line.Variance, 1e-9);
    }

    [Fact]
    public void Without_ASweep_IsTheFitOfTheRest()
    {
        SweepRegression both = new(2, 0, 2);
        foreach (var (x, y) in new[] { (0.0, 1.0), (1, 3), (2, 5) }) both.Add(0, [1, x], [], y);
        foreach (var (x, y) in new[] { (0.0, 9.0), (4, -7) }) both.Add(1, [1, x], [], y);
        both.Solve();
        var rest = new double[2];

        Assert.True(both.Without(1, rest));

        Assert.Equal(1, rest[0], 1e-9); // y = 1 + 2x
        Assert.Equal(2, rest[1], 1e-9);
    }

    [Fact]
    public void Without_TheSweepThatCarriesATerm_IsRefused()
    {
        SweepRegression regression = new(2, 0, 2);
        for (var x = 0; x < 3; x++) regression.Add(0, [1, 0], [], 1);
        for (var x = 0; x < 3; x++) regression.Add(1, [1, x], [], 1 + x);
        regression.Solve();

        Assert.False(regression.Without(1, new double[2]));
    }

    [Fact]
    public void Solve_SweepsWithOffsets_TellsTheirScatter()
    {
        // Forty sweeps whose offsets alternate ±3 about 10, readings ±0.1: offsets' deviation 3, readings' 0.1.
        SweepRegression regression = new(1, 1, 40);
        for (var s = 0; s < 40; s++)
            for (var k = 0; k < 10; k++)
                regression.Add(s, [1], [1], 10 + (s % 2 == 0 ? 3 : -3) + (k % 2 == 0 ? 0.1 : -0.1));

        regression.Solve();

        Assert.Equal(10, regression.Coefficients[0], 1e-9);
        Assert.Equal(3, regression.LevelDeviations[0], 0.1);
        Assert.Equal(0.1, Math.Sqrt(regression.Variance), 0.01);
        Assert.Equal(3, regression.Departure(0, [1]), 0.01);
    }

    [Fact]
    public void Penalise_RoughData_PullsTowardsALine()
    {
        var rough = new SweepRegression(20, 0, 1);
        rough.Penalise(0, 20, order: 2);
        for (var i = 0; i < 20; i++)
        {
            var row = new double[20];
            row[i] = 1;
            rough.Add(0, row, [], i + (i % 2 == 0 ? 1 : -1)); // a line under a zigzag
        }

        rough.Solve();

        for (var i = 0; i < 20; i++) Assert.Equal(i, rough.Coefficients[i], 0.35);
    }

    private static SweepRegression Line(double[] x, double[] y)
    {
        SweepRegression line = new(2, 0, 1);
        for (var i = 0; i < x.Length; i++) line.Add(0, [1, x[i]], [], y[i]);
        return line;
    }
}
