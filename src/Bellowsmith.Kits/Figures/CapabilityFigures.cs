using Bellowsmith.Kits.Answers;
using Bellowsmith.Quality.Capability;

namespace Bellowsmith.Kits.Figures;

/// <summary>Readings as a histogram between their limits, under the normal curve of their mean and standard deviation.</summary>
public sealed class CapabilityFigures(ProcessCapability result, double[] values, string? unit)
{
    private const int CurvePoints = 121, FewestBars = 5, MostBars = 60;
    private const double Reach = 4;

    /// <summary>Null where there is no answer.</summary>
    public Chart? Histogram()
    {
        if (result.Reason is not null) return null;
        (double mean, double deviation) = (result.Mean!.Value, result.StandardDeviation!.Value);
        ChartBars bars = Bars();
        double area = result.Count * (bars.Edges[1] - bars.Edges[0]);
        double[] x = [.. Enumerable.Range(0, CurvePoints).Select(k => mean + deviation * Reach * (2.0 * k / (CurvePoints - 1) - 1))];
        double[] y = [.. x.Select(at => area * Math.Exp(-Math.Pow((at - mean) / deviation, 2) / 2) / (deviation * Math.Sqrt(2 * Math.PI)))];
        SpecificationLimits limits = result.Question.Limits;
        double aside = deviation / 2;
        double[] all = [.. x, .. bars.Edges, (limits.Lower ?? mean) - aside, (limits.Upper ?? mean) + aside, limits.Target ?? mean];
        ChartAxis across = ChartAxis.Around("value", unit ?? "", all), up = ChartAxis.Around("parts", "", [0, .. y, .. bars.Heights]);
        return new Chart
        {
            Id = "histogram",
            Title = "Readings between their limits",
            Summary = $"{new CapabilityWords(result, unit).Answer()} {BandInWords()}".TrimEnd(),
            X = across,
            Y = up,
            Zones = [.. Tolerance(across, up)],
            Bars = [bars],
            Uprights = [.. Uprights(limits, mean)],
            Curves = [ChartCurve.Solid("", x, y)],
        };
    }

    // Freedman and Diaconis: bars 2·IQR/∛n wide, on multiples of the gauge's step so that none holds more steps than its neighbour.
    private ChartBars Bars()
    {
        double[] sorted = [.. values.Order()];
        double range = sorted[^1] - sorted[0], step = result.Normality!.Step;
        double width = 2 * (sorted[sorted.Length * 3 / 4] - sorted[sorted.Length / 4]) / Math.Cbrt(sorted.Length);
        width = Math.Clamp(width, range / MostBars, range / FewestBars);
        if (step > range / (20.0 * MostBars)) width = Math.Max(1, Math.Round(width / step)) * step;
        double first = sorted[0] - Math.Min(step, width) / 2;
        int count = (int)Math.Ceiling((sorted[^1] - first) / width + 1e-9);
        double[] heights = new double[count];
        foreach (double value in sorted) heights[Math.Clamp((int)((value - first) / width), 0, count - 1)]++;
        return new ChartBars("", [.. Enumerable.Range(0, count + 1).Select(k => first + k * width)], heights);
    }

    // Of normal parts only where they are to be believed.
    private ToleranceInterval Interval => result.Basis == CapabilityBasis.Normal ? result.Tolerance! : result.CountedTolerance!;

    private bool HasBand => Interval.Low is not null || Interval.High is not null;

    private string BandInWords() => !HasBand ? ""
        : $"Between the ends of the tinted field lie {PlainNumbers.Share(Interval.Coverage)} of all parts with {PlainNumbers.Share(Interval.Confidence)} confidence{(Interval.Factor is null ? "" : ", if they are normal")}.";

    // Open to the side that has no limit.
    private IEnumerable<ChartBand> Tolerance(ChartAxis across, ChartAxis up)
    {
        if (HasBand) yield return new([Interval.Low ?? across.Low, Interval.High ?? across.High], [up.Low, up.Low], [up.High, up.High]);
    }

    private static IEnumerable<ChartUpright> Uprights(SpecificationLimits limits, double mean)
    {
        if (limits.Lower is { } lower) yield return new(UprightKind.Limit, lower, "lower limit");
        if (limits.Upper is { } upper) yield return new(UprightKind.Limit, upper, "upper limit");
        if (limits.Target is { } target) yield return new(UprightKind.Centre, target, "target");
        yield return new(UprightKind.Centre, mean, limits.Target is null ? "mean" : "");
    }
}
