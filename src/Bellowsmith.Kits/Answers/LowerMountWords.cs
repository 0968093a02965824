using Bellowsmith.Kits.Studies.LowerMounting;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a lower mount: does it go on, what it is asked, what mends a miss.</summary>
public sealed class LowerMountWords(LowerMountResult result, DisplayUnits units)
{
    private readonly LowerMount _mount = result.Mount;
    private readonly HoleWords _holes = new(result, units);

    /// <summary>Fit and what is asked in one sentence, then what may not be waived and what else is missed.</summary>
    public string Answer()
    {
        LowerMountFinding[] missed = [.. result.Findings.Where(f => f is { Holds: false, Rule: not (LowerMountRule.BoltsGoIn or LowerMountRule.BoltsGoInForSure) })];
        return $"{Verdict()}{Listed("Not to be waived", missed.Where(f => !f.CanBeWaived))}{Listed("Missed", missed.Where(f => f.CanBeWaived))}";
    }

    public string Summary()
    {
        int missed = result.Findings.Count(f => f.Holds == false), open = result.Findings.Count(f => f.Holds is null);
        string text = missed switch { 0 => "No check is missed", 1 => "One check is missed", _ => $"{missed} checks are missed" };
        return open == 0 ? $"{text}." : $"{text}; {open} could not be made.";
    }

    /// <summary>Why nothing is said of what it bears; null where it is.</summary>
    public string? Reason() => result.Load is null ? TravelWords.NoDrive(result.Question.Strut, units) : null;

    public static string Rule(LowerMountRule rule) => rule switch
    {
        LowerMountRule.BoltsGoIn => "every bolt goes in as drawn and measured",
        LowerMountRule.BoltsGoInForSure => "every bolt goes in with every hole as far off as it may be",
        LowerMountRule.JointSlips => "friction under the bolts holds the plate",
        LowerMountRule.ClampSlips => "the clamp holds the tube",
        LowerMountRule.HoleBearing => "a bolt that has slipped presses its hole's wall",
        _ => TravelWords.Rule(TravelRule.ThreadEngagement),
    };

    public static string Source(LowerMountRule rule) => rule switch
    {
        LowerMountRule.BoltsGoIn or LowerMountRule.BoltsGoInForSure => "best place of the part on the car, docs/theory/lower-mount.md",
        LowerMountRule.JointSlips => "[EN 1993-1-8 2005, 3.9], preload 0.7·fub·As, 1.25 against failure; a rule of steelwork taken over",
        LowerMountRule.ClampSlips => "the least a clamp holds, two lines of contact (equilibrium, no source)",
        LowerMountRule.HoleBearing => "F/(d·t) against the kit's allowedBearing",
        _ => TravelWords.Source(TravelRule.ThreadEngagement),
    };

    /// <summary>"0.20 mm, asked 0.00 mm"; "62 %, at most 100 %".</summary>
    public string Numbers(LowerMountFinding finding) => finding.Value is null ? "" : finding.Rule switch
    {
        LowerMountRule.JointSlips or LowerMountRule.ClampSlips => $"{Percent(finding.Value.Value)} asked of it",
        LowerMountRule.HoleBearing => $"{Stress(finding.Value)}{(finding.Limit is null ? "" : $", at most {Stress(finding.Limit)}")}",
        LowerMountRule.ThreadEngagement => $"{units.Text(Dimension.Length, finding.Value)}, asked {units.Text(Dimension.Length, finding.Limit)}",
        _ => $"{Fine(finding.Value.Value)} of room left",
    };

    /// <summary>What mends a miss, or what is missing to check; null where it holds.</summary>
    public string? MendOf(LowerMountFinding finding) => (finding.Holds, finding.Rule) switch
    {
        (true, _) => null,
        (null, LowerMountRule.HoleBearing) when finding.Value is not null => "Not checked: give the bracket's allowedBearing.",
        (_, LowerMountRule.ThreadEngagement) => result.Travel?.Thread() is { } thread ? new TravelWords(result.Travel, units).MendOf(thread)
            : "Not checked: give the body's thread with its diameter, engagedAtStop and shearStrength.",
        (null, _) => "Not checked: the strut's force is not known.",
        (_, LowerMountRule.BoltsGoIn or LowerMountRule.BoltsGoInForSure) => _holes.Mend(),
        (_, LowerMountRule.JointSlips) => $"It takes {Force(finding.Value * _mount.Bolts.Bolt.Preload_N)} of preload a bolt where {_mount.Bolts.Bolt.Size} {_mount.Bolts.Bolt.StrengthClass} has {Force(_mount.Bolts.Bolt.Preload_N)}: larger or stronger bolts, a second plate, or holes further apart.",
        (_, LowerMountRule.ClampSlips) => $"It takes {Force(finding.Value * _mount.Clamp!.Bolts * _mount.Clamp.Bolt.Preload_N)} across the slot where its bolts have {Force(_mount.Clamp.Bolts * _mount.Clamp.Bolt.Preload_N)}: more or stronger bolts, or a shoulder the tube stands on.",
        _ => $"A plate of {units.Text(Dimension.Length, finding.Value / finding.Limit * _mount.Bracket.Thickness_m)} bears it.",
    };

    public IEnumerable<Note> Notes()
    {
        yield return new("holes", string.Join("; ", result.Fit.Holes.Select((hole, n) =>
            $"{n + 1}: {units.Number(Dimension.Length, Off(hole.OffX_m, hole.OffY_m), 1)} off, {units.Number(Dimension.Length, hole.Margin_m, 1)} left")) + $" ({units.Symbol(Dimension.Length)}), the bracket laid where the tightest bolt has most room.");
        yield return new("share", $"{Percent(result.ShareThatGoIn, "0.0")} of brackets go on, each hole's centre even over the disc of its tolerance: ±{Fine(_mount.Knuckle.Position_m)} on the car, ±{Fine(_mount.Bracket.Position_m)} in the bracket.");
        if (_mount.SlottedHole is { } slotted)
            yield return new("slot", $"Hole {slotted + 1} is a slot: it counts as a round hole of its width in the fit and holds {LowerMountStudy.SlotFactor} of a round hole's friction.");
        if (_mount.Bolts.Friction is null) yield return new("friction", $"μ {JointBolts.UsualFriction} under the bolts is taken: untreated surfaces. Paint or oil has less.");
        if (_mount.Clamp is { Friction: null }) yield return new("friction", $"μ {MountClamp.UsualFriction} in the clamp is taken (common practice, no source).");
        if (result.Load is { } load) foreach (Note note in Loads(load)) yield return note;
        yield return new("not an approval", "Checks against stated allowables. Fatigue, impact, welds, corrosion and how the bolts are tightened are outside.");
    }

    /// <summary>Rows of a table: hole, force, what friction holds, share asked.</summary>
    public IEnumerable<(string Hole, string Force, string Holds, string Asked)> Bolts() => result.Bolts.Select((bolt, n) =>
        ($"{n + 1}", units.Number(Dimension.Force, bolt.Force_N), units.Number(Dimension.Force, bolt.Slips_N), Percent(bolt.Asked)));

    private string Verdict()
    {
        string fit = _holes.Narrow() is { } narrow ? $"No bolt goes in: {narrow}"
            : result.Fit.Margin_m < 0 ? $"Not all bolts go in: the tightest lacks {Fine(-result.Fit.Margin_m)}"
            : $"The bolts go in with {Fine(result.Fit.Margin_m)} to spare, {(result.GoInForSure ? "for sure" : $"not for sure: {Percent(result.ShareThatGoIn, "0.0")} of brackets go on")}";
        return result.Load is { } load
            ? $"{fit}; under {Force(load.Axial_N)} {Asked()} before slip."
            : $"{fit}; what it bears is not known.";
    }

    private string Listed(string what, IEnumerable<LowerMountFinding> missed) => string.Join("; ", missed.Select(Miss)) is { Length: > 0 } all ? $" {what}: {all}." : "";

    private string Miss(LowerMountFinding finding) => finding.Rule switch
    {
        LowerMountRule.JointSlips => "the joint slips",
        LowerMountRule.ClampSlips => "the tube slips in the clamp",
        LowerMountRule.HoleBearing => $"{Stress(finding.Value)} on a hole's wall, {Stress(finding.Limit)} allowed",
        _ => $"{units.Text(Dimension.Length, finding.Value)} of thread engaged, {units.Text(Dimension.Length, finding.Limit)} needed",
    };

    private IEnumerable<Note> Loads(MountLoad load)
    {
        yield return new("force", $"{Force(load.Axial_N)} along the strut, the greater of full bump and three times the drive load, as its thread is checked for.");
        yield return load.Side_N is { } side
            ? new("side force", $"{Force(Math.Abs(side))} {(side < 0 ? "inward" : "outward")} at the top mount, {units.Text(Dimension.Length, load.TopHeight_m)} over the lower datum, from the suspension's points with the wheel pushed straight up; {Force(Math.Abs(load.AlongCar_N ?? 0))} along the car bends the bracket and is not checked. Each bolt is checked with the side force and without it.")
            : new("side force", "Not known, none taken: it takes a MacPherson strut's points, good as far as full bump, and strutLengthAtDrive.");
        if (_mount.Clamp is not null)
            yield return new("twist", $"The tube is twisted in its clamp by its force on an arm of {units.Text(Dimension.Length, result.Question.TwistArm_m)} (common practice, no source).");
    }

    private string Asked()
    {
        string joint = $"the joint is asked {Percent(Value(LowerMountRule.JointSlips))}";
        return _mount.Clamp is null ? $"{joint} of what it holds" : $"{joint} and the clamp {Percent(Value(LowerMountRule.ClampSlips))} of what they hold";
    }

    private double Value(LowerMountRule rule) => result.Findings.First(f => f.Rule == rule).Value ?? double.NaN;

    private static double Off(double x, double y) => Math.Sqrt(x * x + y * y);

    private static string Percent(double share, string format = "0") => $"{LinkageWords.Number(100 * share, format)} %";

    private string Fine(double si) => $"{units.Number(Dimension.Length, si, 1)} {units.Symbol(Dimension.Length)}";

    private string Force(double? si) => units.Text(Dimension.Force, si);

    private string Stress(double? si) => units.Text(Dimension.Stress, si);
}
