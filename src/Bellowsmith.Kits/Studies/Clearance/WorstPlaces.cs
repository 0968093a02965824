using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>
/// The least gap of every pair between the places of a sweep. Two bodies that pass dip between two places; so from each place that is
/// nearer than its neighbours and not far behind the nearest, travel and rack are followed downhill by halving strides. Where several
/// places are alike, the one nearest to drive height and straight ahead counts.
/// </summary>
internal static class WorstPlaces
{
    // A dip between two places is shallower at either density (docs/theory/clearance.md).
    private const double Dip_m = 9e-3;

    // What has so much room left misses no margin by a dip: its place of the sweep will do.
    private const double Roomy_m = 2 * Dip_m;

    // Of gaps alike only the search's last digit differs.
    private const double Alike_m = 2 * RevolvedBody.Tolerance_m, Close_m = 2e-4;

    /// <summary>The one with the least room first.</summary>
    public static PairGap[] Of(ClearanceSweep sweep, ClearanceMargins margins)
    {
        PairGap?[] least = new PairGap?[sweep.Shapes.Pairs.Count];
        Parallel.For(0, least.Length, pair => least[pair] = Of(sweep, margins, pair));
        return [.. least.OfType<PairGap>().OrderBy(pair => pair.Room_m)];
    }

    // Null where the parts go to none of the places.
    private static PairGap? Of(ClearanceSweep sweep, ClearanceMargins margins, int pair)
    {
        PairGap? least = null;
        foreach (int cell in Starts(sweep, pair))
            if (Downhill(sweep, margins, pair, cell) is var found && (least is null || found.Gap.Distance_m < least.Gap.Distance_m)) least = found;
        return least;
    }

    private static IEnumerable<int> Starts(ClearanceSweep sweep, int pair)
    {
        double least = double.PositiveInfinity;
        for (int cell = 0; cell < sweep.States.Length; cell++) least = Math.Min(least, Distance(sweep, pair, cell));
        return Enumerable.Range(0, sweep.States.Length).Where(cell => Distance(sweep, pair, cell) <= least + Dip_m && IsLeastAround(sweep, pair, cell));
    }

    private static bool IsLeastAround(ClearanceSweep sweep, int pair, int cell)
    {
        double here = Distance(sweep, pair, cell);
        foreach (int beside in sweep.Around(cell))
            if (Distance(sweep, pair, beside) is var there && (there < here - Alike_m || there < here + Alike_m && sweep.IsBefore(beside, cell))) return false;
        return double.IsFinite(here);
    }

    private static double Distance(ClearanceSweep sweep, int pair, int cell) => sweep[pair, cell]?.Distance_m ?? double.PositiveInfinity;

    private static PairGap Downhill(ClearanceSweep sweep, ClearanceMargins margins, int pair, int cell)
    {
        PassingPair asked = sweep.Shapes.Pairs[pair];
        LinkageState state = sweep.States[cell]!;
        PairGap best = new(asked, sweep[pair, cell]!.Value, margins.Of_m(asked.Margin), state.Travel_m, state.Rack_m);
        double travel = Stride(sweep.Travels_m), rack = Stride(sweep.Racks_m);
        if (best.Room_m > Roomy_m) return best;
        for (; travel > Close_m || rack > Close_m; (travel, rack) = (travel / 2, rack / 2))
            while (Better(sweep, best, travel, rack) is { } better) best = better;
        return best;
    }

    private static PairGap? Better(ClearanceSweep sweep, PairGap best, double travel, double rack)
    {
        PairGap? better = null;
        foreach ((double t, double r) in (ReadOnlySpan<(double, double)>)[(travel, 0), (-travel, 0), (0, rack), (0, -rack)])
            if (At(sweep, best, best.Travel_m + t, best.Rack_m + r) is { } there && there.Gap.Distance_m < (better?.Gap.Distance_m ?? best.Gap.Distance_m - Alike_m / 2)) better = there;
        return better;
    }

    private static PairGap? At(ClearanceSweep sweep, PairGap best, double travel, double rack)
    {
        (travel, rack) = (Math.Clamp(travel, sweep.Travels_m[0], sweep.Travels_m[^1]), Math.Clamp(rack, sweep.Racks_m[0], sweep.Racks_m[^1]));
        if (travel == best.Travel_m && rack == best.Rack_m || sweep.Shapes.Linkage.At(travel, rack).State is not { } state) return null;
        Gap gap = sweep.Shapes.At(best.Pair.One, state).GapTo(sweep.Shapes.At(best.Pair.Other, state));
        return best with { Gap = gap, Travel_m = travel, Rack_m = rack };
    }

    private static double Stride(double[] places) => places.Length < 2 ? 0 : (places[^1] - places[0]) / (places.Length - 1) / 2;
}
