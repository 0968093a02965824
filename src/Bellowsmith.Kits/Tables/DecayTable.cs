using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Tables;

/// <summary>
/// A logged pressure decay: columns time, gauge pressure or absolute pressure, and temperature, in any units their headers name.
/// Without a temperature column it still reads, for its answer is that it cannot be judged.
/// </summary>
public sealed class DecayTable
{
    private const string Time = "time", Gauge = "gauge pressure", Absolute = "absolute pressure", Temperature = "temperature";

    private readonly Readings _readings;

    private DecayTable(Readings readings) => _readings = readings;

    public string File => _readings.File;

    public int Count => _readings.Count;

    /// <summary>The unit the gauge or absolute pressure is logged in.</summary>
    public string GaugeUnit => _readings.Unit(IsGauge ? Gauge : Absolute)!;

    private bool IsGauge => _readings.Has(Gauge);

    /// <exception cref="FaultsException">Every fault of the file.</exception>
    public static DecayTable Read(string path)
    {
        Readings readings = Readings.Read(path,
            ReadingColumn.Quantity(Time, Dimension.Time, "0 s", "10000 h"),
            ReadingColumn.Quantity(Gauge, Dimension.GaugePressure, "-0.2 bar", "100 bar", optional: true),
            ReadingColumn.Quantity(Absolute, Dimension.AbsolutePressure, "0.01 bar", "101 bar", optional: true),
            ReadingColumn.Quantity(Temperature, Dimension.Temperature, "-60 degC", "150 degC", optional: true));
        CappedFaults faults = new(readings.File);
        if (readings.Has(Gauge) == readings.Has(Absolute))
            faults.Add(new(readings.File, "header", readings.Has(Gauge) ? "gauge pressure and absolute pressure" : "neither",
                "gauge pressure or absolute pressure", "Keep one of the two, \"gauge pressure [bar]\" or \"absolute pressure [bar]\"."));
        foreach (string name in (string[])[Time, Gauge, Absolute, Temperature])
            if (readings.Has(name)) CheckWhole(readings, name, faults);
        double[] time_s = readings.Numbers(Time);
        for (int i = 1; i < time_s.Length; i++)
            if (time_s[i] < time_s[i - 1]) faults.Add(readings.Fault(i, Time, "a time before the row above", "times in order", "Sort the rows by time."));
        if (readings.Count < 2) faults.Add(new(readings.File, "rows", $"{readings.Count} rows", "two or more readings", "Log the test from start to end."));
        faults.ThrowIfAny();
        return new(readings);
    }

    /// <summary>Times, absolute pressures and temperatures, SI; no temperatures where none were logged.</summary>
    public (double[] Time_s, double[] AbsolutePressure_Pa, double[]? Temperature_K) At(double ambient_Pa) => (
        _readings.Numbers(Time),
        IsGauge ? [.. _readings.Numbers(Gauge).Select(gauge => gauge + ambient_Pa)] : _readings.Numbers(Absolute),
        _readings.Has(Temperature) ? _readings.Numbers(Temperature) : null);

    private static void CheckWhole(Readings readings, string name, CappedFaults faults)
    {
        double[] numbers = readings.Numbers(name);
        for (int i = 0; i < numbers.Length; i++)
            if (double.IsNaN(numbers[i])) faults.Add(readings.Fault(i, name, "nothing", "a value in every row", "Write the value, or take the row out."));
    }
}
