using System.Globalization;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;
using Bellowsmith.Quality.Clicks;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A damper's clicks from a table, forces in N: one row per click and run (<c>click, run, value</c>), or the points of dyno sweeps
/// (<c>click, run, velocity, force</c>, velocity + in rebound) read at one velocity. Clicks count from fully closed, 0.
/// </summary>
/// <param name="File">The table's path as the caller would write it.</param>
/// <param name="Table">The readings by click and run.</param>
/// <param name="Runs">The runs' names; the table's runs are indices into them.</param>
/// <param name="Unit">The force unit of the header; null where it has none and N is taken.</param>
/// <param name="Velocity_m_per_s">Where the force was read off the sweeps; null for a table of values.</param>
/// <param name="Rows">How many rows there were.</param>
public sealed record ClickReadings(
    string File, ClickTable Table, IReadOnlyList<string> Runs, string? Unit, double? Velocity_m_per_s, int Rows)
{
    private const int MostClicks = 99;

    /// <summary>The unit the forces were written in.</summary>
    public Unit ForceUnit => UnitTable.Find(Dimension.Force, Unit ?? "N")!;

    /// <exception cref="FaultsException">Every fault of the file.</exception>
    public static ClickReadings Read(string path, double velocity_m_per_s)
    {
        Readings rows = Readings.Read(
            path,
            ReadingColumn.Number("click", 0, MostClicks),
            ReadingColumn.Label("run"),
            ReadingColumn.Number("value", optional: true),
            ReadingColumn.Quantity("velocity", Dimension.Speed, "-20 m/s", "20 m/s", optional: true),
            ReadingColumn.Quantity("force", Dimension.Force, "-500000 N", "500000 N", optional: true));
        CappedFaults faults = new(rows.File);
        int[] clicks = Whole(rows, faults);
        ClickReadings? read = rows.Has("value") ? OfValues(rows, clicks, faults)
            : rows.Has("velocity") && rows.Has("force") ? OfSweeps(rows, clicks, velocity_m_per_s, faults)
            : NeitherForm(rows, faults);
        faults.ThrowIfAny();
        return read!;
    }

    private static int[] Whole(Readings rows, CappedFaults faults)
    {
        double[] clicks = rows.Numbers("click");
        if (clicks.Length == 0)
            faults.Add(new(rows.File, "rows", "none", "at least two clicks in at least two runs", "Measure every click in several runs and write a row for each."));
        for (int i = 0; i < clicks.Length; i++)
            if (clicks[i] != Math.Floor(clicks[i]))
                faults.Add(rows.Fault(i, "click", clicks[i].ToString(CultureInfo.InvariantCulture), "a whole number", "Count clicks from fully closed, 0."));
        return [.. clicks.Select(click => (int)click)];
    }

    private static ClickReadings? OfValues(Readings rows, int[] clicks, CappedFaults faults)
    {
        string? spelling = rows.Unit("value");
        if (UnitTable.Find(Dimension.Force, spelling ?? "N") is not { } unit)
        {
            faults.Add(new(rows.File, "header, column value", $"[{spelling}]", "a force in N, kN, lbf or kgf", "Write the force's unit in square brackets, \"value [N]\"."));
            return null;
        }

        double[] values = rows.Numbers("value");
        for (int i = 0; i < values.Length; i++)
            if (double.IsNaN(values[i])) faults.Add(rows.Fault(i, "value", "nothing", "a force", "Write the force, or take the row out."));
        return faults.Count > 0 ? null : new(
            rows.File, ClickTable.Of(clicks, rows.Labels("run").Codes, [.. values.Select(unit.ToSi)]), rows.Labels("run").Names, spelling, null, rows.Count);
    }

    private static ClickReadings? OfSweeps(Readings rows, int[] clicks, double velocity, CappedFaults faults)
    {
        double[] velocities = rows.Numbers("velocity"), forces = rows.Numbers("force");
        LabelColumn runs = rows.Labels("run");
        for (int i = 0; i < rows.Count; i++)
            if (double.IsNaN(velocities[i] + forces[i])) faults.Add(rows.Fault(i, "force", "nothing", "a velocity and a force", "Write both, or take the row out."));
        if (faults.Count > 0) return null;
        return OfPoints(
            rows.File, [.. Enumerable.Range(0, rows.Count).Select(i => (clicks[i], runs.Codes[i], velocities[i], forces[i]))],
            runs.Names, rows.Unit("force"), velocity, faults);
    }

    /// <summary>The sound readings behind a damper's curves, in its document's conventions, read at one velocity.</summary>
    /// <exception cref="FaultsException">A click that is no whole number, or a run that was not measured on both sides of the velocity.</exception>
    public static ClickReadings Of(string file, DamperFit fit, double velocity_m_per_s)
    {
        CappedFaults faults = new(InputFile.Readable(Path.GetFullPath(file)));
        string[] runs = [.. fit.Points.Select(p => p.Run ?? "").Distinct().Order(StringComparer.Ordinal)];
        foreach (double click in fit.Points.Select(p => p.Click).Distinct().Where(click => click != Math.Floor(click)))
            faults.Add(new(file, "column click", click.ToString(CultureInfo.InvariantCulture), "a whole number", "Count whole clicks from fully closed, 0."));
        faults.ThrowIfAny();
        ClickReadings? read = OfPoints(
            InputFile.Readable(Path.GetFullPath(file)),
            [.. fit.Points.Select(p => ((int)p.Click, Array.IndexOf(runs, p.Run ?? ""), p.Velocity_m_per_s, p.Force_N))], runs, "N", velocity_m_per_s, faults);
        faults.ThrowIfAny();
        return read!;
    }

    private static ClickReadings? OfPoints(
        string file, (int Click, int Run, double Velocity, double Force)[] points, IReadOnlyList<string> runs, string? unit, double velocity, CappedFaults faults)
    {
        List<(int Click, int Run, double Force)> cells = [];
        foreach (var sweep in points.GroupBy(p => (p.Click, p.Run)))
        {
            double[] speeds = [.. sweep.Select(p => p.Velocity)];
            double force = SweepForce.At(speeds, [.. sweep.Select(p => p.Force)], velocity);
            if (double.IsNaN(force)) faults.Add(Unmeasured(file, sweep.Key.Click, runs[sweep.Key.Run], speeds, velocity));
            else cells.Add((sweep.Key.Click, sweep.Key.Run, force));
        }

        return faults.Count > 0 ? null : new(
            file, ClickTable.Of([.. cells.Select(c => c.Click)], [.. cells.Select(c => c.Run)], [.. cells.Select(c => c.Force)]), runs, unit, velocity, points.Length);
    }

    private static Fault Unmeasured(string file, int click, string run, double[] speeds, double velocity) => new(
        file,
        string.Create(CultureInfo.InvariantCulture, $"click {click}, run {run}"),
        string.Create(CultureInfo.InvariantCulture, $"velocities from {speeds.Min():0.###} to {speeds.Max():0.###} m/s"),
        string.Create(CultureInfo.InvariantCulture, $"velocities on both sides of {velocity:0.###} m/s in the same stroke"),
        "Choose another --velocity, or measure this sweep there: nothing is extrapolated.");

    private static ClickReadings? NeitherForm(Readings rows, CappedFaults faults)
    {
        faults.Add(new(rows.File, "header", "neither", "a column value, or both velocity and force", "Add the column \"value [N]\"."));
        return null;
    }
}
