using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Units;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>A strut on its car, one page: the corner where it has least room, what touches, what lowering did, whether the mounts hold.</summary>
internal sealed class CornerPage(Pen pen, Sheet sheet, CornerAnswers corner, Paper paper)
{
    private const float Left = PageEdges.Margin, Gap = PageEdges.Gap, Small = PageEdges.Small, ViewsHeight = 176, ChartsHeight = 92, AnswerSize = 8.5f, MoreSize = 6.8f, Row = 8.4f;

    // Of what is asked.
    private const string Short = "< ";

    private readonly DisplayUnits _units = sheet.Units;
    private readonly PageEdges _edges = new(pen, sheet, paper);
    private readonly ClearanceWords _touch = new(corner.Clearance, sheet.Units);

    private float Right => paper.Width - PageEdges.Margin;

    private float Column => (Right - Left - Gap) / 2;

    public void Draw()
    {
        ClearanceCase asked = corner.Clearance.Case;
        float top = _edges.Heading($"{sheet.Kit.Name}, {Names.Of(asked.End)} on the car", $"{sheet.Kit.Car.Name} · {WheelText.Of(asked.Corner.MeasuredWheel)} · {asked.Corner.Load.Name}"), bottom = _edges.Foot() - 4;
        top = Views(top) + 6;
        top = Math.Max(Questions(Left, top, Column, [.. Touch(), .. TopMount()]), Questions(Left + Column + Gap, top, Column, [.. Lowering(), .. LowerMount()])) + 4;
        top = Charts(top) + 4;
        top = Pairs(top, bottom) + 5;
        Notes(top, bottom);
    }

    private float Views(float top)
    {
        if (corner.Clearance.Pairs is not [var worst, ..] || ClearanceLook.Of(corner.Clearance, worst.Travel_m, worst.Rack_m) is not { } look) return top;
        CornerScene scene = CornerScene.Touching(corner.Clearance, look);
        float lower = new CarViewsView(pen, new SKRect(Left, top, Right, top + ViewsHeight)).Draw(text => [.. new CornerViews(scene, _units, text).All()]);
        return pen.Paragraph($"Shown at {_touch.Place(worst.Travel_m, worst.Rack_m)}, where the least room is left.", Left, lower + 1, Right - Left, Small, Shade.Quiet);
    }

    private IEnumerable<(string Question, string Answer, IReadOnlyList<string> More)> Touch()
    {
        string[] findings = [.. corner.Clearance.Findings.Where(finding => finding.Holds == false).Select(finding => $"Missed{(finding.CanBeWaived ? "" : ", never waived")}: {_touch.Finding(finding)}.")];
        string[] ground = corner.Clearance.Ground.Count > 0 ? [$"Ground: {_touch.GroundHeights()}."] : [];
        string[] loads = [.. corner.Clearance.Loads.Select(load => $"{load.Load}: {_touch.Load(load)}.")];
        yield return ("Does anything touch?", _touch.Answer(), [.. _touch.Camber() is { } camber ? [camber] : Array.Empty<string>(), .. findings, .. loads, .. ground]);
    }

    private IEnumerable<(string Question, string Answer, IReadOnlyList<string> More)> Lowering()
    {
        if (corner.Lowering is not { } lowered) yield break;
        LoweringWords words = new(lowered, _units);
        yield return ("What does the geometry do?", words.Answer(), [.. words.Mends().Select(words.Mend)]);
    }

    private IEnumerable<(string Question, string Answer, IReadOnlyList<string> More)> TopMount()
    {
        if (corner.Mount is { } mount && new MountWords(mount, _units) is var top) yield return ("Does the top mount last?", top.Answer(),
            [.. mount.Findings.Where(finding => finding.Holds == false).Select(finding => Missed(MountWords.Rule(finding.Rule), top.Numbers(finding), top.Mend(finding)))]);
    }

    private IEnumerable<(string Question, string Answer, IReadOnlyList<string> More)> LowerMount()
    {
        if (corner.LowerMount is { } lower && new LowerMountWords(lower, _units) is var foot) yield return ("Does the lower mount fit and hold?", foot.Answer(),
            [.. lower.Findings.Where(finding => finding.Holds == false).Select(finding => Missed(LowerMountWords.Rule(finding.Rule), foot.Numbers(finding), foot.MendOf(finding)))]);
    }

    private static string Missed(string rule, string numbers, string? mend) => $"Missed: {rule}{(numbers.Length > 0 ? $", {numbers}" : "")}. {mend}";

    private float Questions(float left, float top, float width, IEnumerable<(string Question, string Answer, IReadOnlyList<string> More)> all)
    {
        foreach ((string question, string answer, IReadOnlyList<string> more) in all)
        {
            top = pen.Paragraph(question, left, top, width, 8, Shade.Quiet) + 1;
            top = pen.Paragraph(answer, left, top, width, AnswerSize, Shade.Ink, bold: true) + 1;
            foreach (string line in more.Where(line => line.Length > 0)) top = pen.Paragraph(line, left, top, width, MoreSize, Shade.Ink) + 0.5f;
            top += 4;
        }

        return top;
    }

    private float Charts(float top)
    {
        if (corner.Lowering is not { } lowered) return top;
        IReadOnlyList<Chart> charts = new LinkageCharts(lowered, _units).All();
        float width = (Right - Left - (charts.Count - 1) * Gap) / charts.Count;
        for (int k = 0; k < charts.Count; k++)
            new ChartView(pen, new SKRect(Left + k * (width + Gap), top, Left + k * (width + Gap) + width, top + ChartsHeight), 5.8f, StrutPage.Shortened(charts[k])).Draw();
        return top + ChartsHeight;
    }

    // The one with the least room first, down one column and on in the next, as many as there is room for.
    private float Pairs(float top, float bottom)
    {
        string[] head = [$"pair, {_units.Symbol(Dimension.Length)}", "gap", "asked", "where"];
        string[][] rows = [.. corner.Clearance.Pairs.Select(pair => (string[])
            [ClearanceWords.Name(pair.Pair), _units.Number(Dimension.Length, pair.Gap.Distance_m), $"{(pair.Holds ? "" : Short)}{_units.Number(Dimension.Length, pair.Margin_m)}", _touch.Place(pair.Travel_m, pair.Rack_m)])];
        int half = Math.Clamp((int)((bottom - top) / Row) - 1, 0, (rows.Length + 1) / 2), shown = Math.Min(2 * half, rows.Length);
        float[] edges = [0.3f, 0.38f, 0.47f, 1];
        return Math.Max(
            _edges.Table(Left, top, Column, edges, head, rows[..half], Misses, namesFirst: true),
            _edges.Table(Left + Column + Gap, top, Column, edges, head, rows[half..shown], Misses, namesFirst: true));

        static bool Misses(string[] row) => row[^2].StartsWith(Short, StringComparison.Ordinal);
    }

    private void Notes(float top, float bottom)
    {
        foreach (Note note in _touch.Notes())
        {
            string text = $"{note.About}: {note.Text}";
            if (top + pen.ParagraphHeight(text, Right - Left, Small) > bottom) return;
            top = pen.Paragraph(text, Left, top, Right - Left, Small, Shade.Ink, leading: 1.25f) + 1;
        }
    }
}
