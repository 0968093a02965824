using System.Globalization;
using System.Text.RegularExpressions;

namespace Bellowsmith.Quality.Serials;

/// <summary>
/// A workshop's serial: <c>prefix YY W ww mark NNNNN C</c>, that is an optional prefix and an optional mark of the product, week-year
/// and week, a running number of five digits, and the check character over all before it: <c>26W5300042X</c>. Digits and capital
/// letters only, so that it fits any bar code, and no number that belongs to an issuing agency is invented.
/// </summary>
public sealed partial record SerialNumber(string Prefix, SerialWeek Week, string Mark, int Number)
{
    public const int GreatestNumber = 99_999, LongestPrefix = 8, LongestMark = 4;

    /// <summary>The serial of a part made on a day.</summary>
    /// <param name="prefix">Up to 8 digits or capital letters, or empty.</param>
    /// <param name="date">The day; its week-year lies from 2000 to 2099.</param>
    /// <param name="number">The running number, 1 to 99 999.</param>
    /// <param name="mark">Up to 4 capital letters that name the product, or empty.</param>
    /// <exception cref="ArgumentException">One of them cannot stand in a serial.</exception>
    public static SerialNumber New(string prefix, DateOnly date, int number, string mark = "")
    {
        SerialNumber serial = new(prefix, SerialWeek.Of(date), mark, number);
        return Read(serial.Written()) == serial ? serial : throw new ArgumentException($"No serial can be made of \"{prefix}\", {date:O}, \"{mark}\" and {number}.");
    }

    /// <summary>The parts of a serial of this layout whose week exists, whatever its check character; null of any other text.</summary>
    public static SerialNumber? Read(string serial)
    {
        if (Layout().Match(serial) is not { Success: true } match) return null;
        SerialWeek week = new(SerialWeek.LeastYear + Digits("year"), Digits("week"));
        return week.Exists && Digits("number") > 0
            ? new(match.Groups["prefix"].Value, week, match.Groups["mark"].Value, Digits("number")) : null;

        int Digits(string group) => int.Parse(match.Groups[group].ValueSpan, CultureInfo.InvariantCulture);
    }

    /// <summary>Whether a text has this layout, although its week may not exist.</summary>
    public static bool HasLayout(string serial) => Layout().IsMatch(serial);

    /// <summary>The serial with its check character.</summary>
    public override string ToString() => Written();

    private string Written()
    {
        string text = string.Create(CultureInfo.InvariantCulture, $"{Prefix}{Week.WeekYear % 100:00}W{Week.Week:00}{Mark}{Number:00000}");
        return text + (text.All(c => CheckCharacter.Alphabet.Contains(c, StringComparison.Ordinal)) ? CheckCharacter.Of(text) : "");
    }

    [GeneratedRegex("^(?<prefix>[0-9A-Z]{0,8})(?<year>[0-9]{2})W(?<week>[0-9]{2})(?<mark>[A-Z]{0,4})(?<number>[0-9]{5})[0-9A-Z]$", RegexOptions.CultureInvariant)]
    private static partial Regex Layout();
}
