namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Centre line, limits and one standard deviation of the plotted points, all in the unit plotted; NaN where nothing could be
/// estimated. A point exactly on a limit is inside. <paramref name="Origin"/> is the size of the values behind points that are
/// differences of them: rounding goes with it.
/// </summary>
public readonly record struct ControlLimits(double Centre, double Lower, double Upper, double Sigma, double Origin = 0)
{
    // 64 units in the last place: what sums, differences and a change of unit leave behind, far below any instrument.
    private const double Rounding = 64 * 2.220446049250313e-16;

    /// <summary>No limits: too few points, or none that differ.</summary>
    public static ControlLimits None => new(double.NaN, double.NaN, double.NaN, double.NaN);

    public bool Known => !double.IsNaN(Sigma);

    /// <summary>Limits <paramref name="width"/> standard deviations to either side, cut where the statistic cannot go.</summary>
    public static ControlLimits Around(
        double centre, double sigma, double width = 3, double least = double.NegativeInfinity, double greatest = double.PositiveInfinity) =>
        new(centre, Math.Max(least, centre - width * sigma), Math.Min(greatest, centre + width * sigma), sigma);

    /// <summary>How far a point may lie past a line and still be on it.</summary>
    internal double Slack(double distance_sigma) => Rounding * (Math.Abs(Centre) + Math.Abs(Origin) + distance_sigma * Sigma);

    /// <summary>Whether a spread is more than what rounding leaves of values of this size.</summary>
    internal static bool IsSpread(double sd, double centre) => sd > Rounding * Math.Abs(centre);
}

/// <summary>The limits that hold from a point (counted from 0) to the next step.</summary>
public readonly record struct LimitStep(int First, ControlLimits Limits, bool NewPhase);

/// <summary>Points with their limits; the limits stand as steps, so that constant ones cost nothing however many points there are.</summary>
public sealed class ChartLine
{
    internal ChartLine(double[] points, LimitStep[] steps) => (Points, Steps) = (points, steps);

    /// <summary>The statistic of each point; NaN where it has none (the first moving range, the range of a single value).</summary>
    public double[] Points { get; }

    /// <summary>Ascending; the first begins at point 0.</summary>
    public LimitStep[] Steps { get; }

    /// <summary>Whether one set of limits holds for all points.</summary>
    public bool Steady => Array.TrueForAll(Steps, s => s.Limits == Steps[0].Limits);

    public int StepEnd(int step) => step + 1 < Steps.Length ? Steps[step + 1].First : Points.Length;

    public ControlLimits At(int point)
    {
        int low = 0, high = Steps.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            if (Steps[middle].First <= point) low = middle;
            else high = middle - 1;
        }

        return Steps[low].Limits;
    }
}

/// <summary>Collects steps; a point with the limits of the one before adds nothing.</summary>
internal sealed class LimitStepList
{
    private readonly List<LimitStep> _steps = [];

    public void Add(int point, ControlLimits limits, bool newPhase)
    {
        if (newPhase || _steps.Count == 0 || !Same(_steps[^1].Limits, limits)) _steps.Add(new(point, limits, newPhase));
    }

    // The generated equality goes through a comparer for each number.
    private static bool Same(in ControlLimits a, in ControlLimits b) =>
        a.Centre.Equals(b.Centre) && a.Sigma.Equals(b.Sigma) && a.Lower.Equals(b.Lower) && a.Upper.Equals(b.Upper);

    public ChartLine Line(double[] points) => new(points, [.. _steps]);
}
