using System.Globalization;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Kits.Answers;

/// <summary>
/// A run rule as a sentence: "two of three beyond 2 sigma on one side". Read tolerantly (numerals or words, any order of what
/// is needed, the usual other words), but every word must be known: a rule half understood would judge wrongly.
/// </summary>
public static class RuleSentence
{
    private const double GreatestDistance = 10;

    private static readonly string[] _numbers =
    [
        "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve", "thirteen",
        "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty",
    ];

    private static readonly string[]
        _sigma = ["sigma", "sigmas", "σ", "sd", "sds", "deviation", "deviations"],
        _rising = ["rising", "falling", "increasing", "decreasing", "rise", "fall", "trend", "upward", "downward"],
        _alternating = ["alternating", "alternate", "alternately", "zigzag"],
        _within = ["within", "inside"],
        _beyond = ["beyond", "outside", "past", "over", "further", "above", "below"],
        _above = ["above"], _below = ["below"],
        _limit = ["limit", "limits"],
        _either = ["either", "both"],
        _oneSide = ["side", "same"],
        _filler =
        [
            "a", "an", "any", "the", "point", "points", "in", "row", "on", "of", "out", "from", "than", "or", "and", "successive", "consecutive",
            "standard", "centre", "center", "line", "steadily", "sides", "all", "is", "are", "lies", "lie", "control",
        ];

    /// <summary>The sentences everyone starts from.</summary>
    public static IReadOnlyList<string> Examples { get; } =
    [
        "one point beyond 3 sigma", "two of three beyond 2 sigma on one side", "four of five beyond 1 sigma on one side",
        "eight in a row on one side", "six in a row rising or falling", "fourteen in a row alternating",
        "fifteen in a row within 1 sigma", "eight in a row beyond 1 sigma on either side",
    ];

    /// <summary>The rule in its one spelling.</summary>
    public static string Of(RunRule rule)
    {
        string many = rule.Window == 1 ? "one point" : rule.Count == rule.Window ? $"{Word(rule.Count)} in a row" : $"{Word(rule.Count)} of {Word(rule.Window)}";
        string distance = string.Create(CultureInfo.InvariantCulture, $"{rule.Distance_sigma:0.####} sigma");
        return rule.Kind switch
        {
            RuleKind.BeyondLimit => "one point beyond a limit",
            RuleKind.RisingOrFalling => $"{many} rising or falling",
            RuleKind.Alternating => $"{many} alternating",
            RuleKind.Within => $"{many} within {distance}",
            RuleKind.BeyondOnEitherSide => $"{many} beyond {distance} on either side",
            _ when rule.Distance_sigma == 0 => $"{many} on one side",
            _ => $"{many} beyond {distance}{(rule.Window == 1 ? "" : " on one side")}",
        };
    }

    /// <summary>Reads a sentence; null where it is none, with the nearest that is one.</summary>
    public static RunRule? Read(string text, out string nearest)
    {
        string[] words = Words(text);
        nearest = "";
        if (Rule(words) is { } rule) return rule;
        string[] mended = [.. words.Select(w => IsKnown(w) ? w : Nearest.To(w, Vocabulary())!)];
        nearest = Rule(mended) is { } meant ? Of(meant) : Nearest.To(text, Examples)!;
        return null;
    }

    private static RunRule? Rule(string[] words)
    {
        if (words.Length == 0 || !words.All(IsKnown)) return null;
        int sigmaAt = Array.FindIndex(words, _sigma.Contains);
        int distanceAt = sigmaAt < 0 ? -1 : Array.FindLastIndex(words, sigmaAt, w => Number(w) is not null);
        double[] counts = [.. words.Where((w, i) => i != distanceAt && Number(w) is not null && !IsOneSide(words, i)).Select(w => Number(w)!.Value)];
        if (sigmaAt >= 0 && distanceAt < 0 || counts.Length > 2 || counts.Any(c => c % 1 != 0)) return null;
        (double count, double window) = counts.Length switch { 0 => (1, 1), 1 => (counts[0], counts[0]), _ => (counts[0], counts[1]) };
        if (!(1 <= count && count <= window && window <= RunRule.LongestWindow)) return null;
        return Rule(words, (int)count, (int)window, distanceAt < 0 ? null : Number(words[distanceAt]));
    }

    private static RunRule? Rule(string[] words, int count, int window, double? distance)
    {
        bool Says(string[] any) => words.Any(any.Contains);
        bool whole = count == window && distance is null;
        if (Says(_alternating)) return whole && count >= 3 ? RunRule.Alternating(count) : null;
        if (Says(_rising)) return whole && count >= 3 ? RunRule.RisingOrFalling(count) : null;
        if (distance is null && Says(_limit)) return whole && count == 1 && Says(_beyond) ? RunRule.BeyondThreeSigma : null;
        if (Says(_above) != Says(_below)) return null; // a rule watches both sides
        if (distance is null) return (Says(_oneSide) || Says(_above)) && !Says(_either) && count > 1 ? RunRule.Beyond(count, window, 0) : null;
        if (!(distance <= GreatestDistance) || Says(_within) == Says(_beyond)) return null;
        if (Says(_within)) return distance > 0 ? new(RuleKind.Within, count, window, distance.Value) : null;
        return RunRule.Beyond(count, window, distance.Value, Says(_either) && window > 1);
    }

    // The "one" of "on one side" counts nothing.
    private static bool IsOneSide(string[] words, int at) => at + 1 < words.Length && words[at + 1] == "side";

    private static string[] Words(string text)
    {
        string apart = string.Concat(text.ToLowerInvariant().Select((c, i) =>
            i > 0 && char.IsLetter(c) && char.IsDigit(text[i - 1]) ? $" {c}" : char.IsLetterOrDigit(c) || c is '.' or ',' ? c.ToString() : " "));
        return [.. apart.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(w => w.Trim('.', ',')).Where(w => w.Length > 0)];
    }

    private static bool IsKnown(string word) => Number(word) is not null || Vocabulary().Contains(word);

    private static IEnumerable<string> Vocabulary() =>
        [.. _numbers, .. _sigma, .. _rising, .. _alternating, .. _within, .. _beyond, .. _limit, .. _either, .. _oneSide, .. _filler];

    private static double? Number(string word) => Array.IndexOf(_numbers, word) is var at and >= 0 ? at
        : double.TryParse(word.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out double value) ? value : null;

    private static string Word(int number) => number < _numbers.Length ? _numbers[number] : number.ToString(CultureInfo.InvariantCulture);
}
