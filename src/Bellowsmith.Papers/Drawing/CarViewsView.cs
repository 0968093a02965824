using System.Diagnostics;
using Bellowsmith.Kits.Figures;
using SkiaSharp;

namespace Bellowsmith.Papers.Drawing;

/// <summary>Views of a corner beside each other, at the largest usual scale at which they all fit.</summary>
internal sealed class CarViewsView(Pen pen, SKRect box)
{
    private const float Gap = 10, Caption = 11, Letters = 6.2f;

    /// <param name="draw">The views drawn with letters of so many mm of the car.</param>
    /// <returns>The lower edge of what was drawn.</returns>
    public float Draw(Func<double, IReadOnlyList<CarView>> draw)
    {
        foreach (double scale in ShapesView.Scales)
        {
            IReadOnlyList<CarView> views = draw(ShapesView.Letters_mm(scale));
            float point = (float)(ShapesView.PointsPerMillimetre / scale), width = views.Sum(view => (float)view.Frame.Width) * point, spare = box.Width - width - Gap * (views.Count - 1);
            bool fits = spare >= 0 && views.Max(view => view.Frame.Height) * point <= box.Height - Caption;
            if (!fits && scale != ShapesView.Scales[^1]) continue;
            float left = box.Left, bottom = Math.Min(box.Bottom, box.Top + (float)views.Max(view => view.Frame.Height) * point + Caption);
            foreach (CarView view in views)
            {
                SKRect own = new(left, box.Top, left + (float)view.Frame.Width * point + Math.Max(spare, 0) / views.Count, bottom);
                View(view, own, scale);
                left = own.Right + Gap;
            }

            return bottom;
        }

        throw new UnreachableException();
    }

    private void View(CarView view, SKRect own, double scale)
    {
        SKRect sheet = own with { Bottom = own.Bottom - Caption };
        float half = (float)(view.Frame.Width / 2 * ShapesView.PointsPerMillimetre / scale);
        pen.Clipped(sheet with { Left = sheet.MidX - half, Right = sheet.MidX + half }, () => ShapesView.Draw(pen, view.Shapes, view.Frame, sheet, scale, wordsOnPaper: true));
        pen.Box(sheet, null, Shade.Rule, 0.5f);
        pen.Words(FormattableString.Invariant($"{Seen(view.From)}, 1 : {scale:0.#}"), own.Left, own.Bottom - 2, Letters, Shade.Quiet);
    }

    private static string Seen(Viewpoint from) => from switch
    {
        Viewpoint.Front => "from ahead",
        Viewpoint.Side => "from its left side",
        _ => "from above",
    };
}
