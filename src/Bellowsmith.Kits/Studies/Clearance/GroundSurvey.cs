using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>How high the underbody's lowest point stands over the road and over the rim, the car level, and which rules that meets.</summary>
internal static class GroundSurvey
{
    /// <summary>At drive height, and aired out where that is known; empty where no underbody was measured.</summary>
    public static GroundClearance[] Of(ClearanceCase corner, ClearanceQuestion question, Linkage linkage)
    {
        if (corner.Part.Underbody.Count == 0) return [];
        List<GroundClearance> all = [At(GroundState.Drive, linkage.Rest)];
        if (corner.Corner.Travel?.AiredOut.WheelTravel_m is { } down && linkage.At(down).State is { } state) all.Add(At(GroundState.AiredOut, state));
        return [.. all];

        GroundClearance At(GroundState height, LinkageState at)
        {
            RoadWheel old = corner.Corner.MeasuredWheel, wheel = question.Wheel ?? old;
            // On a tyre of the same rate the loaded radius grows as the free one does.
            double road = at.ContactPoint.Z - (wheel.FreeRadius_m - old.FreeRadius_m);
            Point lowest = corner.Part.Underbody.MinBy(point => point.Z);
            return new(height, at.Travel_m, lowest, lowest.Z - road, lowest.Z - RimLowest_m(wheel.Rim, at));
        }
    }

    public static GroundFinding[] Judged(IReadOnlyList<GroundClearance> ground, IReadOnlyList<GroundRule> rules) => [.. rules.Select(rule =>
    {
        GroundClearance? there = rule.Flexible ? null : ground.FirstOrDefault(known => known.State == rule.State);
        double? clearance = rule.Over == GroundDatum.Rim ? there?.OverRim_m : there?.OverRoad_m;
        return new GroundFinding(rule, clearance, clearance is { } known ? Met.AtLeast(known, rule.Clearance_m) : null);
    })];

    // Of the edge that stands lower as the wheel leans.
    private static double RimLowest_m(Rim rim, LinkageState state) =>
        (state.WheelCentre - rim.EdgeRadius_m * Point.Up.SquareTo(state.WheelAxis).Unit()).Z - rim.OverallWidth_m / 2 * Math.Abs(state.WheelAxis.Z);
}
