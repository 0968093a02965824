using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>The installed-height answer as a person reads it.</summary>
internal static class HeightView
{
    public static void Show(Screen screen, Kit kit, IEnumerable<InstalledHeightResult> results, DisplayUnits units)
    {
        foreach (InstalledHeightResult result in results) Show(screen, kit, result, units);
        screen.Blank();
        screen.Quiet(Cautions.CompressedAir);
        screen.Quiet(Cautions.RaisedCar);
        screen.Quiet(Cautions.Local);
    }

    private static void Show(Screen screen, Kit kit, InstalledHeightResult result, DisplayUnits units)
    {
        StrutCase strut = result.Case;
        HeightWords words = new(result, units);
        screen.Blank();
        screen.Title($"{kit.Name}, {Names.Of(strut.End)}: how high does it sit, on how much air?");
        if (result.Recommended is not null) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (words.Thread() is { Length: > 0 } thread) screen.Say(thread);
        if (result.Recommended is not null) screen.Say(words.Reason());
        if (result.Solutions.Count > 0) Heights(screen, result, units);
        Rates(screen, result, units);
        screen.Point("carries", Load(strut, result, units));
        if (result.Recommended is { } chosen)
        {
            screen.Point("left, right", $"{units.Text(Dimension.GaugePressure, chosen.SideGaugePressures.Left_Pa)} and "
                + $"{units.Text(Dimension.GaugePressure, chosen.SideGaugePressures.Right_Pa)} gauge hold this height on the two sides.");
            foreach ((string about, string text) in Moves(chosen.Sensitivities, units)) screen.Point(about, text);
        }

        foreach (Note note in Notes.Of(result, units)) screen.Point(note.About, note.Text);
    }

    private static void Heights(Screen screen, InstalledHeightResult result, DisplayUnits units) => screen.Table(
        [
            $"height {units.Symbol(Dimension.Length)}", $"gauge {units.Symbol(Dimension.GaugePressure)}",
            $"rate {units.Symbol(Dimension.Rate)}", "95 % band", "Hz",
            $"area {units.Symbol(Dimension.Area)}", $"air {units.Symbol(Dimension.Volume)}",
            $"thread {units.Symbol(Dimension.Length)}", "turns", "",
        ],
        result.Solutions.Select(s => ((IReadOnlyList<string>)
        [
            units.Number(Dimension.Length, s.Height_m), units.Number(Dimension.GaugePressure, s.GaugePressure_Pa),
            units.Number(Dimension.Rate, s.SpringRate_N_per_m),
            s.SpringRateBand_N_per_m is { } b ? $"{units.Number(Dimension.Rate, b.Low)} to {units.Number(Dimension.Rate, b.High)}" : "–",
            units.Number(Dimension.Frequency, s.RideFrequency_Hz),
            units.Number(Dimension.Area, s.EffectiveArea_m2), units.Number(Dimension.Volume, s.Volume_m3),
            units.Number(Dimension.Length, s.Thread?.Exposed_m),
            s.Thread is { } t ? t.Turns.ToString("0.0", CultureInfo.InvariantCulture) : "–",
            s.Recommended ? "this one" : s.WithinPressureLimit ? "" : "over limit",
        ], s.Recommended)));

    private static void Rates(Screen screen, InstalledHeightResult result, DisplayUnits units)
    {
        string wheel = result.Recommended is { } chosen ? $", {units.Text(Dimension.Rate, chosen.WheelRate_N_per_m)} at the wheel" : "";
        screen.Point("wanted", $"{units.Text(Dimension.Rate, result.TargetSpringRate_N_per_m)} at the spring{wheel}.");
        if (result.Minimum is not { } soft || result.Maximum is not { } stiff) return;
        screen.Point("can give", $"{Place(soft)} to {Place(stiff)}, over the heights the data cover at this load.");

        string Place(RatePlace p) => $"{units.Text(Dimension.Rate, p.SpringRate_N_per_m)} ({units.Text(Dimension.Frequency, p.RideFrequency_Hz)}) "
            + $"at {units.Text(Dimension.Length, p.Height_m)}";
    }

    private static string Load(StrutCase strut, InstalledHeightResult result, DisplayUnits units) => string.Create(
        CultureInfo.InvariantCulture,
        $"{units.Text(Dimension.Mass, strut.SprungMass_kg)} sprung ({strut.Load}): {units.Text(Dimension.Force, result.SpringForce_N)} on the spring, {units.Text(Dimension.Force, result.GasForce_N)} on the damper's gas; motion ratio {strut.SpringRatio.At(0):0.000}, n = {strut.Exponent:0.000} ({Names.Of(strut.ExponentSource)}).");

    private static IEnumerable<(string About, string Text)> Moves(HeightSensitivities s, DisplayUnits units)
    {
        yield return ("1 mm of thread", $"{Rate(s.RateByThread_N_per_m)} and {Gauge(s.GaugePressureByThread_Pa)}, car height held");
        yield return ("1 psi", $"the car rises {units.Text(Dimension.Length, s.RideHeightByGaugePressure_m)}, {Rate(s.RateByGaugePressure_N_per_m)}, thread held");
        yield return ("10 kg", $"{Rate(s.RateByMass_N_per_m)} and {Gauge(s.GaugePressureByMass_Pa)}, height held");
        yield return ("0.02 of n", Rate(s.RateByExponent_N_per_m));
        yield return ("10 cm³ inside", $"{Rate(s.RateByDisplaced_N_per_m)} where rod, stop or head take so much more");

        string Rate(double si) => units.Change(Dimension.Rate, si);
        string Gauge(double si) => units.Change(Dimension.GaugePressure, si);
    }
}
