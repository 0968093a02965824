using CsCheck;

namespace Bellowsmith.Tests.Kits;

/// <summary>Edits as a slip of the finger makes them, at places given as a share of the text.</summary>
internal static class Mutation
{
    private static readonly Gen<Func<string, string>> _edit = Gen.Select(
        Gen.Int[0, 5], Gen.Double[0, 1], Gen.Int[1, 12], Gen.Char["0123456789.,;\t\"[]{}:#/\\ -eEmNbar²°\n\r\uFEFF\u2028é"],
        (kind, share, count, letter) => (Func<string, string>)(text => Edit(text, kind, (int)(share * text.Length), count, letter)));

    public static readonly Gen<Func<string, string>> Edits =
        _edit.Array[1, 4].Select(edits => (Func<string, string>)(text => edits.Aggregate(text, (edited, edit) => edit(edited))));

    /// <summary>Replaces some of the places where one of the marks stands by another of them.</summary>
    public static Gen<string> Flips(string text, string marks) =>
        from flips in Gen.Select(Gen.Double[0, 1], Gen.Char[marks]).Array[1, 3]
        let places = text.Select((letter, place) => (letter, place)).Where(found => marks.Contains(found.letter, StringComparison.Ordinal)).Select(found => found.place).ToArray()
        select flips.Aggregate(text, (edited, flip) => Put(edited, places[Math.Min((int)(flip.Item1 * places.Length), places.Length - 1)], flip.Item2));

    private static string Edit(string text, int kind, int at, int count, char letter)
    {
        at = Math.Clamp(at, 0, Math.Max(text.Length - 1, 0));
        if (text.Length == 0) return letter.ToString();
        return kind switch
        {
            0 => text.Remove(at, Math.Min(count, text.Length - at)),
            1 => text.Insert(at, letter.ToString()),
            2 => Put(text, at, letter),
            3 when at + 1 < text.Length => Put(Put(text, at, text[at + 1]), at + 1, text[at]),
            4 => text.Insert(at, text.Substring(at, Math.Min(count * 5, text.Length - at))),
            _ => text.Remove(at, 1),
        };
    }

    private static string Put(string text, int at, char letter) => text.Remove(at, 1).Insert(at, letter.ToString());
}
