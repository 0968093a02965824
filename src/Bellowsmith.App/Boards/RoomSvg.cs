using System.Globalization;
using System.Text;
using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.App.Boards;

/// <summary>
/// The least room over any margin as a map: rack across, right lock to the left, wheel travel up. A cell that lacks room carries its
/// gap as a number, one that touches a heavy frame; pressed it is looked at.
/// </summary>
public static class RoomSvg
{
    public const int Width = 640, Height = 360;

    private const int Left = 58, Right = 8, Top = 8, Bottom = 40, LeastLetters = 22;

    public static string Of(ClearanceResult swept, (double Travel_m, double Rack_m) at, DisplayUnits units)
    {
        ClearanceGrid grid = swept.Grid;
        (int columns, int rows) = (grid.Racks_m.Count, grid.Travels_m.Count);
        if (columns == 0 || rows == 0) return "";
        (double wide, double high) = ((Width - Left - Right) / (double)columns, (Height - Top - Bottom) / (double)rows);
        StringBuilder svg = new();
        for (int row = 0; row < rows; row++)
            for (int column = 0; column < columns; column++) Cell(row, column);
        Axis();
        return svg.ToString();

        void Cell(int row, int column)
        {
            double room = grid.Room_m[row * columns + column];
            (double x, double y) = (Left + column * wide, Top + (rows - 1 - row) * high);
            string kind = double.IsNaN(room) ? "none" : room < 0 ? "short" : "free";
            bool here = Math.Abs(grid.Travels_m[row] - at.Travel_m) < 1e-6 && Math.Abs(grid.Racks_m[column] - at.Rack_m) < 1e-6;
            svg.Append(CultureInfo.InvariantCulture, $"<rect class=\"room {kind}{(here ? " here" : "")}\" data-place=\"{grid.Travels_m[row]:R} {grid.Racks_m[column]:R}\" x=\"{x:0.#}\" y=\"{y:0.#}\" width=\"{wide:0.#}\" height=\"{high:0.#}\" fill-opacity=\"{Shade(room):0.##}\"/>");
            if (room < 0 && wide > LeastLetters)
                svg.Append(CultureInfo.InvariantCulture, $"<text class=\"words\" x=\"{x + wide / 2:0.#}\" y=\"{y + high / 2:0.#}\" text-anchor=\"middle\" dominant-baseline=\"central\">{LinkageWords.Number(units.Value(Dimension.Length, room), "0")}</text>");
        }

        void Axis()
        {
            string length = units.Symbol(Dimension.Length);
            foreach (int row in (int[])[0, rows / 2, rows - 1]) Word(Left - 6, Top + (rows - 0.5 - row) * high, "end", units.Number(Dimension.Length, grid.Travels_m[row]));
            foreach (int column in (int[])[0, columns / 2, columns - 1]) Word(Left + (column + 0.5) * wide, Height - Bottom + 14, "middle", units.Number(Dimension.Length, grid.Racks_m[column]));
            Word(Left + columns * wide / 2, Height - 8, "middle", $"rack, to the left +, {length}; upward wheel travel, bump +, {length}");
        }

        void Word(double x, double y, string anchor, string text) => svg.Append(CultureInfo.InvariantCulture,
            $"<text class=\"words\" x=\"{x:0.#}\" y=\"{y:0.#}\" text-anchor=\"{anchor}\" dominant-baseline=\"central\">{text}</text>");
    }

    // The less room, the darker; a centimetre to spare is as light as any more.
    private static double Shade(double room_m) => double.IsNaN(room_m) ? 0 : room_m < 0 ? 0.35 + 0.5 * Math.Min(1, -room_m / 0.01) : 0.28 * Math.Max(0, 1 - room_m / 0.01);
}
