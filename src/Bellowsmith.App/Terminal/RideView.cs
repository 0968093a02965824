using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>A ride as a person reads it.</summary>
internal static class RideView
{
    public static void Show(Screen screen, Kit kit, IEnumerable<RideResult> results, DisplayUnits units)
    {
        foreach (RideResult result in results) Show(screen, kit, result, units);
        screen.Blank();
        screen.Quiet(Cautions.DriveTest);
        screen.Quiet(Cautions.Local);
    }

    private static void Show(Screen screen, Kit kit, RideResult result, DisplayUnits units)
    {
        RideWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(result.Strut.End)}: how does it ride?");
        if (result.Figures is not { } f)
        {
            screen.Warn(words.Answer());
            return;
        }

        screen.Answer(words.Answer());
        screen.Point("set to", words.Setting());
        screen.Point("body", $"{Two(f.Rms_m_per_s2)} m/s² plain, {Two(f.WeightedRms_m_per_s2)} weighted; crest factor {Two(f.CrestFactor)}, worst second {Two(f.GreatestRunningRms_m_per_s2)} m/s², dose {Two(f.VibrationDose_m_per_s175)} m/s^1.75");
        screen.Point("wheel", $"travel {units.Text(Dimension.Length, f.TravelRms_m)} r.m.s., {units.Text(Dimension.Length, f.LeastTravel_m)} to {units.Text(Dimension.Length, f.GreatestTravel_m)}; tyre load ± {units.Text(Dimension.Force, f.TyreLoadRms_N)}, off the road {Percent(f.LiftOffShare)}");
        screen.Point("damper", $"up to {Two(f.GreatestCompression_m_per_s)} m/s in compression, {Two(f.GreatestRebound_m_per_s)} m/s in rebound");
        if (result.Detail is { } detail) Detail(screen, detail, words, units);
        if (result.Response is { } response)
        {
            ResponseWords waves = new(response, units);
            screen.Point("waves", waves.Answer());
            screen.Point("", waves.Beside());
        }

        foreach ((string change, string text) in words.Neighbours()) screen.Point(change, text);
        foreach (Note note in Notes.Of(result)) screen.Point(note.About, note.Text);
    }

    private static void Detail(Screen screen, RideDetail d, RideWords words, DisplayUnits units)
    {
        screen.Point("bands", $"{Two(d.PrimaryRms_m_per_s2)} m/s² from 0.5 to 5 Hz, {Two(d.SecondaryRms_m_per_s2)} m/s² from 5 to 25 Hz");
        if (d.GaugePressure_Pa is { } gauge && d.Temperature_K is { } warm)
            screen.Point("air", $"{units.Text(Dimension.GaugePressure, gauge.Low)} to {units.Text(Dimension.GaugePressure, gauge.High)} gauge, {warm.Low - RideDetail.WallTemperature_K:+0.0;−0.0} to {warm.High - RideDetail.WallTemperature_K:+0.0;−0.0} K about the wall");
        if (d.HumpSpeed_m_per_s is { } hump) screen.Point("hump", $"the stop is first touched at {words.Speed(hump)} over {RideRoads.ReferenceHump}");
    }

    private static string Two(double value) => value.ToString("F2", CultureInfo.InvariantCulture);

    private static string Percent(double share) => (100 * share).ToString("0.##", CultureInfo.InvariantCulture) + " % of the time";
}
