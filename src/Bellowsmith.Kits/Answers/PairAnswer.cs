using Bellowsmith.Kits.Tables;
using Bellowsmith.Quality.Pairs;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>pairs</c>: worst is the greatest |a − b|/tolerance; a is the left unit where there are hands.</summary>
public sealed record PairAnswer(
    IReadOnlyList<PairAnswer.PairUnits> Pairs, double? Worst, double? Sum, IReadOnlyList<string> Spare, int MostWithinTolerance,
    string? Reason, IReadOnlyList<Note> Notes)
{
    public sealed record PairUnits(string A, string B, double Worst, string Characteristic, bool WithinTolerance);

    public static PairAnswer Of(PairTable table, PairingResult result)
    {
        PairWords words = new(table, result);
        return new(
            [.. result.Pairs.Select(p => new PairUnits(table.Units[p.A], table.Units[p.B], p.Worst, words.Deciding(p), p.Worst <= 1))],
            result.Worst, result.Sum, [.. result.Spare.Select(u => table.Units[u])], result.MostWithinTolerance, words.Reason(), [.. words.Notes()]);
    }
}
