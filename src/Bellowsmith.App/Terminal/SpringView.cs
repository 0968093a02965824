using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.SpringPoint;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>A bare spring's answer as a person reads it.</summary>
internal static class SpringView
{
    public static void Show(Screen screen, SpringPointResult result, DisplayUnits units)
    {
        SpringWords words = new(result, units);
        screen.Blank();
        screen.Title($"{result.Part.Name}: what does it do here?");
        if (result.State is not { } s) screen.Warn(words.Answer());
        else
        {
            screen.Answer(words.Answer());
            screen.Point("rates", $"{units.Text(Dimension.Rate, s.RateIsothermal_N_per_m)} slow (n = 1), "
                + $"{units.Text(Dimension.Rate, s.Rate_N_per_m)} in service (n = {result.Exponent.ToString("0.000", CultureInfo.InvariantCulture)}, "
                + $"{Names.Of(result.ExponentSource)}), {units.Text(Dimension.Rate, s.RateAdiabatic_N_per_m)} fast (n = 1.4)");
            screen.Point("area, air", $"{units.Text(Dimension.Area, s.EffectiveArea_m2)} effective, {units.Text(Dimension.Volume, s.Volume_m3)} enclosed");
        }

        foreach (Note note in Notes.Of(result.Fit, units)) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.CompressedAir);
        screen.Quiet(Cautions.Local);
    }
}
