using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Search;

/// <summary>One setting that was driven.</summary>
/// <param name="Pair">Spring and damper.</param>
/// <param name="Setting">Every value filled in.</param>
/// <param name="Figures">What the ride came to.</param>
public sealed record SearchPoint(SearchPair Pair, RideSetting Setting, RideFigures Figures)
{
    /// <summary>What a front trades off.</summary>
    internal static IReadOnlyList<RideQuantity> Objectives { get; } = [RideQuantity.WeightedRms, RideQuantity.TyreLoad, RideQuantity.StopContacts];

    /// <summary>The same a click, a gauge pressure, a load and a height aside; empty where that was not asked.</summary>
    public IReadOnlyList<SearchNeighbour> Neighbours { get; init; } = [];

    /// <summary>The neighbour that is worse by most; null where none was asked.</summary>
    public SearchNeighbour? Worst => Neighbours.MaxBy(n => n.Worsening);

    internal static double[] Costs(RideFigures figures, RoadQuestion road) => [.. Objectives.Select(q => q.Of(figures, road))];
}

/// <summary>One step aside of a setting.</summary>
/// <param name="Change">What was changed, in words.</param>
/// <param name="Figures">What came of it; null where it cannot stand there.</param>
/// <param name="Reason">Why it cannot; null where it can.</param>
/// <param name="Worsening">The greatest relative worsening of the three costs, of stop contacts against at least one a kilometre; infinite where it cannot stand.</param>
/// <param name="Excess">By how much it exceeds the limits, as <see cref="SearchQuestion.Excess"/>; infinite where it cannot stand.</param>
public sealed record SearchNeighbour(string Change, RideFigures? Figures, string? Reason, double Worsening, double Excess)
{
    /// <summary>Whether it stands and keeps what the setting itself must keep.</summary>
    public bool KeepsLimits => Excess == 0;
}
