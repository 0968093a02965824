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
            : $"{Road()}: {Weighted()} weighted, {Comfort(f.WeightedRms_m_per_s2)}; {Stops(f)}";

    /// <summary>Weighted acceleration, "0.52 m/s²"; empty where nothing was driven.</summary>
    public string Weighted() => result.Figures is { } f ? $"{Number(f.WeightedRms_m_per_s2, 2)} m/s²" : "";

    /// <summary>How often the stop is met, "touched 3.1 times a kilometre"; empty where nothing was driven or no stops are known.</summary>
    public string Touched() => result.Figures is not { } f || !result.Strut.HasEnds ? ""
        : f.StopContacts == 0 ? "never touched"
        : !result.Road.IsRandom ? Times(f.StopContacts)
        : $"touched {Number(result.StopContactsPerKm(f), 1)} times a kilometre";

    /// <summary>What the run shows of body, wheel, damper and air.</summary>
    public IEnumerable<(string About, string Text)> Points()
    {
        if (result.Figures is not { } f || result.Detail is not { } d) yield break;
        yield return ("body", $"{Number(f.Rms_m_per_s2, 2)} m/s² plain, {Number(f.WeightedRms_m_per_s2, 2)} weighted; crest factor {Number(f.CrestFactor, 2)}, worst second {Number(f.GreatestRunningRms_m_per_s2, 2)} m/s², dose {Number(f.VibrationDose_m_per_s175, 2)} m/s^1.75");
        yield return ("wheel", $"travel {units.Text(Dimension.Length, f.TravelRms_m)} r.m.s., {units.Text(Dimension.Length, f.LeastTravel_m)} to {units.Text(Dimension.Length, f.GreatestTravel_m)}; tyre load ± {units.Text(Dimension.Force, f.TyreLoadRms_N)}, off the road {Number(100 * f.LiftOffShare, 2, trim: true)} % of the time");
        yield return ("damper", $"up to {Number(f.GreatestCompression_m_per_s, 2)} m/s in compression, {Number(f.GreatestRebound_m_per_s, 2)} m/s in rebound");
        yield return ("bands", $"{Number(d.PrimaryRms_m_per_s2, 2)} m/s² from 0.5 to 5 Hz, {Number(d.SecondaryRms_m_per_s2, 2)} m/s² from 5 to 25 Hz");
        if (d.GaugePressure_Pa is { } gauge && d.Temperature_K is { } warm)
            yield return ("air", string.Create(CultureInfo.InvariantCulture, $"{units.Text(Dimension.GaugePressure, gauge.Low)} to {units.Text(Dimension.GaugePressure, gauge.High)} gauge, {warm.Low - RideDetail.WallTemperature_K:+0.0;−0.0} to {warm.High - RideDetail.WallTemperature_K:+0.0;−0.0} K about the wall"));
        if (d.HumpSpeed_m_per_s is { } hump) yield return ("hump", $"the stop is first touched at {Speed(hump)} over {RideRoads.ReferenceHump}");
    }

    /// <summary>At which setting.</summary>
    public string Setting()
    {
        string click = result.Strut.Damper.Clicks.Count > 1 ? $"click {Number(result.Setting.Click ?? 0, 1, trim: true)}, " : "";
        string air = result.Setting.Height_m is { } height
            ? $"spring {units.Text(Dimension.Length, height)} high at drive, {units.Text(Dimension.GaugePressure, result.Setting.GaugePressure_Pa)} gauge, " : "";
        return $"{click}{air}{result.Strut.Load}";
    }

    public string Road() => RoadWords.Of(result.Road, units);

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

    /// <summary>Heads of <see cref="Aside"/>.</summary>
    public IReadOnlyList<string> AsideHeads =>
        ["weighted, m/s²", $"travel r.m.s., {units.Symbol(Dimension.Length)}", $"tyre load ±, {units.Symbol(Dimension.Force)}", "stop contacts, 1/km"];

    /// <summary>This setting and each step aside as rows of a table.</summary>
    public IEnumerable<(string Change, IReadOnlyList<string> Cells)> Aside() =>
        result.Neighbours.Prepend(new("this setting", result.Figures)).Select(n => (n.Change, Cells(n.Figures)));

    public string Speed(double speed_m_per_s) => BumpWords.Speed(speed_m_per_s, units);

    private IReadOnlyList<string> Cells(RideFigures? figures) => figures is not { } f ? ["cannot stand there", "–", "–", "–"]
        : [Number(f.WeightedRms_m_per_s2, 3), units.Number(Dimension.Length, f.TravelRms_m), units.Number(Dimension.Force, f.TyreLoadRms_N), Number(result.StopContactsPerKm(f), 1)];

    private string Stops(RideFigures f)
    {
        if (!result.Strut.HasEnds) return "no stops are known.";
        return f.StopContacts == 0 ? $"the stop is {Touched()}." : $"the stop is {Touched()}, at most with {units.Text(Dimension.Force, f.PeakStopForce_N)}.";
    }

    private static string Times(int contacts) => contacts switch { 0 => "not touched", 1 => "touched once", _ => $"touched {contacts} times" };

    private static string Number(double value, int decimals, bool trim = false) =>
        value.ToString((trim ? "0." : "F") + (trim ? new string('#', decimals) : decimals.ToString(CultureInfo.InvariantCulture)), CultureInfo.InvariantCulture);
}
