using System.Globalization;
using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A file of a crossed gauge trial, columns part, appraiser, trial and value, in any order of rows: every appraiser must have
/// read every part in every trial, once.
/// </summary>
public sealed class GaugeTable
{
    private const int MostMissing = 100;

    private readonly Readings _readings;
    private readonly LabelColumn _parts, _appraisers, _trials;
    private readonly CappedFaults _faults;

    private GaugeTable(Readings readings)
    {
        (_readings, _faults) = (readings, new(readings.File));
        (_parts, _appraisers, _trials) = (Column("part"), Column("appraiser"), Column("trial"));
        Require(_parts, "part", CrossedTrial.FewestParts, "Without two parts there is no spread of parts to compare the gauge with.");
        Require(_appraisers, "appraiser", 1, "Write the readings below the header.");
        Require(_trials, "trial", CrossedTrial.FewestTrials, "Without a repeat nothing is known of repeatability: read every part again.");
        _faults.ThrowIfAny();
        Trial = new(_parts.Names.Count, _appraisers.Names.Count, _trials.Names.Count, Cells());
    }

    public string File => _readings.File;

    /// <summary>The unit of the values as the header spells it; null where it has none.</summary>
    public string? Unit => _readings.Unit("value");

    /// <summary>In the order of the trial.</summary>
    public IReadOnlyList<string> Parts => _parts.Names;

    /// <summary>In the order of the trial.</summary>
    public IReadOnlyList<string> Appraisers => _appraisers.Names;

    public CrossedTrial Trial { get; }

    /// <exception cref="FaultsException">Every fault of the file, the first hundred in full.</exception>
    public static GaugeTable Read(string path) => new(Readings.Read(
        path, ReadingColumn.Label("part"), ReadingColumn.Label("appraiser"), ReadingColumn.Label("trial"), ReadingColumn.Number("value")));

    private LabelColumn Column(string name) => LabelOrder.Sorted(_readings.Labels(name));

    private void Require(LabelColumn labels, string name, int fewest, string why)
    {
        if (labels.Names.Count < fewest)
            _faults.Add(new(File, $"column {name}", $"{labels.Names.Count} different", $"{fewest} or more", why));
    }

    private double[] Cells()
    {
        double[] values = _readings.Numbers("value");
        Dictionary<long, int> rows = [];
        for (int row = 0; row < values.Length; row++)
        {
            if (rows.TryAdd(CellOf(row), row)) continue;
            _faults.Add(_readings.Fault(row, "trial", $"{Name(CellOf(row))}, a second time",
                $"one reading each; the first is on row {_readings.Line(rows[CellOf(row)])}", "Number the repeats of a part by an appraiser 1, 2, 3, or take one of the two out."));
        }

        long cells = (long)_parts.Names.Count * _appraisers.Names.Count * _trials.Names.Count, missing = cells - rows.Count;
        for (long cell = 0, told = 0; told < Math.Min(missing, MostMissing); cell++)
        {
            if (rows.ContainsKey(cell)) continue;
            _faults.Add(new(File, Name(cell), "no reading", "every part read by every appraiser in every trial", "Read it, or take the part, appraiser or trial out."));
            told++;
        }

        if (missing > MostMissing)
            _faults.Add(new(File, "rows", string.Create(CultureInfo.InvariantCulture, $"{missing} of {cells} readings missing"),
                "every part read by every appraiser in every trial", "Number the repeats of a part by an appraiser 1, 2, 3."));
        _faults.ThrowIfAny();
        double[] sorted = new double[cells];
        foreach ((long cell, int row) in rows) sorted[cell] = values[row];
        return sorted;
    }

    private long CellOf(int row) =>
        ((long)_parts.Codes[row] * _appraisers.Names.Count + _appraisers.Codes[row]) * _trials.Names.Count + _trials.Codes[row];

    private string Name(long cell)
    {
        long pair = cell / _trials.Names.Count;
        return $"part {_parts.Names[(int)(pair / _appraisers.Names.Count)]}, appraiser {_appraisers.Names[(int)(pair % _appraisers.Names.Count)]}, "
            + $"trial {_trials.Names[(int)(cell % _trials.Names.Count)]}";
    }
}
