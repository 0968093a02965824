using Bellowsmith.Quality.Gauges;

namespace Bellowsmith.References.Quality;

/// <summary>
/// The crossed trial of ten parts, three appraisers and three trials of [Measurement Systems Analysis 2010]: by ranges with
/// its printed constants (0.5908, 0.5231, 0.3146) and by analysis of variance. The handbook prints 0.20188, 0.22963, 0.30575
/// and 1.10456 where its own constants give 0.20186, 0.22967, 0.30577 and 1.10460: it rounds on the way, so it is held to
/// 5e-5 and the unrounded digits to 1e-8. A public copy of its data has three readings of part 1 wrong; these are the ones
/// five others agree on.
/// </summary>
public sealed class GaugeTrials
{
    private static readonly double[] _handbook =
    [
        0.29, 0.41, 0.64, 0.08, 0.25, 0.07, 0.04, -0.11, -0.15,
        -0.56, -0.68, -0.58, -0.47, -1.22, -0.68, -1.38, -1.13, -0.96,
        1.34, 1.17, 1.27, 1.19, 0.94, 1.34, 0.88, 1.09, 0.67,
        0.47, 0.50, 0.64, 0.01, 1.03, 0.20, 0.14, 0.20, 0.11,
        -0.80, -0.92, -0.84, -0.56, -1.20, -1.28, -1.46, -1.07, -1.45,
        0.02, -0.11, -0.21, -0.20, 0.22, 0.06, -0.29, -0.67, -0.49,
        0.59, 0.75, 0.66, 0.47, 0.55, 0.83, 0.02, 0.01, 0.21,
        -0.31, -0.20, -0.17, -0.63, 0.08, -0.34, -0.46, -0.56, -0.49,
        2.26, 1.99, 2.01, 1.80, 2.12, 2.19, 1.77, 1.45, 1.87,
        -1.36, -1.25, -1.31, -1.68, -1.62, -1.50, -1.49, -1.77, -2.16,
    ];

    private static readonly CrossedTrial _trial = new(10, 3, 3, _handbook);
    private static readonly CrossedRanges _ranges = CrossedRanges.Of(_trial);
    private static readonly CrossedAnova _anova = CrossedAnova.Of(_trial);

    public static TheoryData<string, double, double, double> Ranges => new()
    {
        { "mean range", _ranges.MeanRange, 0.3416667, 5e-8 },
        { "range of appraisers", _ranges.AppraiserRange, 0.4446667, 5e-8 },
        { "range of parts", _ranges.PartRange, 3.5111111, 5e-8 },
        { "repeatability", _ranges.Components.Repeatability, 0.20185667, 1e-8 },
        { "reproducibility", _ranges.Components.Reproducibility, 0.22966703, 1e-8 },
        { "gauge", _ranges.Components.GaugeRr, 0.30576635, 1e-8 },
        { "part to part", _ranges.Components.PartToPart, 1.10459556, 1e-8 },
        { "total", _ranges.Components.Total, 1.14613455, 1e-8 },
        { "per cent", _ranges.Components.GaugeRrPercent!.Value, 26.678050, 1e-6 },
        { "categories", _ranges.Components.DistinctCategories!.Value, 5, 0 },
        { "repeatability, printed", _ranges.Components.Repeatability, 0.20188, 5e-5 },
        { "reproducibility, printed", _ranges.Components.Reproducibility, 0.22963, 5e-5 },
        { "gauge, printed", _ranges.Components.GaugeRr, 0.30575, 5e-5 },
        { "part to part, printed", _ranges.Components.PartToPart, 1.10456, 5e-5 },
        { "per cent, printed", _ranges.Components.GaugeRrPercent!.Value, 26.68, 5e-3 },
    };

    public static TheoryData<string, double, double, double> Anova => new()
    {
        { "squares of parts", _anova.Part.SumOfSquares, 88.3619344, 5e-8 },
        { "squares of appraisers", _anova.Appraiser!.SumOfSquares, 3.1672622, 5e-8 },
        { "squares of interaction", _anova.Interaction!.SumOfSquares, 0.3589822, 5e-8 },
        { "F of interaction", _anova.Interaction!.F!.Value, 0.433721, 5e-7 },
        { "p of interaction", _anova.Interaction!.P!.Value, 0.974106, 5e-7 },
        { "pooled squares", _anova.Repeatability.SumOfSquares, 2.7589333 + 0.3589822, 1e-7 },
        { "pooled degrees", _anova.Repeatability.Degrees, 78, 0 },
        { "F of parts", _anova.Part.F!.Value, 245.613910, 5e-7 },
        { "F of appraisers", _anova.Appraiser!.F!.Value, 39.617246, 5e-7 },
        { "repeatability²", Square(_anova.Components.Repeatability), 0.0399732764, 1e-10 },
        { "reproducibility²", Square(_anova.Components.Reproducibility), 0.0514552612, 1e-10 },
        { "part to part²", Square(_anova.Components.PartToPart), 1.0864466044, 1e-10 },
        { "repeatability", _anova.Components.Repeatability, 0.19993318, 1e-8 },
        { "reproducibility", _anova.Components.Reproducibility, 0.22683752, 1e-8 },
        { "gauge", _anova.Components.GaugeRr, 0.30237152, 1e-8 },
        { "part to part", _anova.Components.PartToPart, 1.04232749, 1e-8 },
        { "total", _anova.Components.Total, 1.08529956, 1e-8 },
        { "per cent", _anova.Components.GaugeRrPercent!.Value, 27.8606509, 1e-7 },
        { "categories", _anova.Components.DistinctCategories!.Value, 4, 0 },
    };

    [Theory]
    [MemberData(nameof(Ranges))]
    public void ByRanges_OfTheHandbook_IsThePublished(string what, double answer, double published, double tolerance) =>
        Assert.True(Math.Abs(answer - published) <= tolerance, $"{what}: {answer} for {published}");

    [Theory]
    [MemberData(nameof(Anova))]
    public void ByAnova_OfTheHandbook_IsTheRecomputed(string what, double answer, double published, double tolerance) =>
        Assert.True(Math.Abs(answer - published) <= tolerance, $"{what}: {answer} for {published}");

    // The printed constants are 1/d2* of so many repeats, appraisers and parts, to four digits.
    [Theory]
    [InlineData(2, 1, 0.7071)]
    [InlineData(3, 1, 0.5231)]
    [InlineData(4, 1, 0.4467)]
    [InlineData(5, 1, 0.4030)]
    [InlineData(6, 1, 0.3742)]
    [InlineData(7, 1, 0.3534)]
    [InlineData(8, 1, 0.3375)]
    [InlineData(9, 1, 0.3249)]
    [InlineData(10, 1, 0.3146)]
    [InlineData(2, 100000000, 0.8862)]
    [InlineData(3, 100000000, 0.5908)]
    public void RangeConstant_Printed_IsTheExactRounded(int size, int groups, double printed)
    {
        Assert.Equal(printed, Math.Round(1 / RangeConstant.Exact(size, groups), 4));
        Assert.Equal(new(printed, true), groups == 1 ? RangeConstant.OneRange(size, 10) : RangeConstant.Repeatability(size, groups));
    }

    private static double Square(double x) => x * x;
}
