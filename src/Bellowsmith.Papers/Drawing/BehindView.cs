using Bellowsmith.Kits;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Papers.Drawing;

/// <summary>What stands behind a page's answers: states and solutions, notes on the data, the files read, cautions.</summary>
internal sealed class BehindView(Pen pen, Sheet sheet, StrutAnswers strut, Paper paper)
{
    private const float Margin = PageEdges.Margin, Left = Margin, Gap = PageEdges.Gap, Small = PageEdges.Small, LeastSize = 5;

    private readonly PageEdges _edges = new(pen, sheet, paper);

    private readonly DisplayUnits _units = sheet.Units;

    private float Right => paper.Width - Margin;

    public void Draw(float top)
    {
        float bottom = _edges.Foot() - 4;
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
            y = pen.Paragraph(note, x, y, column, size, Shade.Ink, leading: 1.25f) + 1;
        }
    }

    private float States(TravelResult travel, float left, float top, float width) => _edges.Table(
        left, top, width, [0.19f, 0.32f, 0.44f, 0.56f, 0.71f, 1],
        ["", $"wheel {Symbol(Dimension.Length)}", "spring", "damper", $"gauge {Symbol(Dimension.GaugePressure)}", "stopped by"],
        [State("drive", travel.Drive), State("full bump", travel.FullBump), State("full droop", travel.FullDroop), State("aired out", travel.AiredOut), State("lifted", travel.Lifted)]);

    private string[] State(string name, TravelState s) =>
    [
        name, Number(Dimension.Length, s.WheelTravel_m), Number(Dimension.Length, s.SpringHeight_m), Number(Dimension.Length, s.DamperLength_m),
        Number(Dimension.GaugePressure, s.GaugePressure_Pa), TravelWords.End(s.End),
    ];

    private float Heights(InstalledHeightResult result, float left, float top, float width) => _edges.Table(
        left, top, width, [0.14f, 0.29f, 0.44f, 0.68f, 0.78f, 1],
        [$"height {Symbol(Dimension.Length)}", $"gauge {Symbol(Dimension.GaugePressure)}", $"rate {Symbol(Dimension.Rate)}", "95 % band", "Hz", ""],
        [.. result.Solutions.Take(5).Select(s => (string[])
        [
            Number(Dimension.Length, s.Height_m), Number(Dimension.GaugePressure, s.GaugePressure_Pa), Number(Dimension.Rate, s.SpringRate_N_per_m),
            s.SpringRateBand_N_per_m is { } b ? $"{Number(Dimension.Rate, b.Low)} to {Number(Dimension.Rate, b.High)}" : "–",
            Number(Dimension.Frequency, s.RideFrequency_Hz), s.Recommended ? "this one" : s.WithinPressureLimit ? "also gives it" : "over limit",
        ])]);

    private float InputsHeight => 11 + sheet.Kit.Inputs.Count * 6.6f;

    private void Inputs(float top)
    {
        pen.Words("Read from", Left, top + 7, Small, Shade.Quiet);
        pen.Words("SHA-256", Right, top + 7, Small, Shade.Quiet, align: Align.Right);
        pen.Line(Left, top + 9, Right, top + 9, Shade.Rule, 0.4f);
        float y = top + 15.2f;
        foreach (FileBytes input in sheet.Kit.Inputs)
        {
            pen.Words(Shortened(input.File, Right - Left - pen.Width(input.Sha256(), 5.4f) - Gap), Left, y, 5.4f, Shade.Ink);
            pen.Words(input.Sha256(), Right, y, 5.4f, Shade.Ink, align: Align.Right);
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

    private string Number(Dimension dimension, double? si) => _units.Number(dimension, si);

    private string Symbol(Dimension dimension) => _units.Symbol(dimension);
}
