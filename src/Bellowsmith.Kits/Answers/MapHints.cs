using System.Globalization;
using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Kits.Studies.Settings;

namespace Bellowsmith.Kits.Answers;

/// <summary>What stands about a map: what a hand may do, how far it is driven, and why cells are hatched.</summary>
public static class MapHints
{
    /// <summary>What a hand may do on it.</summary>
    public const string Hint = "Point at a cell, or move with the arrow keys; a click or Enter makes it the setting.";

    /// <summary>Before anything is driven.</summary>
    public const string Before = "Every setting of two kinds, driven over this road and laid side by side.";

    /// <summary>How far it is driven, where that takes longer than a second or was stopped; else empty.</summary>
    public static string Progress(MapRun map, double? left_s, bool isStopped)
    {
        string driven = $"{map.Driven} of {map.Cells} settings driven";
        if (map.IsDone) return "";
        if (isStopped) return $"Stopped: {driven}.";
        return left_s is > 1 ? string.Create(CultureInfo.InvariantCulture, $"{driven}, about {Math.Ceiling(left_s.Value):F0} s left.") : "";
    }

    /// <summary>Why a cell along such an axis cannot become the setting of a page.</summary>
    public static string NotSetHere(MapVariable variable) => variable == MapVariable.Stop
        ? "A stop's length is a part of the damper document: put the length wanted there. Click, height, load, speed and road can be taken from the map."
        : "Gauge pressure at load moves the car with the thread left alone, and this page holds the car: take a height instead. Click, height, load, speed and road can be taken from the map.";

    /// <summary>A reason in a word or two, to stand inside what it forbids.</summary>
    public static string Word(string reason) => reason switch
    {
        NotStanding.GaugeLimit => "gauge limit",
        NotStanding.Thread => "thread",
        NotStanding.OutsideData => "outside data",
        NotStanding.OnStop => "on the stop",
        NotStanding.ToppedOut => "topped out",
        _ => "not driven",
    };

    /// <summary>"Gauge limit, 12 % of the map: it takes more than the spring's greatest gauge pressure."</summary>
    public static string Sentence(string reason, int cells, int all) =>
        string.Create(CultureInfo.InvariantCulture, $"{MapWords.Upper(Word(reason))}, {100.0 * cells / all:F0} % of the map: {reason}.");
}
