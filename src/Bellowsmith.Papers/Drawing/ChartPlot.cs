using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Where on paper a chart's values stand.</summary>
internal sealed class ChartPlot(Chart chart, SKRect area)
{
    private const double Far = 20;

    public SKRect Area => area;

    public SKPoint At(double x, double y) => new(Across(x), Up(y));

    public float Across(double x) => area.Left + (float)Share(chart.X, x) * area.Width;

    public float Up(double y) => area.Bottom - (float)Share(chart.Y, y) * area.Height;

    public bool Holds(SKPoint p) => p.X >= area.Left - 0.5f && p.X <= area.Right + 0.5f && p.Y >= area.Top - 0.5f && p.Y <= area.Bottom + 0.5f;

    public bool Holds(SKRect r) => r.Left >= area.Left - 0.5f && r.Right <= area.Right + 0.5f && r.Top >= area.Top - 0.5f && r.Bottom <= area.Bottom + 0.5f;

    /// <summary>Points of a curve in runs without gaps.</summary>
    public IEnumerable<SKPoint[]> Runs(double[] x, double[] y)
    {
        List<SKPoint> run = [];
        for (int k = 0; k <= x.Length; k++)
        {
            if (k < x.Length && double.IsFinite(x[k]) && double.IsFinite(y[k])) run.Add(At(x[k], y[k]));
            else if (run.Count > 0)
            {
                yield return Thinned(run);
                run.Clear();
            }
        }
    }

    // What lies far outside is as good as at the edge of the desk; an axis of one value has it in the middle.
    private static double Share(ChartAxis axis, double value) =>
        axis.High - axis.Low is var span && span > 0 ? Math.Clamp((value - axis.Low) / span, -Far, Far) : 0.5;

    // More points than a printer can tell apart: first, least, greatest and last of each quarter point of width look the same.
    private SKPoint[] Thinned(List<SKPoint> run)
    {
        const float Width = 0.25f;
        if (run.Count < 4 * area.Width / Width) return [.. run];
        List<SKPoint> kept = [];
        for (int from = 0, to; from < run.Count; from = to)
        {
            (int least, int greatest, int column) = (from, from, (int)(run[from].X / Width));
            for (to = from; to < run.Count && (int)(run[to].X / Width) == column; to++)
                (least, greatest) = (run[to].Y < run[least].Y ? to : least, run[to].Y > run[greatest].Y ? to : greatest);
            foreach (int k in new SortedSet<int> { from, least, greatest, to - 1 }) kept.Add(run[k]);
        }

        return [.. kept];
    }
}
