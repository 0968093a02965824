namespace Bellowsmith.Quality.Serials;

/// <summary>
/// The check character MOD 37,36 over 0–9 and A–Z [ISO 7064 2003]: with P = 36, each character of value a makes
/// S = (P + a) mod 36, 36 for 0, and P = 2S mod 37; the check character is (37 − P) mod 36. Every single wrong character
/// changes it; of the swaps of two neighbours it misses 1 in 630 (36 of all 36 · 630 states and pairs, counted).
/// </summary>
public static class CheckCharacter
{
    /// <summary>The values 0 to 35 in order.</summary>
    public const string Alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /// <summary>The check character of a text without one.</summary>
    /// <exception cref="ArgumentException">A character is not 0–9 or A–Z.</exception>
    public static char Of(ReadOnlySpan<char> text)
    {
        int p = 36;
        foreach (char character in text)
        {
            int value = Alphabet.IndexOf(character, StringComparison.Ordinal);
            if (value < 0) throw new ArgumentException($"'{character}' is not 0–9 or A–Z.", nameof(text));
            int sum = (p + value) % 36;
            p = 2 * (sum == 0 ? 36 : sum) % 37;
        }

        return Alphabet[(37 - p) % 36];
    }

    /// <summary>Whether the text's last character is the check character of those before it; false of fewer than two.</summary>
    public static bool Holds(ReadOnlySpan<char> text) => text.Length > 1 && text[^1] == Of(text[..^1]);
}
