using System.Globalization;
using Bellowsmith.Kits.Answers;

namespace Bellowsmith.Papers.Drawing;

/// <summary>What every page of a sheet has: white around it, a heading, cautions at its foot.</summary>
internal sealed class PageEdges(Pen pen, Sheet sheet, Paper paper)
{
    /// <summary>White around the page, between its columns, and the size of its small letters.</summary>
    public const float Margin = 34, Gap = 12, Small = 6.2f;

    private float Right => paper.Width - Margin;

    /// <summary>Returns where the page begins below it.</summary>
    public float Heading(string title, string about)
    {
        pen.Words(title, Margin, Margin + 12, 16, Shade.Ink, bold: true);
        pen.Words(about, Margin, Margin + 24, 7.5f, Shade.Quiet);
        pen.Words(sheet.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), Right, Margin + 12, 9, Shade.Ink, align: Align.Right);
        pen.Words($"Bellowsmith {sheet.Version}", Right, Margin + 24, 7.5f, Shade.Quiet, align: Align.Right);
        pen.Line(Margin, Margin + 29, Right, Margin + 29, Shade.Ink, 0.8f);
        return Margin + 29 + Gap;
    }

    /// <summary>Returns where the page ends above it.</summary>
    public float Foot()
    {
        string text = string.Join(" ", Cautions.CompressedAir, Cautions.RaisedCar, Cautions.AiredOut, Cautions.Local);
        float top = paper.Height - Margin - pen.ParagraphHeight(text, Right - Margin, Small);
        pen.Line(Margin, top - 2, Right, top - 2, Shade.Ink, 0.6f);
        pen.Paragraph(text, Margin, top, Right - Margin, Small, Shade.Ink);
        return top - 2;
    }

    /// <summary>
    /// A small table; right edges of the columns as shares of the width. The last column reads from the left, and the first where it has no
    /// heading or is said to. Returns its lower edge.
    /// </summary>
    public float Table(float left, float top, float width, float[] edges, string[] head, IReadOnlyList<string[]> rows, Func<string[], bool>? strong = null, bool namesFirst = false)
    {
        float y = top + 7;
        foreach (string[] row in rows.Prepend(head))
        {
            bool isHead = row == head;
            for (int c = 0; c < row.Length; c++)
            {
                bool words = c == row.Length - 1 || (c == 0 && (namesFirst || head[0].Length == 0));
                float x = words ? left + (c == 0 ? 0 : edges[c - 1] * width + 6) : left + edges[c] * width;
                pen.Words(row[c], x, y, Small, isHead ? Shade.Quiet : Shade.Ink, bold: !isHead && strong?.Invoke(row) == true, align: words ? Align.Left : Align.Right);
            }

            if (isHead) pen.Line(left, y + 2, left + width, y + 2, Shade.Rule, 0.4f);
            y += 8.4f;
        }

        return y - 4;
    }
}
