using System.Globalization;
using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Pairs;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a batch in pairs.</summary>
public sealed class PairWords(PairTable table, PairingResult result)
{
    public string Answer() => Reason() ?? Text(
        $"{result.Pairs.Count} {(result.Pairs.Count == 1 ? "pair" : "pairs")}; the worst differs by {result.Worst:0.00} of its tolerance, and no other way of pairing this batch does better. {Left()}");

    /// <summary>Why there are no pairs; null where there are.</summary>
    public string? Reason() => result.Lack switch
    {
        null => null,
        PairingLack.FewerThanTwoUnits => Text($"{Units(table.Units.Count)}: a pair takes two."),
        _ => Text($"{(table.Units.Count == 1 ? "The unit is" : $"All {table.Units.Count} units are")} for the {(table.Hands![0] == Hand.Left ? "left" : "right")}: a pair takes one of each hand."),
    };

    public IEnumerable<Note> Notes()
    {
        int outside = result.Pairs.Count(p => p.Worst > 1);
        if (outside > 0)
            yield return new("tolerance", Text($"{outside} of {result.Pairs.Count} pairs lie outside their tolerance; the batch allows {result.MostWithinTolerance} pairs within it at most, whichever units are left over. Pair the rest with the next batch."));
        string[] bare = [.. table.Characteristics.Where((_, c) => !table.ToleranceIsGiven[c])];
        if (bare.Length > 0)
            yield return new("tolerance", $"No tolerance is given for {string.Join(", ", bare)}: 1 in its own unit is taken.");
        yield return new("hands", table.Hands is null ? "No hands are given: any two units may go together." : "Each pair is a left and a right unit.");
        yield return new("worst", "The greatest |a − b|/tolerance of a pair's characteristics: smallest possible over the batch (exact), then the smallest sum of all pairs.");
    }

    public string Deciding(Pair pair) => table.Characteristics[pair.Characteristic];

    private string Left() => result.Spare.Count == 0 ? "Nothing is left over."
        : Text($"Left over: {string.Join(", ", result.Spare.Select(u => table.Units[u]))}.");

    private static string Units(int count) => count == 1 ? "One unit" : Text($"{count} units");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
