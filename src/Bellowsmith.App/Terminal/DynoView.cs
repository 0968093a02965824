using System.Globalization;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Dyno;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Terminal;

/// <summary>What a dyno says of a damper, as a person reads it.</summary>
internal static class DynoView
{
    public static void Show(Screen screen, DynoResult result, DisplayUnits units)
    {
        DynoWords words = new(result, units);
        screen.Blank();
        screen.Title($"{result.Part.Name}: what does the dyno say?");
        if (result.Clicks.Count > 0) screen.Answer(words.Answer());
        else screen.Warn(words.Answer());
        if (words.Compared() is { Length: > 0 } compared) screen.Say(compared);
        if (result.Clicks.Count > 0) Forces(screen, result, units);
        if (result.Differences.Count > 0) Differences(screen, result, units);
        foreach (Note note in words.Notes()) screen.Point(note.About, note.Text);
        screen.Blank();
        screen.Quiet(Cautions.DamperGas);
        screen.Quiet(Cautions.Dyno);
        screen.Quiet(Cautions.Local);
    }

    private static void Forces(Screen screen, DynoResult result, DisplayUnits units)
    {
        screen.Point("force", $"{units.Symbol(Dimension.Force)} at each speed in {units.Symbol(Dimension.Speed)}, rebound / compression, both resisting; clicks from closed.");
        screen.Table(
            ["click", .. DynoStudy.Speeds_m_per_s.Select(speed => units.Number(Dimension.Speed, speed))],
            result.Clicks.Select(click => ((IReadOnlyList<string>)
            [
                Click(click.Click) + (click.Interpolated ? " between" : ""),
                .. click.Forces.Select(force => $"{units.Number(Dimension.Force, force.Rebound_N)} / {units.Number(Dimension.Force, force.Compression_N)}"),
            ], false)));
    }

    private static void Differences(Screen screen, DynoResult result, DisplayUnits units)
    {
        double[] speeds = [.. result.Differences.Select(d => Math.Abs(d.Velocity_m_per_s)).Distinct().Order()];
        screen.Point("difference", $"{result.Other!.Name} against it, at each speed in {units.Symbol(Dimension.Speed)}, rebound / compression.");
        screen.Table(
            ["click", .. speeds.Select(speed => units.Number(Dimension.Speed, speed))],
            result.Differences.GroupBy(d => d.Click).Select(click => ((IReadOnlyList<string>)
            [
                Click(click.Key), .. speeds.Select(speed => $"{At(click, speed)} / {At(click, -speed)}"),
            ], false)));

        static string At(IEnumerable<DynoDifference> click, double velocity) =>
            DynoWords.Percent(click.FirstOrDefault(d => d.Velocity_m_per_s == velocity)?.Share);
    }

    private static string Click(double click) => click.ToString("0.##", CultureInfo.InvariantCulture);
}
