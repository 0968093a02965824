using Bellowsmith.Kits.Units;
using Bellowsmith.Quality.Charts;

namespace Bellowsmith.Kits.Studies.Charting;

/// <summary>Which chart of a file is asked for. Values are in the file's unit or carry their own; what is not given is estimated.</summary>
public sealed record ChartQuestion
{
    public const double UsualWeight = 0.2, UsualWidth = 3, UsualAllowance_sd = 0.5, UsualDecision_sd = 5;

    public required ChartKind Kind { get; init; }

    /// <summary>How averages see their spread.</summary>
    public SpreadMeasure Measure { get; init; }

    /// <summary>How many first points of each phase set the limits; null for all.</summary>
    public int? Base { get; init; }

    /// <summary>Centre line or target; for counts a count, for shares a share.</summary>
    public WrittenValue? Centre { get; init; }

    /// <summary>Standard deviation of a single value.</summary>
    public WrittenValue? Sd { get; init; }

    public double Weight { get; init; } = UsualWeight;
    public double Width { get; init; } = UsualWidth;
    public bool FromStart { get; init; }
    public double Allowance_sd { get; init; } = UsualAllowance_sd;
    public double Decision_sd { get; init; } = UsualDecision_sd;

    /// <summary>What the points are watched for; points of weighted averages and cumulative sums only for their limits.</summary>
    public IReadOnlyList<RunRule> Rules { get; init; } = [RunRule.BeyondThreeSigma];

    /// <summary>Of the simulation that prices rules which see order together with others.</summary>
    public int Seed { get; init; } = 1;

    public bool CarriesPast => Kind is ChartKind.Ewma or ChartKind.Cusum;

    public bool IsOfCounts => Kind is ChartKind.Counts or ChartKind.Shares;
}
