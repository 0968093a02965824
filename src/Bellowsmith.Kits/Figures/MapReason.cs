namespace Bellowsmith.Kits.Figures;

/// <summary>Why some cells are infeasible: in a word or two, as a sentence, and which.</summary>
public sealed record MapReason(string Word, string Sentence, int[] Cells)
{
    /// <summary>The cells in patches that hang together along edges, on a map with so many columns.</summary>
    public IEnumerable<int[]> Patches(int columns)
    {
        HashSet<int> left = [.. Cells];
        foreach (int first in Cells)
        {
            if (!left.Remove(first)) continue;
            List<int> patch = [first];
            for (int k = 0; k < patch.Count; k++)
                foreach (int beside in Beside(patch[k], columns))
                    if (left.Remove(beside)) patch.Add(beside);
            yield return [.. patch];
        }
    }

    private static IEnumerable<int> Beside(int cell, int columns)
    {
        if (cell % columns > 0) yield return cell - 1;
        if (cell % columns < columns - 1) yield return cell + 1;
        yield return cell - columns;
        yield return cell + columns;
    }
}
