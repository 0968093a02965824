namespace Bellowsmith.Kits.Figures;

/// <summary>Words beside a plate on a leader from what they name.</summary>
/// <param name="Part">What it belongs to.</param>
/// <param name="Words">As written.</param>
/// <param name="Size">Of the letters, mm.</param>
/// <param name="At">Middle of what it names, mm.</param>
/// <param name="Radius">The leader begins so far from there, mm.</param>
/// <param name="Value_m">Where it is a dimension.</param>
/// <param name="Half">Half of the dimension, mm, level about its middle.</param>
internal sealed record BracketNote(string Part, string Words, double Size, DrawingPoint At, double Radius, double? Value_m = null, double Half = 0)
{
    // In heights of a letter: between words, between words and a line, and from one try to the next.
    private const double Apart = 1.3, Clear = 0.9, Try = 0.1;

    /// <summary>Where its words would stand if nothing were in the way: over a hole, level with a mark.</summary>
    public double Wanted => Value_m is null ? At.Y : At.Y + Radius + Size;

    /// <summary>Where the leader points: the middle, or that of a slot's right end.</summary>
    public DrawingPoint Tip => At with { X = At.X + Math.Max(0, Half - Radius) };

    /// <summary>A height for the words of each, in one column: as near as may be to what it wants, over the one before, on no level line and not under the datum.</summary>
    public static IEnumerable<double> Heights(IEnumerable<BracketNote> upward, IReadOnlyList<double> lines, double text)
    {
        double below = -Apart * text;
        foreach (BracketNote note in upward)
            yield return below = Enumerable.Range(0, int.MaxValue).SelectMany(k => new[] { note.Wanted + k * Try * text, note.Wanted - k * Try * text })
                .First(y => y > below + Apart * text && lines.All(line => Math.Abs(line - y) > Clear * text));
    }
}
