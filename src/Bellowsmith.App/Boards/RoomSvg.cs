using System.Globalization;
using System.Text;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Figures;
using Bellowsmith.Kits.Studies.Clearance;

namespace Bellowsmith.App.Boards;

/// <summary>
/// The least room over any margin as a map to scale: rack across, wheel travel up. A cell that lacks room carries by how much; pressed it
/// is looked at. The ring is the place looked at.
/// </summary>
public static class RoomSvg
{
    public const int Width = 640, Height = 360;

    private const int Left = 58, Right = 8, Top = 8, Bottom = 34, LeastLetters = 22;

    // As much room as no shade tells from more, in metres.
    private const double Plenty_m = 0.010;

    public static string Of(ClearanceResult swept, (double Travel_m, double Rack_m) at, DisplayUnits units)
    {
        if (ClearanceMap.Of(swept, units) is not { } map) return "";
        StringBuilder svg = new();
        ClearanceGrid grid = swept.Grid;
        double plenty = units.Value(Kits.Units.Dimension.Length, Plenty_m);
        for (int row = 0; row < map.Y.Count; row++)
            for (int column = 0; column < map.X.Count; column++) Cell(svg, map, row, column, (grid.Travels_m[row], grid.Racks_m[column]), plenty);
        Ring(svg, map, (units.Value(Kits.Units.Dimension.Length, at.Rack_m), units.Value(Kits.Units.Dimension.Length, at.Travel_m)));
        Axes(svg, map);
        return svg.ToString();
    }

    private static void Cell(StringBuilder svg, ClearanceMap map, int row, int column, (double Travel_m, double Rack_m) place, double plenty)
    {
        double room = map.Room[row * map.X.Count + column];
        (double x, double right, double y, double bottom) = (X(map, map.X.Edges[column]), X(map, map.X.Edges[column + 1]), Y(map, map.Y.Edges[row + 1]), Y(map, map.Y.Edges[row]));
        string kind = double.IsNaN(room) ? "none" : room < 0 ? "short" : "free";
        double shade = kind switch { "short" => 0.35 + 0.5 * Math.Min(1, -room / plenty), "free" => 0.28 * Math.Max(0, 1 - room / plenty), _ => 0 };
        svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"room {kind}\" data-place=\"{place.Travel_m:R} {place.Rack_m:R}\" x=\"{x:0.#}\" y=\"{y:0.#}\" width=\"{right - x:0.#}\" height=\"{bottom - y:0.#}\" fill-opacity=\"{shade:0.##}\"/>");
        if (kind == "short" && right - x > LeastLetters) Word(svg, (x + right) / 2, (y + bottom) / 2, "middle", LinkageWords.Number(room, map.Decimals > 1 ? "0.00" : "0"), "by");
    }

    private static void Ring(StringBuilder svg, ClearanceMap map, (double Rack, double Travel) at) =>
        svg.Append(CultureInfo.InvariantCulture, $"<circle class=\"room here\" cx=\"{X(map, at.Rack):0.#}\" cy=\"{Y(map, at.Travel):0.#}\" r=\"8\"/>");

    private static void Axes(StringBuilder svg, ClearanceMap map)
    {
        foreach (double travel in Marked(map.Y)) Word(svg, Left - 6, Y(map, travel), "end", Number(travel, map), "at");
        double[] racks = Marked(map.X);
        for (int k = 0; k < racks.Length; k++)
            Word(svg, X(map, racks[k]), Height - Bottom + 18, k > 0 && k == racks.Length - 1 ? "end" : "middle", Number(racks[k], map), "at");
    }

    // Both ends and the middle, where it is.
    private static double[] Marked(MapSide side) => side.Count == 1 ? side.Values : [side.Values[0], 0, side.Values[^1]];

    private static string Number(double value, ClearanceMap map) => LinkageWords.Number(value, map.Decimals > 1 ? "0.00" : "0.0");

    private static double X(ClearanceMap map, double rack) => Left + (rack - map.X.Edges[0]) / (map.X.Edges[^1] - map.X.Edges[0]) * (Width - Left - Right);

    private static double Y(ClearanceMap map, double travel) => Height - Bottom - (travel - map.Y.Edges[0]) / (map.Y.Edges[^1] - map.Y.Edges[0]) * (Height - Top - Bottom);

    private static void Word(StringBuilder svg, double x, double y, string anchor, string text, string kind) => svg.Append(CultureInfo.InvariantCulture,
        $"<text class=\"words {kind}\" x=\"{x:0.#}\" y=\"{y:0.#}\" text-anchor=\"{anchor}\" dominant-baseline=\"central\">{text}</text>");
}
