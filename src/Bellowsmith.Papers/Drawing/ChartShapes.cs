using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Shapes that tell points apart without colour.</summary>
internal static class ChartShapes
{
    /// <summary>Half the side of what a mark covers.</summary>
    public const float MarkReach = 3;

    public static void Mark(Pen pen, MarkKind kind, SKPoint at)
    {
        switch (kind)
        {
            case MarkKind.Setting:
                pen.Circle(at.X, at.Y, 2.4f, Shade.Accent, Shade.Paper, 0.6f);
                break;
            case MarkKind.Signal:
                pen.Path([new(at.X, at.Y - 3), new(at.X + 3, at.Y), new(at.X, at.Y + 3), new(at.X - 3, at.Y)], true, Shade.Red, Shade.Paper, 0.6f);
                break;
            case MarkKind.Caution:
                pen.Path([new(at.X, at.Y - 3.1f), new(at.X + 3, at.Y + 2.2f), new(at.X - 3, at.Y + 2.2f)], true, Shade.Paper, Shade.Amber, 1.1f);
                break;
            default:
                pen.Circle(at.X, at.Y, kind == MarkKind.State ? 1.5f : 2, Shade.Paper, Shade.Ink, 0.8f);
                if (kind == MarkKind.OverLimit) pen.Line(at.X - 3, at.Y + 3, at.X + 3, at.Y - 3, Shade.Ink, 0.8f);
                break;
        }
    }

    public static void Point(Pen pen, PointShape shape, SKPoint at, float radius)
    {
        (float x, float y, float r, float line) = (at.X, at.Y, radius, radius / 2.2f);
        switch (shape)
        {
            case PointShape.Ring:
                pen.Circle(x, y, r, Shade.Paper, Shade.Quiet, line);
                break;
            case PointShape.Cross:
                pen.Line(x - r, y - r, x + r, y + r, Shade.Quiet, line);
                pen.Line(x - r, y + r, x + r, y - r, Shade.Quiet, line);
                break;
            case PointShape.Triangle:
                pen.Path([new(x, y - 1.2f * r), new(x + 1.1f * r, y + 0.8f * r), new(x - 1.1f * r, y + 0.8f * r)], true, Shade.Paper, Shade.Quiet, line);
                break;
            case PointShape.Square:
                pen.Box(new(x - 0.9f * r, y - 0.9f * r, x + 0.9f * r, y + 0.9f * r), Shade.Quiet, null, 0);
                break;
            default:
                pen.Circle(x, y, r, Shade.Quiet, null, 0);
                break;
        }
    }

    public static (float Width, Shade Shade) Stroke(CurveKind kind) => kind switch
    {
        CurveKind.Beside => (0.5f, Shade.Quiet),
        CurveKind.Setting => (1.2f, Shade.Accent),
        _ => (1, Shade.Ink),
    };

    public static Shade Colour(MarkKind kind) => kind switch
    {
        MarkKind.Setting => Shade.Accent,
        MarkKind.Signal => Shade.Red,
        MarkKind.Caution => Shade.Amber,
        _ => Shade.Ink,
    };
}
