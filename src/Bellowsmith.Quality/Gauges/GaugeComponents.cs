namespace Bellowsmith.Quality.Gauges;

/// <summary>
/// What spreads the readings of a gauge trial, each as one standard deviation in the readings' unit, never negative:
/// variances add, so <c>gaugeRr² = repeatability² + reproducibility²</c> and <c>total² = gaugeRr² + partToPart²</c>.
/// </summary>
/// <param name="Repeatability">One appraiser on one part, again and again.</param>
/// <param name="Reproducibility">Between appraisers, with what an appraiser does differently from part to part.</param>
/// <param name="PartToPart">Between the true sizes of the parts.</param>
public sealed record GaugeComponents(double Repeatability, double Reproducibility, double PartToPart)
{
    public double GaugeRr => double.Hypot(Repeatability, Reproducibility);

    public double Total => double.Hypot(GaugeRr, PartToPart);

    /// <summary>Gauge in per cent of total standard deviation; null where nothing varied.</summary>
    public double? GaugeRrPercent => Total > 0 ? 100 * GaugeRr / Total : null;

    /// <summary>
    /// How many groups of parts the gauge can tell apart, <c>⌊1.41·partToPart/gaugeRr⌋</c>: √2 sd ratios, rounded down, common
    /// practice; null where the gauge did not scatter at all.
    /// </summary>
    public int? DistinctCategories => GaugeRr > 0 ? (int)Math.Min(int.MaxValue, Math.Floor(1.41 * PartToPart / GaugeRr)) : null;

    /// <summary>Six standard deviations of the gauge in per cent of a tolerance's width; common practice.</summary>
    /// <param name="tolerance">Upper less lower limit, in the readings' unit, more than nothing.</param>
    public double PercentOfTolerance(double tolerance) => 100 * 6 * GaugeRr / tolerance;
}

/// <summary>Variance estimates that came out below zero and were set to it: too small to see beside what scatters above them.</summary>
[Flags]
public enum NegativeEstimates
{
    None = 0,
    Appraiser = 1,
    Interaction = 2,
    Part = 4,
}
