namespace Bellowsmith.Kits.Studies.InstalledHeight;

/// <summary>
/// Which solution to build: among those within the pressure limit the one that lacks least of travel both ways, of distance
/// from the data's edge and of the thread's reach; where they lack alike, the one whose rate changes least with height.
/// </summary>
internal static class Recommendation
{
    /// <summary>Closer than this to the end of the data a slope is poorly known. Common practice, no source.</summary>
    public const double DataEdge_m = 0.003;

    private const double Alike_m = 0.0005;

    /// <summary>Index of the recommended solution; −1 for none.</summary>
    public static (int Index, RecommendedFor For) Among(IReadOnlyList<HeightSolution> solutions)
    {
        int[] usable = Enumerable.Range(0, solutions.Count).Where(k => solutions[k].WithinPressureLimit).ToArray();
        if (usable.Length == 0) return (-1, RecommendedFor.Nothing);
        double least = usable.Min(k => solutions[k].Room.Shortfall_m);
        int[] alike = usable.Where(k => solutions[k].Room.Shortfall_m <= least + Alike_m).ToArray();
        int best = alike.MinBy(k => Math.Abs(solutions[k].Sensitivities.RateSlope_N_per_m2));
        RecommendedFor reason = solutions.Count == 1 ? RecommendedFor.OnlyOne
            : usable.Length == 1 ? RecommendedFor.GaugePressureLimit
            : alike.Length == usable.Length ? RecommendedFor.FlatterRate
            : RecommendedFor.MoreRoom;
        return (best, reason);
    }
}
