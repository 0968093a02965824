using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>clearance</c>: unrounded, each number in the unit its name ends with; several struts stand in one list.</summary>
public sealed record ClearanceAnswer(IReadOnlyList<ClearanceAnswer.PairPart> Pairs)
{
    public required IReadOnlyList<CornerPart> Struts { get; init; }
    public required double Seconds { get; init; }

    /// <summary>Between is "tyre to arch edge"; source that of the margin; on_mm and other_mm the two places, on the first named and on the other.</summary>
    public sealed record PairPart(
        string Between, double Gap_mm, double Margin_mm, bool Holds, double WheelTravel_mm, double Rack_mm, string Source, string Strut, double Room_mm, string Margin,
        IReadOnlyList<double> On_mm, IReadOnlyList<double> Other_mm);

    public sealed record CornerPart(
        string Strut, string Wheel, string Sentence, bool Solved, string? Reason, double LeastTravel_mm, double GreatestTravel_mm, bool TravelKnown, double RackTravel_mm, double Camber_deg, bool? WithinAdjuster,
        IReadOnlyList<RulePart> Findings, IReadOnlyList<LinePart> Lines, GroundPart Ground, IReadOnlyList<LoadPart> Loads, IReadOnlyList<ChangePart> Sensitivities, CamberPart? CamberToClear,
        MapPart Map, IReadOnlyList<Note> Notes);

    public sealed record RulePart(
        string Rule, string Text, bool? Holds, bool CanBeWaived, string? Of, double? Value_mm, double? Limit_mm, double? Value_deg, double? Limit_deg, double? Value_kPa, double? Limit_kPa);

    public sealed record LinePart(string Name, double Length_mm, double Slack_mm, double WheelTravel_mm, double Rack_mm);

    public sealed record GroundPart(IReadOnlyList<GroundHeight> Heights, IReadOnlyList<GroundRuling> Rules);

    public sealed record GroundHeight(string State, double WheelTravel_mm, double OverRoad_mm, double OverRim_mm, IReadOnlyList<double> Point_mm);

    public sealed record GroundRuling(string Market, string Rule, double Limit_mm, string Over, string State, double? Clearance_mm, bool? Holds, string Source, string Read);

    public sealed record LoadPart(string Name, double? WheelTravel_mm, double? GaugePressure_kPa, string RestsOn, IReadOnlyList<string> Misses);

    /// <summary>Change is camber | spacer | thread; gaps_mm by pair, new gap less old.</summary>
    public sealed record ChangePart(string Change, double? By_deg, double? By_mm, IReadOnlyDictionary<string, double?> Gaps_mm);

    public sealed record CamberPart(double? Camber_deg, double Most_deg, IReadOnlyList<PairPart> Pairs);

    /// <summary>Rows follow wheel travel; room over the margin, null where the parts do not go, and which pair has it.</summary>
    public sealed record MapPart(IReadOnlyList<double> WheelTravel_mm, IReadOnlyList<double> Rack_mm, IReadOnlyList<IReadOnlyList<double?>> Room_mm, IReadOnlyList<IReadOnlyList<string?>> Between);

    public static ClearanceAnswer Of(IReadOnlyList<ClearanceResult> results) => new([.. results.SelectMany(r => PairsOf(r, r.Pairs))])
    {
        Struts = [.. results.Select(Of)],
        Seconds = results.Sum(r => r.Seconds),
    };

    private static CornerPart Of(ClearanceResult r)
    {
        ClearanceWords words = new(r, DisplayUnits.Metric);
        ClearanceCase corner = r.Case;
        return new(
            Names.Of(corner.End), WheelText.Of(r.Question.Wheel ?? corner.Corner.MeasuredWheel), words.Answer(), r.Solved, words.Reason(), corner.Travel_m.Least_m * 1e3, corner.Travel_m.Greatest_m * 1e3, corner.TravelKnown,
            corner.RackTravel_m * 1e3, Degrees(r.Question.Camber_rad), r.Set?.Within, [.. r.Findings.Select(finding => Of(finding, words))],
            [.. r.Lines.Select(line => new LinePart(line.Name, line.Length_m * 1e3, line.Slack_m * 1e3, line.Travel_m * 1e3, line.Rack_m * 1e3))], GroundOf(r),
            [.. r.Loads.Select(load => new LoadPart(load.Load, load.Travel_m * 1e3, load.GaugePressure_Pa * 1e-3, TravelWords.End(load.End), [.. load.Misses.Select(pair => ClearanceWords.Name(pair.Pair))]))],
            [.. r.Sensitivities.Select(change => Of(change, r.Pairs))],
            r.Camber is { } camber ? new(camber.Camber_rad * 180 / Math.PI, Degrees(camber.Most_rad), [.. PairsOf(r, camber.Gaps)]) : null, MapOf(r.Grid), [.. words.Notes()]);
    }

    private static IEnumerable<PairPart> PairsOf(ClearanceResult r, IReadOnlyList<PairGap> pairs) => pairs.Select(pair => new PairPart(
        ClearanceWords.Name(pair.Pair), pair.Gap.Distance_m * 1e3, pair.Margin_m * 1e3, pair.Holds, pair.Travel_m * 1e3, pair.Rack_m * 1e3,
        ClearanceWords.Source(r.Question.Margins.SourceOf(pair.Pair.Margin)), Names.Of(r.Case.End), pair.Room_m * 1e3, ClearanceMargins.Name(pair.Pair.Margin), Of(pair.Gap.On), Of(pair.Gap.Other)));

    private static RulePart Of(ClearanceFinding f, ClearanceWords words)
    {
        double? length = 1e3, angle = null, gauge = null;
        if (f.Rule == ClearanceRule.BearingTilt) (length, angle) = (null, 180 / Math.PI);
        if (f.Rule == ClearanceRule.GaugePressure) (length, gauge) = (null, 1e-3);
        return new(
            Camel(f.Rule.ToString()), words.Finding(f), f.Holds, f.CanBeWaived, f.Of, Finite(f.Value * length), Finite(f.Limit * length), Finite(f.Value * angle), Finite(f.Limit * angle),
            Finite(f.Value * gauge), Finite(f.Limit * gauge));
    }

    private static GroundPart GroundOf(ClearanceResult r) => new(
        [.. r.Ground.Select(ground => new GroundHeight(Of(ground.State), ground.Travel_m * 1e3, ground.OverRoad_m * 1e3, ground.OverRim_m * 1e3, Of(ground.At)))],
        [.. r.GroundFindings.Select(f => new GroundRuling(
            f.Rule.Market, f.Rule.Rule, f.Rule.Clearance_m * 1e3, f.Rule.Over == GroundDatum.Rim ? "rim" : "road", Of(f.Rule.State), f.Clearance_m * 1e3, f.Holds, f.Rule.Source, f.Rule.Read))]);

    private static ChangePart Of(ClearanceSensitivity change, IReadOnlyList<PairGap> pairs)
    {
        bool turned = change.Change == ClearanceChange.Camber;
        return new(
            Camel(change.Change.ToString()), turned ? Degrees(change.By) : null, turned ? null : change.By * 1e3,
            pairs.Select((pair, k) => (Name: ClearanceWords.Name(pair.Pair), By: Finite(change.Gaps_m[k] * 1e3))).ToDictionary(known => known.Name, known => known.By));
    }

    private static MapPart MapOf(ClearanceGrid grid)
    {
        int columns = grid.Racks_m.Count;
        return new(
            [.. grid.Travels_m.Select(travel => travel * 1e3)], [.. grid.Racks_m.Select(rack => rack * 1e3)], Rows(cell => Finite(grid.Room_m[cell] * 1e3)),
            Rows(cell => grid.Pair[cell] < 0 ? null : ClearanceWords.Name(grid.Pairs[grid.Pair[cell]])));

        IReadOnlyList<IReadOnlyList<T>> Rows<T>(Func<int, T> at) =>
            [.. Enumerable.Range(0, grid.Travels_m.Count).Select(row => (IReadOnlyList<T>)[.. Enumerable.Range(row * columns, columns).Select(at)])];
    }

    private static string Of(GroundState state) => state == GroundState.Drive ? "drive" : "aired out";

    private static double[] Of(Point point) => [point.X * 1e3, point.Y * 1e3, point.Z * 1e3];

    private static string Camel(string name) => $"{char.ToLowerInvariant(name[0])}{name[1..]}";

    private static double Degrees(double angle_rad) => angle_rad * 180 / Math.PI;

    private static double? Finite(double? value) => value is { } v && double.IsFinite(v) ? v : null;
}
