using System.Globalization;
using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>A map of settings on paper: ink in steps, darker for more; lines with their number; infeasible cells hatched and named.</summary>
internal sealed class SettingMapView
{
    private const float Darkest = 0.34f, HatchApart = 5.2f, Legend = 1.45f, LeastRun = 5;

    private readonly Pen _pen;
    private readonly SettingMap _map;
    private readonly ChartLayout _layout;
    private readonly ChartPlot _plot;
    private readonly ChartLabels _labels;
    private readonly SKRect _box;
    private readonly float _size;
    private readonly float[] _across, _up;

    public SettingMapView(Pen pen, SKRect box, float size, SettingMap map)
    {
        (_pen, _map, _size) = (pen, map, size);
        _box = box with { Bottom = box.Bottom - Legend * size * (1 + map.Reasons.Count) };
        Chart axes = new() { Id = "settings", Title = map.Title, Summary = map.Summary, X = map.X.Axis, Y = map.Y.Axis };
        _layout = new ChartLayout(pen, _box, size, axes);
        _plot = new ChartPlot(axes, _layout.Plot);
        _labels = new ChartLabels(pen, _plot, _box, 0.95f * size);
        (_across, _up) = (Array.ConvertAll(map.X.Edges, _plot.Across), Array.ConvertAll(map.Y.Edges, _plot.Up));
    }

    public void Draw()
    {
        Steps();
        Hatch();
        List<(SKPoint[] Line, string Words)> lines = [.. _map.Levels.SelectMany(level => _map.Lines(level).Select(line => (Array.ConvertAll(line, p => _plot.At(p.X, p.Y)), _map.Level(level))))];
        foreach ((SKPoint[] line, _) in lines) _pen.Path(line, false, null, Shade.Ink, 0.7f);
        _pen.Box(_plot.Area, null, Shade.Ink, 0.5f);
        new ChartAxes(_pen, _layout, _plot, _size).Draw();
        Marks();
        Words();
        foreach ((SKPoint[] line, string words) in lines.OrderByDescending(l => l.Line.Length))
            if (Length(line) > LeastRun * _size) _labels.On(words, Middle(line), Shade.Ink);
        if (!_map.HasLines) Numbers();
        Key();
    }

    // Runs of one darkness in a row are one box.
    private void Steps()
    {
        foreach (var step in Runs().GroupBy(r => r.Darkness).OrderBy(g => g.Key)) _pen.Wash([.. step.Select(r => r.Box)], Darkest * (float)step.Key);
    }

    private IEnumerable<(double Darkness, SKRect Box)> Runs()
    {
        for (int row = 0; row < _map.Y.Count; row++)
            for (int column = 0, end; column < _map.X.Count; column = end)
            {
                double? darkness = Darkness(column, row);
                end = column + 1;
                while (end < _map.X.Count && Darkness(end, row) == darkness) end++;
                if (darkness is > 0) yield return (darkness.Value, new SKRect(_across[column], _up[row + 1], _across[end], _up[row]));
            }
    }

    private double? Darkness(int column, int row) => _map.Values[row * _map.X.Count + column] is var value && float.IsNaN(value) ? null : _map.Darkness(value);

    private void Hatch()
    {
        Dictionary<int, MapReason> reasons = _map.Reasons.SelectMany(r => r.Cells.Select(cell => (cell, r))).ToDictionary();
        foreach ((SKPoint from, SKPoint to) in new Hatching(_across, _up, (column, row) => reasons.ContainsKey(row * _map.X.Count + column)).Lines(HatchApart))
            _pen.Line(from.X, from.Y, to.X, to.Y, Shade.Quiet, 0.3f);
        for (int cell = 0; cell < _map.Values.Length; cell++) Edges(cell, reasons);
    }

    // Where one reason ends.
    private void Edges(int cell, Dictionary<int, MapReason> reasons)
    {
        (int column, int row) = (cell % _map.X.Count, cell / _map.X.Count);
        MapReason? reason = reasons.GetValueOrDefault(cell);
        if (column > 0 && reasons.GetValueOrDefault(cell - 1) != reason) _pen.Line(_across[column], _up[row], _across[column], _up[row + 1], Shade.Quiet, 0.5f);
        if (row > 0 && reasons.GetValueOrDefault(cell - _map.X.Count) != reason) _pen.Line(_across[column], _up[row], _across[column + 1], _up[row], Shade.Quiet, 0.5f);
    }

    private void Marks()
    {
        if (_map.Least is { } least) Mark(least, p => _pen.Circle(p.X, p.Y, 2.8f, null, Shade.Ink, 1.1f));
        if (_map.Here is { } here) Mark(here, p => ChartShapes.Mark(_pen, MarkKind.Setting, p));
        if (_map.Here is { } set) _labels.Write(set.Label, _plot.At(set.X, set.Y), Shade.Accent, true, 1, -1, 0);
        if (_map.Least is { } best) _labels.Write(best.Label, _plot.At(best.X, best.Y), Shade.Ink, false, 1, -1, 0);
    }

    private void Mark(MapPoint point, Action<SKPoint> draw)
    {
        SKPoint at = _plot.At(point.X, point.Y);
        draw(at);
        _labels.Avoid(new SKRect(at.X - ChartShapes.MarkReach, at.Y - ChartShapes.MarkReach, at.X + ChartShapes.MarkReach, at.Y + ChartShapes.MarkReach));
    }

    // Each reason as near the middle of its patches as there is room.
    private void Words()
    {
        foreach ((string word, int[] patch) in _map.Reasons.SelectMany(r => r.Patches(_map.X.Count).Select(patch => (r.Word, patch))))
        {
            SKPoint[] cells = Array.ConvertAll(patch, Centre);
            SKPoint middle = new(cells.Average(c => c.X), cells.Average(c => c.Y));
            _labels.On(word, cells.OrderBy(c => SKPoint.Distance(c, middle)), Shade.Ink);
        }
    }

    // Between choices no line leads: each cell says its own number where that fits.
    private void Numbers()
    {
        for (int cell = 0; cell < _map.Values.Length; cell++)
        {
            if (float.IsNaN(_map.Values[cell])) continue;
            string words = Math.Abs(_map.Values[cell]) < 10 ? Number(_map.Values[cell]) : Number(_map.Values[cell], less: 1);
            (int column, int row) = (cell % _map.X.Count, cell / _map.X.Count);
            SKPoint at = Centre(cell);
            float half = _pen.Width(words, _layout.Letters) / 2 + 1;
            SKRect room = new(at.X - half, at.Y - 0.55f * _size, at.X + half, at.Y + 0.55f * _size);
            if (room.Width > _across[column + 1] - _across[column] || room.Height > _up[row] - _up[row + 1] || !_labels.IsClear(room)) continue;
            _pen.Words(words, at.X, at.Y + 0.33f * _size, _layout.Letters, Shade.Ink, align: Align.Middle);
        }
    }

    private void Key()
    {
        float y = _box.Bottom + Legend * _size;
        _pen.Words(_map.HasLines ? $"Lines and shade: {_map.Shown}, darker for more." : $"Numbers and shade: {_map.Shown}, darker for more.", _plot.Area.Left, y, _layout.Letters, Shade.Quiet);
        foreach (MapReason reason in _map.Reasons)
            _pen.Words(reason.Sentence, _plot.Area.Left, y += Legend * _size, _layout.Letters, Shade.Quiet);
    }

    private SKPoint Centre(int cell)
    {
        (int column, int row) = (cell % _map.X.Count, cell / _map.X.Count);
        return new((_across[column] + _across[column + 1]) / 2, (_up[row] + _up[row + 1]) / 2);
    }

    // From the middle of a line outward to its ends.
    private static IEnumerable<SKPoint> Middle(SKPoint[] line)
    {
        for (int k = 0; k < line.Length; k++) yield return line[Math.Clamp(line.Length / 2 + (k % 2 == 0 ? k / 2 : -(k + 1) / 2), 0, line.Length - 1)];
    }

    private static float Length(SKPoint[] line) => line.Zip(line.Skip(1), SKPoint.Distance).Sum();

    private string Number(double value, int less = 0) => Fixed(value, Math.Max(0, _map.Decimals - less));

    private static string Fixed(double value, int decimals) => value.ToString("F" + decimals, CultureInfo.InvariantCulture).Replace('-', '−');
}
