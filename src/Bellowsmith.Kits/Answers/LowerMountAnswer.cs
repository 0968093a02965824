using Bellowsmith.Kits.Studies.LowerMounting;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>bracket</c>: unrounded, each number in the unit its name ends with; holes from 1.</summary>
public sealed record LowerMountAnswer(IReadOnlyDictionary<string, LowerMountAnswer.Mount> Struts)
{
    public sealed record Mount(
        string Load, double Margin_mm, double SureMargin_mm, double ShareThatGoIn, double Turn_deg, IReadOnlyList<Hole> Holes, double? KnuckleHole_mm, double? HoleForSure_mm, MovedHole? Move,
        double? AxialForce_N, double? SideForce_N, double? ForceAlongCar_N, double? Twist_Nm, IReadOnlyList<Check> Findings,
        string Sentence, string? Reason, IReadOnlyList<Note> Notes, string? Drawing);

    /// <summary>How far the car's hole stands from the bracket's, in the car's axes; force on its bolt and what friction holds under it.</summary>
    public sealed record Hole(double OffX_mm, double OffY_mm, double Margin_mm, double? Force_N, double? Slips_N, double? Asked);

    public sealed record MovedHole(int Hole, double X_mm, double Y_mm, double SureMargin_mm);

    /// <summary>In mm, as a share asked of what holds, or in MPa, by its rule; the others null.</summary>
    public sealed record Check(
        string Rule, string Source, double? Value_mm, double? Limit_mm, double? Asked, double? Stress_MPa, double? AllowedStress_MPa, bool? Holds, bool CanBeWaived, string? Mend);

    public static LowerMountAnswer Of(LowerMountResult result, string? drawing) =>
        new(new Dictionary<string, Mount> { [Names.Of(result.Question.Strut.End)] = Answer(result, drawing) });

    private static Mount Answer(LowerMountResult r, string? drawing)
    {
        LowerMountWords words = new(r, DisplayUnits.Metric);
        return new(
            r.Question.Strut.Load, r.Fit.Margin_m * 1e3, r.Fit.SureMargin_m * 1e3, r.ShareThatGoIn, r.Fit.Turn_rad * 180 / Math.PI,
            [.. r.Fit.Holes.Select((hole, n) => new Hole(hole.OffX_m * 1e3, hole.OffY_m * 1e3, hole.Margin_m * 1e3,
                r.Bolts.ElementAtOrDefault(n)?.Force_N, r.Bolts.ElementAtOrDefault(n)?.Slips_N, r.Bolts.ElementAtOrDefault(n)?.Asked))],
            r.KnuckleHole_m * 1e3, r.HoleForSure_m * 1e3, r.Move is { } m ? new(m.Hole + 1, m.X_m * 1e3, m.Y_m * 1e3, m.SureMargin_m * 1e3) : null,
            r.Load?.Axial_N, r.Load?.Side_N, r.Load?.AlongCar_N, r.Load?.Twist_Nm,
            [.. r.Findings.Select(f => Of(f, words))], words.Answer(), words.Reason(), [.. words.Notes()], drawing);
    }

    private static Check Of(LowerMountFinding f, LowerMountWords words)
    {
        bool share = f.Rule is LowerMountRule.JointSlips or LowerMountRule.ClampSlips, stress = f.Rule is LowerMountRule.HoleBearing, length = !share && !stress;
        return new(
            LowerMountWords.Rule(f.Rule), LowerMountWords.Source(f.Rule), length ? f.Value * 1e3 : null, length ? f.Limit * 1e3 : null, share ? f.Value : null,
            stress ? f.Value * 1e-6 : null, stress ? f.Limit * 1e-6 : null, f.Holds, f.CanBeWaived, words.MendOf(f));
    }
}
