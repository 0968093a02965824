namespace Bellowsmith.Kits.Figures;

/// <summary>
/// A figure as data: numbers in the units shown, NaN where there is nothing to draw. Page and paper draw it the same way; it
/// knows no colours, pixels or markup. Later in a list is drawn over earlier; the lists in the order they stand here.
/// </summary>
public sealed record Chart
{
    /// <summary>Stable name: rate, gaugePressure, rideHeight, damperOverlay, dampingRatio, rideSpeeds, individuals, histogram and so on.</summary>
    public required string Id { get; init; }

    /// <summary>What is shown, for a heading and for those who hear it.</summary>
    public required string Title { get; init; }

    /// <summary>What the figure says at this setting, in one sentence.</summary>
    public required string Summary { get; init; }

    public required ChartAxis X { get; init; }
    public required ChartAxis Y { get; init; }

    /// <summary>Faint fields behind everything, such as one to two standard deviations from a centre line. Without words.</summary>
    public IReadOnlyList<ChartBand> Zones { get; init; } = [];

    /// <summary>95 % bands, drawn below curves and points.</summary>
    public IReadOnlyList<ChartBand> Bands { get; init; } = [];

    /// <summary>A histogram's bars, from the lower end of the vertical axis up.</summary>
    public IReadOnlyList<ChartBars> Bars { get; init; } = [];

    /// <summary>Lines from edge to edge upward: where a phase begins, what is allowed or wanted where X is the value.</summary>
    public IReadOnlyList<ChartUpright> Uprights { get; init; } = [];

    /// <summary>What is wanted or allowed, as a line across, dashed: tolerance and control limits. They may be steps.</summary>
    public IReadOnlyList<ChartCurve> Limits { get; init; } = [];

    /// <summary>Centre lines across, thin and solid. They may be steps.</summary>
    public IReadOnlyList<ChartCurve> Centres { get; init; } = [];

    public IReadOnlyList<ChartCurve> Curves { get; init; } = [];
    public IReadOnlyList<ChartPoints> Measured { get; init; } = [];

    /// <summary>Estimates with the interval around each.</summary>
    public IReadOnlyList<ChartInterval> Intervals { get; init; } = [];

    public IReadOnlyList<ChartMark> Marks { get; init; } = [];
}
