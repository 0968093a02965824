using Bellowsmith.Kits.Studies.Travel;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>travel</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record TravelAnswer(IReadOnlyDictionary<string, TravelAnswer.Corner> Struts)
{
    public sealed record Corner(
        string Load, State? Drive, State? FullBump, State? FullDroop, State? AiredOut, State? Lifted, double? StopContact_mm,
        IReadOnlyList<Finding> Findings, IReadOnlyList<Change> MendsAll, IReadOnlyList<RideHeightPoint> RideHeights, string? Reason);

    public sealed record State(
        double? SpringHeight_mm, double? DamperLength_mm, double? StopGap_mm, double? WheelTravel_mm, double? GaugePressure_kPa,
        string StoppedBy);

    public sealed record Finding(
        string Rule, string Source, double? Value_mm, double? Limit_mm, bool? Holds, string? Mend, IReadOnlyList<Change> Mends);

    public sealed record Change(string What, double Change_mm, IReadOnlyList<string> AlsoMends, IReadOnlyList<string> ThenMisses);

    public sealed record RideHeightPoint(
        double GaugePressure_kPa, double? WheelTravel_mm, double? SpringHeight_mm, double StopForce_N, string StoppedBy);

    /// <summary>One strut that moves.</summary>
    public static Corner Of(TravelResult r)
    {
        TravelWords words = new(r, DisplayUnits.Metric);
        return new Corner(
            r.Case.Load, Of(r.Drive), Of(r.FullBump), Of(r.FullDroop), Of(r.AiredOut), Of(r.Lifted), Kilo(r.StopContact_m),
            [.. r.Findings.Select(f => new Finding(
                TravelWords.Rule(f.Rule), TravelWords.Source(f.Rule), Kilo(f.Value_m), Kilo(f.Limit_m), f.Holds, words.MendOf(f),
                [.. f.Mends.Select(Of)]))],
            [.. r.MendsAll.Select(Of)], [.. r.RideHeights.Select(Of)], null);
    }

    /// <summary>One strut without a drive height to move about.</summary>
    public static Corner Without(string load, string reason) =>
        new(load, null, null, null, null, null, null, [], [], [], reason);

    private static State Of(TravelState s) => new(
        Kilo(s.SpringHeight_m), Kilo(s.DamperLength_m), Kilo(s.StopGap_m), Kilo(s.WheelTravel_m), Finite(s.GaugePressure_Pa * 1e-3),
        TravelWords.End(s.End));

    private static Change Of(Mend m) => new(
        m.Kind.ToString().ToLowerInvariant(), m.Change_m * 1e3, [.. m.AlsoMends.Select(TravelWords.Rule)],
        [.. m.Breaks.Select(TravelWords.Rule)]);

    private static RideHeightPoint Of(RideHeight r) => new(
        r.GaugePressure_Pa * 1e-3, Kilo(r.WheelTravel_m), Kilo(r.SpringHeight_m), r.StopForce_N, TravelWords.End(r.End));

    private static double? Kilo(double? si) => Finite(si * 1e3);

    private static double? Finite(double? value) => value is { } v && double.IsFinite(v) ? v : null;
}
