namespace Bellowsmith.Quality.Serials;

/// <summary>A slip that would explain a serial that does not check: what it would have been, and where, from 1.</summary>
/// <param name="Serial">The serial that checks.</param>
/// <param name="Position">The character changed, or the first of the two swapped.</param>
/// <param name="IsSwap">Two neighbours changed places.</param>
public sealed record SerialSlip(string Serial, int Position, bool IsSwap);

/// <summary>
/// What a text read off a part says. Blanks, hyphens, points, slashes and underscores are left out and small letters are capitals.
/// A text of another layout checks too, but no week is read from it.
/// </summary>
public sealed record SerialCheck
{
    // Pairs that print, stamp and hand writing make alike (common practice, no source).
    private static readonly string[] _alike = ["0O", "0D", "0Q", "OD", "OQ", "1I", "1L", "1J", "17", "2Z", "38", "3B", "49", "4A", "56", "5S", "6G", "6B", "8B", "CG", "EF", "HN", "MN", "PR", "UV", "VY", "VW", "XY"];

    private SerialCheck(string serial, char? expected, bool weekIsMissing, SerialNumber? read) =>
        (Serial, Expected, WeekIsMissing, Number) = (serial, expected, weekIsMissing, read);

    /// <summary>As it is checked: capitals, without separators.</summary>
    public string Serial { get; }

    /// <summary>The check character of all characters but the last; null where the text cannot have one.</summary>
    public char? Expected { get; }

    /// <summary>It has the layout of a serial, of a week that its year does not have or number 0.</summary>
    public bool WeekIsMissing { get; }

    /// <summary>Its parts; null where the layout is another.</summary>
    public SerialNumber? Number { get; }

    /// <summary>The check character stands, and no week is named that does not exist.</summary>
    public bool IsValid => Expected is { } expected && Serial[^1] == expected && !WeekIsMissing;

    /// <summary>Checks a text.</summary>
    public static SerialCheck Of(string text)
    {
        string serial = string.Concat(text.Where(c => !(char.IsWhiteSpace(c) || c is '-' or '‐' or '‑' or '–' or '.' or '/' or '_'))).ToUpperInvariant();
        bool checkable = serial.Length > 1 && serial.All(c => CheckCharacter.Alphabet.Contains(c, StringComparison.Ordinal));
        SerialNumber? read = SerialNumber.Read(serial);
        return new(serial, checkable ? CheckCharacter.Of(serial.AsSpan()[..^1]) : null, read is null && SerialNumber.HasLayout(serial), read);
    }

    /// <summary>
    /// Single slips that turn it into a serial that checks, likeliest first: swapped neighbours, characters that look alike, then
    /// any other single character but only where the result has the layout of a serial. Empty where it is valid.
    /// </summary>
    public IReadOnlyList<SerialSlip> LikelySlips()
    {
        if (IsValid || Serial.Length < 2) return [];
        List<SerialSlip> swaps = [], alike = [], others = [];
        for (int i = 0; i < Serial.Length; i++)
        {
            if (i > 0 && Serial[i] != Serial[i - 1] && Sound(Swapped(i)) is { } swapped) swaps.Add(new(swapped, i, true));
            foreach (char other in CheckCharacter.Alphabet)
            {
                if (other == Serial[i] || Sound(Serial[..i] + other + Serial[(i + 1)..]) is not { } changed) continue;
                if (LookAlike(Serial[i], other)) alike.Add(new(changed, i + 1, false));
                else if (SerialNumber.HasLayout(changed)) others.Add(new(changed, i + 1, false));
            }
        }

        return [.. swaps, .. alike, .. others];
    }

    // A text that had a layout does not lose it by mending.
    private string? Sound(string serial) => Of(serial) is { IsValid: true } check && (check.Number is not null || !SerialNumber.HasLayout(Serial)) ? serial : null;

    private string Swapped(int i) => Serial[..(i - 1)] + Serial[i] + Serial[i - 1] + Serial[(i + 1)..];

    private static bool LookAlike(char a, char b) => _alike.Any(pair => pair.Contains(a) && pair.Contains(b));
}
