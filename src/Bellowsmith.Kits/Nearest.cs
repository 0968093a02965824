namespace Bellowsmith.Kits;

/// <summary>The known name a mistyped one most likely meant.</summary>
internal static class Nearest
{
    public static string? To(string name, IEnumerable<string> known) =>
        known.MinBy(candidate => Distance(name.ToLowerInvariant(), candidate.ToLowerInvariant()));

    /// <summary>Whether the two are so alike that one is a slip for the other; short words need to be closer.</summary>
    public static bool IsSlip(string name, string known) =>
        Distance(name, known) <= (Math.Min(name.Length, known.Length) < 6 ? 1 : 2);

    /// <summary>Edits (insert, delete, replace, swap neighbours) that turn one into the other.</summary>
    public static int Distance(string a, string b)
    {
        var edits = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                edits[i, j] = i == 0 || j == 0 ? i + j : Math.Min(
                    Math.Min(edits[i - 1, j], edits[i, j - 1]) + 1,
                    edits[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1));
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    edits[i, j] = Math.Min(edits[i, j], edits[i - 2, j - 2] + 1);
            }
        }
        return edits[a.Length, b.Length];
    }
}
