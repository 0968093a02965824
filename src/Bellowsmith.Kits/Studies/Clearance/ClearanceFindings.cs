using Bellowsmith.Kits.Studies.InstalledHeight;
using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>Gathers what a sweep shows beside its gaps.</summary>
internal static class ClearanceFindings
{
    // Common practice, no source.
    private const double NearTaut_m = 0.010;

    public static LineSlack[] Lines(ClearanceCase corner, ClearanceSweep sweep)
    {
        LinkageState[] places = [.. sweep.States.OfType<LinkageState>()];
        return [.. corner.Part.Lines.Where(_ => places.Length > 0).Select(line =>
        {
            LinkageState worst = places.MinBy(line.Slack_m)!;
            return new LineSlack(line.Name, line.Length_m, line.Slack_m(worst), worst.Travel_m, worst.Rack_m);
        })];
    }

    public static IEnumerable<ClearanceFinding> Of(ClearanceCase corner, ClearanceSweep sweep, IReadOnlyList<PairGap> pairs, IReadOnlyList<LineSlack> lines, IReadOnlyList<LoadStance> loads)
    {
        foreach (LineSlack line in lines)
        {
            yield return AtLeast(ClearanceRule.LineTaut, line.Slack_m, 0, line.Name);
            if (line.Slack_m >= 0) yield return AtLeast(ClearanceRule.LineNearTaut, line.Slack_m, NearTaut_m, line.Name);
        }

        yield return Apart(ClearanceRule.TyreOnBellows, pairs, pair => pair.IsOfWheel && pair.Other.Kind == BodyKind.Bellows);
        yield return Apart(ClearanceRule.TowerOnBellows, pairs, pair => pair.One.Kind == BodyKind.Bellows && pair.Other.Kind == BodyKind.Tower);
        if (Tilt_rad(corner, sweep) is { } tilt) yield return AtMost(ClearanceRule.BearingTilt, tilt, corner.Design.TopMount!.SphericalBearing!.TiltLimit_rad, null);
        else yield return NotChecked(ClearanceRule.BearingTilt);
        yield return AtLeast(ClearanceRule.SolidBeforeSpring, Travel(TravelRule.SolidBeforeSpring)?.Value_m, 0, null);
        if (Travel(TravelRule.ThreadEngagement) is { } thread) yield return AtLeast(ClearanceRule.ThreadEngagement, thread.Value_m, thread.Limit_m, null);
        else if (corner.Design.Thread is not null) yield return NotChecked(ClearanceRule.ThreadEngagement);
        foreach (LoadStance load in loads) yield return AtMost(ClearanceRule.GaugePressure, load.GaugePressure_Pa, corner.Corner.Travel?.Case.Part.MaxGaugePressure_Pa, load.Load);
        if (loads.Count == 0) yield return corner.Corner.Unsettled is { } strut ? Unsettled(strut) : NotChecked(ClearanceRule.GaugePressure);

        TravelFinding? Travel(TravelRule rule) => corner.Corner.Travel?.Findings.FirstOrDefault(finding => finding.Rule == rule);
    }

    // From where the points were measured: a top mount that slides takes the bearing along as it stands. Null where the kit names no bearing.
    private static double? Tilt_rad(ClearanceCase corner, ClearanceSweep sweep) => corner.Design.TopMount is not { SphericalBearing: not null } mount ? null
        : sweep.States.OfType<LinkageState>().Select(state => (double?)MountStudy.Tilt_rad(mount, corner.Corner.Adjuster.Linkage!.Rest.Strut.Axis, state.Strut.Axis)).Max();

    // Where every height that gives the rate takes more than the spring's maker allows, the least of them does too.
    private static ClearanceFinding Unsettled(StrutCase strut) => AtMost(
        ClearanceRule.GaugePressure, strut.Design.DriveHeight_m is { } height ? strut.GaugePressure_Pa(height) : InstalledHeightStudy.Answer(strut).Solutions.Min(solution => (double?)solution.GaugePressure_Pa),
        strut.Part.MaxGaugePressure_Pa, strut.Load);

    private static ClearanceFinding NotChecked(ClearanceRule rule) => new(rule, null, null, null);

    // Touching is an overlap or none at all: there must be some gap.
    private static ClearanceFinding Apart(ClearanceRule rule, IReadOnlyList<PairGap> pairs, Func<PassingPair, bool> asked)
    {
        double? least = pairs.Where(pair => asked(pair.Pair)).Select(pair => (double?)pair.Gap.Distance_m).Min();
        return new(rule, least, 0, least is null ? null : least > 0);
    }

    private static ClearanceFinding AtLeast(ClearanceRule rule, double? value, double? limit, string? of) =>
        new(rule, value, limit, Known(value, limit) ? Met.AtLeast(value!.Value, limit!.Value) : null, of);

    private static ClearanceFinding AtMost(ClearanceRule rule, double? value, double? limit, string? of) =>
        new(rule, value, limit, Known(value, limit) ? Met.AtMost(value!.Value, limit!.Value) : null, of);

    private static bool Known(double? value, double? limit) => value is { } v && limit is not null && !double.IsNaN(v);
}
