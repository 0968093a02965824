using System.Diagnostics;
using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a ride: the same on page, terminal and paper.</summary>
public sealed class RideWords(RideResult result, DisplayUnits units)
{
    /// <summary>"On a C road at 80 km/h: 0.52 m/s² weighted, a little to fairly uncomfortable; the stop is touched 3 times a kilometre."</summary>
    public string Answer() => result.Figures is not { } f ? $"Not driven: {result.Reason}."
        : result.Road.Surface is RoadWithBump && result.Detail is { } d
            ? $"{Road()}: {BumpWords.Pushed(d.GreatestUp_m_per_s2, d.GreatestDown_m_per_s2)}; {Stops(f)}"
            : $"{Road()}: {Number(f.WeightedRms_m_per_s2, 2)} m/s² weighted, {Comfort(f.WeightedRms_m_per_s2)}; {Stops(f)}";

    /// <summary>At which setting.</summary>
    public string Setting()
    {
        string click = result.Strut.Damper.Clicks.Count > 1 ? $"click {Number(result.Setting.Click ?? 0, 1, trim: true)}, " : "";
        string air = result.Setting.Height_m is { } height
            ? $"spring {units.Text(Dimension.Length, height)} high at drive, {units.Text(Dimension.GaugePressure, result.Setting.GaugePressure_Pa)} gauge, " : "";
        return $"{click}{air}{result.Strut.Load}";
    }

    public string Road()
    {
        string on = result.Road.Surface switch
        {
            RoadOfClass road => $"On a {road.Class} road",
            RoadOfVelocity road => $"On white road velocity of {Number(road.Density, 6, trim: true)} (m/s)²/Hz",
            RoadWithBump road => $"Over {BumpWords.Of(road.Bump, units)}",
            RoadAsMeasured road => $"On the road of {road.File}",
            _ => throw new UnreachableException(),
        };
        return $"{on} at {Speed(result.Road.Speed_m_per_s)}";
    }

    /// <summary>Words people give such a ride; bands overlap, and both are said.</summary>
    public static string Comfort(double weightedRms_m_per_s2) => string.Join(" to ", ComfortReaction.To(weightedRms_m_per_s2).Select(c => c.Words));

    /// <summary>What one step aside changes, "one click softer: 0.55 m/s², 4.1 contacts a kilometre".</summary>
    public IEnumerable<(string Change, string Text)> Neighbours()
    {
        foreach (RideNeighbour n in result.Neighbours)
        {
            yield return (n.Change, n.Figures is not { } f ? "cannot stand there"
                : $"{Number(f.WeightedRms_m_per_s2, 3)} m/s² weighted, travel {units.Text(Dimension.Length, f.TravelRms_m)} r.m.s., "
                    + $"tyre load ± {units.Text(Dimension.Force, f.TyreLoadRms_N)}, "
                    + (result.Road.IsRandom ? $"{Number(result.StopContactsPerKm(f), 1)} stop contacts a kilometre" : $"stop {Times(f.StopContacts)}"));
        }
    }

    public string Speed(double speed_m_per_s) => BumpWords.Speed(speed_m_per_s, units);

    private string Stops(RideFigures f)
    {
        if (!result.Strut.HasEnds) return "no stops are known.";
        if (f.StopContacts == 0) return "the stop is never touched.";
        if (!result.Road.IsRandom)
            return $"the stop is {Times(f.StopContacts)}, at most with {units.Text(Dimension.Force, f.PeakStopForce_N)}.";
        return $"the stop is touched {Number(result.StopContactsPerKm(f), 1)} times a kilometre, at most with {units.Text(Dimension.Force, f.PeakStopForce_N)}.";
    }

    private static string Times(int contacts) => contacts switch { 0 => "not touched", 1 => "touched once", _ => $"touched {contacts} times" };

    private static string Number(double value, int decimals, bool trim = false) =>
        value.ToString((trim ? "0." : "F") + (trim ? new string('#', decimals) : decimals.ToString(CultureInfo.InvariantCulture)), CultureInfo.InvariantCulture);
}
