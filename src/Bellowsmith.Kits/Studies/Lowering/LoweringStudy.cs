using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

/// <summary>
/// What lowering has done to the geometry: the old drive height, so much droop from where the points were measured, beside what is now; and
/// at which height which joint would give back a toe that stands still and a roll centre as far below the body as it was.
/// </summary>
public static class LoweringStudy
{
    private const string Outer = "tieRodOuter", Inner = "tieRodInner", BallJoint = "lowerBallJoint";

    public static LoweringResult Answer(SuspensionPart part, LoweringQuestion question)
    {
        Linkage linkage = part.Linkage();
        LinkagePoint old = linkage.At(-question.Lowered_m);
        return new LoweringResult
        {
            Part = part,
            Question = question,
            Linkage = linkage,
            Old = old.State,
            Limit = old.Limit,
            RollCentre = old.State is { } then ? Fall(then, linkage.Rest) : null,
            WorkingToe = Working(linkage, question),
            WholeToe = ToeOverTravel.Over(linkage, Math.Min(question.From_m, -question.Lowered_m), question.To_m),
            Mends = [.. Mends(part, question, old.State)],
            Ratio = question.Measured is { } measured ? RatioComparison.Of(part, measured, question) : null,
        };
    }

    private static RollCentreFall Fall(LinkageState old, LinkageState now)
    {
        double body = now.ContactPoint.Z - old.ContactPoint.Z;
        return new(old.RollCentreHeight_m - now.RollCentreHeight_m, body);
    }

    private static IEnumerable<JointMend> Mends(SuspensionPart part, LoweringQuestion question, LinkageState? old)
    {
        double? wanted_m = old is null ? null : OnBody_m(old);
        bool tieRod = part.Points.ContainsKey(Outer), ballJoint = part.Points.ContainsKey(BallJoint) && wanted_m is not null;
        if (tieRod) yield return Mended(MendKind.TieRodOuter, part, question, wanted_m, ToeStill(Outer));
        if (tieRod) yield return Mended(MendKind.TieRodInner, part, question, wanted_m, ToeStill(Inner));
        if (ballJoint) yield return Mended(MendKind.LowerBallJoint, part, question, wanted_m, RollCentreBack(wanted_m!.Value));
        if (ballJoint && tieRod) yield return Mended(MendKind.Both, part, question, wanted_m, RollCentreBack(wanted_m!.Value), ToeStill(Outer));
    }

    private static (string Point, Func<Linkage, double> Value) ToeStill(string point) => (point, linkage => linkage.Rest.ToeSlope_rad_per_m);

    private static (string Point, Func<Linkage, double> Value) RollCentreBack(double wanted_m) => (BallJoint, linkage => OnBody_m(linkage.Rest) - wanted_m);

    // One joint after the other, each from where the ones before have put the linkage.
    private static JointMend Mended(
        MendKind kind, SuspensionPart part, LoweringQuestion question, double? wanted_m, params IEnumerable<(string Point, Func<Linkage, double> Value)> joints)
    {
        SuspensionPart mended = part;
        List<JointMove> moves = [];
        bool holds = true;
        foreach ((string point, Func<Linkage, double> value) in joints)
        {
            (double up_m, bool found) = JointSearch.Find(mended, point, value);
            moves.Add(new(point, up_m));
            mended = mended.Moved(point, up_m * Point.Up);
            holds &= found;
        }

        Linkage linkage = mended.Linkage();
        return new(kind, moves, holds, mended)
        {
            Linkage = linkage,
            WorkingToe = Working(linkage, question),
            RollCentreLeft_m = wanted_m - OnBody_m(linkage.Rest),
            ArmLonger_m = moves.Any(move => move.Point == BallJoint) ? LowerArm_m(mended) - LowerArm_m(part) : null,
        };
    }

    private static ToeOverTravel Working(Linkage linkage, LoweringQuestion question) =>
        ToeOverTravel.Over(linkage, -question.Working_m, question.Working_m);

    // Height of the roll centre in the car's axes, so as the body sees it.
    private static double OnBody_m(LinkageState state) => state.ContactPoint.Z + state.RollCentreHeight_m;

    private static double LowerArm_m(SuspensionPart part)
    {
        Point axis = (part.Points["lowerArmFront"] - part.Points["lowerArmRear"]).Unit();
        return (part.Points[BallJoint] - part.Points["lowerArmFront"]).SquareTo(axis).Length;
    }
}
