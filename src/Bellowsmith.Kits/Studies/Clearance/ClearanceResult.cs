using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>The least gap of a pair over travel and rack, and where it is.</summary>
/// <param name="Pair">Whose.</param>
/// <param name="Gap">On the pair's first and its other body, car axes.</param>
/// <param name="Margin_m">Room asked.</param>
/// <param name="Travel_m">Of the wheel from drive height, bump +.</param>
/// <param name="Rack_m">To the left +.</param>
public sealed record PairGap(PassingPair Pair, Gap Gap, double Margin_m, double Travel_m, double Rack_m)
{
    /// <summary>What is left over the margin; below 0 it is not kept.</summary>
    public double Room_m => Gap.Distance_m - Margin_m;

    public bool Holds => Met.AtLeast(Gap.Distance_m, Margin_m);

    public bool Touches => Gap.Distance_m <= 0;
}

/// <summary>A hose or sensor line: its length less the shortest way along its points, least over the sweep; below 0 it is taut.</summary>
public sealed record LineSlack(string Name, double Length_m, double Slack_m, double Travel_m, double Rack_m);

/// <summary>Ground clearance of the lowest measured fixed part against one rule; null where it does not apply or nothing was measured.</summary>
public sealed record GroundFinding(GroundRule Rule, double? Clearance_m, bool? Holds);

/// <summary>The lowest of the underbody's points over the road, and over the rim's lowest point, at one height of the car.</summary>
public sealed record GroundClearance(GroundState State, double Travel_m, Point At, double OverRoad_m, double OverRim_m);

/// <summary>Where the wheel stands under a load case on the air that is in it at drive height, and which pairs miss their margin there.</summary>
/// <param name="Load">Name of the load case.</param>
/// <param name="Travel_m">From drive height, bump +; null where it lies outside the spring's data.</param>
/// <param name="GaugePressure_Pa">On the same air; null as above.</param>
/// <param name="End">What it rests on; null as above.</param>
/// <param name="Misses">At that height, over the whole rack.</param>
public sealed record LoadStance(string Load, double? Travel_m, double? GaugePressure_Pa, TravelEnd? End, IReadOnlyList<PairGap> Misses);

/// <summary>What is changed to see what it does.</summary>
public enum ClearanceChange { Camber, Spacer, Thread }

/// <summary>What a change does to each pair's least gap, in the order of the pairs.</summary>
/// <param name="Change">Of what.</param>
/// <param name="By">rad of camber, m of the others.</param>
/// <param name="Gaps_m">New gap less old; NaN where it is not there.</param>
public sealed record ClearanceSensitivity(ClearanceChange Change, double By, IReadOnlyList<double> Gaps_m);

/// <summary>
/// The least room over any pair's margin at every place looked at: cell of rack c and travel r is <c>Room_m[r * Racks.Count + c]</c>, NaN where
/// the parts do not go.
/// </summary>
public sealed record ClearanceGrid(IReadOnlyList<double> Travels_m, IReadOnlyList<double> Racks_m, IReadOnlyList<double> Room_m, IReadOnlyList<int> Pair, IReadOnlyList<PassingPair> Pairs);

/// <summary>The least change of camber that makes every pair of the wheel keep its margin, or that none does.</summary>
/// <param name="Camber_rad">Null where none within the adjuster's reach does.</param>
/// <param name="Most_rad">The most the adjuster makes, top in.</param>
/// <param name="Gaps">All pairs at that camber, or at the most of it.</param>
public sealed record CamberToClear(double? Camber_rad, double Most_rad, IReadOnlyList<PairGap> Gaps);

/// <summary>What touches what at one corner.</summary>
public sealed record ClearanceResult
{
    public required ClearanceCase Case { get; init; }

    public required ClearanceQuestion Question { get; init; }

    /// <summary>How the camber asked for is made; null where no setting of the adjuster makes it, and all below is empty then.</summary>
    public required CamberSet? Set { get; init; }

    /// <summary>The one with the least room first.</summary>
    public required IReadOnlyList<PairGap> Pairs { get; init; }

    public required ClearanceGrid Grid { get; init; }

    public required IReadOnlyList<LineSlack> Lines { get; init; }

    public required IReadOnlyList<GroundClearance> Ground { get; init; }

    public required IReadOnlyList<GroundFinding> GroundFindings { get; init; }

    public required IReadOnlyList<LoadStance> Loads { get; init; }

    public required IReadOnlyList<ClearanceFinding> Findings { get; init; }

    public required IReadOnlyList<ClearanceSensitivity> Sensitivities { get; init; }

    /// <summary>Null where every pair of the wheel keeps its margin, or it was not asked.</summary>
    public required CamberToClear? Camber { get; init; }

    public required double Seconds { get; init; }

    internal static ClearanceResult Empty(ClearanceCase corner, ClearanceQuestion question, CamberSet? set) => new()
    {
        Case = corner,
        Question = question,
        Set = set,
        Pairs = [],
        Grid = new([], [], [], [], []),
        Lines = [],
        Ground = [],
        GroundFindings = [],
        Loads = [],
        Findings = [],
        Sensitivities = [],
        Camber = null,
        Seconds = 0,
    };

    /// <summary>How much of the places asked for the parts do not go to, 0 to 1.</summary>
    public double Unreached => Grid.Room_m.Count > 0 ? Grid.Room_m.Count(double.IsNaN) / (double)Grid.Room_m.Count : 0;

    /// <summary>Whether the corner stands, the adjuster makes the camber and the parts go everywhere: only then is all of it answered.</summary>
    public bool Solved => Set is not null && Pairs.Count > 0 && Case.Corner.Unsettled is null && Unreached == 0;

    public IEnumerable<PairGap> Misses => Pairs.Where(pair => !pair.Holds);
}
