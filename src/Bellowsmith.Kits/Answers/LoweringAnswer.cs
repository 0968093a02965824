using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>geometry</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record LoweringAnswer(IReadOnlyDictionary<string, LoweringAnswer.Geometry> Struts)
{
    public sealed record Geometry(
        double Lowered_mm, string Sentence, Height Now, Height? Old, RollCentreFall? RollCentre, ToeChange WorkingToe, ToeChange WholeToe,
        IReadOnlyList<Mend> Mends, Ratio? Ratio, string? Reason, IReadOnlyList<Note> Notes);

    /// <summary>At one drive height; arm and tie rod outer end up +.</summary>
    public sealed record Height(
        double Travel_mm, double Camber_deg, double Toe_deg, double CamberSlope_deg_per_mm, double ToeSlope_deg_per_mm, double RollCentreHeight_mm,
        double MotionRatio, double TrackChange_mm, double? LowerArm_deg, double? TieRod_deg);

    public sealed record RollCentreFall(double Fell_mm, double BodyFell_mm, double ArmGrew_mm);

    /// <summary>From toe at drive height, per wheel.</summary>
    public sealed record ToeChange(double From_mm, double To_mm, double AtFrom_deg, double AtTo_deg, double Least_deg, double Greatest_deg);

    /// <summary>Joints moved up; holds false where they are only the nearest.</summary>
    public sealed record Mend(
        string Name, IReadOnlyList<Move> Moves, bool Holds, double ToeSlope_deg_per_mm, ToeChange WorkingToe, double? RollCentreLeft_mm, double? ArmLonger_mm,
        string Sentence);

    public sealed record Move(string Point, double Up_mm, double? Tape_mm);

    public sealed record Ratio(
        double Measured, double FromPoints, double Difference_percent, double Tape, bool ExplainedAtDrive, double PartingAt_mm, double Parting_mm,
        double PartingTape_mm, bool Explained, string Sentence);

    public static LoweringAnswer Of(AxleEnd end, LoweringResult result) => new(new Dictionary<string, Geometry> { [Names.Of(end)] = Of(result) });

    private static Geometry Of(LoweringResult r)
    {
        LoweringWords words = new(r, DisplayUnits.Metric);
        return new(
            r.Question.Lowered_m * 1e3, words.Answer(), Of(r.Part, r.Now), r.Old is { } old ? Of(r.Part, old) : null,
            r.RollCentre is { } fall ? new(fall.Fell_m * 1e3, fall.BodyFell_m * 1e3, fall.ArmGrew_m * 1e3) : null, Of(r.WorkingToe), Of(r.WholeToe),
            [.. r.Mends.Select(mend => Of(mend, words))],
            r.Ratio is { } ratio ? new(
                ratio.Measured, ratio.FromPoints, ratio.Share * 100, ratio.Tape, ratio.ExplainedAtDrive, ratio.At_m * 1e3, ratio.Parting_m * 1e3,
                ratio.PartingTape_m * 1e3, ratio.Explained, words.Ratio()!) : null,
            words.Reason(), [.. words.Notes()]);
    }

    private static Height Of(SuspensionPart part, LinkageState s) => new(
        s.Travel_m * 1e3, Degrees(s.Camber_rad), Degrees(s.Toe_rad), Degrees(s.CamberSlope_rad_per_m) / 1e3, Degrees(s.ToeSlope_rad_per_m) / 1e3,
        s.RollCentreHeight_m * 1e3, s.Strut.MotionRatio, s.TrackChange_m * 1e3, Degrees(LinkAngles.LowerArm_rad(part, s)), Degrees(LinkAngles.TieRod_rad(part, s)));

    private static ToeChange Of(ToeOverTravel toe) => new(
        toe.From_m * 1e3, toe.To_m * 1e3, Degrees(toe.AtFrom_rad), Degrees(toe.AtTo_rad), Degrees(toe.Least_rad), Degrees(toe.Greatest_rad));

    private static Mend Of(JointMend mend, LoweringWords words) => new(
        Name(mend.Kind), [.. mend.Moves.Select(move => new Move(move.Point, move.Up_m * 1e3, move.Tape_m * 1e3))], mend.Holds,
        Degrees(mend.ToeSlope_rad_per_m) / 1e3, Of(mend.WorkingToe), mend.RollCentreLeft_m * 1e3, mend.ArmLonger_m * 1e3, words.Mend(mend));

    private static string Name(MendKind kind) => char.ToLowerInvariant(kind.ToString()[0]) + kind.ToString()[1..];

    private static double Degrees(double angle_rad) => angle_rad * 180 / Math.PI;

    private static double? Degrees(double? angle_rad) => angle_rad * 180 / Math.PI;
}
