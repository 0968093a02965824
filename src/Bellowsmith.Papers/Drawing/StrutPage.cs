using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>One strut on one page: the section beside the questions, figures below, then what stands behind them.</summary>
internal sealed class StrutPage(Pen pen, Sheet sheet, StrutAnswers strut, Paper paper)
{
    private const float Left = PageEdges.Margin, Gap = PageEdges.Gap, Small = PageEdges.Small;

    private readonly DisplayUnits _units = sheet.Units;
    private readonly HeightCharts _charts = new(HeightSweep.Of(strut.Case), strut.Height?.Solutions ?? [], sheet.Units);

    private float Right => paper.Width - PageEdges.Margin;

    public void Draw()
    {
        float top = new PageEdges(pen, sheet, paper).Heading($"{sheet.Kit.Name}, {Names.Of(strut.Case.End)}", $"{sheet.Kit.Car.Name} · {strut.Case.Load}");
        float drawing = paper.Height > 800 ? 404 : 380, split = Left + 0.46f * (Right - Left);
        new SectionView(pen, new SKRect(Left, top, split - Gap, top + drawing)).Draw(
            text => new StrutDrawing(strut.Case, sheet.Kit.Name, _units, text).At(strut.Setting_m));
        Questions(split, top, top + drawing);
        float figures = Figures(top + drawing + Gap);
        new BehindView(pen, sheet, strut, paper).Draw(figures + 6);
    }

    private void Questions(float left, float top, float bottom)
    {
        float width = Right - left, y = Question("How high does it sit, on how much air?", left, top, width);
        Chart rate = _charts.Rate(strut.Setting_m);
        if (strut.Height is { } height)
        {
            HeightWords words = new(height, _units);
            y = pen.Paragraph(words.Answer(), left, y, width, 10, Shade.Ink, bold: true) + 2;
            foreach (string more in (string[])[words.Thread(), height.Recommended is null ? "" : words.Reason()])
                if (more.Length > 0) y = pen.Paragraph(more, left, y, width, 7.5f, Shade.Ink) + 1;
        }

        if (strut.Height?.Recommended?.Height_m != strut.Setting_m) y = pen.Paragraph(rate.Summary, left, y, width, 7.5f, Shade.Ink) + 1;
        float travel = TravelHeight(width);
        float chart = Math.Clamp(bottom - y - travel - 10, 70, 165);
        new ChartView(pen, new SKRect(left, y + 4, Right, y + 4 + chart), 6.6f, rate).Draw();
        Travel(left, y + chart + 10, width);
    }

    private float Question(string text, float left, float top, float width) => pen.Paragraph(text, left, top, width, 8, Shade.Quiet) + 1;

    private float TravelHeight(float width)
    {
        if (strut.Travel is not { } travel) return 40;
        TravelWords words = new(travel, _units);
        return 12 + pen.ParagraphHeight(words.Answer(), width, 10, bold: true) + pen.ParagraphHeight(words.Summary(), width, 7.5f) + 5
            + travel.Findings.Sum(f => pen.ParagraphHeight(Finding(f), width - 46, Small) + 2.5f);
    }

    private void Travel(float left, float top, float width)
    {
        float y = Question("How far can it move?", left, top, width);
        if (strut.Travel is not { } travel)
        {
            pen.Paragraph(
                strut.Height is { Recommended: null } ? "No installed height gives the wanted rate, so there is no drive height to move about."
                    : "Not asked: the kit does not say enough (damper lengths, springToDamper, a height or a target that yields one).",
                left, y, width, 7.5f, Shade.Ink);
            return;
        }

        TravelWords words = new(travel, _units);
        y = pen.Paragraph(words.Answer(), left, y, width, 10, Shade.Ink, bold: true);
        y = pen.Paragraph(words.Summary(), left, y, width, 7.5f, Shade.Ink) + 3;
        foreach (TravelFinding finding in travel.Findings)
        {
            string verdict = finding.Holds switch { true => "holds", false => "missed", _ => "not checked" };
            float lower = pen.ParagraphHeight(Finding(finding), width - 46, Small) + y;
            if (finding.Holds == false) pen.Box(new SKRect(left, y - 0.5f, left + pen.Width(verdict, Small, bold: true) + 6, y + 9), null, Shade.Ink, 0.8f);
            pen.Words(verdict, left + (finding.Holds == false ? 3 : 0), y + 6.6f, Small, Shade.Ink, bold: finding.Holds == false);
            pen.Paragraph(Finding(finding), left + 46, y, width - 46, Small, Shade.Ink);
            y = lower + 2.5f;
        }
    }

    private string Finding(TravelFinding finding)
    {
        string numbers = finding.Holds is null ? "" : $": {Length(finding.Value_m)}, asked {Length(finding.Limit_m)}";
        string mend = new TravelWords(strut.Travel!, _units).MendOf(finding) is { } m ? $". {m}" : "";
        return $"{TravelWords.Rule(finding.Rule)}{numbers} ({TravelWords.Source(finding.Rule)}){mend}";
    }

    private float Figures(float top)
    {
        List<Chart> shown = [_charts.GaugePressure(strut.Setting_m), _charts.RideFrequency(strut.Setting_m), _charts.EffectiveArea(strut.Setting_m)];
        if (strut.Travel is { } travel) shown.Add(new TravelFigures(travel, _units).RideHeight());
        float width = (Right - Left - (shown.Count - 1) * Gap) / shown.Count, height = paper.Height > 800 ? 100 : 90;
        for (int k = 0; k < shown.Count; k++)
            new ChartView(pen, new SKRect(Left + k * (width + Gap), top, Left + k * (width + Gap) + width, top + height), 5.8f, Shortened(shown[k])).Draw();
        return top + height;
    }

    // On a small figure settings need no words: they are the same everywhere on the page.
    internal static Chart Shortened(Chart chart) => chart with { Marks = [.. chart.Marks.Select(m => m.Kind == MarkKind.State ? m : m with { Label = "" })] };

    private string Length(double? si) => _units.Text(Dimension.Length, si);
}
