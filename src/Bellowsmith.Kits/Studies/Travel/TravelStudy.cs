using Bellowsmith.Kits.Studies.InstalledHeight;

namespace Bellowsmith.Kits.Studies.Travel;

/// <summary>How far it can move about drive height and what stops it first, with the rules it should keep.</summary>
public static class TravelStudy
{
    private const int RideHeightPlaces = 41;

    /// <summary>What a strut must know for this question.</summary>
    public static void Needs(StrutNeeds need)
    {
        need.Need(need.Design.Damper is TelescopicDamperPart, "damper", "a damper with shortest and longest length",
            "Give a damper document: without lengths nothing says where it stops.");
        need.Need(need.Design.SpringToDamper_m is not null, "springToDamper", "a length",
            "Say how much longer the damper is than the spring is high, both measured at the same height.");
        need.Need(need.Design.DriveHeight_m is not null || need.Design.Target is not null, "driveHeight",
            "a spring height, or a target that yields one", "Give driveHeight or target.");
    }

    /// <summary>Null where the kit fixes no drive height and no height is recommended, or the spring cannot carry the load there.</summary>
    public static TravelResult? Answer(StrutCase strut)
    {
        double? drive = strut.Design.DriveHeight_m ?? InstalledHeightStudy.Answer(strut).Recommended?.Height_m;
        if (drive is not { } height) return null;
        StrutMotion motion = new(strut, height);
        if (!(motion.DriveGaugePressure_Pa > 0)) return null;
        (double airedOut, TravelEnd airedOutEnd) = motion.Rest(0);
        (double lifted, TravelEnd liftedEnd) = motion.Rest(strut.Part.MaxGaugePressure_Pa);
        IReadOnlyList<TravelFinding> findings = Findings(strut, height, out IReadOnlyList<Mend> all);
        return new TravelResult
        {
            Case = strut,
            DriveHeightGiven = strut.Design.DriveHeight_m is not null,
            Drive = State(motion, 0, double.IsNaN(motion.DriveGaugePressure_Pa) ? null : motion.DriveGaugePressure_Pa, TravelEnd.LoadBalance),
            FullBump = State(motion, motion.FullBump_m, motion.SealedGaugePressure_Pa(motion.FullBump_m), motion.BumpEnd),
            FullDroop = State(motion, motion.FullDroop_m, motion.SealedGaugePressure_Pa(motion.FullDroop_m), motion.DroopEnd),
            AiredOut = State(motion, airedOut, 0, airedOutEnd),
            Lifted = State(motion, lifted, strut.Part.MaxGaugePressure_Pa, liftedEnd),
            StopContact_m = motion.StopContact_m,
            RideHeights = RideHeights(strut, motion),
            Findings = findings,
            MendsAll = all,
        };
    }

    /// <summary>Where the car stands on another gauge pressure, the thread as it is set for the drive height.</summary>
    public static RideHeight On(StrutCase strut, double driveHeight_m, double gaugePressure_Pa) =>
        RestOn(new StrutMotion(strut, driveHeight_m), gaugePressure_Pa);

    /// <summary>
    /// Where the wheel comes to rest under another load on the air it holds at drive, not topped up; null where that lies outside the spring's
    /// data.
    /// </summary>
    public static (double WheelTravel_m, double GaugePressure_Pa, TravelEnd End)? OnTheSameAir(StrutCase strut, double driveHeight_m, double wheelLoad_N) =>
        new StrutMotion(strut, driveHeight_m).RestSealed(wheelLoad_N);

    private static TravelState State(StrutMotion motion, double wheelTravel_m, double? gaugePressure_Pa, TravelEnd end) =>
        double.IsNaN(wheelTravel_m)
            ? new TravelState(null, null, null, null, gaugePressure_Pa, null)
            : new TravelState(
                wheelTravel_m, motion.SpringHeight_m(wheelTravel_m), motion.DamperLength_m(wheelTravel_m),
                motion.StopGap_m(wheelTravel_m), gaugePressure_Pa, end);

    private static List<RideHeight> RideHeights(StrutCase strut, StrutMotion motion)
    {
        List<RideHeight> heights = [];
        for (int k = 0; k < RideHeightPlaces; k++)
        {
            double pg = strut.Part.MaxGaugePressure_Pa * k / (RideHeightPlaces - 1);
            heights.Add(RestOn(motion, pg));
        }

        return heights;
    }

    private static RideHeight RestOn(StrutMotion motion, double gaugePressure_Pa)
    {
        (double z, TravelEnd end) = motion.Rest(gaugePressure_Pa);
        return double.IsNaN(z)
            ? new RideHeight(gaugePressure_Pa, null, null, 0, null)
            : new RideHeight(gaugePressure_Pa, z, motion.SpringHeight_m(z), motion.StopForce_N(z), end);
    }

    private static List<TravelFinding> Findings(StrutCase strut, double height_m, out IReadOnlyList<Mend> all)
    {
        TravelRules rules = new(strut, height_m);
        Mending mending = new(strut, height_m, rules);
        List<TravelFinding> findings = [];
        foreach (TravelRule rule in TravelRules.All)
        {
            if (rule == TravelRule.ThreadEngagement && strut.Design.Thread is null) continue;
            if (rule == TravelRule.DriveWithinDamper && rules.Value_m(rule, default) >= 0) continue;
            (double? value, double? limit) = (rules.Value_m(rule, default), rules.Limit_m(rule, default));
            bool? holds = value is { } v && limit is { } l && !double.IsNaN(v) ? Met.AtLeast(v, l) : null;
            findings.Add(new TravelFinding(rule, value, limit, holds, holds == false ? mending.Of(rule) : []));
        }

        TravelRule[] missed = findings.Where(f => f.Holds == false).Select(f => f.Rule).ToArray();
        all = missed.Length > 1 ? mending.OfAll(missed) : [];
        return findings;
    }
}
