namespace Bellowsmith.Quality.Gauges;

/// <summary>One day's readings of one check standard in one run: their mean, standard deviation and number.</summary>
/// <param name="Standard">Which check standard, from 0.</param>
/// <param name="Run">Which run, from 0.</param>
/// <param name="Average">Mean of the day's repeats.</param>
/// <param name="StandardDeviation">Of the day's repeats, with n − 1; of one repeat it counts for nothing.</param>
/// <param name="Repeats">How many, at least one.</param>
public readonly record struct NestedDay(int Standard, int Run, double Average, double StandardDeviation, int Repeats);

/// <summary>A pooled standard deviation and its degrees of freedom; null where there are none.</summary>
public sealed record PooledDeviation(double StandardDeviation, int Degrees);

/// <summary>
/// Repeats within days within runs on check standards, as [NIST Handbook 2012, 2.4.4]: level 1 is the spread of repeats within
/// a day, level 2 that of day averages within a run, level 3 that of run averages, each pooled over what it was repeated in.
/// Levels 2 and 3 contain their share of the ones below; the components beside them do not.
/// </summary>
/// <param name="Repeats">Level 1.</param>
/// <param name="Days">Level 2; null with one day in every run.</param>
/// <param name="Runs">Level 3; null with one run on every standard.</param>
/// <param name="BetweenDays">Component of days alone, <c>√(s2² − s1²/J)</c>, J the harmonic mean of the repeats; null without level 2.</param>
/// <param name="BetweenRuns">Component of runs alone, <c>√(s3² − s2²/K)</c>, K the harmonic mean of the days; null without level 3.</param>
/// <param name="DaysSetToZero">Whether the variance between days came out below zero.</param>
/// <param name="RunsSetToZero">Whether the variance between runs came out below zero.</param>
public sealed record NestedTrial(
    PooledDeviation Repeats, PooledDeviation? Days, PooledDeviation? Runs, double? BetweenDays, double? BetweenRuns,
    bool DaysSetToZero, bool RunsSetToZero)
{
    /// <summary>
    /// What one reading on any day of any run scatters by. Days and runs stand where a crossed trial has appraisers; the parts
    /// are check standards, whose spread says nothing of production.
    /// </summary>
    public GaugeComponents Components =>
        new(Repeats.StandardDeviation, double.Hypot(BetweenDays ?? 0, BetweenRuns ?? 0), 0);

    /// <summary>Null where no day was repeated in: nothing can be pooled.</summary>
    public static NestedTrial? Of(IReadOnlyList<NestedDay> days)
    {
        var runs = days.GroupBy(day => (day.Standard, day.Run)).ToArray();
        var standards = runs.GroupBy(run => run.Key.Standard).ToArray();
        if (Pool(days.Select(day => (day.StandardDeviation, day.Repeats))) is not { } repeats) return null;
        PooledDeviation? level2 = Pool(runs.Select(run => Spread([.. run.Select(day => day.Average)])));
        PooledDeviation? level3 = Pool(standards.Select(runsOf => Spread([.. runsOf.Select(run => run.Average(day => day.Average))])));
        double perDay = days.Count / days.Sum(day => 1.0 / day.Repeats), perRun = runs.Length / runs.Sum(run => 1.0 / run.Count());
        double? betweenDays = Less(level2, repeats, perDay);
        double? betweenRuns = level2 is null ? Less(level3, repeats, perDay) : Less(level3, level2, perRun);
        return new(repeats, level2, level3, Root(betweenDays), Root(betweenRuns), betweenDays < 0, betweenRuns < 0);
    }

    /// <summary>The days of plain readings, each with its standard, run and day.</summary>
    public static IReadOnlyList<NestedDay> OfReadings(ReadOnlySpan<int> standard, ReadOnlySpan<int> run, ReadOnlySpan<int> day, ReadOnlySpan<double> values)
    {
        SortedDictionary<(int Standard, int Run, int Day), List<double>> days = [];
        for (int i = 0; i < values.Length; i++)
        {
            if (!days.TryGetValue((standard[i], run[i], day[i]), out List<double>? readings)) days[(standard[i], run[i], day[i])] = readings = [];
            readings.Add(values[i]);
        }

        return [.. days.Select(entry => OfDay(entry.Key.Standard, entry.Key.Run, [.. entry.Value.Order()]))];
    }

    private static NestedDay OfDay(int standard, int run, double[] readings)
    {
        (double deviation, int count) = Spread(readings);
        return new(standard, run, Means.Of(readings), deviation, count);
    }

    private static (double Deviation, int Count) Spread(double[] values) => values.Length < 2 ? (0, values.Length)
        : (Math.Sqrt(Means.SquaresAbout(values, Means.Of(values)) / (values.Length - 1)), values.Length);

    private static PooledDeviation? Pool(IEnumerable<(double Deviation, int Count)> groups)
    {
        double squares = 0;
        int degrees = 0;
        foreach ((double deviation, int count) in groups.Where(group => group.Count > 1))
        {
            squares += (count - 1) * deviation * deviation;
            degrees += count - 1;
        }

        return degrees > 0 ? new(Math.Sqrt(squares / degrees), degrees) : null;
    }

    private static double? Less(PooledDeviation? level, PooledDeviation below, double count) => level is null ? null
        : level.StandardDeviation * level.StandardDeviation - below.StandardDeviation * below.StandardDeviation / count;

    private static double? Root(double? variance) => variance is { } v ? Math.Sqrt(Math.Max(0, v)) : null;
}
