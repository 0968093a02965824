using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Lowering;

/// <summary>
/// What lowering has done to the geometry: the old drive height, so much droop from where the points were measured, beside what is now; and
/// at which height which joint would give back a toe that stands still and a roll centre as far below the body as it was.
/// </summary>
public static class LoweringStudy
{
    private const string Outer = "tieRodOuter", Inner = "tieRodInner", BallJoint = "lowerBallJoint";
    private const double Still_m = 1e-12;
    private const int MostRounds = 60;

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
        bool tieRod = part.Points.ContainsKey(Outer), ballJoint = part.Points.ContainsKey(BallJoint) && old is not null;
        double? wanted_m = old is null ? null : OnBody_m(old);
        Joint outer = new(Outer, _ => ToeSlope), inner = new(Inner, _ => ToeSlope), lower = new(BallJoint, one => RollCentreOff(one, question));
        if (tieRod) yield return Mended(MendKind.TieRodOuter, part, question, wanted_m, outer);
        if (tieRod) yield return Mended(MendKind.TieRodInner, part, question, wanted_m, inner);
        if (ballJoint) yield return Mended(MendKind.LowerBallJoint, part, question, wanted_m, lower);
        if (ballJoint && tieRod && question.Lowered_m > 0) yield return Mended(MendKind.Both, part, question, wanted_m, lower, outer);
    }

    private static double ToeSlope(Linkage linkage) => linkage.Rest.ToeSlope_rad_per_m;

    // How much nearer the body the roll centre stands than it did at the old drive height; NaN where these points never stood there.
    private static Func<Linkage, double> RollCentreOff(SuspensionPart part, LoweringQuestion question)
    {
        double wanted_m = part.LinkageIfAny()?.At(-question.Lowered_m).State is { } old ? OnBody_m(old) : double.NaN;
        return linkage => OnBody_m(linkage.Rest) - wanted_m;
    }

    private static JointMend Mended(MendKind kind, SuspensionPart part, LoweringQuestion question, double? wanted_m, params Joint[] joints)
    {
        var (mended, up_m, holds) = Together(part, joints);
        Linkage linkage = mended.Linkage();
        return new(kind, [.. joints.Select((joint, k) => new JointMove(joint.Point, up_m[k], joints.Length == 1 && holds ? Tape_m(part, joint) : null))], holds, mended)
        {
            Linkage = linkage,
            WorkingToe = Working(linkage, question),
            RollCentreLeft_m = wanted_m - OnBody_m(linkage.Rest),
            ArmLonger_m = joints.Any(joint => joint.Point == BallJoint) ? LowerArm_m(mended) - LowerArm_m(part) : null,
        };
    }

    // One joint after the other, each from where the ones before have put the linkage, until none moves any more.
    private static (SuspensionPart Mended, double[] Up_m, bool Holds) Together(SuspensionPart part, Joint[] joints)
    {
        Func<Linkage, double>[] values = [.. joints.Select(joint => joint.Value(part))];
        double[] up_m = new double[joints.Length];
        for (int round = 0; round < MostRounds; round++)
        {
            double most_m = 0;
            bool holds = true;
            for (int k = 0; k < joints.Length; k++)
            {
                (double by_m, bool found) = JointSearch.Find(part, joints[k].Point, values[k]);
                part = part.Moved(joints[k].Point, by_m * Point.Up);
                up_m[k] += by_m;
                holds &= found && Math.Abs(up_m[k]) <= JointSearch.Most_m;
                most_m = Math.Max(most_m, Math.Abs(by_m));
            }

            if (!holds || joints.Length == 1 || most_m <= Still_m) return (part, up_m, holds);
        }

        return (part, up_m, false);
    }

    // Null where a tape's error can put the height out of reach.
    private static double? Tape_m(SuspensionPart part, Joint joint)
    {
        double sum = 0;
        foreach ((string _, SuspensionPart there, SuspensionPart back) in TapeSpread.BothWays(part, TapeSpread.Usual_m))
        {
            var (one, other) = (JointSearch.Find(there, joint.Point, joint.Value(there)), JointSearch.Find(back, joint.Point, joint.Value(back)));
            if (!one.Holds || !other.Holds) return null;
            sum += (one.Up_m - other.Up_m) * (one.Up_m - other.Up_m) / 4;
        }

        return Math.Sqrt(sum);
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

    // A joint, and what must become zero as it moves, of the points it was measured with.
    private sealed record Joint(string Point, Func<SuspensionPart, Func<Linkage, double>> Value);
}
