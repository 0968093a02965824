namespace Bellowsmith.Physics.Fitting;

/// <summary>
/// Which rows were taken in one go. Readings within a sweep share its zero, warm-up and friction, so scatter is judged from
/// sweep to sweep. Where the file names no sweeps, one lasts while mode, direction and gauge pressure level stay.
/// </summary>
internal static class Sweeps
{
    private const double NextLevel = 1.15;

    /// <summary>A sweep number for each row, from 0.</summary>
    public static (int[] Of, int Count) Number(IReadOnlyList<SpringRow> rows)
    {
        Dictionary<string, int> known = [];
        int[] of = new int[rows.Count], levels = Levels(rows);
        for (int i = 0; i < rows.Count; i++)
        {
            string name = rows[i].Sweep is { } given
                ? $"{given} {rows[i].Mode} {rows[i].Direction}"
                : $"{rows[i].Mode} {rows[i].Direction} level {levels[i]}";
            if (!known.TryGetValue(name, out int number)) known[name] = number = known.Count;
            of[i] = number;
        }

        return (of, known.Count);
    }

    /// <summary>
    /// The same for sealed rows, whose gauge pressure rises and falls within a sweep: names tell them apart, or, where there
    /// are none, the turning of the height in file order.
    /// </summary>
    public static (int[] Of, int Count) Sealed(IReadOnlyList<SpringRow> rows)
    {
        Dictionary<string, int> known = [];
        int[] of = new int[rows.Count];
        int run = 0, heading = 0;
        for (int i = 0; i < rows.Count; i++)
        {
            int step = i == 0 ? 0 : Math.Sign(rows[i].Height_m - rows[i - 1].Height_m);
            bool goesOn = i > 0 && rows[i].Mode == rows[i - 1].Mode && rows[i].Direction == rows[i - 1].Direction
                && (heading == 0 || step == 0 || step == heading);
            (run, heading) = goesOn ? (run, step == 0 ? heading : step) : (run + 1, 0);
            string name = $"{rows[i].Sweep ?? $"run {run}"} {rows[i].Mode} {rows[i].Direction}";
            if (!known.TryGetValue(name, out int number)) known[name] = number = known.Count;
            of[i] = number;
        }

        return (of, known.Count);
    }

    /// <summary>
    /// Four blocks of neighbouring rows out of each sweep, for data with too few sweeps to judge scatter between them.
    /// </summary>
    public static (int[] Of, int Count) Blocks(int[] sweepOf, int sweeps)
    {
        int[] sizes = new int[sweeps], seen = new int[sweeps];
        foreach (int s in sweepOf) sizes[s]++;
        int[] of = sweepOf.Select(s => s * 4 + 4 * seen[s]++ / sizes[s]).ToArray();
        return (of, sweeps * 4);
    }

    /// <summary>The gauge pressure level of each row, from 0: a new one begins 15 % above the start of the last.</summary>
    public static int[] Levels(IReadOnlyList<SpringRow> rows)
    {
        int[] order = Enumerable.Range(0, rows.Count).OrderBy(i => rows[i].GaugePressure_Pa).ToArray();
        int[] levels = new int[rows.Count];
        int level = -1;
        double start = double.NegativeInfinity;
        foreach (int i in order)
        {
            if (level < 0 || rows[i].GaugePressure_Pa > start * NextLevel) (start, level) = (rows[i].GaugePressure_Pa, level + 1);
            levels[i] = level;
        }

        return levels;
    }
}
