using Bellowsmith.Kits.Figures;

namespace Bellowsmith.Tests.Kits.Figures;

/// <summary>Lines of one value against surfaces whose lines are known.</summary>
public sealed class ContourTests
{
    private const int Columns = 41, Rows = 31;

    [Theory] // linear along an edge of length 1, z = x² + y² is off by at most 1/4; the radius by 1/4/(2r)
    [InlineData(9)]
    [InlineData(60)]
    [InlineData(143.5)]
    public void Of_AParaboloid_IsAClosedCircle(double level)
    {
        (double Column, double Row)[] line = Assert.Single(Contours.Of(Grid((x, y) => (x - 20) * (x - 20) + (y - 15) * (y - 15)), Columns, level));

        Assert.Equal(line[0], line[^1]);
        double radius = Math.Sqrt(level);
        Assert.All(line, p => Assert.InRange(Math.Sqrt((p.Column - 20) * (p.Column - 20) + (p.Row - 15) * (p.Row - 15)), radius - 0.25 / radius, radius + 1e-5));
        Assert.InRange(line.Zip(line.Skip(1), (a, b) => Math.Sqrt((a.Column - b.Column) * (a.Column - b.Column) + (a.Row - b.Row) * (a.Row - b.Row))).Sum(), 6.1 * radius, 6.2832 * radius);
    }

    [Fact] // 0.5 x + 0.25 y = 10 from (20, 0) to (5, 30)
    public void Of_APlane_IsOneStraightLine()
    {
        (double Column, double Row)[] line = Assert.Single(Contours.Of(Grid((x, y) => 0.5 * x + 0.25 * y), Columns, 10));

        Assert.All(line, p => Assert.Equal(10, 0.5 * p.Column + 0.25 * p.Row, 1e-5));
        Assert.Equal([0.0, 30.0], new[] { line[0].Row, line[^1].Row }.Order());
    }

    [Theory] // corners 1 and 0 on the diagonals, their mean 0.5: below it the ones are joined, above it cut off
    [InlineData(0.4)]
    [InlineData(0.6)]
    public void Of_ASaddle_JoinsWhatTheMiddleGoesWith(double level)
    {
        IReadOnlyList<(double Column, double Row)[]> lines = Contours.Of([1, 0, 0, 1], 2, level);

        Assert.Equal(2, lines.Count);
        (double Column, double Row)[] corners = level < 0.5 ? [(1, 0), (0, 1)] : [(0, 0), (1, 1)];
        Assert.All(corners, corner => Assert.Single(lines, line => line.All(p => Math.Abs(p.Column - corner.Column) + Math.Abs(p.Row - corner.Row) < 0.5)));
    }

    [Fact] // the plane again; the point (12, 16) lies beside its line x = 20 − y/2 and takes away the four squares about it
    public void Of_ANumberThatIsNone_BreaksTheLine()
    {
        float[] grid = Grid((x, y) => 0.5 * x + 0.25 * y);
        grid[16 * Columns + 12] = float.NaN;

        IReadOnlyList<(double Column, double Row)[]> lines = Contours.Of(grid, Columns, 10);

        Assert.Equal(2, lines.Count);
        Assert.All(lines.SelectMany(l => l), p => Assert.False(p.Row is > 15 and < 17));
    }

    [Fact]
    public void Of_ALevelNothingReaches_IsNone() => Assert.Empty(Contours.Of(Grid((x, y) => x + y), Columns, 500));

    private static float[] Grid(Func<double, double, double> surface) =>
        [.. from row in Enumerable.Range(0, Rows) from column in Enumerable.Range(0, Columns) select (float)surface(column, row)];
}
