using Bellowsmith.Kits.Studies.BellowsShape;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>bellows</c>: unrounded, each number in the unit its name ends with. Least and greatest height
/// are the nearest that exist where there is no shape.</summary>
public sealed record BellowsAnswer(
    double Height_mm, double? EffectiveArea_cm2, double? Volume_cm3, double? OuterDiameter_mm, double? CrownRadius_mm,
    double? EndCrownRadius_mm, double? MiddleCrownRadius_mm, double? AngleAtPlate_deg, double? Overhang_mm,
    double? PlateContactRadius_mm, double? GirdleContactRadius_mm, double? LeastHeight_mm, double? GreatestHeight_mm,
    double? CalibratedCordAngleAtBead_deg, double? CalibratedCordLength_mm, double? AreaDifferenceBefore, double? AreaDifferenceAfter,
    string? Reason, IReadOnlyList<Note> Notes)
{
    public static BellowsAnswer Of(BellowsShapeResult r)
    {
        CordShape? s = r.Shape;
        bool girdled = r.Mould.Convolutions > 1;
        BellowsWords words = new(r, DisplayUnits.Metric);
        return new BellowsAnswer(
            r.Height_m * 1e3, s?.EffectiveArea_m2 * 1e4, s?.Volume_m3 * 1e6, s?.OuterDiameter_m * 1e3, s?.CrownRadius_m * 1e3,
            s?.EndCrownRadius_m * 1e3, s?.MiddleCrownRadius_m * 1e3, s?.AngleAtPlate_rad * 180 / Math.PI, s?.Overhang_m * 1e3,
            s?.PlateContactRadius_m * 1e3, girdled ? s?.GirdleContactRadius_m * 1e3 : null,
            Known(r.Bellows.LeastHeight_m), Known(r.Bellows.GreatestHeight_m),
            r.Calibration?.After.CordAngleAtBead_rad * 180 / Math.PI, r.Calibration?.After.CordLength_m * 1e3,
            r.Calibration?.DifferenceBefore, r.Calibration?.DifferenceAfter,
            s is null ? words.Answer() : null, [.. words.Notes()]);
    }

    private static double? Known(double height_m) => double.IsNaN(height_m) ? null : height_m * 1e3;
}
