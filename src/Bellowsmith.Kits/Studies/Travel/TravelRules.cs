using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Travel;

/// <summary>The travel rules of one strut: value less limit must not be negative.</summary>
internal sealed class TravelRules(StrutCase strut, double driveHeight_m)
{
    /// <summary>
    /// Greatest force a strut thread is checked for, as a multiple of the drive load. Common practice, no source; a harder
    /// blow is carried by the margins of the shop's own strength check.
    /// </summary>
    public const double ImpactFactor = 3;

    public static readonly IReadOnlyList<TravelRule> All = Enum.GetValues<TravelRule>();

    private TravelLimits Limits => strut.Design.Limits;

    /// <summary>What there is under a change of the design, m; null where it cannot be known.</summary>
    public double? Value_m(TravelRule rule, StrutChange change)
    {
        StrutMotion motion = new(strut, driveHeight_m, change);
        return rule switch
        {
            TravelRule.DriveWithinDamper => Math.Min(motion.SolidTravel_m, motion.TopOutTravel_m),
            TravelRule.TopOutBeforeSpring => strut.Part.GreatestHeight_m - motion.TopOutHeight_m,
            TravelRule.SolidBeforeSpring => motion.SolidHeight_m - strut.Part.LeastHeight_m,
            TravelRule.DroopAtWheel => -motion.FullDroop_m,
            TravelRule.StopContactAtWheel => motion.StopContact_m,
            _ => Engaged_m(change),
        };
    }

    public double? Limit_m(TravelRule rule, StrutChange change) => rule switch
    {
        TravelRule.DriveWithinDamper => 0,
        TravelRule.TopOutBeforeSpring => Limits.TopOutMargin_m,
        TravelRule.SolidBeforeSpring => Limits.SolidMargin_m,
        TravelRule.DroopAtWheel => Limits.Droop_m,
        TravelRule.StopContactAtWheel => Limits.StopContact_m,
        _ => NeededEngagement_m(change),
    };

    /// <summary>Force the thread must hold: the greater of the drive load times the impact factor and full bump.</summary>
    public double ThreadForce_N(StrutChange change = default)
    {
        StrutMotion motion = new(strut, driveHeight_m, change);
        double height = motion.SpringHeight_m(motion.FullBump_m);
        double spring = motion.SealedGaugePressure_Pa(motion.FullBump_m) is { } pg ? motion.Spring.Force_N(height, pg) : 0;
        return Math.Max(ImpactFactor * strut.StrutForce_N, spring + motion.StopForce_N(motion.FullBump_m));
    }

    private double? Engaged_m(StrutChange change)
    {
        StrutDesign d = strut.Design;
        if (d.Thread is not { EngagedAtStop_m: { } engaged } thread || d.StrutLengthAtDrive_m is not { } length
            || d.UpperStack_m is not { } upper || d.LowerStack_m is not { } lower) return null;
        double exposed = length - upper - driveHeight_m - lower + change.Thread_m;
        return engaged - (exposed - thread.ExposedAtStop_m);
    }

    private double? NeededEngagement_m(StrutChange change) =>
        strut.Design.Thread is { Diameter_m: { } diameter, ShearStrength_Pa: { } strength } thread
            ? ThreadEngagement.BasicProfile(diameter, thread.Pitch_m).LengthToHold_m(ThreadForce_N(change), strength)
            : null;
}
