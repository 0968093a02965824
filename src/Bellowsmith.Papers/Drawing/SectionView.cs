using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>A drawing on paper, at the largest usual scale that fits, with frame and title block.</summary>
internal sealed class SectionView(Pen pen, SKRect box)
{
    private const float RowHeight = 10.4f, LabelWidth = 40, RightCell = 74, CellByHand = 150;

    /// <param name="draw">The part drawn with letters of so many mm of the part.</param>
    public void Draw(Func<double, SheetDrawing> draw)
    {
        foreach (double scale in ShapesView.Scales)
        {
            SheetDrawing section = draw(ShapesView.Letters_mm(scale));
            float point = (float)(ShapesView.PointsPerMillimetre / scale), rows = section.TitleBlock.Count(row => !row.Beside) * RowHeight;
            bool fits = section.Frame.Width * point <= box.Width && section.Frame.Height * point <= box.Height - rows;
            if (!fits && scale != ShapesView.Scales[^1]) continue;
            Frame(section, rows, scale);
            ShapesView.Draw(pen, section.Shapes, section.Frame, box with { Bottom = box.Bottom - rows }, scale);
            return;
        }
    }

    // What it is on the left, how it is drawn on the right, whose rows share the height: what is written by hand has room.
    private void Frame(SheetDrawing section, float rows, double scale)
    {
        TitleRow[] left = [.. section.TitleBlock.Where(row => !row.Beside)];
        TitleRow[] beside = [.. section.TitleBlock.Where(row => row.Beside), new TitleRow("scale", FormattableString.Invariant($"1 : {scale:0.#}"))];
        float top = box.Bottom - rows, right = box.Right - (beside.Any(row => row.Text.Length == 0) ? CellByHand : RightCell);
        pen.Box(box, null, Shade.Ink, 1);
        pen.Line(right, top, right, box.Bottom, Shade.Ink, 0.35f);
        Cells(left, box.Left, right, top, RowHeight);
        Cells(beside, right, box.Right, top, rows / beside.Length);
    }

    private void Cells(TitleRow[] rows, float left, float right, float top, float height)
    {
        foreach (TitleRow row in rows)
        {
            pen.Line(left, top, right, top, Shade.Ink, 0.35f);
            pen.Words(row.Label, left + 5, top + 7.4f, 6.2f, Shade.Quiet);
            if (row.Text.Length > 0) pen.Words(row.Text, left + LabelWidth, top + 7.4f, 6.2f, Shade.Ink, bold: true);
            top += height;
        }
    }
}
