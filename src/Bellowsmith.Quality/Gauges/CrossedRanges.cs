using Bellowsmith.Quality.Distributions;

namespace Bellowsmith.Quality.Gauges;

/// <summary>
/// A crossed gauge trial from its ranges, as worked out by hand: mean range within the cells, range of the appraisers' means,
/// range of the parts' means, each times a constant [Measurement Systems Analysis 2010]. It sees no interaction and gives no
/// interval; <see cref="CrossedAnova"/> does.
/// </summary>
/// <param name="Trial">The readings.</param>
/// <param name="MeanRange">Within the cells, in the readings' unit.</param>
/// <param name="AppraiserRange">Greatest less least mean of an appraiser.</param>
/// <param name="PartRange">Greatest less least mean of a part.</param>
/// <param name="Repeatability">Makes <paramref name="MeanRange"/> a standard deviation.</param>
/// <param name="Reproducibility">Likewise of <paramref name="AppraiserRange"/>; null with one appraiser.</param>
/// <param name="Parts">Likewise of <paramref name="PartRange"/>.</param>
/// <param name="Components">Standard deviations.</param>
/// <param name="SetToZero">Whether the appraisers differed by less than their repeats explain.</param>
public sealed record CrossedRanges(
    CrossedTrial Trial, double MeanRange, double AppraiserRange, double PartRange,
    RangeConstant Repeatability, RangeConstant? Reproducibility, RangeConstant Parts,
    GaugeComponents Components, NegativeEstimates SetToZero)
{
    public static CrossedRanges Of(CrossedTrial trial)
    {
        (int p, int a, int r) = (trial.Parts, trial.Appraisers, trial.Trials);
        double meanRange = Enumerable.Range(0, p * a).Average(cell => Means.Range(trial.Cell(cell / a, cell % a)));
        double appraisers = Means.Range([.. Enumerable.Range(0, a).Select(trial.AppraiserMean)]);
        double parts = Means.Range([.. Enumerable.Range(0, p).Select(trial.PartMean)]);
        RangeConstant within = RangeConstant.Repeatability(r, p * a), betweenParts = RangeConstant.OneRange(p, RangeConstant.MostPrintedParts);
        RangeConstant? betweenAppraisers = a > 1 ? RangeConstant.OneRange(a, RangeConstant.MostPrintedAppraisers) : null;
        double repeatability = meanRange * within.Value, difference = appraisers * (betweenAppraisers?.Value ?? 0);
        double variance = a > 1 ? difference * difference - repeatability * repeatability / (p * r) : 0;
        return new(trial, meanRange, appraisers, parts, within, betweenAppraisers, betweenParts,
            new(repeatability, Math.Sqrt(Math.Max(0, variance)), parts * betweenParts.Value),
            variance < 0 ? NegativeEstimates.Appraiser : NegativeEstimates.None);
    }
}

/// <summary>
/// What makes a mean range a standard deviation. Where the handbook prints it, its four digits are used, so that a trial
/// worked out by hand agrees; beyond, the exact 1/d2*.
/// </summary>
/// <param name="Value">Standard deviation per range.</param>
/// <param name="Printed">Whether it is the printed one.</param>
public readonly record struct RangeConstant(double Value, bool Printed)
{
    internal const int MostPrintedTrials = 3, MostPrintedAppraisers = 3, MostPrintedParts = 10;

    // K1 of 3, K2 of 3 and K3 of 10 as read [Measurement Systems Analysis 2010]; the others from memory, and like these equal
    // to the exact value rounded.
    private const double TwoTrials = 0.8862, ThreeTrials = 0.5908;
    private static readonly double[] _oneRange = [0.7071, 0.5231, 0.4467, 0.4030, 0.3742, 0.3534, 0.3375, 0.3249, 0.3146];

    /// <summary>K1: of so many repeats, their range averaged over so many cells.</summary>
    public static RangeConstant Repeatability(int trials, int cells) => trials <= MostPrintedTrials
        ? new(trials == 2 ? TwoTrials : ThreeTrials, true)
        : new(1 / Exact(trials, cells), false);

    /// <summary>K2, K3: of one range of so many means, printed up to <paramref name="mostPrinted"/> of them.</summary>
    public static RangeConstant OneRange(int means, int mostPrinted) => means <= mostPrinted
        ? new(_oneRange[means - 2], true)
        : new(1 / Exact(means, 1), false);

    /// <summary>d2* = √(d2² + d3²/g): root mean square of the mean range of so many groups of standard normal values.</summary>
    public static double Exact(int size, int groups)
    {
        (double mean, double deviation) = (NormalRange.Mean(size), NormalRange.StandardDeviation(size));
        return Math.Sqrt(mean * mean + deviation * deviation / groups);
    }
}
