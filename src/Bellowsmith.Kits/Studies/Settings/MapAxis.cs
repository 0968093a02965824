using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Settings;

/// <summary>What may run along a map's axis.</summary>
public enum MapVariable
{
    /// <summary>Damper click from fully closed.</summary>
    Click,

    /// <summary>Spring height at drive, set by the thread with the car held where it is, m.</summary>
    Height,

    /// <summary>Gauge pressure at load, the thread left alone, Pa.</summary>
    GaugePressure,

    /// <summary>Free length of the bump stop, m.</summary>
    Stop,

    /// <summary>Driving speed, m/s.</summary>
    Speed,

    /// <summary>Road class, 0 for A.</summary>
    Road,

    /// <summary>Load case, by its place in the car document.</summary>
    Load,
}

/// <summary>One axis: a variable and its values, ascending, in SI or as a place.</summary>
public sealed record MapAxis(MapVariable Variable, IReadOnlyList<double> Values)
{
    private const double SlowestUsual_m_per_s = 20 / 3.6, FastestUsual_m_per_s = 140 / 3.6;

    /// <summary>Whether its values are things rather than amounts: between two of them there is nothing.</summary>
    public bool IsChoice => Variable is MapVariable.Road or MapVariable.Load;

    /// <summary>
    /// Over all a strut can have, as evenly as whole clicks, tenths of a millimetre and of a km/h and whole kilopascals allow: clicks
    /// within those measured, the heights spring and data share, 0.4 to 1.6 times the gauge pressure at drive within the spring's
    /// limit, 0.5 to 2 times the stop, 20 to 140 km/h, classes A to E, the car's load cases. Clicks and choices are no more than
    /// there are. Null where the strut has no such thing.
    /// </summary>
    public static MapAxis? Usual(MapVariable variable, RideStrut strut, Car car, int count)
    {
        switch (variable)
        {
            case MapVariable.Click: return strut.Damper.Clicks.Count < 2 ? null : new(variable, WholeClicks(strut.Damper, count));
            case MapVariable.Height: return strut.Case is { } air ? Even(air.LeastHeight_m, air.GreatestHeight_m, "mm", 0.1) : null;
            case MapVariable.GaugePressure: return Drive_Pa(strut) is { } gauge ? Even(0.4 * gauge, Math.Min(1.6 * gauge, strut.Case!.Part.MaxGaugePressure_Pa), "kPa", 1) : null;
            case MapVariable.Stop: return strut.Case?.Damper?.BumpStop is { } stop && strut.HasEnds ? Even(0.5 * stop.FreeLength_m, 2 * stop.FreeLength_m, "mm", 0.1) : null;
            case MapVariable.Speed: return Even(SlowestUsual_m_per_s, FastestUsual_m_per_s, "km/h", 0.1);
            case MapVariable.Road: return new(variable, Places((int)RoadClass.E + 1));
            default: return new(variable, Places(car.Loads.Count));
        }

        MapAxis Even(double low, double high, string unit, double step) => new(variable, Rounded(low, high, Unit(variable, unit), step, count));
        static double[] Places(int places) => [.. Enumerable.Range(0, places).Select(k => (double)k)];
    }

    // Round numbers a person can type again and get the same setting to the last bit.
    private static double[] Rounded(double low, double high, Unit unit, double step, int count)
    {
        double first = Math.Ceiling(unit.FromSi(low) / step - 1e-6), last = Math.Floor(unit.FromSi(high) / step + 1e-6);
        return [.. Enumerable.Range(0, count).Select(k => Math.Round(first + (last - first) * k / Math.Max(1, count - 1))).Distinct().Select(n => unit.ToSi(Math.Round(n * step, 6)))];
    }

    private static Unit Unit(MapVariable variable, string name) => UnitTable.Find(
        variable switch { MapVariable.Speed => Dimension.Speed, MapVariable.GaugePressure => Dimension.GaugePressure, _ => Dimension.Length }, name)!;

    /// <summary>The whole clicks within those measured; the one there is where no whole one lies among them.</summary>
    internal static double[] WholeClicks(Damper damper)
    {
        int first = (int)Math.Ceiling(damper.Clicks[0]), last = (int)Math.Floor(damper.Clicks[^1]);
        return last < first ? [damper.Clicks[0]] : [.. Enumerable.Range(first, last - first + 1).Select(click => (double)click)];
    }

    private static double[] WholeClicks(Damper damper, int count)
    {
        (double first, double last) = (Math.Ceiling(damper.Clicks[0]), Math.Floor(damper.Clicks[^1]));
        return [.. Enumerable.Range(0, count).Select(k => Math.Round(first + (last - first) * k / Math.Max(1, count - 1))).Distinct()];
    }

    private static double? Drive_Pa(RideStrut strut) =>
        strut.DriveHeight_m() is { } height && strut.Case is { } air && InstalledHeight.InstalledHeightStudy.At(air, height).GaugePressure_Pa is var gauge and > 0 ? gauge : null;
}
