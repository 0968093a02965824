using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.GaugeTrials;

namespace Bellowsmith.Kits.Figures;

/// <summary>Every reading of a crossed trial over its part, less the part's mean: what is left is the gauge.</summary>
public static class GaugeFigures
{
    /// <summary>Null for a nested trial.</summary>
    public static Chart? Readings(GaugeResult result)
    {
        if (result.Crossed is not { } table) return null;
        var trial = table.Trial;
        double aside = 0.6 / trial.Appraisers;
        double Across(int part, int appraiser) => part + 1 + (appraiser - (trial.Appraisers - 1) / 2.0) * aside;
        (double X, double Y)[] points = [.. from a in Enumerable.Range(0, trial.Appraisers)
                                            from p in Enumerable.Range(0, trial.Parts)
                                            from value in trial.Cell(p, a).ToArray()
                                            select (Across(p, a), value - trial.PartMean(p))];
        ChartCurve[] means = [.. Enumerable.Range(0, trial.Appraisers).Select(a => ChartCurve.Solid(
            table.Appraisers[a],
            [.. Enumerable.Range(0, trial.Parts).Select(p => Across(p, a))],
            [.. Enumerable.Range(0, trial.Parts).Select(p => trial.CellMean(p, a) - trial.PartMean(p))]))];
        return new Chart
        {
            Id = "gauge",
            Title = "Readings less their part's mean, appraiser by appraiser",
            Summary = new GaugeWords(result).Answer(),
            X = new ChartAxis("part", "", 0.4, trial.Parts + 0.6, 0) { OwnTicks = [.. table.Parts.Select((name, p) => new ChartTick(p + 1, name))] },
            Y = ChartAxis.Around("difference", result.Unit ?? "", points.Select(p => p.Y)),
            Centres = [ChartCurve.Level("", 0.4, trial.Parts + 0.6, 0)],
            Curves = means,
            Measured = [new ChartPoints("one reading", [.. points.Select(p => p.X)], [.. points.Select(p => p.Y)])],
        };
    }
}
