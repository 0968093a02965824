using System.Globalization;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Tables;

/// <summary>What a dyno file's numbers mean, as its damper's document declares it.</summary>
/// <param name="CompressionPositive">Force, and velocity where it has a sign, are + in compression; else in rebound.</param>
/// <param name="OpenClick">The click that is fully open, where the file counts from there; null: from fully closed.</param>
/// <param name="GasIn">Whether the forces hold the gas force; null: points do not, raw sweeps do.</param>
public sealed record DynoConvention(bool CompressionPositive = false, int? OpenClick = null, bool? GasIn = null);

/// <summary>
/// Dyno readings: long rows (click, velocity, force), a wide table (velocity and a column for each click), or raw sweeps (time,
/// position, force, click). All become clicks from closed, with velocity and force + in rebound.
/// </summary>
public sealed class DynoTable
{
    private const int MostClicks = 200;
    private const string ClickPrefix = "click ";

    private static readonly ColumnRule
        _click = ColumnRule.Bare("click", 0, MostClicks),
        _velocity = ColumnRule.Of("velocity", Dimension.Speed, "-20 m/s", "20 m/s"),
        _force = ColumnRule.Of("force", Dimension.Force, "-100000 N", "100000 N"),
        _time = ColumnRule.Of("time", Dimension.Time, "-100000 s", "10000000 s"),
        _position = ColumnRule.Of("position", Dimension.Length, "-1000 mm", "1000 mm"),
        _temperature = ColumnRule.Of("temperature", Dimension.Temperature, "-60 degC", "200 degC"),
        _direction = ColumnRule.Text("direction"),
        _run = ColumnRule.Text("run");

    private readonly Table _table;
    private readonly DynoConvention _convention;
    private readonly ICollection<Fault> _faults;
    private readonly (string Name, int Click)[] _wide;
    private readonly ColumnReading _reading;

    private DynoTable(Table table, DynoConvention convention, ICollection<Fault> faults)
    {
        (_table, _convention, _faults) = (table, convention, faults);
        _wide = [.. table.Columns.Select(column => (column.Name, Click: ClickOf(column.Name))).Where(column => column.Click >= 0).DistinctBy(column => column.Name)];
        ColumnRule[] wide = [.. _wide.Select(column => ColumnRule.Of(column.Name, Dimension.Force, "-100000 N", "100000 N"))];
        _reading = new(table, [_click, _velocity, _force, _time, _position, _temperature, _direction, _run, .. wide], faults);
    }

    /// <summary>Reads the table; null, with every fault added, where anything cannot stand.</summary>
    public static DynoData? Read(Table table, DynoConvention convention, ICollection<Fault> faults)
    {
        var before = faults.Count;
        DynoTable dyno = new(table, convention, faults);
        DynoData data = dyno._reading.Has("position") || dyno._reading.Has("time") ? dyno.Sweeps()
            : dyno._wide.Length > 0 ? dyno.Points(dyno.WideRows) : dyno.Points(dyno.LongRows);
        dyno._reading.CheckDecimalMarks();
        if (table.Rows.Count == 0) faults.Add(new(table.File, "rows", "no rows", "readings below the header", "Add the dyno's readings."));
        return faults.Count > before ? null : data;
    }

    private DynoPoints Points(Func<IEnumerable<Reading>> rows)
    {
        List<Reading> read = [.. rows()];
        bool directed = _reading.Has("direction"), gasIn = _convention.GasIn ?? false;
        var magnitudes = directed && read.TrueForAll(row => row.Force_N >= 0);
        if (magnitudes && gasIn && read.Count > 0)
            _faults.Add(new(_table.File, "column force", "no force below 0", "forces with their sign where the gas is in",
                "Write the forces with their sign, or take the gas force out and declare \"dynoGas\": \"out\"."));
        if (!directed && read.Count > 0 && (read.TrueForAll(row => row.Velocity_m_per_s >= 0) || read.TrueForAll(row => row.Velocity_m_per_s <= 0)))
            _faults.Add(new(_table.File, "column velocity", "velocities of one sign", "velocities of both signs, or a column direction",
                "Give compression the other sign, or add a column \"direction\" with rebound | compression."));
        return new([.. read.Select(row => Point(row, magnitudes))], gasIn);
    }

    private DynoPoint Point(Reading row, bool magnitudes)
    {
        double turn = _convention.CompressionPositive ? -1 : 1;
        double velocity = row.Rebound is { } rebound ? row.Velocity_m_per_s * (rebound ? 1 : -1) : row.Velocity_m_per_s * turn;
        double force = magnitudes ? (velocity < 0 ? -row.Force_N : row.Force_N) : row.Force_N * turn;
        return new(row.Click, velocity, force, _reading.Text(row.Row, "run"), _reading.Optional(row.Row, "temperature"), row.Row.Line);
    }

    private IEnumerable<Reading> LongRows()
    {
        _reading.Require(_click, _velocity, _force);
        return _table.Rows.Select(row => new Reading(row, Click(row), _reading.Needed(row, "velocity"), _reading.Needed(row, "force"), Rebound(row)));
    }

    private IEnumerable<Reading> WideRows()
    {
        _reading.Require(_velocity);
        return
            from row in _table.Rows
            let velocity = _reading.Needed(row, "velocity")
            let rebound = Rebound(row)
            from column in _wide
            let force = _reading.Optional(row, column.Name)
            where force is not null
            select new Reading(row, FromClosed(column.Click, click => _faults.Add(new(_table.File, $"header, column {column.Name}",
                column.Name, $"a click of at most {click}", "Check the column's click and clickCount."))), velocity, force.Value, rebound);
    }

    private bool? Rebound(Row row)
    {
        if (!_reading.Has("direction")) return null;
        if (_reading.Optional(row, "velocity") < 0)
            _reading.Report(row, "velocity", _reading.Text(row, "velocity")!, "0 or more where a column direction names the stroke", "Take the sign or the column direction out.");
        if (_reading.Text(row, "direction") is null)
            _reading.Report(row, "direction", "nothing", "rebound | compression", "Name the stroke of the row.");
        return _reading.Choice(row, "direction", ("rebound", true), ("compression", false)) ?? false;
    }

    private DynoSweeps Sweeps()
    {
        _reading.Require(_time, _position, _force, _click);
        double turn = _convention.CompressionPositive ? -1 : 1;
        List<DynoSweep> sweeps = [];
        List<DynoSample> samples = [];
        (double Click, string? Run) of = default;
        foreach (Row row in _table.Rows)
        {
            (double, string?) next = (Click(row), _reading.Text(row, "run"));
            DynoSample sample = new(
                _reading.Needed(row, "time"), _reading.Needed(row, "position"), turn * _reading.Needed(row, "force"), row.Line);
            if (samples.Count > 0 && (next != of || sample.Time_s < samples[^1].Time_s))
            {
                sweeps.Add(new(of.Click, of.Run, samples));
                samples = [];
            }

            of = next;
            samples.Add(sample);
        }

        if (samples.Count > 0) sweeps.Add(new(of.Click, of.Run, samples));
        return new(sweeps, _convention.GasIn ?? true);
    }

    private double Click(Row row)
    {
        double click = _reading.Needed(row, "click");
        if (double.IsNaN(click) || click == Math.Truncate(click))
            return FromClosed(click, most => _reading.Report(row, "click", _reading.Text(row, "click")!, $"0 to {most}, the document's clickCount", "Check the click and clickCount."));
        _reading.Report(row, "click", _reading.Text(row, "click")!, "a whole number", "Count whole clicks.");
        return double.NaN;
    }

    private double FromClosed(double click, Action<int> report)
    {
        if (_convention.OpenClick is not { } open) return click;
        if (click > open) report(open);
        return open - click;
    }

    private static int ClickOf(string name) =>
        name.StartsWith(ClickPrefix, StringComparison.Ordinal)
        && int.TryParse(name.AsSpan(ClickPrefix.Length), NumberStyles.None, CultureInfo.InvariantCulture, out var click) && click <= MostClicks ? click : -1;

    /// <summary>A row as written, in SI; the stroke where the file names it.</summary>
    private readonly record struct Reading(Row Row, double Click, double Velocity_m_per_s, double Force_N, bool? Rebound);
}
