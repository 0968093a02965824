using System.Diagnostics;
using Bellowsmith.Kits.Studies.WheelFit;

namespace Bellowsmith.Kits.Studies.Clearance;

/// <summary>What touches what over wheel and rack travel, and by how much everything else misses.</summary>
public static class ClearanceStudy
{
    public static ClearanceResult Answer(ClearanceCase corner, ClearanceQuestion question)
    {
        long started = Stopwatch.GetTimestamp();
        CamberSet? set = corner.Corner.Adjuster.At(question.Camber_rad);
        ClearanceResult empty = new()
        {
            Case = corner,
            Question = question,
            Set = set,
            Pairs = [],
            Grid = new([], [], [], [], []),
            Lines = [],
            Ground = [],
            GroundFindings = [],
            Loads = [],
            Findings = [],
            Sensitivities = [],
            Camber = null,
            Seconds = 0,
        };
        if (set?.Linkage is not { } linkage) return empty;
        ClearanceSweep sweep = ClearanceSweep.Of(CornerShapes.Of(corner, question, linkage), Travels(corner, question), Racks(corner, question));
        PairGap[] pairs = [.. WorstPlaces.Of(sweep, question.Margins).OfType<PairGap>().OrderBy(pair => pair.Room_m)];
        return empty with
        {
            Pairs = pairs,
            Seconds = Stopwatch.GetElapsedTime(started).TotalSeconds,
        };
    }

    private static double[] Travels(ClearanceCase corner, ClearanceQuestion question) =>
        [.. Spread(corner.Travel_m.Least_m, corner.Travel_m.Greatest_m, question.Density.Travels).Append(0).Distinct().Order()];

    private static double[] Racks(ClearanceCase corner, ClearanceQuestion question) =>
        corner.RackTravel_m > 0 ? [.. Spread(-corner.RackTravel_m, corner.RackTravel_m, question.Density.Racks)] : [0];

    private static IEnumerable<double> Spread(double least, double greatest, int count) =>
        Enumerable.Range(0, count).Select(k => least + (greatest - least) * k / (count - 1));
}
