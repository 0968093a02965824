using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using Bellowsmith.Kits.Figures;

namespace Bellowsmith.App.Boards;

/// <summary>The travel ladder as SVG: wheel travel upright, bump up, the rungs' words to the right kept clear of each other.</summary>
public static class LadderSvg
{
    public const double Width = 760, Height = 300;
    private const double Rail = 84, Top = 16, Bottom = 284, RungEnd = 128, WordsAt = 168, LineOfWords = 21;

    public static string Of(TravelLadder ladder)
    {
        StringBuilder svg = new();
        foreach (double tick in ladder.Travel.Ticks(6))
            Add(svg, $"<path class=\"grid\" d=\"M{Rail - 6} {Y(tick):0.#}H{Rail}\"/><text class=\"tick\" x=\"{Rail - 10}\" y=\"{Y(tick):0.#}\" text-anchor=\"end\" dominant-baseline=\"central\">{Signed(tick, ladder.Travel.Decimals > 1 ? ladder.Travel.Decimals - 1 : 0)}</text>");
        if (ladder.Stop is { } stop)
            Add(svg, $"<rect class=\"stop\" x=\"{Rail}\" y=\"{Math.Min(Y(stop.From), Y(stop.To)):0.#}\" width=\"{RungEnd - Rail}\" height=\"{Math.Abs(Y(stop.From) - Y(stop.To)):0.#}\"/>");
        Add(svg, $"<path class=\"rail\" d=\"M{Rail} {Top}V{Bottom}M{RungEnd} {Top}V{Bottom}\"/>");
        foreach (LadderLimit limit in ladder.Limits)
            Add(svg, $"<path class=\"asked {(limit.Holds == false ? "missed" : "")}\" d=\"M{Rail - 4} {Y(limit.Travel):0.#}H{RungEnd + 4}\"/>");
        Rungs(svg, ladder, Y);
        return svg.ToString();

        double Y(double travel) => Bottom - (travel - ladder.Travel.Low) / (ladder.Travel.High - ladder.Travel.Low) * (Bottom - Top);
    }

    private static void Rungs(StringBuilder svg, TravelLadder ladder, Func<double, double> y)
    {
        (double At, string Name, string Detail, string Class)[] lines =
        [
            .. ladder.Rungs.Select(r => (y(r.Travel), r.Name, Detail(ladder, r), r.Id == "drive" ? "accent" : "rung"))
                .Concat(ladder.Limits.Select(l => (y(l.Travel), l.Label, Verdict(l), l.Holds == false ? "missed" : "quiet")))
                .OrderBy(line => line.Item1),
        ];
        double[] words = Apart([.. lines.Select(l => l.At)]);
        for (int k = 0; k < lines.Length; k++)
        {
            (double at, string name, string detail, string style) = lines[k];
            if (style is "rung" or "accent") Add(svg, $"<path class=\"{style}\" d=\"M{Rail} {at:0.#}H{RungEnd}\"/>");
            Add(svg, $"<path class=\"lead\" d=\"M{RungEnd + 6} {at:0.#}L{WordsAt - 8} {words[k]:0.#}\"/>");
            Add(svg, $"<text class=\"words {style}\" x=\"{WordsAt}\" y=\"{words[k]:0.#}\" dominant-baseline=\"central\"><tspan class=\"name\">{Encoded(name)}</tspan><tspan class=\"detail\" dx=\"8\">{Encoded(detail)}</tspan></text>");
        }
    }

    // Each line as near its rung as its neighbours allow: groups that would touch are spread about their middle.
    private static double[] Apart(double[] wanted)
    {
        List<(double Middle, int Count)> groups = [];
        foreach (double at in wanted)
        {
            groups.Add((at, 1));
            while (groups.Count > 1 && Overlap(groups[^2], groups[^1]))
            {
                (double m1, int c1) = groups[^2];
                (double m2, int c2) = groups[^1];
                groups.RemoveRange(groups.Count - 2, 2);
                double half = (c1 + c2) * LineOfWords / 2;
                groups.Add((Math.Clamp((m1 * c1 + m2 * c2) / (c1 + c2), half, Math.Max(half, Height - half)), c1 + c2));
            }
        }

        return [.. groups.SelectMany(g => Enumerable.Range(0, g.Count).Select(k => g.Middle + (k - (g.Count - 1) / 2.0) * LineOfWords))];
    }

    private static bool Overlap((double Middle, int Count) a, (double Middle, int Count) b) =>
        b.Middle - a.Middle < (a.Count + b.Count) * LineOfWords / 2;

    private static string Detail(TravelLadder ladder, LadderRung rung)
    {
        string travel = rung.Id == "drive" ? "" : $"{Signed(rung.Travel, ladder.Travel.Decimals)} {ladder.Travel.Unit}";
        return rung.Detail.Length == 0 ? travel : travel.Length == 0 ? rung.Detail : $"{travel} · {rung.Detail}";
    }

    private static string Verdict(LadderLimit limit) => limit.Holds switch { true => "holds", false => "missed", _ => "not checked" };

    private static string Signed(double value, int decimals)
    {
        string text = Math.Abs(value).ToString("F" + decimals, CultureInfo.InvariantCulture);
        return !text.AsSpan().ContainsAnyInRange('1', '9') ? "0" : value < 0 ? "−" + text : "+" + text;
    }

    private static string Encoded(string text) => HtmlEncoder.Default.Encode(text);

    private static void Add(StringBuilder svg, FormattableString text) => svg.Append(text.ToString(CultureInfo.InvariantCulture));
}
