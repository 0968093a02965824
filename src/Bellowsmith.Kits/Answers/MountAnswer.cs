using Bellowsmith.Kits.Studies.Mount;

namespace Bellowsmith.Kits.Answers;

/// <summary>The machine answer of <c>mount</c>: unrounded, each number in the unit its name ends with.</summary>
public sealed record MountAnswer(IReadOnlyDictionary<string, MountAnswer.MountedStrut> Struts)
{
    public sealed record MountedStrut(
        string Load, string Sentence, double GreatestTilt_deg, double GreatestTiltTravel_mm, double GreatestTiltRack_mm, double? TiltLimit_deg, double? Turn_deg, double? TurnLeft_deg, double? TurnRight_deg,
        double FullBump_mm, double FullDroop_mm, bool TravelKnown, double? StackHeight_mm, Lives Lives, SideLoad? SideLoad, IReadOnlyList<CheckedRule> Findings,
        IReadOnlyList<TiltPlace> Places, bool Solved, string? Reason, IReadOnlyList<Note> Notes);

    /// <summary>At the duty asked for; kilometres driven.</summary>
    public sealed record Lives(
        double Load_N, double Steer_deg, double SteersPerKilometre, double Working_mm, double StrokesPerKilometre, double? TurningLife_km, double? TurningLeastSwing_deg,
        bool? TurningDents, Sliding? Steering, Sliding? Tilting, double? SphericalLife_km);

    public sealed record Sliding(double Amplitude_deg, double SpecificLoad_MPa, double Velocity_mm_per_s, double? Life_km);

    public sealed record SideLoad(
        SidePlace Drive, SidePlace FullBump, SidePlace FullDroop, double SpringForce_N, double FreeTilt_deg, double FreeTiltOutward_deg, double FreeTiltAhead_deg,
        double? FreeUpperOutward_mm, double? FreeLowerOutward_mm, double FreedFullBump_N, double FreedFullDroop_N, double? FrictionAtWheel_N,
        double? Breakaway_m_per_s2, double? RestBand_mm, double? StillBump_mm, double? KitFriction_N, IReadOnlyList<Rod> Rods, IReadOnlyList<SidePoint> Curve);

    public sealed record SidePlace(
        double WheelTravel_mm, double Side_N, double SideOutward_N, double? Guide_N, double? Piston_N, double? Friction_N, double? RodMoment_N_m, double? RodStress_MPa);

    public sealed record SidePoint(double WheelTravel_mm, double SideOutward_N, double FreedOutward_N);

    public sealed record Rod(double Diameter_mm, double Stress_MPa, double Deflection_mm);

    public sealed record TiltPlace(double WheelTravel_mm, double Rack_mm, double Tilt_deg, double? Turn_deg);

    /// <summary>Values in degrees or millimetres, as the rule has it; the other stays null.</summary>
    public sealed record CheckedRule(
        string Rule, string Source, double? Value_deg, double? Limit_deg, double? Value_mm, double? Limit_mm, bool? Holds, bool CanBeWaived, string? Mend);

    public static MountAnswer Of(MountResult result) => new(new Dictionary<string, MountedStrut> { [Names.Of(result.Case.Corner.End)] = Of(result, new(result, DisplayUnits.Metric)) });

    private static MountedStrut Of(MountResult r, MountWords words) => new(
        r.Case.Corner.Load.Name, words.Answer(), Degrees(r.Greatest.Tilt_rad), r.Greatest.Travel_m * 1e3, r.Greatest.Rack_m * 1e3,
        Degrees(r.Case.Mount.SphericalBearing?.TiltLimit_rad), Degrees(r.Turn_rad), Degrees(r.TurnLeft_rad), Degrees(r.TurnRight_rad), r.Case.FullBump_m * 1e3, r.Case.FullDroop_m * 1e3, r.Case.TravelKnown,
        r.Case.Mount.StackHeight_m * 1e3, Of(r.Lives, r.Question), r.SideLoad is { } side ? Of(side, r.Case) : null, [.. r.Findings.Select(finding => Of(finding, words))],
        [.. r.Places.Select(place => new TiltPlace(place.Travel_m * 1e3, place.Rack_m * 1e3, Degrees(place.Tilt_rad), Degrees(place.Turn_rad)))], r.Solved, words.Reason(), [.. words.Notes()]);

    private static Lives Of(MountLives lives, MountQuestion asked) => new(
        lives.Load_N, Degrees(asked.Steer_rad), asked.SteersPerKilometre, asked.Working_m * 1e3, asked.StrokesPerKilometre, lives.Turning?.Life_m / 1e3,
        Degrees(lives.Turning?.LeastAmplitude_rad), lives.Turning?.Dents, Of(lives.Steering), Of(lives.Tilting), lives.Spherical_m / 1e3);

    private static Sliding? Of(SlidingLife? life) => life is null ? null
        : new(Degrees(life.Amplitude_rad), life.SpecificLoad_Pa / 1e6, life.Velocity_m_per_s * 1e3, life.Life_m / 1e3);

    private static SideLoad Of(SideLoads side, MountCase mount)
    {
        bool plates = side.Freed.ToUpper_m > 0;
        return new(
            Of(side.Drive), Of(side.FullBump), Of(side.FullDroop), side.Drive.Load.Spring_N, Degrees(side.FreeTilt_rad), Degrees(side.FreeTiltOutward_rad), Degrees(side.FreeTiltAhead_rad),
            plates ? side.Freed.Upper_m.Outward * 1e3 : null, plates ? side.Freed.Lower_m.Outward * 1e3 : null, side.FreedFullBump.Side_N, side.FreedFullDroop.Side_N,
            side.Friction?.AtWheel_N, side.Friction?.Breakaway_m_per_s2, side.Friction?.RestBand_m * 1e3, side.Friction?.Still_m * 1e3, mount.Design.Friction_N,
            [.. side.Rods.Select(rod => new Rod(rod.Diameter_m * 1e3, rod.Stress_Pa / 1e6, rod.Deflection_m * 1e3))],
            [.. side.Curve.Select(both => new SidePoint(both.Now.Travel_m * 1e3, both.Now.Outward_N, both.Freed.Outward_N))]);
    }

    private static SidePlace Of(SideLoadPlace place) => new(
        place.Travel_m * 1e3, place.Side_N, place.Outward_N, place.Rod?.Guide_N, place.Rod?.Piston_N, place.Friction_N, place.Rod?.Moment_Nm, place.Rod?.Stress_Pa / 1e6);

    private static CheckedRule Of(MountFinding finding, MountWords words)
    {
        bool length = finding.Rule is MountRule.StackAddsUp or MountRule.RodDiameter;
        return new(
            MountWords.Rule(finding.Rule), MountWords.Source(finding.Rule), length ? null : Degrees(finding.Value), length ? null : Degrees(finding.Limit),
            length ? finding.Value * 1e3 : null, length ? finding.Limit * 1e3 : null, finding.Holds, finding.CanBeWaived, words.Mend(finding));
    }

    private static double Degrees(double angle_rad) => angle_rad * 180 / Math.PI;

    private static double? Degrees(double? angle_rad) => angle_rad * 180 / Math.PI;
}
