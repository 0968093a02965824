using System.Diagnostics;
using Bellowsmith.Kits.Studies.WheelFit;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>What touches what over wheel and rack travel, and by how much everything else misses.</summary>
public static class ClearanceStudy
{
    public static ClearanceResult Answer(ClearanceCase corner, ClearanceQuestion question)
    {
        long started = Stopwatch.GetTimestamp();
        CamberSet? set = corner.Corner.Adjuster.At(question.Camber_rad);
        ClearanceResult result = ClearanceResult.Empty(corner, question, set);
        if (set?.Linkage is { } linkage) result = Answered(result, linkage);
        return result with { Seconds = Stopwatch.GetElapsedTime(started).TotalSeconds };
    }

    /// <summary>The least gap of every pair, least room first; null where no setting of the adjuster makes the camber.</summary>
    internal static PairGap[]? Pairs(ClearanceCase corner, ClearanceQuestion question) =>
        corner.Corner.Adjuster.At(question.Camber_rad)?.Linkage is { } linkage ? WorstPlaces.Of(Sweep(corner, question, linkage), question.Margins) : null;

    private static ClearanceResult Answered(ClearanceResult result, Linkage linkage)
    {
        (ClearanceCase corner, ClearanceQuestion question) = (result.Case, result.Question);
        ClearanceSweep sweep = Sweep(corner, question, linkage);
        PairGap[] pairs = WorstPlaces.Of(sweep, question.Margins);
        LineSlack[] lines = ClearanceFindings.Lines(corner, sweep);
        GroundClearance[] ground = GroundSurvey.Of(corner, question, linkage);
        LoadStance[] loads = LoadStances.Of(corner, sweep.Shapes, sweep.Racks_m, question.Margins);
        return result with
        {
            Pairs = pairs,
            Grid = sweep.Grid(question.Margins),
            Lines = lines,
            Ground = ground,
            GroundFindings = GroundSurvey.Judged(ground, question.Rules),
            Loads = loads,
            Findings = [.. ClearanceFindings.Of(corner, sweep, pairs, lines, loads)],
            Sensitivities = question.WithChanges ? [.. ClearanceChanges.Sensitivities(corner, question, pairs)] : [],
            Camber = question.WithChanges ? ClearanceChanges.Camber(corner, question, pairs) : null,
        };
    }

    private static ClearanceSweep Sweep(ClearanceCase corner, ClearanceQuestion question, Linkage linkage) => ClearanceSweep.Of(
        CornerShapes.Of(corner, question, linkage),
        [.. Spread(corner.Travel_m.Least_m, corner.Travel_m.Greatest_m, question.Density.Travels).Append(0).Distinct().Order()],
        corner.RackTravel_m > 0 ? [.. Spread(-corner.RackTravel_m, corner.RackTravel_m, question.Density.Racks)] : [0]);

    private static IEnumerable<double> Spread(double least, double greatest, int count) =>
        Enumerable.Range(0, count).Select(k => least + (greatest - least) * k / (count - 1));
}
