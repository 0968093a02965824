using Bellowsmith.Kits.Answers;
using Bellowsmith.Quality.LifeTests;

namespace Bellowsmith.Kits.Figures;

/// <summary>
/// The Weibull plot: ln t across, ln(−ln(1 − F)) upward, on which the law is a straight line. Failures stand at the median of their rank,
/// adjusted for survivors [Johnson 1964]; the band is the interval of the life at each share.
/// </summary>
public sealed class LifeFigures(LifeAnalysis result, string? unit)
{
    private const int CurvePoints = 41;
    private static readonly double[] _shares = [0.001, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 0.9, 0.99];

    /// <summary>Null where there is no answer.</summary>
    public Chart? WeibullPlot()
    {
        if (result.Reason is not null) return null;
        double least = Math.Min(0.01, Math.Min(result.Question.FailedShare, result.Plotted.Select(p => p.FailedShare).DefaultIfEmpty(1).Min()));
        double greatest = Math.Max(0.9, Math.Max(result.Question.FailedShare, result.Plotted.Select(p => p.FailedShare).DefaultIfEmpty(0).Max()));
        (double low, double high) = (Height(least * 0.9), Height(greatest + 0.1 * (1 - greatest)));
        double[] heights = [.. Enumerable.Range(0, CurvePoints).Select(k => low + (high - low) * k / (CurvePoints - 1))];
        LifeInterval[] lives = [.. heights.Select(h => result.LifeAt(-Math.Exp(-Math.Exp(h)) + 1)!)];
        double[] x = [.. lives.Select(l => Place(l.Value ?? l.Low))];
        ChartAxis across = Axes.Logarithms("life", unit ?? "", [.. x, .. lives.Select(l => Place(l.Low)), .. result.Plotted.Select(p => Math.Log(p.Life))]);
        return new Chart
        {
            Id = "weibull",
            Title = "Weibull plot",
            Summary = $"{new LifeWords(result, unit).Answer()} Points stand at median ranks; the band is {PlainNumbers.Chosen(result.Question.Confidence * 100)} %.",
            X = across,
            Y = new ChartAxis("failed", "", low, high, 2) { OwnTicks = [.. _shares.Where(s => Height(s) >= low && Height(s) <= high).Select(s => new ChartTick(Height(s), $"{PlainNumbers.Chosen(s * 100)} %"))] },
            Bands = [Band(heights, lives, across)],
            Curves = [ChartCurve.Solid("", x, heights)],
            Measured = result.Plotted.Count == 0 ? [] : [new ChartPoints("", [.. result.Plotted.Select(p => Math.Log(p.Life))], [.. result.Plotted.Select(p => Height(p.FailedShare))])],
            Limits = [ChartCurve.Level(new LifeWords(result, unit).Name, across.Low, across.High, Height(result.Question.FailedShare))],
        };
    }

    private static double Height(double share) => Math.Log(-Math.Log(1 - share));

    private static double Place(double? life) => life is > 0 ? Math.Log(life.Value) : double.NaN;

    // The interval runs across at each share; a band is told upward at each life: between the lines of its two ends.
    private static ChartBand Band(double[] heights, LifeInterval[] lives, ChartAxis across)
    {
        double[] early = [.. lives.Select(l => Place(l.Low))], late = [.. lives.Select(l => l.High is null ? double.PositiveInfinity : Place(l.High))];
        double[] x = [.. Enumerable.Range(0, 2 * CurvePoints).Select(k => across.Low + (across.High - across.Low) * k / (2 * CurvePoints - 1.0))];
        return new ChartBand(x, [.. x.Select(at => At(late, at))], [.. x.Select(at => At(early, at))]);

        double At(double[] line, double at)
        {
            int above = Array.FindIndex(line, place => place >= at);
            if (above <= 0) return above < 0 ? heights[^1] : heights[0];
            double share = double.IsFinite(line[above]) ? (at - line[above - 1]) / (line[above] - line[above - 1]) : 0;
            return heights[above - 1] + share * (heights[above] - heights[above - 1]);
        }
    }
}
