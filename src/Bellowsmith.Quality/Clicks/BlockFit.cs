using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// Least squares of <c>value = click + run + error</c> over the cells there are. With the runs eliminated the clicks solve
/// <c>C·a = b</c>, <c>C = diag(nᵢ) − N·diag(1/mⱼ)·Nᵀ</c> with N the table of ones and zeros; C is singular in the level common
/// to all clicks, which no step sees, and gains full rank by adding it. Complete tables give the plain means.
/// </summary>
internal sealed class BlockFit
{
    private readonly ClickTable _table;
    private readonly Cell[] _cells;
    private readonly double _level;
    private readonly double[] _clicks, _runs;
    private readonly Matrix<double> _covariance;

    public BlockFit(ClickTable table)
    {
        _table = table;
        _cells = [.. Measured(table)];
        _level = _cells.Average(cell => cell.Value);
        Matrix<double> normal = DenseMatrix.Create(table.Clicks.Count, table.Clicks.Count, 1.0 / table.Clicks.Count);
        Vector<double> right = new DenseVector(table.Clicks.Count);
        foreach (var run in _cells.GroupBy(cell => cell.Run))
        {
            double mean = run.Average(cell => cell.Value - _level);
            foreach (Cell cell in run)
            {
                right[cell.Click] += cell.Value - _level - mean;
                normal[cell.Click, cell.Click]++;
                foreach (Cell other in run) normal[cell.Click, other.Click] -= 1.0 / run.Count();
            }
        }

        _covariance = normal.Inverse();
        _clicks = [.. _covariance * right];
        _runs = [.. _cells.GroupBy(cell => cell.Run).OrderBy(run => run.Key).Select(run => run.Average(cell => cell.Value - _level - _clicks[cell.Click]))];
        ResidualSquares = _cells.Sum(cell => Square(cell.Value - _level - _clicks[cell.Click] - _runs[cell.Run]));
    }

    private readonly record struct Cell(int Click, int Run, double Value);

    public double ResidualSquares { get; }

    public int Degrees => _table.Count - _table.Clicks.Count - _table.Runs.Count + 1;

    /// <summary>Each click in the average run.</summary>
    public double[] ClickMeans => [.. _clicks.Select(effect => _level + effect + _runs.Average())];

    /// <summary>How far each run lies above the average run.</summary>
    public double[] RunEffects => [.. _runs.Select(effect => effect - _runs.Average())];

    /// <summary>From a click to its next, in the values' unit.</summary>
    public double Step(int click) => _clicks[click + 1] - _clicks[click];

    /// <summary>The variance of that step where an error has variance 1.</summary>
    public double StepVariance(int click) =>
        _covariance[click, click] + _covariance[click + 1, click + 1] - 2 * _covariance[click, click + 1];

    /// <summary>The table of the fit: what clicks and runs each explain that the other does not, and what is left.</summary>
    public ClickAnova Anova()
    {
        int clicks = _table.Clicks.Count, runs = _table.Runs.Count;
        AnovaRow residual = new(ResidualSquares, Degrees);
        return new(
            Tested(new(Within(cell => cell.Run) - ResidualSquares, clicks - 1)), Tested(new(Within(cell => cell.Click) - ResidualSquares, runs - 1)),
            residual, new(Within(_ => 0), _table.Count - 1));

        AnovaRow Tested(AnovaRow row) => Degrees > 0 && ResidualSquares > 0 && row.Degrees > 0 ? row.Against(residual) : row;
    }

    private double Within(Func<Cell, int> group) => _cells.GroupBy(group)
        .Sum(cells => cells.Average(cell => cell.Value - _level) is var mean ? cells.Sum(cell => Square(cell.Value - _level - mean)) : 0);

    private static IEnumerable<Cell> Measured(ClickTable table) =>
        from click in Enumerable.Range(0, table.Clicks.Count)
        from run in Enumerable.Range(0, table.Runs.Count)
        where double.IsFinite(table[click, run])
        select new Cell(click, run, table[click, run]);

    private static double Square(double x) => x * x;
}
