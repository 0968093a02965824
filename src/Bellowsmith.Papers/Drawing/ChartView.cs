using System.Globalization;
using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>A chart on paper: grid faint, band grey, dashed outside what was tested, words beside what they mean.</summary>
internal sealed class ChartView(Pen pen, SKRect box, float size)
{
    private readonly List<SKRect> _taken = [];
    private readonly List<SKPoint> _drawn = [];

    private SKRect Plot => new(box.Left + 3.4f * size, box.Top + 2.2f * size, box.Right - size / 2, box.Bottom - 2.9f * size);

    public void Draw(Chart chart)
    {
        Axes(chart);
        pen.Canvas.Save();
        pen.Canvas.ClipRect(Plot);
        foreach (ChartBand band in chart.Bands) Band(chart, band);
        Grid(chart);
        foreach (ChartPoints points in chart.Measured)
            foreach ((double x, double y) in points.X.Zip(points.Y))
                pen.Circle(At(chart, x, y).X, At(chart, x, y).Y, 0.45f, Pen.Quiet, null, 0);
        foreach (ChartCurve limit in chart.Limits) Curve(chart, limit.X, limit.Y, 0.6f, 3, 1.6f);
        foreach (ChartCurve curve in chart.Curves)
        {
            Curve(chart, curve.X, curve.Y, 1);
            Curve(chart, curve.X, curve.Outside, 0.9f, 2.4f, 1.8f);
        }

        pen.Canvas.Restore();
        foreach (ChartMark mark in chart.Marks.OrderByDescending(m => m.Kind)) Mark(chart, mark);
        foreach (ChartMark mark in chart.Marks.OrderBy(m => m.Kind)) Label(chart, mark);
        foreach (ChartCurve limit in chart.Limits) Label(chart, limit);
        foreach (ChartPoints points in chart.Measured)
            Write($"• {points.Label}", new SKPoint(Plot.Left + 2, Plot.Bottom - 3), Pen.Quiet, false, onlyRight: true);
    }

    private void Axes(Chart chart)
    {
        pen.Words($"{chart.Y.Title}, {chart.Y.Unit}", box.Left, box.Top + size, size, Pen.Ink, bold: true);
        pen.Words($"{chart.X.Title}, {chart.X.Unit}", Plot.Right, box.Bottom - 0.3f * size, size, Pen.Ink, align: Align.Right);
        IReadOnlyList<double> across = Ticks(chart.X, Plot.Width / (3.6f * size)), up = Ticks(chart.Y, Plot.Height / (2.4f * size));
        foreach (double tick in across)
            pen.Words(Number(tick, across), At(chart, tick, chart.Y.Low).X, Plot.Bottom + 1.3f * size, 0.9f * size, Pen.Ink, align: Align.Middle);
        foreach (double tick in up)
            pen.Words(Number(tick, up), Plot.Left - 0.4f * size, At(chart, chart.X.Low, tick).Y + 0.33f * size, 0.9f * size, Pen.Ink, align: Align.Right);
    }

    private void Grid(Chart chart)
    {
        foreach (double tick in Ticks(chart.X, Plot.Width / (3.6f * size)))
            pen.Line(At(chart, tick, 0).X, Plot.Top, At(chart, tick, 0).X, Plot.Bottom, Pen.Rule, 0.2f);
        foreach (double tick in Ticks(chart.Y, Plot.Height / (2.4f * size)))
            pen.Line(Plot.Left, At(chart, 0, tick).Y, Plot.Right, At(chart, 0, tick).Y, Pen.Rule, 0.2f);
        pen.Line(Plot.Left, Plot.Bottom, Plot.Right, Plot.Bottom, Pen.Ink, 0.5f);
        pen.Line(Plot.Left, Plot.Top, Plot.Left, Plot.Bottom, Pen.Ink, 0.5f);
    }

    private void Band(Chart chart, ChartBand band)
    {
        int[] known = [.. Enumerable.Range(0, band.X.Length).Where(k => double.IsFinite(band.Low[k]) && double.IsFinite(band.High[k]))];
        pen.Path([.. known.Select(k => At(chart, band.X[k], band.High[k])), .. known.Reverse().Select(k => At(chart, band.X[k], band.Low[k]))], true, Pen.Band, null, 0);
    }

    private void Curve(Chart chart, double[] x, double[] y, float width, params float[] dashes)
    {
        List<SKPoint> run = [];
        for (int k = 0; k <= x.Length; k++)
        {
            if (k < x.Length && double.IsFinite(y[k])) run.Add(At(chart, x[k], y[k]));
            else
            {
                pen.Path(run.ToArray(), false, null, Pen.Ink, width, dashes);
                for (int p = 1; p < run.Count; p++)
                    for (float share = 0; share < 1; share += 0.25f)
                        _drawn.Add(new(run[p - 1].X + share * (run[p].X - run[p - 1].X), run[p - 1].Y + share * (run[p].Y - run[p - 1].Y)));
                run.Clear();
            }
        }
    }

    private void Mark(Chart chart, ChartMark mark)
    {
        SKPoint at = At(chart, mark.X, mark.Y);
        if (!Inside(at)) return;
        if (mark.Kind == MarkKind.Setting)
        {
            pen.Line(at.X, at.Y, at.X, Plot.Bottom, Pen.Accent, 0.6f);
            pen.Circle(at.X, at.Y, 2.4f, Pen.Accent, Pen.Paper, 0.6f);
        }
        else pen.Circle(at.X, at.Y, mark.Kind == MarkKind.State ? 1.5f : 2, Pen.Paper, Pen.Ink, 0.8f);
        if (mark.Kind == MarkKind.OverLimit) pen.Line(at.X - 3, at.Y + 3, at.X + 3, at.Y - 3, Pen.Ink, 0.8f);
        _taken.Add(new SKRect(at.X - 3, at.Y - 3, at.X + 3, at.Y + 3));
    }

    private void Label(Chart chart, ChartMark mark)
    {
        SKPoint at = At(chart, mark.X, mark.Y);
        if (Inside(at) && mark.Label.Length > 0) Write(mark.Label, at, mark.Kind == MarkKind.Setting ? Pen.Accent : Pen.Ink, mark.Kind == MarkKind.Setting);
    }

    private void Label(Chart chart, ChartCurve limit)
    {
        int last = Array.FindLastIndex(limit.Y, double.IsFinite);
        if (last < 0) return;
        SKPoint at = At(chart, limit.X[last], limit.Y[last]);
        if (Inside(at)) Write(limit.Label, new SKPoint(Plot.Right, at.Y), Pen.Ink, false);
    }

    // Around a place, near before far: where least is in the way.
    private void Write(string words, SKPoint at, SKColor colour, bool bold, bool onlyRight = false)
    {
        float letters = 0.95f * size, width = pen.Width(words, letters, bold), gap = 4;
        List<SKRect> places = [];
        foreach (float step in (ReadOnlySpan<float>)[0, 1.2f, 2.4f, 3.6f])
            foreach (int up in (ReadOnlySpan<int>)[1, -1])
                foreach (int side in onlyRight ? (ReadOnlySpan<int>)[1] : [1, -1, 0])
                {
                    float left = side == 0 ? Math.Clamp(at.X - width / 2, Plot.Left + 1, Math.Max(Plot.Left + 1, Plot.Right - width)) : side > 0 ? at.X + gap : at.X - gap - width;
                    float middle = at.Y - up * (gap + letters / 2 + step * letters);
                    places.Add(new SKRect(left, middle - 0.55f * letters, left + width, middle + 0.55f * letters));
                }

        SKRect place = places.MinBy(Crowding);
        _taken.Add(place);
        pen.Box(place, Pen.Paper.WithAlpha(0xd0), null, 0);
        pen.Words(words, place.Left, place.MidY + 0.36f * letters, letters, colour, bold);
    }

    private float Crowding(SKRect place) => 1000 * _taken.Count(t => t.IntersectsWith(place))
        + (Inside(new(place.Left, place.Top)) && Inside(new(place.Right, place.Bottom)) ? 0 : 500)
        + _drawn.Count(p => place.Contains(p));

    private SKPoint At(Chart chart, double x, double y) => new(
        Plot.Left + (float)((x - chart.X.Low) / (chart.X.High - chart.X.Low)) * Plot.Width,
        Plot.Bottom - (float)((y - chart.Y.Low) / (chart.Y.High - chart.Y.Low)) * Plot.Height);

    private bool Inside(SKPoint p) => p.X >= Plot.Left - 0.5f && p.X <= Plot.Right + 0.5f && p.Y >= Plot.Top - 0.5f && p.Y <= Plot.Bottom + 0.5f;

    private static IReadOnlyList<double> Ticks(ChartAxis axis, float most) => axis.Ticks(Math.Max(2, (int)most));

    // As many decimals as the ticks differ by.
    private static string Number(double tick, IReadOnlyList<double> ticks)
    {
        double step = ticks.Count > 1 ? ticks[1] - ticks[0] : 1;
        int decimals = Math.Clamp((int)Math.Ceiling(-Math.Log10(step) - 1e-9), 0, 6);
        if (Math.Abs(Math.Round(step, decimals) - step) > 1e-9) decimals++;
        return tick.ToString("F" + decimals, CultureInfo.InvariantCulture).Replace('-', '−');
    }
}
