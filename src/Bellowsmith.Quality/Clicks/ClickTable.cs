namespace Bellowsmith.Quality.Clicks;

/// <summary>
/// One value for each click in each run; NaN where there is none. Several readings of a click within one run become their mean:
/// they share whatever was particular to that run and are not independent repeats of it.
/// </summary>
public sealed class ClickTable
{
    private readonly double[,] _values;

    private ClickTable(int[] clicks, int[] runs) =>
        (Clicks, Runs, _values) = (clicks, runs, new double[clicks.Length, runs.Length]);

    /// <summary>The clicks that were measured, ascending.</summary>
    public IReadOnlyList<int> Clicks { get; }

    /// <summary>The codes of the runs, in order of first appearance.</summary>
    public IReadOnlyList<int> Runs { get; }

    /// <summary>The value of the click and run at two indices, NaN where none was measured.</summary>
    public double this[int click, int run] => _values[click, run];

    /// <summary>The values of a click's index, run by run, without those that were not measured.</summary>
    public double[] Readings(int click) => [.. Enumerable.Range(0, Runs.Count).Select(run => _values[click, run]).Where(double.IsFinite)];

    /// <summary>How many clicks of how many runs have a value.</summary>
    public int Count => _values.Cast<double>().Count(double.IsFinite);

    /// <summary>Whether every click was measured in every run.</summary>
    public bool IsComplete => Count == _values.Length;

    /// <summary>Whether the clicks of two indices were measured in the same run at least once.</summary>
    internal bool Share(int click, int other) =>
        Enumerable.Range(0, Runs.Count).Any(run => double.IsFinite(_values[click, run] + _values[other, run]));

    /// <summary>The table of three columns of readings, equally long and finite, in any order and one unit.</summary>
    /// <exception cref="ArgumentException">The columns differ in length, or a value is not finite.</exception>
    public static ClickTable Of(ReadOnlySpan<int> clicks, ReadOnlySpan<int> runs, ReadOnlySpan<double> values)
    {
        if (clicks.Length != values.Length || runs.Length != values.Length) throw new ArgumentException("A click and a run for each value.");
        int[] clickNumbers = [.. clicks.ToArray().Distinct().Order()], runCodes = [.. runs.ToArray().Distinct()];
        ClickTable table = new(clickNumbers, runCodes);
        Dictionary<int, int> runIndex = runCodes.Select((code, index) => (code, index)).ToDictionary();
        int[,] counts = new int[clickNumbers.Length, runCodes.Length];
        for (int i = 0; i < values.Length; i++)
        {
            if (!double.IsFinite(values[i])) throw new ArgumentException("A value is not finite.");
            (int click, int run) = (Array.BinarySearch(clickNumbers, clicks[i]), runIndex[runs[i]]);
            table._values[click, run] += (values[i] - table._values[click, run]) / ++counts[click, run];
        }

        for (int click = 0; click < clickNumbers.Length; click++)
            for (int run = 0; run < runCodes.Length; run++)
                if (counts[click, run] == 0) table._values[click, run] = double.NaN;
        return table;
    }

    /// <summary>The clicks that runs join to one another: a single group where every step can be estimated, run against run.</summary>
    public IReadOnlyList<IReadOnlyList<int>> Groups()
    {
        List<List<int>> groups = [];
        for (int click = 0; click < Clicks.Count; click++)
        {
            int mine = click;
            List<List<int>> joined = [.. groups.Where(group => group.Any(other => Share(mine, other)))];
            groups.RemoveAll(joined.Contains);
            groups.Add([.. joined.SelectMany(group => group), click]);
        }

        return [.. groups.Select(group => group.Order().Select(index => Clicks[index]).ToArray()).OrderBy(group => group[0])];
    }
}
