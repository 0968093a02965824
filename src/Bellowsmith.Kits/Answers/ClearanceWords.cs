using System.Globalization;
using Bellowsmith.Kits.Studies.Clearance;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of what touches what: the same on page, terminal and paper.</summary>
public sealed class ClearanceWords(ClearanceResult result, DisplayUnits units)
{
    private const double StraightAhead_m = 5e-4, AtAnEnd_m = 5e-5;

    public const string Signs = "Gaps apart +, one in the other −; bump +, rack + to the left; places in the axes of the suspension document.";

    /// <summary>The verdict in one sentence, then what may not be waived.</summary>
    public string Answer()
    {
        if (result.Set is null) return $"No setting of the {Adjuster} makes {Angle(result.Question.Camber_rad)} of camber: nothing was swept.";
        if (result.Pairs.Count == 0) return "The parts go to none of the places asked for: nothing was swept.";
        ClearanceFinding[] never = [.. result.Findings.Where(finding => finding is { Holds: false, CanBeWaived: false })];
        string verdict = result.Case.Corner.Unsettled is null ? Verdict() : $"{Reason()} With {Length(ClearanceCase.UsualTravel_m)} of travel taken either way, and no bellows: {Verdict()}";
        if (result.Unreached > 0) verdict = $"{verdict} {Unreached}";
        return never.Length == 0 ? verdict : $"{verdict} Not to be waived: {string.Join("; ", never.Select(Finding))}.";
    }

    /// <summary>Why not all of it is answered; null where it is.</summary>
    public string? Reason() => result.Case.Corner.Unsettled is { } strut ? TravelWords.NoDrive(strut, units) : result.Unreached > 0 ? Unreached : null;

    private string Unreached => string.Create(CultureInfo.InvariantCulture, $"The parts do not go to {Math.Max(100 * result.Unreached, 1):F0} % of the places asked for: nothing is said of those.");

    /// <summary>"tyre to arch edge".</summary>
    public static string Name(PassingPair pair) => $"{Name(pair.One)} to {Name(pair.Other)}";

    public static string Name(PassingBody body) => body.Kind switch
    {
        BodyKind.Tyre => "tyre",
        BodyKind.Rim => "rim",
        BodyKind.Bellows => "bellows",
        BodyKind.Strut => "strut",
        BodyKind.Halfshaft => "halfshaft",
        BodyKind.ArchEdge => "arch edge",
        BodyKind.Liner => "liner",
        BodyKind.Tower => "tower",
        _ => LinkageWords.Part(body.Part!.Value),
    };

    public static string Source(MarginSource source) => source switch
    {
        MarginSource.TradeGuide => "[Wheel Clearance Guide 2026]",
        MarginSource.CommonPractice => "common practice, no source",
        _ => "asked for in the kit or at the prompt",
    };

    public string Source(PairGap pair) => Source(result.Question.Margins.SourceOf(pair.Pair.Margin));

    /// <summary>"37.9 mm of bump and full left lock".</summary>
    public string Place(double travel_m, double rack_m) => result.Case.RackTravel_m > 0 ? $"{Travel(travel_m)}{(IsStraight(rack_m) ? ", straight ahead" : $" and {Lock(rack_m)}")}" : Travel(travel_m);

    /// <summary>"straight ahead", "full left lock", "78 % of right lock": which way the wheel then points, not the rack.</summary>
    public string Lock(double rack_m)
    {
        if (IsStraight(rack_m)) return "straight ahead";
        double share = Math.Abs(rack_m) / result.Case.RackTravel_m;
        string side = TurnsLeft(rack_m) ? "left" : "right";
        return share > 1 - AtAnEnd_m ? $"full {side} lock" : string.Create(CultureInfo.InvariantCulture, $"{100 * share:F0} % of {side} lock");
    }

    public string Travel(double travel_m) => Math.Abs(travel_m) < AtAnEnd_m ? "drive height" : $"{Length(Math.Abs(travel_m))} of {(travel_m > 0 ? "bump" : "droop")}";

    /// <summary>What there is against what is asked.</summary>
    public string Finding(ClearanceFinding finding) => finding.Rule switch
    {
        ClearanceRule.LineTaut => $"{finding.Of}: {Line(finding.Of!)}",
        ClearanceRule.LineNearTaut => $"{finding.Of}: {Line(finding.Of!)}, {Length(finding.Limit)} asked (common practice, no source)",
        ClearanceRule.TyreOnBellows => Bellows("wheel to bellows", finding),
        ClearanceRule.TowerOnBellows => Bellows("bellows to tower", finding),
        ClearanceRule.BearingTilt when finding.Value is null => "whether the top mount's bearing takes the strut's tilt is not known: the kit names no bearing",
        ClearanceRule.BearingTilt => $"the top mount's bearing tilts {Angle(finding.Value)} over the sweep, {Angle(finding.Limit)} allowed",
        ClearanceRule.SolidBeforeSpring => finding.Value is null ? "whether the stop is solid before the spring is at its least height is not known"
            : $"the stop is solid {Length(Math.Abs(finding.Value.Value))} {(finding.Value < 0 ? "below" : "above")} the spring's least height",
        ClearanceRule.ThreadEngagement when finding.Value is null => "whether enough thread is engaged is not known",
        ClearanceRule.ThreadEngagement => $"{Length(finding.Value)} of thread engaged, {Length(finding.Limit)} needed",
        _ when finding.Value is null => $"the gauge pressure{(finding.Of is { } load ? $" with {load}" : "")} is not known",
        _ when result.Case.Corner.Unsettled is not null => $"{Gauge(finding.Value)} gauge at the least with {finding.Of}, {Gauge(finding.Limit)} allowed by the spring's maker",
        _ => $"{Gauge(finding.Value)} gauge with {finding.Of} on the same air, {Gauge(finding.Limit)} allowed by the spring's maker",
    };

    /// <summary>Where a load case stands when the air is not topped up, and what misses there.</summary>
    public string Load(LoadStance stance)
    {
        if (stance.Travel_m is not { } travel) return "where it stands on the same air lies outside the spring's data";
        string stands = Math.Abs(travel) < AtAnEnd_m ? "stands at drive height" : $"stands {Length(Math.Abs(travel))} {(travel > 0 ? "lower" : "higher")} on the same air ({Gauge(stance.GaugePressure_Pa)} gauge)";
        return stance.Misses.Count == 0 ? $"{stands}; every pair keeps its margin there"
            : $"{stands}; short of their margin there: {string.Join(", ", stance.Misses.Select(pair => $"{Name(pair.Pair)} {Length(pair.Gap.Distance_m)}"))}";
    }

    /// <summary>A rule of ground clearance as it was read, and what there is.</summary>
    public string Ground(GroundFinding finding)
    {
        GroundRule rule = finding.Rule;
        string asked = rule.Over == GroundDatum.Rim ? "the rim's lowest point" : Length(rule.Clearance_m);
        string there = finding.Clearance_m is not { } clearance ? (rule.Flexible ? "not checked, parts that give way were not measured" : "not checked, the underbody was not measured")
            : $"{Length(clearance)} {(rule.Over == GroundDatum.Rim ? "over it" : "there")}";
        return $"{rule.Market}, {rule.Rule}: {asked} {(rule.State == GroundState.Drive ? "at drive height" : "aired out")}; {there} ({rule.Source}, as read {rule.Read}; not asserted as law)";
    }

    public string GroundHeights() => string.Join("; ", result.Ground.Select(ground =>
        $"{(ground.State == GroundState.Drive ? "at drive height" : "aired out")} {Length(ground.OverRoad_m)} over the road, {Length(ground.OverRim_m)} over the rim's lowest point"));

    /// <summary>How much camber clears the wheel, and whether the bellows then meets the tower; null where it needs none.</summary>
    public string? Camber()
    {
        if (result.Camber is not { } camber) return null;
        if (camber.Camber_rad is { } enough)
            return $"{Angle(enough)} of camber added at the {Adjuster} makes every pair of the wheel keep its margin. {Tower(camber.Gaps)}";
        string[] still = [.. camber.Gaps.Where(pair => pair is { Holds: false, Pair.IsOfWheel: true }).Select(pair => $"{Name(pair.Pair)} {Length(pair.Gap.Distance_m)} where {Length(pair.Margin_m)} are asked")];
        return camber.Most_rad < 0
            ? $"No camber clears the wheel: at the most the {Adjuster} makes, {Angle(camber.Most_rad)}, there is still {string.Join(", ", still)}. {Tower(camber.Gaps)}"
            : $"The {Adjuster} tilts the top no further in: no camber clears the wheel.";
    }

    /// <summary>"1° of camber (top in)", "5.0 mm of spacer", "3.0 mm more thread".</summary>
    public string Change(ClearanceSensitivity change) => change.Change switch
    {
        ClearanceChange.Camber => $"{Angle(change.By)} camber",
        ClearanceChange.Spacer => $"{Length(change.By)} spacer",
        _ => $"{Length(change.By)} more thread",
    };

    /// <summary>What stands behind the numbers, and what was not asked.</summary>
    public IEnumerable<Note> Notes()
    {
        ClearanceCase corner = result.Case;
        RoadWheel wheel = result.Question.Wheel ?? corner.Corner.MeasuredWheel;
        if (result.Set?.Setting is { } && result.Question.Camber_rad != 0 && !result.Set.Within) yield return new("camber", $"The {Adjuster} does not reach so far.");
        if (!corner.TravelKnown) yield return new("travel", TravelWords.Taken(corner.Corner.Unsettled, $"{Length(ClearanceCase.UsualTravel_m)} either way", units));
        if (corner.RackTravel_m == 0) yield return new("rack", "Straight ahead only: the suspension document gives no rackTravel, or nothing steers this wheel.");
        if (wheel.SectionSpread_m > 0) yield return new("section", $"The tyre's section is known from its size alone, ±{Length(wheel.SectionSpread_m)}: its gaps lie within ±{Length(wheel.SectionSpread_m / 2)}. Give --section from the maker's sheet.");
        if (corner.Corner.Bodies is null) yield return new("bellows", "The kit does not say where bellows and strut stand: their pairs are not asked.");
        else if (corner.Corner.Bodies.SwellingPerBar_m is { } swelling) yield return new("bellows", $"Its outline is its mould's cords', brought to the load frame's areas: another bar adds {Length(swelling)} to the diameter at drive height. Each place counts the gauge pressure it has there with the valve shut at drive.");
        else yield return new("bellows", "The spring names no mould: its outline is estimated from its areas or greatest diameter, good to several millimetres, and does not widen with gauge pressure. Tape it inflated.");
        string[] missing = [.. new (string Name, int Count)[] { ("archEdge", corner.Part.ArchEdge.Count), ("liner", corner.Part.Liner.Count), ("tower", corner.Part.Tower.Count) }
            .Where(points => points.Count == 0).Select(points => points.Name)];
        if (missing.Length > 0) yield return new("points", $"The suspension document has no {string.Join(", ", missing)}: their pairs are not asked.");
        string[] usual = [.. UsualDiameters()];
        if (usual.Length > 0) yield return new("diameters", $"Taken as usual (common practice, no source): {string.Join(", ", usual)}.");
        yield return new("body", "Arch edge, liner and tower are the points someone measured: between them nothing is asked. Bushes, tyre and body do not give; brake, brackets and the other wheel are not asked.");
    }

    private string Verdict()
    {
        PairGap worst = result.Pairs[0];
        if (worst.Holds) return $"Nothing touches: the least room is left from {Name(worst.Pair)}, {Length(worst.Gap.Distance_m)} at {Place(worst.Travel_m, worst.Rack_m)}, where {Length(worst.Margin_m)} are asked.";
        int others = result.Misses.Count() - 1;
        string rest = others == 0 ? "every other pair keeps its margin" : others == 1 ? $"{Name(result.Misses.ElementAt(1).Pair)} misses its margin too" : $"{others} other pairs miss theirs too";
        string place = Place(worst.Travel_m, worst.Rack_m);
        return worst.Touches
            ? $"The {Name(worst.Pair.One)} touches the {Name(worst.Pair.Other)} at {place}, {Length(-worst.Gap.Distance_m)} into it, where {Length(worst.Margin_m)} of room are asked; {rest}."
            : $"The {Name(worst.Pair.One)} comes within {Length(worst.Gap.Distance_m)} of the {Name(worst.Pair.Other)} at {place}, where {Length(worst.Margin_m)} are asked; {rest}.";
    }

    private IEnumerable<string> UsualDiameters()
    {
        BarDiameters diameters = result.Case.Part.Diameters;
        foreach (LinkagePart part in result.Pairs.Select(pair => pair.Pair.Other.Part).OfType<LinkagePart>().Distinct().Order())
            if (diameters.Given_m(part) is null) yield return $"{LinkageWords.Part(part)} {Length(diameters.Of_m(part))}";
        if (diameters.OfHalfshaft_m is null && result.Pairs.Any(pair => pair.Pair.One.Kind == BodyKind.Halfshaft)) yield return $"halfshaft {Length(diameters.Halfshaft_m)}";
    }

    private string Tower(IReadOnlyList<PairGap> gaps) => gaps.FirstOrDefault(pair => pair.Pair.One.Kind == BodyKind.Bellows && pair.Pair.Other.Kind == BodyKind.Tower) is not { } tower ? ""
        : $"The bellows then {(tower.Touches ? "meets the tower" : $"has {Length(tower.Gap.Distance_m)} to the tower")}, where {Length(tower.Margin_m)} are asked.";

    private string Line(string name)
    {
        LineSlack line = result.Lines.First(known => known.Name == name);
        string place = Place(line.Travel_m, line.Rack_m);
        return line.Slack_m < 0 ? $"taut, {Length(-line.Slack_m)} too short at {place}" : $"{Length(line.Slack_m)} of slack at {place}";
    }

    private string Bellows(string what, ClearanceFinding finding) => finding.Value is { } gap ? $"{what} {(gap > 0 ? Length(gap) : "touch")}" : $"{what} not known";

    // Of a wheel that steers, toe in is a turn to the other side.
    private bool TurnsLeft(double rack_m) => result.Set!.Linkage!.At(0, rack_m).State is { } state && state.Toe_rad < result.Set.Linkage.Rest.Toe_rad;

    private static bool IsStraight(double rack_m) => Math.Abs(rack_m) < StraightAhead_m;

    private string Adjuster => result.Case.Corner.Adjuster.MadeAt is { } kind ? AlignmentWords.Name(kind) : "hub";

    private static string Angle(double? angle_rad) => LinkageWords.Angle(angle_rad);

    private string Length(double? si) => units.Text(Dimension.Length, si);

    private string Gauge(double? si) => units.Text(Dimension.GaugePressure, si);
}
