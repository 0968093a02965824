using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a bump.</summary>
public static class BumpWords
{
    /// <summary>"Over a round hump 4.0 m long and 75.0 mm high at 30 km/h: the body is pushed up with at most 6.1 m/s² and falls with 3.2; the stop is touched with at most 2100 N."</summary>
    public static string Of(BumpRide ride, DisplayUnits units)
    {
        string stop = ride.StopContact_m is null ? "no stops are known"
            : ride.PeakStopForce_N > 0 ? $"the stop is touched with at most {units.Text(Dimension.Force, ride.PeakStopForce_N)}" : "the stop is not touched";
        string road = ride.LeavesRoad ? ", and the tyre leaves the road" : "";
        return $"Over {Of(ride.Bump, units)} at {Speed(ride.Speed_m_per_s, units)}: {Pushed(ride.GreatestUp_m_per_s2, ride.GreatestDown_m_per_s2)}; {stop}{road}.";
    }

    public static string Of(Bump bump, DisplayUnits units)
    {
        string length = Length(bump.Length_m, units), height = units.Text(Dimension.Length, bump.Height_m), ramp = Length(bump.Ramp_m, units);
        return bump.Shape switch
        {
            BumpShape.Round => $"a round hump {length} long and {height} high",
            BumpShape.Wave => $"a wave {length} long and {height} high",
            BumpShape.FlatTop => $"a flat-topped hump {length} long and {height} high with ramps of {ramp}",
            BumpShape.Pothole => $"a pothole {length} long and {height} deep with edges of {ramp}",
            _ => $"a kerb {height} high",
        };
    }

    /// <summary>As a choice on a page.</summary>
    public static string Name(BumpShape shape) => shape switch
    {
        BumpShape.Round => "round hump",
        BumpShape.Wave => "wave",
        BumpShape.FlatTop => "flat-topped hump",
        BumpShape.Pothole => "pothole",
        _ => "kerb",
    };

    /// <summary>What road speeds are read in.</summary>
    public static Unit SpeedUnit(DisplayUnits units) => UnitTable.Find(Dimension.Speed, IsImperial(units) ? "mph" : "km/h")!;

    public static string Speed(double speed_m_per_s, DisplayUnits units) =>
        string.Create(CultureInfo.InvariantCulture, $"{SpeedUnit(units).FromSi(speed_m_per_s):F0} {SpeedUnit(units).Name}");

    internal static string Pushed(double up_m_per_s2, double down_m_per_s2) =>
        string.Create(CultureInfo.InvariantCulture, $"the body is pushed up with at most {up_m_per_s2:F1} m/s² and falls with {down_m_per_s2:F1}");

    private static string Length(double length_m, DisplayUnits units) => IsImperial(units)
        ? string.Create(CultureInfo.InvariantCulture, $"{length_m / 0.3048:0.#} ft")
        : string.Create(CultureInfo.InvariantCulture, $"{length_m:0.##} m");

    private static bool IsImperial(DisplayUnits units) => units.UnitOf(Dimension.Length).Name is "in" or "ft";
}
