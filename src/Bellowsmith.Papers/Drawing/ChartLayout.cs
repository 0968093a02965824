using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>
/// How a chart's box is shared out: ticks on the left, axis titles above and below, and where the box is wide a margin for the
/// names of lines on the right and a key below.
/// </summary>
internal sealed class ChartLayout
{
    private const float Wide = 60, GreatestMargin = 0.27f;

    private readonly Pen _pen;
    private readonly Chart _chart;
    private readonly SKRect _box;
    private readonly float _size;
    private readonly bool _wide;

    public ChartLayout(Pen pen, SKRect box, float size, Chart chart)
    {
        (_pen, _box, _size, _chart) = (pen, box, size, chart);
        _wide = box.Width > Wide * size;
        Uprights = UprightRows();
        float top = box.Top + (2.2f + 1.3f * Uprights.Select(u => u.Row + 1).DefaultIfEmpty(0).Max()) * size;
        float right = box.Right - Math.Max(size / 2, Margin());
        Up = new AxisTicks(chart.Y, (box.Bottom - 2.9f * size - top) / (2.4f * size));
        float left = box.Left + Math.Max(3.4f * size, Up.Ticks.Select(t => Width(t.Label)).DefaultIfEmpty(0).Max() + 0.8f * size);
        Across = new AxisTicks(chart.X, (right - left) / (3.6f * size));
        float widest = Across.Ticks.Select(t => Width(t.Label)).DefaultIfEmpty(0).Max() + size;
        if (widest > 3.6f * size && chart.X.OwnTicks is null) Across = new AxisTicks(chart.X, (right - left) / widest);
        Key = KeyPlaces(left, right);
        float rows = Key.Select(k => k.Row).DefaultIfEmpty(0).Max();
        Plot = new SKRect(left, top, right, box.Bottom - (2.9f + 1.35f * rows) * size);
    }

    public SKRect Box => _box;
    public SKRect Plot { get; }
    public AxisTicks Across { get; }
    public AxisTicks Up { get; }

    /// <summary>Names of upright lines with the row above the plot they stand in, from below.</summary>
    public IReadOnlyList<(ChartUpright Upright, int Row)> Uprights { get; }

    /// <summary>What the shapes mean: shape, words, left edge, row.</summary>
    public IReadOnlyList<(PointShape? Shape, string Label, float Left, int Row)> Key { get; }

    /// <summary>A narrow figure names its points inside.</summary>
    public IEnumerable<ChartPoints> Keyed => _wide ? [] : _chart.Measured.Where(m => m.Label.Length > 0);

    public float Letters => 0.9f * _size;

    /// <summary>Names of lines that reach the right edge of a wide figure, broken into lines, with the place they end at.</summary>
    public IEnumerable<(IReadOnlyList<string> Lines, double X, double Y, Shade Colour)> Margins => _wide
        ? Ends().Where(e => AtEdge(e.X)).Select(e => (_pen.Lines(e.Label, Letters, GreatestMargin * _box.Width - _size), e.X, e.Y, e.Colour)) : [];

    /// <summary>Names of the other lines with the place they name.</summary>
    public IEnumerable<(string Label, SKPoint At, Shade Colour)> Inside(ChartPlot plot) =>
        from end in Ends()
        where !(_wide && AtEdge(end.X))
        let at = new SKPoint(end.Across ? plot.Area.Right : plot.Across(end.X), plot.Up(end.Y))
        where plot.Holds(at)
        select (end.Label, at, end.Colour);

    public void Note(string text)
    {
        if (_wide) _pen.Words(text, _box.Right, _box.Top + _size, Letters, Shade.Quiet, align: Align.Right);
    }

    private IEnumerable<(string Label, double X, double Y, bool Across, Shade Colour)> Ends()
    {
        foreach (ChartCurve line in (IEnumerable<ChartCurve>)[.. _chart.Limits, .. _chart.Centres])
            if (End(line.X, line.Y) is >= 0 and int k && line.Label.Length > 0) yield return (line.Label, line.X[k], line.Y[k], true, Shade.Ink);
        foreach (ChartCurve curve in _chart.Curves.Where(c => c.LabelAt >= 0 && c.LabelAt < c.X.Length && c.Label.Length > 0))
            yield return (curve.Label, curve.X[curve.LabelAt], double.IsFinite(curve.Y[curve.LabelAt]) ? curve.Y[curve.LabelAt] : curve.Outside[curve.LabelAt], false,
                curve.Kind == CurveKind.Setting ? Shade.Accent : Shade.Ink);
        foreach (ChartPoints points in _chart.Measured.Where(m => _wide && m.Joined && m.Label.Length > 0))
            if (End(points.X, points.Y) is >= 0 and int k) yield return (points.Label, points.X[k], points.Y[k], false, Shade.Ink);
    }

    private static int End(double[] x, double[] y) => Enumerable.Range(0, x.Length).LastOrDefault(k => double.IsFinite(x[k]) && double.IsFinite(y[k]), -1);

    private bool AtEdge(double x) => x >= _chart.X.Low + 0.94 * (_chart.X.High - _chart.X.Low);

    private float Margin() => Margins.SelectMany(m => m.Lines).Select(Width).DefaultIfEmpty(-_size).Max() + _size;

    // Greedy: each name in the lowest row where it does not touch the one before. The plot's width is not known yet, so as if it were the box.
    private List<(ChartUpright, int)> UprightRows()
    {
        List<float> ends = [];
        List<(ChartUpright, int)> placed = [];
        foreach (ChartUpright upright in _chart.Uprights.Where(u => double.IsFinite(u.X) && u.Label.Length > 0).OrderBy(u => u.X))
        {
            float width = Width(upright.Label), at = new ChartPlot(_chart, new SKRect(0, 0, 0.6f * _box.Width, 1)).Across(upright.X);
            int row = ends.FindIndex(end => end + _size < at - width / 2);
            if (row < 0) ends.Add(at + width / 2);
            else ends[row] = at + width / 2;
            placed.Add((upright, row < 0 ? ends.Count - 1 : row));
        }

        return placed;
    }

    private List<(PointShape?, string, float, int)> KeyPlaces(float left, float right)
    {
        List<(PointShape?, string, float, int)> places = [];
        float end = right - _pen.Width(Across.Title, _size) - 2 * _size, x = left;
        int row = 0;
        IEnumerable<(PointShape? Shape, string Label)> named =
            [.. _chart.Bars.Select(b => ((PointShape?)null, b.Label)), .. _chart.Measured.Where(m => !m.Joined).Select(m => ((PointShape?)m.Shape, m.Label))];
        foreach ((PointShape? shape, string label) in named.Where(n => _wide && n.Label.Length > 0))
        {
            float width = Width(label) + 1.1f * _size;
            if (x + width > (row == 0 ? end : right) && (x > left || row == 0)) (x, row) = (left, row + 1);
            places.Add((shape, label, x, row));
            x += width + 1.4f * _size;
        }

        return places;
    }

    private float Width(string text) => _pen.Width(text, Letters);
}
