using Bellowsmith.Kits.Figures;
using Bellowsmith.Papers.Drawing;

namespace Bellowsmith.Papers;

/// <summary>
/// Writes a chart as an SVG that stands alone: title and summary above the figure and for those who hear it, millimetres, words
/// that can be selected, the same bytes for the same chart.
/// </summary>
public static class ChartSvg
{
    /// <summary>UTF-8 without byte order mark, lines ended by line feeds.</summary>
    public static byte[] Write(Chart chart) =>
        SvgSheet.Write(chart.Id, chart.Title, chart.Summary, (pen, box) => new ChartView(pen, box, SvgSheet.Letters, chart).Draw());
}
