using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Words beside what they mean: near before far, where least is in the way, never over other words.</summary>
internal sealed class ChartLabels(Pen pen, ChartPlot plot, SKRect box, float letters)
{
    private const float Gap = 4, Overlap = 1000, Outside = 500;
    private static readonly float[] _steps = [0, 1.2f, 2.4f, 3.6f, 5, 6.5f];

    private readonly List<SKRect> _taken = [];
    private readonly List<SKPoint> _drawn = [];

    /// <summary>Labels that found no place.</summary>
    public int Unplaced { get; private set; }

    public void Avoid(SKRect taken) => _taken.Add(taken);

    /// <summary>Keeps words off a line where there is room beside it.</summary>
    public void Avoid(ReadOnlySpan<SKPoint> line)
    {
        for (int p = 1; p < line.Length; p++)
        {
            float parts = Math.Clamp(SKPoint.Distance(line[p - 1], line[p]) / letters * 2, 1, 200);
            for (int k = 0; k < parts; k++) _drawn.Add(line[p - 1] + new SKPoint((line[p].X - line[p - 1].X) * k / parts, (line[p].Y - line[p - 1].Y) * k / parts));
        }
    }

    /// <param name="words">What to write.</param>
    /// <param name="at">What it is about.</param>
    /// <param name="colour">Its colour.</param>
    /// <param name="bold">Stronger letters.</param>
    /// <param name="sides">Right 1, left −1, above or below 0, the preferred one first.</param>
    public void Write(string words, SKPoint at, Shade colour, bool bold, params ReadOnlySpan<int> sides)
    {
        if (words.Length == 0) return;
        words = Shortened(words, bold);
        float width = pen.Width(words, letters, bold);
        (SKRect Box, float Step)[] places = [.. Places(at, width, [.. sides])];
        (SKRect place, float step) = places.MinBy(p => Crowding(p.Box) + p.Step / 4);
        if (Crowding(place) >= Overlap)
        {
            Unplaced++;
            return;
        }

        _taken.Add(place);
        if (step > 2.5f) Leader(at, place);
        pen.Box(place, Shade.Paper, null, 0);
        pen.Words(words, place.Left, place.MidY + 0.36f * letters, letters, colour, bold);
    }

    /// <summary>Words on what they name, at the first of its places where they stand clear; nowhere where there is none.</summary>
    public void On(string words, IEnumerable<SKPoint> places, Shade colour)
    {
        float half = pen.Width(words, letters) / 2 + 1;
        SKRect? found = places.Select(p => (SKRect?)new SKRect(p.X - half, p.Y - 0.6f * letters, p.X + half, p.Y + 0.6f * letters)).FirstOrDefault(r => plot.Holds(r!.Value) && IsClear(r.Value));
        if (found is not { } place) return;
        _taken.Add(place);
        pen.Box(place, Shade.Paper, null, 0);
        pen.Words(words, place.MidX, place.MidY + 0.36f * letters, letters, colour, align: Align.Middle);
    }

    public bool IsClear(SKRect place) => !_taken.Exists(t => t.IntersectsWith(place));

    private IEnumerable<(SKRect, float)> Places(SKPoint at, float width, int[] sides) =>
        from step in _steps
        from up in (int[])[1, -1]
        from side in sides
        let left = side == 0 ? Math.Clamp(at.X - width / 2, plot.Area.Left + 1, Math.Max(plot.Area.Left + 1, plot.Area.Right - width)) : side > 0 ? at.X + Gap : at.X - Gap - width
        let middle = at.Y - up * (Gap + letters / 2 + step * letters)
        select (new SKRect(left, middle - 0.55f * letters, left + width, middle + 0.55f * letters), step);

    private void Leader(SKPoint at, SKRect place) => pen.Line(
        at.X, at.Y, Math.Clamp(at.X, place.Left, place.Right), Math.Clamp(at.Y, place.Top, place.Bottom), Shade.Quiet, 0.35f);

    private float Crowding(SKRect place) => Overlap * (_taken.Count(t => t.IntersectsWith(place)) + (box.Contains(place) ? 0 : 1))
        + (plot.Holds(place) ? 0 : Outside) + _drawn.Count(p => place.Contains(p));

    private string Shortened(string words, bool bold)
    {
        while (words.Length > 2 && pen.Width(words, letters, bold) > plot.Area.Width - 2) words = words[..^2].TrimEnd() + "…";
        return words;
    }
}
