using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Everything around a chart's plot: titles, ticks, names of lines and the key.</summary>
internal sealed class ChartAxes(Pen pen, ChartLayout layout, ChartPlot plot, float size)
{
    private SKRect Area => plot.Area;

    private float Letters => layout.Letters;

    public void Draw()
    {
        pen.Words(layout.Up.Title, layout.Box.Left, layout.Box.Top + size, size, Shade.Ink, bold: true);
        pen.Words(layout.Across.Title, Area.Right, Area.Bottom + 2.6f * size, size, Shade.Ink, align: Align.Right);
        Across();
        Up();
        Uprights();
        Margin();
        Key();
    }

    public void Grid()
    {
        foreach (ChartTick tick in layout.Across.Ticks) pen.Line(plot.Across(tick.At), Area.Top, plot.Across(tick.At), Area.Bottom, Shade.Rule, 0.2f);
        foreach (ChartTick tick in layout.Up.Ticks) pen.Line(Area.Left, plot.Up(tick.At), Area.Right, plot.Up(tick.At), Shade.Rule, 0.2f);
        pen.Line(Area.Left, Area.Bottom, Area.Right, Area.Bottom, Shade.Ink, 0.5f);
        pen.Line(Area.Left, Area.Top, Area.Left, Area.Bottom, Shade.Ink, 0.5f);
    }

    private void Across()
    {
        float end = float.NegativeInfinity;
        foreach (ChartTick tick in layout.Across.Ticks)
        {
            float half = pen.Width(tick.Label, Letters) / 2, x = Math.Min(plot.Across(tick.At), layout.Box.Right - half);
            if (x - half < end + 0.4f * size) continue;
            pen.Words(tick.Label, x, Area.Bottom + 1.3f * size, Letters, Shade.Ink, align: Align.Middle);
            end = x + half;
        }
    }

    private void Up()
    {
        List<float> written = [];
        foreach (ChartTick tick in layout.Up.Ticks)
        {
            float y = plot.Up(tick.At);
            if (written.Exists(w => Math.Abs(w - y) < 1.15f * Letters)) continue;
            pen.Words(tick.Label, Area.Left - 0.4f * size, y + 0.33f * size, Letters, Shade.Ink, align: Align.Right);
            written.Add(y);
        }
    }

    private void Uprights()
    {
        foreach ((ChartUpright upright, int row) in layout.Uprights)
        {
            float half = pen.Width(upright.Label, Letters) / 2, at = plot.Across(upright.X);
            if (at < Area.Left - 0.5f || at > Area.Right + 0.5f) continue;
            float x = Math.Clamp(at, Math.Min(Area.Left + half, Area.MidX), Math.Max(layout.Box.Right - half, Area.MidX));
            pen.Words(upright.Label, x, Area.Top - (0.5f + 1.3f * row) * size, Letters, Shade.Ink, align: Align.Middle);
        }
    }

    // Names of lines that end close together are pushed apart and lead back to their lines.
    private void Margin()
    {
        float leading = 1.2f * Letters, floor = Area.Bottom;
        (IReadOnlyList<string> Lines, float X, float Y, Shade Colour)[] names =
            [.. layout.Margins.Select(m => (m.Lines, X: plot.Across(m.X), Y: plot.Up(m.Y), m.Colour)).Where(m => m.Y >= Area.Top - 1 && m.Y <= Area.Bottom + 1).OrderBy(m => m.Y)];
        float[] tops = [.. names.Select(n => n.Y - n.Lines.Count * leading / 2)];
        for (int k = 1; k < names.Length; k++) tops[k] = Math.Max(tops[k], tops[k - 1] + names[k - 1].Lines.Count * leading);
        for (int k = names.Length - 1; k >= 0; floor = tops[k--]) tops[k] = Math.Min(tops[k], floor - names[k].Lines.Count * leading + (k == names.Length - 1 ? leading / 2 : 0));
        foreach (((IReadOnlyList<string> lines, float x, float y, Shade colour), float top) in names.Zip(tops))
        {
            float middle = top + lines.Count * leading / 2;
            if (Math.Abs(middle - y) > 1) pen.Line(Math.Min(x + 3, Area.Right), y, Area.Right + 0.5f * size, middle, Shade.Quiet, 0.35f);
            for (int k = 0; k < lines.Count; k++)
                pen.Words(lines[k], Area.Right + 0.7f * size, top + k * leading + 0.95f * Letters, Letters, colour, bold: colour == Shade.Accent);
        }
    }

    private void Key()
    {
        foreach ((PointShape? shape, string label, float left, int row) in layout.Key)
        {
            float y = Area.Bottom + (2.6f + 1.35f * row) * size, middle = y - 0.33f * Letters;
            if (shape is { } s) ChartShapes.Point(pen, s, new SKPoint(left + 0.4f * size, middle), 0.25f * size);
            else pen.Box(new SKRect(left, middle - 0.35f * size, left + 0.8f * size, middle + 0.35f * size), Shade.Band, Shade.Quiet, 0.4f);
            pen.Words(label, left + 1.1f * size, y, Letters, Shade.Quiet);
        }
    }
}
