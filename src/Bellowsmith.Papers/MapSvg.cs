using Bellowsmith.Kits.Figures;
using Bellowsmith.Papers.Drawing;

namespace Bellowsmith.Papers;

/// <summary>Writes a map of settings as an SVG that stands alone, as <see cref="ChartSvg"/> does a chart.</summary>
public static class MapSvg
{
    /// <summary>UTF-8 without byte order mark, lines ended by line feeds.</summary>
    public static byte[] Write(SettingMap map) =>
        SvgSheet.Write("settings", map.Title, map.Summary, (pen, box) => new SettingMapView(pen, box, SvgSheet.Letters, map).Draw());
}
