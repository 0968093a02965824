using Bellowsmith.Kits.Studies.Mount;
using Bellowsmith.Kits.Units;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a top mount and a strut's side load: the same on page, terminal and paper.</summary>
public sealed class MountWords(MountResult result, DisplayUnits units)
{
    private const double Kilometre_m = 1000, Longest_m = 1e9, Degree = Math.PI / 180;

    private readonly TopMount _mount = result.Case.Mount;

    /// <summary>
    /// "The bearing tilts 1.8° of its 12.0° and the strut turns 33.0° on its turning bearing. 260 N push the rod aside at drive height: …
    /// A spring line tilted 3.6° takes it away."
    /// </summary>
    public string Answer() => result.Case.Corner.Unsettled is null ? $"{InTheMount()} {Aside()}"
        : $"{Reason()} With {Length(result.Case.FullBump_m)} of travel taken either way: {InTheMount()} {Aside()}";

    /// <summary>Why not all of it is answered; null where it is.</summary>
    public string? Reason() => result.Case.Corner.Unsettled is { } strut ? TravelWords.NoDrive(strut, units) : result.Reached ? null : Ends;

    private const string Ends = "The linkage ends before the travel or the rack does; what is said holds up to there.";

    /// <summary>"The bearing tilts 1.8° of its 12.0° and the strut turns 33.0° on its turning bearing."</summary>
    public string InTheMount() => $"{Tilts()}{Turns()}.";

    /// <summary>"260 N push the rod aside at drive height: …"</summary>
    public string Aside()
    {
        if (!result.Case.BearsSideLoad) return "No side load: this strut does not lead the wheel.";
        if (result.SideLoad is not { } side) return "What pushes the rod aside cannot be told.";
        string friction = side is { Friction: { } still, Drive.Friction_N: { } force } ? $": {Force(force)} of friction {Holds(still)}" : "";
        return $"{Force(side.Drive.Side_N)} push the rod aside at drive height{friction}. A spring line tilted {Angle(side.FreeTilt_rad)} takes it away.";
    }

    /// <summary>How many rules are missed.</summary>
    public string Summary() => result.Findings.Count(finding => finding.Holds == false) switch
    {
        0 => result.Findings.Any(finding => finding.Holds is null) ? "No rule is missed; some could not be checked." : "Every rule holds.",
        1 => "One rule is missed.",
        var missed => $"{missed} rules are missed.",
    };

    public string Tilt()
    {
        MountPlace place = result.Greatest;
        string at = place.Rack_m == 0 ? "straight ahead" : place.Rack_m > 0 ? "with the rack at its left end" : "with the rack at its right end";
        string rest = _mount.TiltAtDrive_rad == 0 ? "" : $"; at drive height it leans {Angle(Math.Abs(_mount.TiltAtDrive_rad))}";
        return $"The strut leans most from the bearing's axis, {Angle(place.Tilt_rad)}, at {Length(place.Travel_m)} of travel {at}{rest}.{Locks()}";
    }

    /// <summary>What the turning bearing is in for; without one what slides instead. Null where nothing steers.</summary>
    public string? Turning()
    {
        if (result.Lives.Turning is { } turning)
            return turning.Dents
                ? $"Swung ±{Angle(turning.Amplitude_rad)}, each ball or roller keeps to a place of its own (below ±{Angle(turning.LeastAmplitude_rad!.Value)}) and dents it: no life can be told. "
                    + $"Its rating alone would promise {Way(turning.Life_m)}."
                : $"L10 of {Way(turning.Life_m)}, swung {Duty(turning.Amplitude_rad, result.Question.SteersPerKilometre)} under {Force(result.Lives.Load_N)}.";
        if (!(result.Case.Lock_m > 0) || _mount.TurningBearing is not null) return null;
        string bellows = result.Turn_rad is { } turn ? $"The bellows is twisted by the whole {Angle(turn)} at full lock. " : "";
        return result.Lives.Steering is { } sliding ? $"{bellows}The spherical bearing slides as the wheels steer: {Slides(sliding, result.Question.SteersPerKilometre)}." : $"{bellows}Nothing is known of what slides.";
    }

    /// <summary>How the spherical bearing wears; null without one.</summary>
    public string? Sliding()
    {
        if (result.Lives.Tilting is not { } tilting) return null;
        string both = result.Lives is { Steering: not null, Spherical_m: { } all } ? $" With the steering together {Way(all)}." : "";
        return $"Over the usual ±{Length(result.Question.Working_m)} of travel: {Slides(tilting, result.Question.StrokesPerKilometre)}.{both}";
    }

    /// <summary>What friction does to small bumps; null without a side load.</summary>
    public string? Friction()
    {
        if (result.SideLoad is not { Friction: { } friction, Drive.Friction_N: { } force }) return null;
        string tyre = friction.Still_m is { } still ? $"; a bump met at once that is lower than {Length(still)} the tyre takes alone" : "";
        string band = friction.RestBand_m is { } rest ? $"; the car comes to rest anywhere within ±{Length(rest)} of its height" : "";
        string kit = result.Case.Design.Friction_N is { } given ? $" The kit's friction is {Force(given)}, seals and all." : "";
        return $"{Force(force)} along the rod, {Force(friction.AtWheel_N)} at the wheel: the body must be pushed with {PlainNumbers.Fixed(friction.Breakaway_m_per_s2, 2)} m/s² before the strut moves{tyre}{band}.{kit}";
    }

    /// <summary>Where the spring would have to push; null without a side load.</summary>
    public string? Free()
    {
        if (result.SideLoad is not { } side) return null;
        string plates = side.Freed.ToUpper_m > 0
            ? $" The plates' middles then stand {Side(side.Freed.Upper_m)} at the upper one and {Side(side.Freed.Lower_m)} at the lower one, from the strut's axis."
            : "";
        return $"A line through the mount's joint, its foot {Angle(Math.Abs(side.FreeTiltOutward_rad))} {(side.FreeTiltOutward_rad < 0 ? "inward" : "outward")} and {Angle(Math.Abs(side.FreeTiltAhead_rad))} "
            + $"{(side.FreeTiltAhead_rad < 0 ? "to the rear" : "ahead")}, leaves none at drive height, {Force(side.FreedFullBump.Side_N)} at full bump and {Force(side.FreedFullDroop.Side_N)} at full droop.{plates}";
    }

    public static string Rule(MountRule rule) => rule switch
    {
        MountRule.TiltWithinBearing => "the strut's tilt within the spherical bearing's limit",
        MountRule.TurnsOnBearing => "the strut turns on a turning bearing",
        MountRule.SwingsFarEnough => "the steering's swings let the turning bearing's elements roll far enough",
        MountRule.StackAddsUp => "the parts add up to upperStack",
        _ => "rod diameter of a strut that leads the wheel",
    };

    public static string Source(MountRule rule) => rule switch
    {
        MountRule.TiltWithinBearing => "the bearing's maker; never waived",
        MountRule.TurnsOnBearing => "a spherical bearing in torsion wears by sliding [Spherical Plain Bearings 1993]",
        MountRule.SwingsFarEnough => "neighbours' paths must meet, derived; the steering's swings are common practice, no source",
        MountRule.StackAddsUp => "the kit's own lengths",
        _ => "18 mm or more where a damper of its own has 11 mm [Reimpell Stoll Betzler 2001]; advice",
    };

    /// <summary>"1.80°, asked 12.00°"; nothing where there is no number.</summary>
    public string Numbers(MountFinding finding)
    {
        bool length = finding.Rule is MountRule.StackAddsUp or MountRule.RodDiameter;
        if (finding.Value is not { } value) return "";
        return $"{Text(value)}{(finding.Limit is { } limit ? $", asked {Text(limit)}" : "")}";

        string Text(double number) => length ? Length(number) : Angle(number);
    }

    /// <summary>What mends a miss; null where nothing is missed.</summary>
    public string? Mend(MountFinding finding) => (finding.Rule, finding.Holds) switch
    {
        (_, true) => null,
        (MountRule.TiltWithinBearing, null) => "Not checked: give the mount its sphericalBearing.",
        (_, null) => "Not checked: the kit does not say enough.",
        (MountRule.TiltWithinBearing, _) => "The ring meets its stop and bends rod or housing: lay the bearing's axis along the middle of the strut's swing, or take one that tilts further.",
        (MountRule.TurnsOnBearing, _) => "Put a turning bearing under the mount.",
        (MountRule.SwingsFarEnough, _) => "Take a bearing with more, smaller elements, or one that slides; look at its races every year.",
        (MountRule.StackAddsUp, _) => $"Measure again: {Length(Math.Abs(finding.Value!.Value - finding.Limit!.Value))} {(finding.Value > finding.Limit ? "more" : "less")} stand here than upperStack says, and the car stands as much off.",
        _ => result.SideLoad is { Rods: [.., var up] } ? $"A rod of {Length(up.Diameter_m)} bends to {units.Text(Dimension.Stress, up.Stress_Pa)} under the same side load; or take the side load away." : "Take a thicker rod, or take the side load away.",
    };

    public IEnumerable<Note> Notes()
    {
        if (result.SideLoad is not null)
        {
            yield return new("load", $"{Force(result.Case.WheelLoad_N)} upward at the contact point, standing: the ground's load less the unsprung weight, at drive, bump and droop alike. Corners, brakes and bumps add their own.");
            yield return new("plates", "The spring's line of force runs through the middles of the end plates. A bellows that stands askew pushes off that line by an amount only a load frame tells.");
        }

        if (result.Case.BearsSideLoad && result.SideLoad is null) yield return new("side load", "The parts lie in line and hold nothing: no side load can be told.");
        if (!result.Case.TravelKnown) yield return new("travel", TravelWords.Taken(result.Case.Corner.Unsettled, $"{Length(result.Case.FullBump_m)} either way", units));
        if (!result.Reached) yield return new("travel", Ends);
        if (result.Lives is { Turning: not null } or { Tilting: not null })
        {
            yield return new("duty", "Swings in a kilometre and how far they go are common practice, no source: set them with --steer, --per-km, --working and --strokes-per-km.");
            yield return new("life", "Lives of sliding surfaces under small swings are a rough guide; dirt, water and blows end most bearings sooner. The bearings are taken to bear the whole strut force along the strut.");
        }

        yield return new("signs", "Foot outward +, bump +, rack to the left +.");
    }

    private string Tilts() => _mount.SphericalBearing is { } bearing ? $"The bearing tilts {Angle(result.Greatest.Tilt_rad)}{(bearing.TiltLeft_rad(result.Greatest.Tilt_rad) < 0 ? ", past" : " of")} its {Angle(bearing.TiltLimit_rad)}"
        : $"The strut tilts {Angle(result.Greatest.Tilt_rad)} in a mount that has no bearing for it";

    private string Locks() => result.Case.Lock_m > 0 && result is { TurnLeft_rad: { } left, TurnRight_rad: { } right }
        ? $" It turns {Angle(left)} to the left and {Angle(right)} to the right." : "";

    private string Turns() => !(result.Case.Lock_m > 0) || result.Turn_rad is not { } turn ? ""
        : _mount.TurningBearing is null ? $" and the strut turns {Angle(turn)} in it, without a bearing to turn on"
        : $" and the strut turns {Angle(turn)} on its turning bearing";

    private string Holds(StrutFriction friction) => (friction.Still_m, friction.RestBand_m) switch
    {
        ({ } still, { } band) => $"hold the strut still for bumps below {Length(still)} and leave the car within ±{Length(band)} of its height",
        ({ } still, null) => $"hold the strut still for bumps below {Length(still)}",
        (null, { } band) => $"leave the car within ±{Length(band)} of its height",
        _ => "hold the strut still",
    };

    private string Slides(SlidingLife life, double perKilometre)
    {
        string lasts = life.Life_m is { } way ? $"some {Way(way)}" : "more than its surface bears";
        string velocity = PlainNumbers.Rounded(life.Velocity_m_per_s * 1e3, 2);
        return $"{Duty(life.Amplitude_rad, perKilometre)} at {units.Text(Dimension.Stress, life.SpecificLoad_Pa)} and {velocity} mm/s ({PlainNumbers.Chosen(result.Question.Speed_m_per_s * 3.6)} km/h), {lasts}";
    }

    private static string Duty(double amplitude_rad, double perKilometre) => $"±{Angle(amplitude_rad)} {PlainNumbers.Chosen(perKilometre)} times a kilometre";

    private static string Way(double way_m) => way_m > Longest_m ? "more than a million km" : $"{PlainNumbers.Rounded(way_m / Kilometre_m, 2)} km";

    private string Side((double Outward, double Ahead) offset) => $"{Length(Math.Abs(offset.Outward))} {(offset.Outward < 0 ? "inward" : "outward")}";

    private static string Angle(double angle_rad) => LinkageWords.Number(angle_rad / Degree, "0.0") + "°";

    private string Force(double force_N) => units.Text(Dimension.Force, force_N);

    private string Length(double length_m) => units.Text(Dimension.Length, length_m);
}
