using System.Globalization;
using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>One strut on one page: the section beside the questions, figures below, then what stands behind them.</summary>
internal sealed class StrutPage(Pen pen, Sheet sheet, StrutAnswers strut, Paper paper)
{
    private const float Margin = 34, Left = Margin, Gap = 12, Small = 6.2f, LeastSize = 5;

    private readonly DisplayUnits _units = sheet.Units;

    private float Right => paper.Width - Margin;

    public void Draw()
    {
        float top = Heading();
        float drawing = paper.Height > 800 ? 404 : 380, split = Left + 0.46f * (Right - Left);
        new SectionView(pen, new SKRect(Left, top, split - Gap, top + drawing)).Draw(
            text => new StrutDrawing(strut.Case, sheet.Kit.Name, _units, text).At(strut.Setting_m));
        Questions(split, top, top + drawing);
        float figures = Figures(top + drawing + Gap);
        float foot = Foot();
        Behind(figures + 6, foot - 4);
    }

    private float Heading()
    {
        pen.Words($"{sheet.Kit.Name}, {Names.Of(strut.Case.End)}", Left, Margin + 12, 16, Pen.Ink, bold: true);
        pen.Words($"{sheet.Kit.Car.Name} · {strut.Case.Load}", Left, Margin + 24, 7.5f, Pen.Quiet);
        pen.Words(sheet.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Right, Margin + 12, 9, Pen.Ink, align: Align.Right);
        pen.Words($"Bellowsmith {sheet.Version}", Right, Margin + 24, 7.5f, Pen.Quiet, align: Align.Right);
        pen.Line(Left, Margin + 29, Right, Margin + 29, Pen.Ink, 0.8f);
        return Margin + 29 + Gap;
    }

    private void Questions(float left, float top, float bottom)
    {
        float width = Right - left, y = Question("How high does it sit, on how much air?", left, top, width);
        HeightSweep sweep = HeightSweep.Of(strut.Case);
        Chart rate = new HeightCharts(sweep, strut.Height?.Solutions ?? [], _units).Rate(strut.Setting_m);
        if (strut.Height is { } height)
        {
            HeightWords words = new(height, _units);
            y = pen.Paragraph(words.Answer(), left, y, width, 10, Pen.Ink, bold: true) + 2;
            foreach (string more in (string[])[words.Thread(), height.Recommended is null ? "" : words.Reason()])
                if (more.Length > 0) y = pen.Paragraph(more, left, y, width, 7.5f, Pen.Ink) + 1;
        }

        if (strut.Height?.Recommended?.Height_m != strut.Setting_m) y = pen.Paragraph(rate.Summary, left, y, width, 7.5f, Pen.Ink) + 1;
        float travel = TravelHeight(width);
        float chart = Math.Clamp(bottom - y - travel - 10, 70, 165);
        new ChartView(pen, new SKRect(left, y + 4, Right, y + 4 + chart), 6.6f).Draw(rate);
        Travel(left, y + chart + 10, width);
    }

    private float Question(string text, float left, float top, float width) => pen.Paragraph(text, left, top, width, 8, Pen.Quiet) + 1;

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
                left, y, width, 7.5f, Pen.Ink);
            return;
        }

        TravelWords words = new(travel, _units);
        y = pen.Paragraph(words.Answer(), left, y, width, 10, Pen.Ink, bold: true);
        y = pen.Paragraph(words.Summary(), left, y, width, 7.5f, Pen.Ink) + 3;
        foreach (TravelFinding finding in travel.Findings)
        {
            string verdict = finding.Holds switch { true => "holds", false => "missed", _ => "not checked" };
            float lower = pen.ParagraphHeight(Finding(finding), width - 46, Small) + y;
            if (finding.Holds == false) pen.Box(new SKRect(left, y - 0.5f, left + pen.Width(verdict, Small, bold: true) + 6, y + 9), null, Pen.Ink, 0.8f);
            pen.Words(verdict, left + (finding.Holds == false ? 3 : 0), y + 6.6f, Small, Pen.Ink, bold: finding.Holds == false);
            pen.Paragraph(Finding(finding), left + 46, y, width - 46, Small, Pen.Ink);
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
        HeightCharts charts = new(HeightSweep.Of(strut.Case), strut.Height?.Solutions ?? [], _units);
        List<Chart> shown = [charts.GaugePressure(strut.Setting_m), charts.RideFrequency(strut.Setting_m), charts.EffectiveArea(strut.Setting_m)];
        if (strut.Travel is { } travel) shown.Add(new TravelFigures(travel, _units).RideHeight());
        float width = (Right - Left - (shown.Count - 1) * Gap) / shown.Count, height = paper.Height > 800 ? 100 : 90;
        for (int k = 0; k < shown.Count; k++)
            new ChartView(pen, new SKRect(Left + k * (width + Gap), top, Left + k * (width + Gap) + width, top + height), 5.8f).Draw(Shortened(shown[k]));
        return top + height;
    }

    // On a small figure settings need no words: they are the same everywhere on the page.
    private static Chart Shortened(Chart chart) => chart with { Marks = [.. chart.Marks.Select(m => m.Kind == MarkKind.State ? m : m with { Label = "" })] };

    private void Behind(float top, float bottom)
    {
        float column = (Right - Left - Gap) / 2, right = Left + column + Gap;
        float y = strut.Travel is { } travel ? States(travel, Left, top, column) : top;
        float z = strut.Height is { Solutions.Count: > 0 } height ? Heights(height, right, top, column) : top;
        top = Math.Max(y, z) + 3;
        float inputs = bottom - InputsHeight;
        List<string> notes = [.. NotesOf()];
        float size = Small;
        while (size > LeastSize && NotesHeight(notes, column, size) > inputs - top) size -= 0.2f;
        for (int left = 0; NotesHeight(notes, column, size) > inputs - top && notes.Count > 1;)
        {
            notes.RemoveRange(notes.Count - (left++ == 0 ? 1 : 2), left == 1 ? 1 : 2);
            notes.Add($"and {left} more: the answers in the terminal tell them.");
        }

        Notes(notes, column, top, size);
        Inputs(inputs);
    }

    private IEnumerable<string> NotesOf() => (strut.Height is { } height
        ? Kits.Answers.Notes.Of(height, _units) : Kits.Answers.Notes.Of(strut.Case.Fit, _units)).Select(n => $"{n.About}: {n.Text}");

    private float NotesHeight(List<string> notes, float column, float size)
    {
        float all = notes.Sum(n => pen.ParagraphHeight(n, column, size, leading: 1.25f) + 1), tallest = notes.Count == 0 ? 0 : notes.Max(n => pen.ParagraphHeight(n, column, size, leading: 1.25f));
        return all / 2 + tallest / 2 + 2;
    }

    private void Notes(List<string> notes, float column, float top, float size)
    {
        float half = NotesHeight(notes, column, size), x = Left, y = top;
        foreach (string note in notes)
        {
            float needs = pen.ParagraphHeight(note, column, size, leading: 1.25f);
            if (x == Left && y + needs > top + half) (x, y) = (Left + column + Gap, top);
            y = pen.Paragraph(note, x, y, column, size, Pen.Ink, leading: 1.25f) + 1;
        }
    }

    private float States(TravelResult travel, float left, float top, float width) => Table(
        left, top, width, [0.19f, 0.32f, 0.44f, 0.56f, 0.71f, 1],
        ["", $"wheel {Symbol(Dimension.Length)}", "spring", "damper", $"gauge {Symbol(Dimension.GaugePressure)}", "stopped by"],
        [State("drive", travel.Drive), State("full bump", travel.FullBump), State("full droop", travel.FullDroop), State("aired out", travel.AiredOut), State("lifted", travel.Lifted)]);

    private string[] State(string name, TravelState s) =>
    [
        name, Number(Dimension.Length, s.WheelTravel_m), Number(Dimension.Length, s.SpringHeight_m), Number(Dimension.Length, s.DamperLength_m),
        Number(Dimension.GaugePressure, s.GaugePressure_Pa), TravelWords.End(s.End),
    ];

    private float Heights(InstalledHeightResult result, float left, float top, float width) => Table(
        left, top, width, [0.14f, 0.29f, 0.44f, 0.68f, 0.78f, 1],
        [$"height {Symbol(Dimension.Length)}", $"gauge {Symbol(Dimension.GaugePressure)}", $"rate {Symbol(Dimension.Rate)}", "95 % band", "Hz", ""],
        [.. result.Solutions.Take(5).Select(s => (string[])
        [
            Number(Dimension.Length, s.Height_m), Number(Dimension.GaugePressure, s.GaugePressure_Pa), Number(Dimension.Rate, s.SpringRate_N_per_m),
            s.SpringRateBand_N_per_m is { } b ? $"{Number(Dimension.Rate, b.Low)} to {Number(Dimension.Rate, b.High)}" : "–",
            Number(Dimension.Frequency, s.RideFrequency_Hz), s.Recommended ? "this one" : s.WithinPressureLimit ? "also gives it" : "over limit",
        ])]);

    // Right edges of the columns as shares of the width; the first column and the last read from the left.
    private float Table(float left, float top, float width, float[] edges, string[] head, IReadOnlyList<string[]> rows)
    {
        float y = top + 7;
        foreach (string[] row in rows.Prepend(head))
        {
            bool isHead = row == head;
            for (int c = 0; c < row.Length; c++)
            {
                bool words = c == row.Length - 1 || (c == 0 && head[0].Length == 0);
                float x = words ? left + (c == 0 ? 0 : edges[c - 1] * width + 6) : left + edges[c] * width;
                pen.Words(row[c], x, y, Small, isHead ? Pen.Quiet : Pen.Ink, align: words ? Align.Left : Align.Right);
            }

            if (isHead) pen.Line(left, y + 2, left + width, y + 2, Pen.Rule, 0.4f);
            y += 8.4f;
        }

        return y - 4;
    }

    private float InputsHeight => 11 + sheet.Kit.Inputs.Count * 6.6f;

    private void Inputs(float top)
    {
        pen.Words("Read from", Left, top + 7, Small, Pen.Quiet);
        pen.Words("SHA-256", Right, top + 7, Small, Pen.Quiet, align: Align.Right);
        pen.Line(Left, top + 9, Right, top + 9, Pen.Rule, 0.4f);
        float y = top + 15.2f;
        foreach (FileBytes input in sheet.Kit.Inputs)
        {
            pen.Words(Shortened(input.File, Right - Left - pen.Width(input.Sha256(), 5.4f) - Gap), Left, y, 5.4f, Pen.Ink);
            pen.Words(input.Sha256(), Right, y, 5.4f, Pen.Ink, align: Align.Right);
            y += 6.6f;
        }
    }

    // The end of a path tells more than its beginning.
    private string Shortened(string path, float width)
    {
        string shown = path;
        while (pen.Width(shown, 5.4f) > width && path.Length > 1) shown = "…" + (path = path[1..]);
        return shown;
    }

    private float Foot()
    {
        string text = string.Join(" ", Cautions.CompressedAir, Cautions.RaisedCar, Cautions.AiredOut, Cautions.Local);
        float top = paper.Height - Margin - pen.ParagraphHeight(text, Right - Left, Small);
        pen.Line(Left, top - 2, Right, top - 2, Pen.Ink, 0.6f);
        pen.Paragraph(text, Left, top, Right - Left, Small, Pen.Ink);
        return top - 2;
    }

    private string Length(double? si) => _units.Text(Dimension.Length, si);

    private string Number(Dimension dimension, double? si) => _units.Number(dimension, si);

    private string Symbol(Dimension dimension) => _units.Symbol(dimension);
}
