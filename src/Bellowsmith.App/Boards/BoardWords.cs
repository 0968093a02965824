using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Boards;

/// <summary>
/// Every text on a kit's page that a moving hand can change, by key. Blazor renders them once and after each release; in
/// between the page's script puts the same texts into the same places.
/// </summary>
public static class BoardWords
{
    public const int Pieces = 5;

    public static Dictionary<string, string> Of(KitBoard board, BoardView view)
    {
        Dictionary<string, string> say = [];
        Height(board, view, say);
        Travel(board, view, say);
        DamperWords.Damping(board, view, say);
        DamperWords.Ride(board, view, say);
        CornerAsking.Say(board, view, say);
        CornerWords.Geometry(board, view, say);
        CornerWords.Alignment(view, say);
        CornerWords.Wheel(board, view, say);
        CornerWords.Touch(board, view, say);
        Split(say, "map.answer", board.RideFaults.Count > 0 ? NotYet(board.RideFaults) : MapHints.Before, "\0", "\0");
        say["state"] = board.SaveWords.Length > 0 && !board.IsChanged ? board.SaveWords
            : board.SaveWords.StartsWith("Not", StringComparison.Ordinal) ? board.SaveWords
            : board.IsChanged ? "changed, not saved" : "as in the document";
        foreach (string field in new[] { "height", "wanted", "thread", "gauge", "click", "cell", Asking.Ratio, Asking.Speed, Asking.BumpSpeed })
            say[$"{field}.refused"] = board.Refused is { } refused && refused.Field == field ? refused.Words : "";
        return say;
    }

    private static void Height(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        DisplayUnits units = view.Units;
        HeightSolution here = view.Here;
        HeightWords? words = view.Result is { } result ? new HeightWords(result, units) : null;
        bool none = view.Result is { Recommended: null } && view.Setting.DriveHeight is null;
        string answer = none ? words!.Answer() : HeightWords.At(here, units);
        (string height, string gauge) = (units.Text(Dimension.Length, here.Height_m), units.Text(Dimension.GaugePressure, here.GaugePressure_Pa) + " gauge");
        Split(say, "height.answer", answer, none ? "\0" : height, gauge);
        say["height.value"] = units.Text(Dimension.Length, here.Height_m);
        say["wanted.value"] = view.Setting.Wanted is { } wanted ? units.Text(Hands.DimensionOf(wanted.Kind), wanted.Value.Si) : "";
        say["wanted.label"] = view.Setting.Wanted?.Kind switch { TargetKind.SpringRate => "wanted spring rate", TargetKind.WheelRate => "wanted wheel rate", _ => "wanted ride frequency" };
        say["height.label"] = "spring height";
        say["thread.label"] = "exposed thread";
        say["gauge.label"] = "what if the gauge pressure were";
        say["thread.value"] = units.Text(Dimension.Length, here.Thread?.Exposed_m);
        say["thread.turns"] = here.Thread is { } thread ? $"· {thread.Turns.ToString("0.0", CultureInfo.InvariantCulture)} turns" : "the kit names no thread";
        say["height.why"] = Why(view, words, none);
        say["height.thread"] = here.Thread is { Reachable: true } set ? $"Set {units.Text(Dimension.Length, set.Exposed_m)} of exposed thread, {HeightWords.Turns(set.Turns)}." : "";
        say["height.thread-miss"] = here.Thread is not { Reachable: false } miss ? ""
            : view.IsRecommended && words is not null ? words.Thread() : $"The thread does not reach: {units.Text(Dimension.Length, miss.Exposed_m)} would have to show.";
        say["height.limit"] = here.WithinPressureLimit ? ""
            : $"{units.Text(Dimension.GaugePressure, here.GaugePressure_Pa)} gauge is more than this spring may have: {units.Text(Dimension.GaugePressure, view.Case.Part.MaxGaugePressure_Pa)}.";
        say["height.tested"] = here.WithinTestedPressure || view.Case.Fit.PressureLevels < 2 ? ""
            : $"Tested from {units.Number(Dimension.GaugePressure, view.Case.Fit.LeastGaugePressure_Pa)} to {units.Text(Dimension.GaugePressure, view.Case.Fit.GreatestGaugePressure_Pa)} gauge: dashed outside.";
        say["gauge.value"] = units.Text(Dimension.GaugePressure, board.WhatIf_Pa ?? here.GaugePressure_Pa);
        say["gauge.answer"] = WhatIf(board, view);
        string moves = $"{units.Change(Dimension.Rate, here.Sensitivities.RateByThread_N_per_m)} and {units.Change(Dimension.GaugePressure, here.Sensitivities.GaugePressureByThread_Pa)}";
        say["height.moves"] = here.Thread is null || double.IsNaN(here.Sensitivities.RateByThread_N_per_m) ? "" : $"1 mm more thread: {moves}, car height held.";
    }

    private static string Why(BoardView view, HeightWords? words, bool none)
    {
        if (words is null) return "Say what you want, a ride frequency such as 1.9 Hz, and every height that gives it is marked.";
        DisplayUnits units = view.Units;
        if (none) return $"Drawn at the nearest that can be had: {units.Text(Dimension.Length, view.Here.Height_m)}, {units.Text(Dimension.Frequency, view.Here.RideFrequency_Hz)}.";
        if (view.IsRecommended) return "Recommended. " + words.Reason();
        string wanted = view.Setting.Wanted is { } w ? units.Text(Hands.DimensionOf(w.Kind), w.Value.Si) : "";
        return view.Result!.Recommended is { } chosen
            ? $"The wanted {wanted} is had at {units.Text(Dimension.Length, chosen.Height_m)} and {units.Text(Dimension.GaugePressure, chosen.GaugePressure_Pa)} gauge."
            : "What is wanted cannot be had. " + words.Reason();
    }

    private static string WhatIf(KitBoard board, BoardView view)
    {
        DisplayUnits units = view.Units;
        if (board.WhatIf_Pa is not { } gauge || view.Travel is null) return "";
        RideHeight on = TravelStudy.On(view.Case, view.Here.Height_m, gauge);
        string then = $"On {units.Text(Dimension.GaugePressure, gauge)} gauge, the thread left as it is,";
        if (on.WheelTravel_m is not { } travel) return $"{then} the car would stand outside the spring's data.";
        string moved = Math.Abs(travel) < 5e-5 ? "the car stands as it does" : $"the car stands {units.Text(Dimension.Length, Math.Abs(travel))} {(travel > 0 ? "lower" : "higher")}";
        string end = on.End == TravelEnd.LoadBalance ? on.StopForce_N > 0 ? ", partly on the bump stop" : "" : $": {TravelWords.End(on.End)}";
        return $"{then} {moved}, spring {units.Text(Dimension.Length, on.SpringHeight_m)}{end}.";
    }

    private static void Travel(KitBoard board, BoardView view, Dictionary<string, string> say)
    {
        if (view.Travel is not { } travel)
        {
            say["travel.answer"] = NotYet(board.TravelFaults);
            say["travel.summary"] = "";
            return;
        }

        TravelWords words = new(travel, view.Units);
        say["travel.answer"] = words.Answer();
        say["travel.summary"] = words.Summary();
        foreach (TravelFinding finding in travel.Findings)
        {
            string key = $"finding.{finding.Rule}";
            say[$"{key}.verdict"] = Verdict(finding);
            say[$"{key}.rule"] = Sentence(TravelWords.Rule(finding.Rule)) + (finding.Holds is null ? "."
                : $": {view.Units.Text(Dimension.Length, finding.Value_m)}, asked {view.Units.Text(Dimension.Length, finding.Limit_m)}.");
            say[$"{key}.mend"] = words.MendOf(finding) ?? "";
            say[$"{key}.source"] = TravelWords.Source(finding.Rule);
        }
    }

    /// <summary>The verdict's word: colour never says it alone.</summary>
    public static string Verdict(TravelFinding finding) => finding.Holds switch
    {
        true => "holds",
        null => "not checked",
        _ => finding.Rule == TravelRule.ThreadEngagement ? "must" : "rule asks",
    };

    public static string NotYet(IReadOnlyList<Fault> faults) => $"Not answered yet: {string.Join("; ", faults.Select(f => f.Fix).Distinct())}";

    public static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A sentence in five pieces of which the second and fourth are this setting's numbers.</summary>
    internal static void Split(Dictionary<string, string> say, string key, string sentence, string first, string second)
    {
        string[] pieces = [sentence, "", "", "", ""];
        if (Cut(pieces[0], first) is var (before, after))
        {
            (pieces[0], pieces[1], pieces[2]) = (before, first, after);
            if (Cut(pieces[2], second) is var (between, rest)) (pieces[2], pieces[3], pieces[4]) = (between, second, rest);
        }

        for (int k = 0; k < Pieces; k++) say[string.Create(CultureInfo.InvariantCulture, $"{key}.{k}")] = pieces[k];
    }

    private static (string Before, string After)? Cut(string text, string part) =>
        text.IndexOf(part, StringComparison.Ordinal) is var at and >= 0 ? (text[..at], text[(at + part.Length)..]) : null;
}
