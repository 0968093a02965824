namespace Bellowsmith.Quality.Charts;

/// <summary>
/// Where a chart's limits come from: estimated from every point of a phase, or from its first points and then held, or given.
/// </summary>
/// <param name="Base">How many first points of each phase the estimate uses; later ones do not touch the limits. Null: all.</param>
/// <param name="Centre">The centre given; null to estimate it.</param>
/// <param name="Sd">Standard deviation of a single value, given; null to estimate it.</param>
/// <param name="PhaseStarts">First point (from 0) of each phase, ascending, beginning with 0; null for one phase.</param>
public sealed record ChartBasis(int? Base = null, double? Centre = null, double? Sd = null, int[]? PhaseStarts = null)
{
    /// <summary>Fewer points than this give no limits: two thirds of their width and more would be uncertain (95 %).</summary>
    public const int LeastPoints = 8;

    /// <summary>From about here on, the limits hardly move any more (common practice).</summary>
    public const int AmplePoints = 25;

    public static ChartBasis All { get; } = new();

    internal IEnumerable<Stretch> Stretches(int points)
    {
        int[] starts = PhaseStarts ?? [0];
        for (int p = 0; p < starts.Length; p++)
        {
            int end = p + 1 < starts.Length ? starts[p + 1] : points;
            yield return new(starts[p], end, Base is { } b ? Math.Min(end, starts[p] + b) : end);
        }
    }
}

/// <summary>The points of one phase, and the end of those its limits are estimated from.</summary>
internal readonly record struct Stretch(int First, int End, int BaseEnd)
{
    public int BasePoints => BaseEnd - First;
}

public enum LimitTrouble
{
    None,

    /// <summary>Fewer than <see cref="ChartBasis.LeastPoints"/> points to estimate from.</summary>
    TooFewPoints,

    /// <summary>Nothing differs, so there is no spread to set limits by.</summary>
    NoSpread,

    /// <summary>Not one subgroup has two values to tell the spread from.</summary>
    NoSubgroups,
}

/// <summary>
/// One phase of a chart: what its limits stand on. <paramref name="Sd"/> is of a single value (of counts and shares: of a point
/// of mean size); <paramref name="SdError"/> the relative standard error of its estimate, 0 where it was given.
/// </summary>
public sealed record ChartPhase(
    int First, int End, int BasePoints, double Centre, double Sd, double SdError, LimitTrouble Trouble)
{
    public bool Judged => Trouble == LimitTrouble.None;

    internal static ChartPhase Of(in Stretch stretch, double centre, SdEstimate sd, bool given)
    {
        LimitTrouble trouble = given ? LimitTrouble.None
            : stretch.BasePoints < ChartBasis.LeastPoints ? LimitTrouble.TooFewPoints
            : sd.Trouble != LimitTrouble.None ? sd.Trouble
            : ControlLimits.IsSpread(sd.Value, centre) ? LimitTrouble.None : LimitTrouble.NoSpread;
        bool judged = trouble == LimitTrouble.None;
        return new(stretch.First, stretch.End, given ? 0 : stretch.BasePoints, judged ? centre : double.NaN, judged ? sd.Value : double.NaN,
            judged ? sd.Error : double.NaN, trouble);
    }
}

/// <summary>A standard deviation and the relative standard error of its estimate.</summary>
internal readonly record struct SdEstimate(double Value, double Error, LimitTrouble Trouble = LimitTrouble.None);
