using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>alignment</c>: unrounded, each number in the unit its name ends with; toe and camber per wheel.</summary>
public sealed record AlignmentAnswer(IReadOnlyDictionary<string, AlignmentAnswer.Alignment> Struts)
{
    public sealed record Alignment(
        double Camber_deg, double Toe_deg, double TotalToe_deg, double Toe_min, double TotalToe_min, double? ToeAtRim_mm, double? TotalToeAtRim_mm,
        double? WantedCamber_deg, double WantedToe_deg, IReadOnlyList<Adjuster> Adjusters, Wheel Before, Wheel After, double StrutTopOutward_mm,
        double TrackChange_mm, double StrutLonger_mm, double? ThreadTurns, string Sentence, string? Reason, IReadOnlyList<Note> Notes);

    /// <summary>Lengths in mm or a turn in degrees, by what the adjuster is; the others null. Needed is null where no setting does what is wanted.</summary>
    public sealed record Adjuster(
        string Name, double? Setting_mm, double? Setting_deg, double? LeastLeft_mm, double? LeastLeft_deg, double? GreatestLeft_mm, double? GreatestLeft_deg,
        double? Needed_mm, double? Needed_deg, double? Camber_deg_per_mm, double? Camber_deg_per_deg, double? Toe_deg_per_mm, double? Toe_deg_per_deg);

    /// <summary>At drive height.</summary>
    public sealed record Wheel(
        double Camber_deg, double Toe_deg, double? KingpinInclination_deg, double? Caster_deg, double? ScrubRadius_mm, double? MechanicalTrail_mm,
        double MotionRatio, double StrutLength_mm, double RollCentreHeight_mm);

    public static AlignmentAnswer Of(AlignmentResult result) => new(new Dictionary<string, Alignment> { [Names.Of(result.Case.End)] = Answer(result) });

    private static Alignment Answer(AlignmentResult r)
    {
        AlignmentWords words = new(r, DisplayUnits.Metric);
        double toe = Degrees(r.Toe_rad);
        return new(
            Degrees(r.Camber_rad), toe, 2 * toe, 60 * toe, 120 * toe, r.ToeAtRim_m * 1e3, 2 * r.ToeAtRim_m * 1e3, r.WantedCamber_rad * 180 / Math.PI,
            Degrees(r.WantedToe_rad), [.. r.Adjusters.Select(Of)], Of(r.Before.Rest), Of(r.After.Rest), r.Adjustment.StrutTopOutward_m * 1e3,
            r.TrackChange_m * 1e3, r.StrutLonger_m * 1e3, r.ThreadTurns, words.Answer(), words.Reason(), [.. words.Notes()]);
    }

    private static Adjuster Of(AdjusterSetting a)
    {
        var (setting, least, greatest, needed) = (Shown(a, a.Setting), Shown(a, a.LeastLeft), Shown(a, a.GreatestLeft), Shown(a, a.Needed));
        var (camber, toe) = (Effect(a, a.CamberEffect), Effect(a, a.ToeEffect));
        return new(
            Name(a.Kind), setting.Millimetres, setting.Degrees, least.Millimetres, least.Degrees, greatest.Millimetres, greatest.Degrees,
            needed.Millimetres, needed.Degrees, camber.PerMillimetre, camber.PerDegree, toe.PerMillimetre, toe.PerDegree);
    }

    private static (double? Millimetres, double? Degrees) Shown(AdjusterSetting a, double? value) =>
        a.IsAngle ? (null, value * 180 / Math.PI) : (value * 1e3, null);

    private static (double? PerMillimetre, double? PerDegree) Effect(AdjusterSetting a, double effect) =>
        a.IsAngle ? (null, effect) : (Degrees(effect) / 1e3, null);

    private static Wheel Of(LinkageState s) => new(
        Degrees(s.Camber_rad), Degrees(s.Toe_rad), s.Steering?.KingpinInclination_rad * 180 / Math.PI, s.Steering?.Caster_rad * 180 / Math.PI,
        s.Steering?.ScrubRadius_m * 1e3, s.Steering?.MechanicalTrail_m * 1e3, s.Strut.MotionRatio, s.Strut.Length_m * 1e3, s.RollCentreHeight_m * 1e3);

    private static string Name(AdjusterKind kind) => char.ToLowerInvariant(kind.ToString()[0]) + kind.ToString()[1..];

    private static double Degrees(double angle_rad) => angle_rad * 180 / Math.PI;
}
