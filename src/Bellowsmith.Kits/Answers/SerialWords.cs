using System.Globalization;
using Bellowsmith.Quality.Serials;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a serial: what it says, and what may have gone wrong where it does not check.</summary>
public static class SerialWords
{
    private const int MostSlips = 5;

    public static string Answer(SerialCheck check) =>
        Reason(check) ?? (check.Number is { } s
            ? Text($"{check.Serial} checks: number {s.Number} of week {s.Week.Week} of {s.Week.WeekYear}{Marks(s)}.")
            : $"{check.Serial} checks; its layout is not ours, so no week is read from it.");

    /// <summary>Why it is not valid; null where it is.</summary>
    public static string? Reason(SerialCheck check) => check switch
    {
        { IsValid: true } => null,
        { Expected: null } => "A serial is two or more of 0–9 and A–Z; blanks, hyphens, points, slashes and underscores may stand between.",
        { WeekIsMissing: true } => $"{check.Serial} names a week its year does not have, or number 0: it was not made so.",
        _ => $"{check.Serial} does not check: it ends in {check.Serial[^1]}, and the characters before ask for {check.Expected}. At least one character is wrong.",
    };

    /// <summary>The likeliest slips. They are guesses: the part decides.</summary>
    public static IEnumerable<string> Slips(SerialCheck check) =>
        check.LikelySlips().Take(MostSlips).Select(slip => Text($"{slip.Serial}, if {Slip(check, slip)}"));

    private static string Slip(SerialCheck check, SerialSlip slip) => slip.IsSwap
        ? Text($"characters {slip.Position} and {slip.Position + 1} changed places")
        : Text($"character {slip.Position} is {slip.Serial[slip.Position - 1]}, not {check.Serial[slip.Position - 1]}");

    private static string Marks(SerialNumber s) =>
        (s.Prefix.Length > 0 ? $", prefix {s.Prefix}" : "") + (s.Mark.Length > 0 ? $", mark {s.Mark}" : "");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
