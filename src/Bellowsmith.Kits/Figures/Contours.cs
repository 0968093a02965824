namespace Bellowsmith.Kits.Figures;

/// <summary>
/// Lines of one value through a grid by marching squares, linear along each cell's edges. A square with a corner that has no
/// value has no line; where both diagonals are possible the mean of the corners decides.
/// </summary>
public static class Contours
{
    /// <summary>Lines as (column, row) points; a closed one ends where it begins.</summary>
    /// <param name="values">Row after row; NaN for none.</param>
    /// <param name="columns">In a row.</param>
    /// <param name="level">The value.</param>
    public static IReadOnlyList<(double Column, double Row)[]> Of(ReadOnlySpan<float> values, int columns, double level)
    {
        Dictionary<int, (double, double)> crossings = [];
        Dictionary<int, List<int>> joined = [];
        for (int row = 0; row < values.Length / columns - 1; row++)
            for (int column = 0; column < columns - 1; column++)
                Square(values, columns, column, row, level, crossings, joined);
        return Chains(crossings, joined);
    }

    // Edge 2k leads from point k along, 2k + 1 up.
    private static void Square(
        ReadOnlySpan<float> values, int columns, int column, int row, double level,
        Dictionary<int, (double, double)> crossings, Dictionary<int, List<int>> joined)
    {
        int at = row * columns + column;
        (float a, float b, float c, float d) = (values[at], values[at + 1], values[at + columns + 1], values[at + columns]);
        if (float.IsNaN(a + b + c + d)) return;
        Span<int> cut = stackalloc int[4];
        int count = 0;
        Cross(cut, a, b, 2 * at, (column, row), (1, 0));
        Cross(cut, b, c, 2 * (at + 1) + 1, (column + 1, row), (0, 1));
        Cross(cut, d, c, 2 * (at + columns), (column, row + 1), (1, 0));
        Cross(cut, a, d, 2 * at + 1, (column, row), (0, 1));
        if (count == 2) Join(cut[0], cut[1]);
        else if (count == 4)
        {
            // The corners that the middle goes with are joined through it; the other two are cut off, each by a line of its own.
            bool cutsOffB = ((a + b + c + d) / 4.0 >= level) == (a >= level);
            Join(cut[0], cutsOffB ? cut[1] : cut[3]);
            Join(cut[2], cutsOffB ? cut[3] : cut[1]);
        }

        void Cross(Span<int> cut, double from, double to, int edge, (double Column, double Row) start, (double Column, double Row) along)
        {
            if (from >= level == to >= level) return;
            double share = (level - from) / (to - from);
            crossings[edge] = (start.Column + share * along.Column, start.Row + share * along.Row);
            cut[count++] = edge;
        }

        void Join(int one, int other)
        {
            Of(one).Add(other);
            Of(other).Add(one);
        }

        List<int> Of(int edge) => joined.TryGetValue(edge, out List<int>? known) ? known : joined[edge] = [];
    }

    // An edge joins at most two squares: open lines first, from their ends, then what is left goes round.
    private static List<(double, double)[]> Chains(Dictionary<int, (double, double)> crossings, Dictionary<int, List<int>> joined)
    {
        List<(double, double)[]> chains = [];
        HashSet<int> passed = [];
        foreach (int start in joined.Keys.OrderBy(edge => joined[edge].Count))
        {
            if (!passed.Add(start)) continue;
            List<int> chain = [start];
            for (int? next = joined[start][0]; next is { } edge; next = joined[edge].Where(e => !passed.Contains(e)).Select(e => (int?)e).FirstOrDefault())
            {
                passed.Add(edge);
                chain.Add(edge);
            }

            if (joined[start].Count == 2) chain.Add(start);
            chains.Add([.. chain.Select(edge => crossings[edge])]);
        }

        return chains;
    }
}
