using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>A chart on paper: grid faint, band grey, dashed outside what was tested, words beside what they mean.</summary>
internal sealed class ChartView
{
    private readonly Pen _pen;
    private readonly Chart _chart;
    private readonly ChartLayout _layout;
    private readonly ChartPlot _plot;
    private readonly ChartLabels _labels;
    private readonly float _size;

    /// <param name="pen">What draws.</param>
    /// <param name="box">Where.</param>
    /// <param name="size">Height of its letters.</param>
    /// <param name="chart">What.</param>
    public ChartView(Pen pen, SKRect box, float size, Chart chart)
    {
        (_pen, _chart, _size) = (pen, chart, size);
        _layout = new ChartLayout(pen, box, size, chart);
        _plot = new ChartPlot(chart, _layout.Plot);
        _labels = new ChartLabels(pen, _plot, box, 0.95f * size);
    }

    private SKRect Area => _plot.Area;

    public void Draw()
    {
        new ChartAxes(_pen, _layout, _plot, _size).Draw();
        _pen.Clipped(Area, Data);
        foreach (ChartInterval interval in _chart.Intervals) Interval(interval);
        ChartMark[] marks = [.. _chart.Marks.Where(m => double.IsFinite(m.X) && double.IsFinite(m.Y) && _plot.Holds(_plot.At(m.X, m.Y)))];
        foreach (ChartMark mark in marks.OrderByDescending(m => m.Kind)) Mark(mark);
        foreach (ChartMark mark in marks.OrderBy(m => m.Kind))
            _labels.Write(mark.Label, _plot.At(mark.X, mark.Y), ChartShapes.Colour(mark.Kind), mark.Kind == MarkKind.Setting, 1, -1, 0);
        foreach (ChartInterval interval in _chart.Intervals.Where(i => double.IsFinite(i.X) && double.IsFinite(i.Y)))
            _labels.Write(interval.Label, Top(interval), ChartShapes.Colour(interval.Kind), false, 0, 1, -1);
        foreach ((string label, SKPoint at, Shade colour) in _layout.Inside(_plot)) _labels.Write(label, at, colour, colour == Shade.Accent, 1, -1, 0);
        foreach (ChartPoints points in _layout.Keyed)
            _labels.Write($"• {points.Label}", new SKPoint(Area.Left + 2, Area.Bottom - 3), Shade.Quiet, false, 1);
        if (_labels.Unplaced > 0) _layout.Note($"{_labels.Unplaced} more without room for their words");
    }

    private void Data()
    {
        foreach (ChartBand zone in _chart.Zones) Band(zone, Shade.Faint);
        foreach (ChartBand band in _chart.Bands) Band(band, Shade.Band);
        foreach (ChartBars bars in _chart.Bars) Bars(bars);
        new ChartAxes(_pen, _layout, _plot, _size).Grid();
        foreach (ChartUpright upright in _chart.Uprights) Upright(upright);
        foreach (ChartCurve limit in _chart.Limits) Curve(limit.X, limit.Y, 0.6f, Shade.Ink, 3, 1.6f);
        foreach (ChartCurve centre in _chart.Centres) Curve(centre.X, centre.Y, 0.5f, Shade.Ink);
        foreach (ChartCurve curve in _chart.Curves)
        {
            (float width, Shade shade) = ChartShapes.Stroke(curve.Kind);
            Curve(curve.X, curve.Y, width, shade);
            Curve(curve.X, curve.Outside, 0.9f * width, shade, 2.4f, 1.8f);
        }

        foreach (ChartPoints points in _chart.Measured) Points(points);
    }

    private void Band(ChartBand band, Shade shade)
    {
        int[] known = [.. Enumerable.Range(0, band.X.Length).Where(k => double.IsFinite(band.X[k]) && double.IsFinite(band.Low[k]) && double.IsFinite(band.High[k]))];
        _pen.Path([.. known.Select(k => _plot.At(band.X[k], band.High[k])), .. known.Reverse().Select(k => _plot.At(band.X[k], band.Low[k]))], true, shade, null, 0);
    }

    private void Bars(ChartBars bars)
    {
        for (int k = 0; k < bars.Heights.Length; k++)
        {
            if (!double.IsFinite(bars.Heights[k]) || bars.Heights[k] <= _chart.Y.Low) continue;
            SKPoint from = _plot.At(bars.Edges[k], bars.Heights[k]);
            SKRect bar = new(from.X, from.Y, _plot.Across(bars.Edges[k + 1]), Area.Bottom);
            if (bars.IsOutside) _pen.Path([new(bar.Left, bar.Bottom), from, new(bar.Right, bar.Top), new(bar.Right, bar.Bottom)], false, null, Shade.Quiet, 0.5f, 1.6f, 1.2f);
            else _pen.Box(bar, Shade.Band, Shade.Quiet, 0.4f);
        }
    }

    private void Upright(ChartUpright upright)
    {
        if (!double.IsFinite(upright.X)) return;
        float x = _plot.Across(upright.X), width = upright.Kind == UprightKind.Centre ? 0.5f : 0.6f;
        float[] dashes = upright.Kind switch { UprightKind.Phase => [7, 1.6f, 1.2f, 1.6f], UprightKind.Limit => [3, 1.6f], _ => [] };
        _pen.Line(x, Area.Top, x, Area.Bottom, Shade.Ink, width, dashes);
        _labels.Avoid([new SKPoint(x, Area.Top), new SKPoint(x, Area.Bottom)]);
    }

    private void Curve(double[] x, double[] y, float width, Shade shade, params ReadOnlySpan<float> dashes)
    {
        foreach (SKPoint[] run in _plot.Runs(x, y))
        {
            _pen.Path(run, false, null, shade, width, dashes);
            _labels.Avoid(run);
        }
    }

    private void Points(ChartPoints points)
    {
        foreach (SKPoint[] run in points.Joined ? _plot.Runs(points.X, points.Y) : [])
        {
            _pen.Path(run, false, null, Shade.Quiet, 0.45f);
            _labels.Avoid(run);
        }

        if (points.Joined && points.X.Length > 2 * Area.Width) return;
        float radius = Math.Clamp(Area.Width / points.X.Length / 2.5f, 0.45f, 0.2f * _size);
        HashSet<(int, int)> places = [];
        foreach ((double x, double y) in points.X.Zip(points.Y))
        {
            if (!double.IsFinite(x) || !double.IsFinite(y)) continue;
            SKPoint at = _plot.At(x, y);
            if (!places.Add(((int)(4 * at.X), (int)(4 * at.Y)))) continue;
            ChartShapes.Point(_pen, points.Shape, at, radius);
            if (!points.Joined) _labels.Avoid([at, at]);
        }
    }

    private void Interval(ChartInterval interval)
    {
        if (!double.IsFinite(interval.X) || !double.IsFinite(interval.Y)) return;
        const float Cap = 2.2f;
        Shade colour = ChartShapes.Colour(interval.Kind);
        SKPoint at = _plot.At(interval.X, interval.Y);
        if (double.IsFinite(interval.Low) && double.IsFinite(interval.High))
        {
            float low = Math.Min(_plot.Up(interval.Low), Area.Bottom), high = Math.Max(_plot.Up(interval.High), Area.Top);
            _pen.Line(at.X, low, at.X, high, colour, 0.8f);
            foreach (float end in (ReadOnlySpan<float>)[low, high]) _pen.Line(at.X - Cap, end, at.X + Cap, end, colour, 0.8f);
            _labels.Avoid(new SKRect(at.X - Cap, high, at.X + Cap, low));
        }

        if (!_plot.Holds(at)) return;
        ChartShapes.Mark(_pen, interval.Kind, at);
        Covers(at);
    }

    private SKPoint Top(ChartInterval interval) =>
        new(_plot.Across(interval.X), Math.Max(Area.Top, _plot.Up(double.IsFinite(interval.High) ? interval.High : interval.Y)));

    private void Mark(ChartMark mark)
    {
        SKPoint at = _plot.At(mark.X, mark.Y);
        if (mark.Kind == MarkKind.Setting)
        {
            _pen.Line(at.X, at.Y, at.X, Area.Bottom, Shade.Accent, 0.6f);
            _labels.Avoid([at, new SKPoint(at.X, Area.Bottom)]);
        }

        ChartShapes.Mark(_pen, mark.Kind, at);
        Covers(at);
    }

    private void Covers(SKPoint at) => _labels.Avoid(new SKRect(
        at.X - ChartShapes.MarkReach, at.Y - ChartShapes.MarkReach, at.X + ChartShapes.MarkReach, at.Y + ChartShapes.MarkReach));
}
