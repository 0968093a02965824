using Bellowsmith.Quality.Serials;

namespace Bellowsmith.Kits.Answers;

/// <summary>
/// The machine answer of <c>serial</c>. <paramref name="CheckCharacter"/> is the one the characters before the last ask for;
/// <paramref name="IsoWeek"/> is null where the layout is another. Slips are guesses, likeliest first.
/// </summary>
public sealed record SerialAnswer(
    string Serial, bool Valid, string? CheckCharacter, string? IsoWeek, string? Prefix, string? Mark, int? Number, string? Reason,
    IReadOnlyList<SerialSlip> LikelySlips)
{
    public static SerialAnswer Of(SerialCheck check) => new(
        check.Serial, check.IsValid, check.Expected?.ToString(), check.Number?.Week.ToString(), check.Number?.Prefix, check.Number?.Mark,
        check.Number?.Number, SerialWords.Reason(check), check.LikelySlips());
}
