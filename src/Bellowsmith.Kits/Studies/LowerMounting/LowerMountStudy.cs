using Bellowsmith.Kits.Studies.Travel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.LowerMounting;

/// <summary>Does the lower mount fit the car, and does it hold? Checks against allowables, not an approval.</summary>
public static class LowerMountStudy
{
    private const int Draws = 4000;
    private const ulong Seed = 1;

    /// <summary>ks of a slot, the least there is: long and along the load [EN 1993-1-8 2005, table 3.6], from memory.</summary>
    public const double SlotFactor = 0.63;

    // A margin met to the accuracy of the fit holds.
    private const double Met_m = BoltFit.Accuracy_m;

    public static void Needs(StrutNeeds need)
    {
        TravelStudy.Needs(need);
        need.Need(need.Design.LowerMount is not null, "lowerMount", "bracket, knuckle and bolts",
            "Describe what joins the strut's foot to the knuckle: the bracket's holes, those measured on the car, and the bolts.");
    }

    public static LowerMountResult Answer(LowerMountQuestion question)
    {
        LowerMount mount = question.Strut.Design.LowerMount!;
        BoltPair[] pairs = [.. Pairs(mount)];
        BoltFit fit = BoltFit.Of(pairs);
        TravelResult? travel = TravelStudy.Answer(question.Strut);
        MountLoad? load = travel is null ? null : LoadOf(question, travel);
        BoltForce[] bolts = load is null ? [] : [.. Bolts(mount, load)];
        return new()
        {
            Question = question,
            Fit = fit,
            ShareThatGoIn = fit.ShareThatGoIn(Draws, Seed),
            KnuckleHole_m = mount.Knuckle.HoleDiameter_m < mount.Bolts.Bolt.Diameter_m - Met_m ? mount.Bolts.Bolt.Diameter_m : null,
            HoleForSure_m = HoleForSure_m(mount),
            Move = fit.SureMargin_m >= -Met_m || pairs.Any(pair => pair.IsTooNarrow) ? null : HoleMoves.Best(pairs, fit),
            Travel = travel,
            Load = load,
            Bolts = bolts,
            Findings = [.. Findings(mount, fit, load, bolts), Thread(travel?.Thread())],
        };
    }

    private static IEnumerable<BoltPair> Pairs(LowerMount mount) => mount.Knuckle.Holes.Zip(mount.Bracket.Holes, (car, part) => new BoltPair(
        new(car.X_m, car.Y_m, mount.Knuckle.HoleDiameter_m, mount.Knuckle.Position_m),
        new(part.X_m, part.Y_m, mount.Bracket.HoleDiameter_m, mount.Bracket.Position_m), mount.Bolts.Bolt.Diameter_m));

    // Bored so that each bolt goes through each hole; what then still lacks is room, of which a hole gives half of its growth.
    private static double? HoleForSure_m(LowerMount mount)
    {
        double bolt = mount.Bolts.Bolt.Diameter_m, hole = Math.Max(mount.Bracket.HoleDiameter_m, bolt), knuckle = Math.Max(mount.Knuckle.HoleDiameter_m, bolt);
        LowerMount bored = mount with { Bracket = mount.Bracket with { HoleDiameter_m = hole }, Knuckle = mount.Knuckle with { HoleDiameter_m = knuckle } };
        double margin = BoltFit.Of([.. Pairs(bored)]).SureMargin_m, enough = margin >= -Met_m ? hole : hole - 2 * margin;
        return enough > mount.Bracket.HoleDiameter_m + Met_m ? enough : null;
    }

    private static IEnumerable<LowerMountFinding> Findings(LowerMount mount, BoltFit fit, MountLoad? load, BoltForce[] bolts)
    {
        yield return new(LowerMountRule.BoltsGoIn, fit.Margin_m, 0, fit.Margin_m >= -Met_m);
        yield return new(LowerMountRule.BoltsGoInForSure, fit.SureMargin_m, 0, fit.SureMargin_m >= -Met_m);
        yield return AtMost(LowerMountRule.JointSlips, load is null ? null : bolts.Max(bolt => bolt.Asked), 1);
        if (mount.Clamp is { } clamp)
            yield return AtMost(LowerMountRule.ClampSlips, load is null ? null : Holding(clamp).Asked(load.Axial_N, load.Twist_Nm), 1);
        yield return AtMost(LowerMountRule.HoleBearing, load is null ? null : bolts.Max(bolt => bolt.Force_N) / WallArea_m2(mount), mount.Bracket.AllowedBearing_Pa);
    }

    private static TubeClamp Holding(MountClamp clamp) => new(clamp.Diameter_m, clamp.Bolts * clamp.Bolt.Preload_N, clamp.FrictionOrUsual);

    // Pressure of a bolt that has slipped, on the projected wall of its holes.
    private static double WallArea_m2(LowerMount mount) => mount.Bolts.ShearPlanes * mount.Bolts.Bolt.Diameter_m * mount.Bracket.Thickness_m;

    private static LowerMountFinding AtMost(LowerMountRule rule, double? value, double? limit) => new(rule, value, limit, value is { } v && limit is { } l ? v <= l : null);

    // The travel study's own finding; without a thread there is nothing to check it by.
    private static LowerMountFinding Thread(TravelFinding? thread) => new(LowerMountRule.ThreadEngagement, thread?.Value_m, thread?.Limit_m, thread?.Holds);

    private static MountLoad LoadOf(LowerMountQuestion question, TravelResult travel)
    {
        StrutCase strut = question.Strut;
        LowerMount mount = strut.Design.LowerMount!;
        double axial = new TravelRules(strut, travel.Drive.SpringHeight_m!.Value).ThreadForce_N();
        double? top = strut.Design.StrutLengthAtDrive_m - (travel.Drive.DamperLength_m - travel.FullBump.DamperLength_m);
        (double Side, double Along)? across = top is null ? null : Across(question.Suspension, travel.FullBump.WheelTravel_m ?? 0, axial);
        return new(axial, across?.Side, across?.Along, top, axial * question.TwistArm_m);
    }

    // Of the top mount at full bump under an upright force at the contact point that makes so much along the strut.
    private static (double Side_N, double Along_N)? Across(SuspensionPart? part, double wheelTravel_m, double axial_N)
    {
        if (part is not { Kind: SuspensionKind.MacPherson } || part.Linkage().At(wheelTravel_m).State is not { } state) return null;
        if (StrutSideLoad.Of(state, Point.Up) is not { Spring_N: > 0 } held) return null;
        Point outward = Point.Left.SquareTo(state.Strut.Axis).Unit(), side = axial_N / held.Spring_N * held.Side_N;
        return (side.Dot(outward), side.Dot(outward.Cross(state.Strut.Axis)));
    }

    // With the side force and without it, whichever asks more of a bolt: it may turn the plate back, and cornering takes it away.
    private static IEnumerable<BoltForce> Bolts(LowerMount mount, MountLoad load)
    {
        BoltGroup group = new([.. mount.Bracket.Holes.Select(hole => (hole.X_m, hole.Y_m))]);
        double[] without = group.Forces_N((0, -load.Axial_N), (0, 0)), with = group.Forces_N((load.Side_N ?? 0, -load.Axial_N), (0, load.TopHeight_m ?? 0));
        return without.Zip(with, Math.Max).Index().Select(force => new BoltForce(force.Item, mount.Bolts.Bolt
            .Holding(mount.Bolts.FrictionOrUsual, mount.Bolts.ShearPlanes, force.Index == mount.SlottedHole ? SlotFactor : 1).SlipResistance_N()));
    }
}
