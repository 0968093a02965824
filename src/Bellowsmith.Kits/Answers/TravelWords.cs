using Bellowsmith.Kits.Studies;
using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of the travel answer: the same on page, terminal and paper.</summary>
public sealed class TravelWords(TravelResult result, DisplayUnits units)
{
    /// <summary>"38.0 mm of droop and 34.1 mm of bump at the wheel; the stop is met after 11.4 mm."</summary>
    public string Answer()
    {
        string text = $"{Length(-result.FullDroop.WheelTravel_m)} of droop and {Length(result.FullBump.WheelTravel_m)} of bump at the wheel";
        return result.Drive.StopGap_m is null
            ? $"{text}; there is no bump stop."
            : $"{text}; the stop is met after {Length(result.StopContact_m)}.";
    }

    /// <summary>How many rules are missed and what single change mends them all.</summary>
    public string Summary()
    {
        int missed = result.Findings.Count(f => f.Holds == false);
        if (missed == 0) return result.Findings.Any(f => f.Holds is null) ? "No rule is missed; some could not be checked." : "Every rule holds.";
        string text = missed == 1 ? "One rule is missed." : $"{missed} rules are missed.";
        return result.MendsAll.Count == 0 ? text : $"{text} One change mends them all: {Words(result.MendsAll[0])}.";
    }

    /// <summary>Why there is no drive position to move about.</summary>
    public static string NoDrive(StrutCase strut, DisplayUnits units) => strut.Design.DriveHeight_m is { } height
        ? $"At {units.Text(Dimension.Length, height)} the spring cannot carry {units.Text(Dimension.Force, strut.SpringForce_N(height))}, "
            + "what the load leaves it beside the damper's gas."
        : new HeightWords(InstalledHeightStudy.Answer(strut), units).Answer();

    /// <summary>Which travel is taken where none is known, and why.</summary>
    /// <param name="unsettled">The strut, where it is that nothing lets it stand.</param>
    /// <param name="taken">"60.0 mm either way".</param>
    /// <param name="units">Shown.</param>
    public static string Taken(StrutCase? unsettled, string taken, DisplayUnits units) => unsettled is null
        ? $"The kit does not say how far the wheel goes: {taken} are taken."
        : $"Without a height it stands at the strut does not say how far the wheel goes: {taken} are taken. {NoDrive(unsettled, units)}";

    public static string Rule(TravelRule rule) => rule switch
    {
        TravelRule.DriveWithinDamper => "the damper's stroke reaches drive height",
        TravelRule.TopOutBeforeSpring => "the damper tops out before the spring's greatest height",
        TravelRule.SolidBeforeSpring => "the stop is solid before the spring's least height",
        TravelRule.DroopAtWheel => "droop at the wheel",
        TravelRule.StopContactAtWheel => "bump at the wheel to stop contact",
        _ => "thread engagement carries the load",
    };

    public static string Source(TravelRule rule) => rule switch
    {
        TravelRule.DriveWithinDamper => "lengths of the damper and its stop",
        TravelRule.TopOutBeforeSpring => "trade rule, 1/2 to 3/4 in [Air Spring Failure Analysis 2026]; the limit may be changed",
        TravelRule.SolidBeforeSpring => "trade rule, plate and wall damage when bottomed [Air Spring Warranty Guide 2026]; never waived, more than 0 mm may be asked",
        TravelRule.DroopAtWheel or TravelRule.StopContactAtWheel => "common practice, no source; the limit may be changed",
        _ => "shear of the engaged thread [FED-STD-H28 1978] at 3 times the drive load (common practice, no source) or full bump; never waived",
    };

    public static string End(TravelEnd? end) => end switch
    {
        TravelEnd.LoadBalance => "load balance",
        TravelEnd.OnBumpStop => "bump stop",
        TravelEnd.BumpStopSolid => "bump stop solid",
        TravelEnd.DamperClosed => "damper closed",
        TravelEnd.DamperFullLength => "damper at full length",
        TravelEnd.SpringLeastHeight => "spring at least height",
        TravelEnd.SpringGreatestHeight => "spring at greatest height",
        _ => "outside the spring's data",
    };

    /// <summary>What mends a miss, best first; null where nothing is missed.</summary>
    public string? MendOf(TravelFinding finding)
    {
        if (finding.Holds is null) return finding.Rule == TravelRule.ThreadEngagement
            ? "Not checked: give strutLengthAtDrive, both stacks and the thread's diameter, engagedAtStop and shearStrength."
            : "Not checked: the kit does not say enough.";
        if (finding.Holds == true) return null;
        return finding.Mends.Count == 0
            ? "No single change of body, stop, thread or perch mends it."
            : char.ToUpperInvariant(Words(finding.Mends[0])[0]) + string.Join("; or ", finding.Mends.Select(Words))[1..] + ".";
    }

    /// <summary>"a stop 6.2 mm shorter (also mends …)".</summary>
    public string Words(Mend mend)
    {
        // Written to the next 0.1 mm so that what is printed is enough.
        string length = Length(Math.Ceiling(Math.Abs(mend.Change_m) * 1e4 - 1e-6) * 1e-4);
        string change = mend.Kind switch
        {
            MendKind.Body => $"a damper body {length} {(mend.Change_m > 0 ? "longer" : "shorter")}",
            MendKind.Stop => $"a bump stop {length} {(mend.Change_m > 0 ? "taller" : "shorter")}",
            MendKind.Thread => $"{length} {(mend.Change_m > 0 ? "more" : "less")} exposed thread",
            _ => $"a spring perch {length} {(mend.Change_m > 0 ? "higher" : "lower")} on the damper",
        };
        List<string> beside = [];
        if (mend.AlsoMends.Count > 0) beside.Add("also mends: " + string.Join(", ", mend.AlsoMends.Select(Rule)));
        if (mend.Breaks.Count > 0) beside.Add("then misses: " + string.Join(", ", mend.Breaks.Select(Rule)));
        return beside.Count == 0 ? change : $"{change} ({string.Join("; ", beside)})";
    }

    private string Length(double? si) => units.Text(Dimension.Length, si);
}
