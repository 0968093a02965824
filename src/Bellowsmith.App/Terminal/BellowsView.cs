using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.BellowsShape;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>A bellows' shape as a person reads it.</summary>
internal static class BellowsView
{
    public static void Show(Screen screen, BellowsShapeResult result, DisplayUnits units)
    {
        BellowsWords words = new(result, units);
        screen.Blank();
        screen.Title($"{result.Mould.Name}: what shape is it at this height?");
        if (result.Shape is not { } s) screen.Warn(words.Answer());
        else
        {
            screen.Answer(words.Answer());
            string crown = s.MiddleCrownRadius_m == s.EndCrownRadius_m
                ? units.Text(Dimension.Length, s.CrownRadius_m)
                : $"{units.Text(Dimension.Length, s.EndCrownRadius_m)} at the plates, {units.Text(Dimension.Length, s.MiddleCrownRadius_m)} between girdles";
            double angle = s.AngleAtPlate_rad * 180 / Math.PI;
            screen.Point("crown radius", crown);
            screen.Point("at the plate", $"the wall leaves at {angle.ToString("0.0", CultureInfo.InvariantCulture)}° to the axis");
        }

        if (!double.IsNaN(result.Bellows.GreatestHeight_m))
            screen.Point("it can stand", $"from {units.Text(Dimension.Length, result.Bellows.LeastHeight_m)} to {units.Text(Dimension.Length, result.Bellows.GreatestHeight_m)}");
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.CompressedAir);
        screen.Quiet(Cautions.Local);
    }
}
