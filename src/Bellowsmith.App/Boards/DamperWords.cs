using System.Globalization;
using Bellowsmith.Kits.Answers;

namespace Bellowsmith.App.Boards;

/// <summary>The texts of the two questions about the damper: how hard, and how it rides.</summary>
public static class DamperWords
{
    private const string NotThisSetting = "\0";

    public static void Damping(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        say["ratio.label"] = "wanted share of critical";
        say["ratio.value"] = view.Asked.Ratio.ToString("0.00#", CultureInfo.InvariantCulture);
        say["click.label"] = "click set, from closed";
        say["click.value"] = view.Click is { } set ? ClickText(set) : "none";
        if (view.Damping is not { } damping)
        {
            BoardWords.Split(say, "damping.answer", board.DampingFaults.Count > 0 ? BoardWords.NotYet(board.DampingFaults) : "", NotThisSetting, NotThisSetting);
            return;
        }

        DampingWords words = new(damping, view.Units);
        double? chosen = damping.Chosen?.Click;
        bool isSet = chosen is not null && chosen == view.Click;
        BoardWords.Split(
            say, "damping.answer", words.Answer(), isSet ? $"Click {ClickText(chosen!.Value)}" : NotThisSetting,
            isSet ? damping.Chosen!.Ratio.ToString("0.00", CultureInfo.InvariantCulture) : NotThisSetting);
        say["damping.set"] = view.Click is { } click ? words.Set(click) : "";
        say["damping.take"] = chosen is null || isSet ? "" : $"Take click {ClickText(chosen.Value)}";
        say["finding.click.verdict"] = damping.Distinguishable switch { true => "real", false => "not shown", _ => "not known" };
        say["damping.distinct"] = words.Distinct();
        say["damping.modes"] = words.Modes();
    }

    public static void Ride(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        say["speed.label"] = "driving speed";
        say["speed.value"] = BumpWords.Speed(view.Asked.Speed_m_per_s, view.Units);
        say["bumpSpeed.label"] = "speed over it";
        say["bumpSpeed.value"] = BumpWords.Speed(view.Asked.BumpSpeed_m_per_s, view.Units);
        say["bump.answer"] = view.Bump is { } bump ? BumpWords.Of(bump, view.Units).Replace(" m/s²", "\u00a0m/s²", StringComparison.Ordinal) : "";
        if (view.Ride is not { } ride)
        {
            BoardWords.Split(say, "ride.answer", board.RideFaults.Count > 0 ? BoardWords.NotYet(board.RideFaults) : "", NotThisSetting, NotThisSetting);
            return;
        }

        RideWords words = new(ride, view.Units);
        BoardWords.Split(say, "ride.answer", words.Answer(), Or(words.Weighted()), Or(words.Touched()));
        say["ride.set"] = $"Driven at {words.Setting()}, for {Asked.Time_s:0} s.";
        foreach ((int k, (string change, IReadOnlyList<string> cells)) in words.Aside().Index())
        {
            say[$"aside.{k}"] = change;
            for (int column = 0; column < cells.Count; column++) say[$"aside.{k}.{column}"] = cells[column];
        }
    }

    /// <summary>A click counted from closed.</summary>
    public static string ClickText(double click) => click.ToString("0.##", CultureInfo.InvariantCulture);

    private static string Or(string words) => words.Length > 0 ? words : NotThisSetting;
}
