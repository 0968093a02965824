using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Lines at 45° through some cells of a grid, each as long as it stays in them.</summary>
/// <param name="across">Edges of the columns, from left to right.</param>
/// <param name="up">Edges of the rows, from below upward.</param>
/// <param name="isHatched">Whether a column and row are.</param>
internal sealed class Hatching(float[] across, float[] up, Func<int, int, bool> isHatched)
{
    public IEnumerable<(SKPoint From, SKPoint To)> Lines(float apart)
    {
        (float left, float right, float bottom, float top) = (across[0], across[^1], up[0], up[^1]);
        for (float start = left - (bottom - top); start < right; start += apart)
        {
            SKPoint? from = null, to = null;
            foreach ((SKPoint entry, SKPoint exit, bool hatched) in Pieces(start, bottom))
            {
                if (hatched) (from, to) = (from ?? entry, exit);
                else if (from is { } begun)
                {
                    yield return (begun, to!.Value);
                    from = null;
                }
            }

            if (from is { } last) yield return (last, to!.Value);
        }
    }

    // A line upward to the right, cut at every edge it meets: at height bottom − d it stands at start + d.
    private IEnumerable<(SKPoint, SKPoint, bool)> Pieces(float start, float bottom)
    {
        float[] cuts = [.. across.Select(x => x - start).Concat(up.Select(y => bottom - y)).Where(Inside).Order()];
        for (int k = 1; k < cuts.Length; k++)
        {
            if (cuts[k] - cuts[k - 1] < 1e-3f) continue;
            SKPoint middle = At((cuts[k] + cuts[k - 1]) / 2);
            yield return (At(cuts[k - 1]), At(cuts[k]), isHatched(Cell(across, middle.X), Cell(up, middle.Y)));
        }

        bool Inside(float d) => start + d >= across[0] - 1e-3f && start + d <= across[^1] + 1e-3f && d >= -1e-3f && d <= bottom - up[^1] + 1e-3f;
        SKPoint At(float d) => new(start + d, bottom - d);
    }

    private static int Cell(float[] edges, float at)
    {
        bool rises = edges[^1] > edges[0];
        int beyond = Array.FindIndex(edges, 1, edge => rises ? edge >= at : edge <= at);
        return beyond < 0 ? edges.Length - 2 : beyond - 1;
    }
}
