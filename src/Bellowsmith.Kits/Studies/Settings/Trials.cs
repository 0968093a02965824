using Bellowsmith.Kits.Studies.Ride;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Settings;

/// <summary>A strut, road and setting before it is driven; no strut where its load cannot be.</summary>
internal readonly record struct Trial(RideStrut? Strut, RoadQuestion Road, RideSetting Setting);

/// <summary>What a trial came to: figures, or the reason why there are none. Setting has every value filled in where it was driven.</summary>
internal readonly record struct TrialResult(RideSetting Setting, RideFigures? Figures, string? Reason);

/// <summary>Many trials driven at once on all cores, each as it would be alone, to the last bit. For one thread.</summary>
internal sealed class Trials
{
    private readonly Stands _stands = new();
    private readonly Dictionary<RoadQuestion, double[]> _roads = [];

    /// <summary>One result a trial, in their order.</summary>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public TrialResult[] Over(IReadOnlyList<Trial> trials, CancellationToken cancel)
    {
        TrialResult[] results = new TrialResult[trials.Count];
        List<(int Trial, Corner Corner)> ready = [];
        _stands.Prepare(trials.Where(t => t.Strut is not null).Select(t => (t.Strut!, t.Setting)));
        for (int k = 0; k < trials.Count; k++)
        {
            (Stand? stand, string? reason) = Ready(trials[k]);
            results[k] = new(stand?.Setting ?? trials[k].Setting, null, reason);
            if (reason is null) ready.Add((k, stand!.Corner));
        }

        foreach (var road in ready.GroupBy(r => trials[r.Trial].Road))
        {
            (int Trial, Corner Corner)[] driven = [.. road];
            RideFigures[] figures = Over(Array.ConvertAll(driven, d => d.Corner), road.Key, cancel);
            for (int k = 0; k < driven.Length; k++) results[driven[k].Trial] = results[driven[k].Trial] with { Figures = figures[k] };
        }

        return results;
    }

    /// <summary>One set of figures a corner.</summary>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public RideFigures[] Over(Corner[] corners, RoadQuestion road, CancellationToken cancel)
    {
        RideFigures[] figures = new RideFigures[corners.Length];
        RideRun.Over(corners, Heights(road), figures, Environment.ProcessorCount, cancel);
        return figures;
    }

    private (Stand? Stand, string? Reason) Ready(Trial trial)
    {
        if (trial.Strut is not { } strut) return (null, "the car's scales show less than the unsprung mass");
        Stand? stand = _stands.Of(strut, trial.Setting, out string reason);
        return (stand, stand is null ? reason : Feasible.WhyNot(stand));
    }

    private double[] Heights(RoadQuestion road)
    {
        if (!_roads.TryGetValue(road, out double[]? heights)) _roads[road] = heights = RideRoads.Heights(road);
        return heights;
    }
}
