using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Kits.Studies.Lowering;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a lowered suspension: what it has done to toe and roll centre, and which joints mend it.</summary>
public sealed class LoweringWords(LoweringResult result, DisplayUnits units)
{
    private const double Still_rad = 0.005 * Math.PI / 180;

    private readonly string _lowered = Chosen(units, result.Question.Lowered_m), _working = Chosen(units, result.Question.Working_m);

    private bool Lowered => result.Question.Lowered_m > 0;

    /// <summary>The whole in one sentence.</summary>
    public string Answer() => $"{(Lowered ? $"Lowered {_lowered}, the wheel now" : "Nothing was lowered. The wheel")} {Going()} over the next {_working} of bump{Fallen()}{Remedies()}.";

    /// <summary>Where the old drive height lies past the linkage's end; null where it does not.</summary>
    public string? Limit() => result.Limit is { } limit
        ? $"The old drive height cannot be reached by these points. It goes no further than {Length(limit.Travel_m)} of travel: the {LinkageWords.Part(limit.Part)} holds it." : null;

    public string Camber() => Lowered && result.Old is { } old
        ? $"Camber is {LinkageWords.Angle(result.Now.Camber_rad)} at drive height; set as it is now it would be {LinkageWords.Angle(old.Camber_rad)} at the old one."
        : $"Camber is {LinkageWords.Angle(result.Now.Camber_rad)} at drive height.";

    public string Toe()
    {
        (ToeOverTravel toe, ToeOverTravel whole) = (result.WorkingToe, result.WholeToe);
        return $"From drive height toe changes by {Change(toe.AtTo_rad)} over {Chosen(units, toe.To_m)} of bump and {Change(toe.AtFrom_rad)} over {Chosen(units, -toe.From_m)} of droop, per wheel. "
            + $"From {Chosen(units, whole.From_m)} to {Chosen(units, whole.To_m)} of travel it wanders over {LinkageWords.Angle(whole.Range_rad)}.";
    }

    public string RollCentre() => Lowered && result.RollCentre is { } fall
        ? $"The roll centre stands {Length(result.Now.RollCentreHeight_m)} over the ground, {Length(Math.Abs(fall.Fell_m))} {(fall.Fell_m < 0 ? "higher" : "lower")} than it did, while the body came down {Length(fall.BodyFell_m)}: "
            + $"the arm from body to roll centre {(fall.ArmGrew_m < 0 ? "shrank" : "grew")} by {Length(Math.Abs(fall.ArmGrew_m))}."
        : $"The roll centre stands {Length(result.Now.RollCentreHeight_m)} over the ground.";

    /// <summary>What the measured ratio and the points say of each other; null where none was measured.</summary>
    public string? Ratio()
    {
        if (result.Ratio is not { } ratio) return null;
        string whose = ratio.IsTable ? "The measured table" : "The measured ratio";
        string part = Math.Abs(ratio.At_m) < 1e-9 ? "" : $"; {(ratio.At_m > 0 ? "in bump" : "in droop")} they part by {Length(Math.Abs(ratio.Parting_m))} at {Chosen(units, Math.Abs(ratio.At_m))}, "
            + (ratio.Explained ? "which a tape's error explains" : $"more than the {Length(ratio.PartingTape_m)} that a tape's {Tape} explains");
        return $"{whose} says {Bare(ratio.Measured)} strut per wheel at drive height, the points {Bare(ratio.FromPoints)} ({Percent(ratio.Share)}, "
            + $"{(ratio.ExplainedAtDrive ? "within" : "beyond")} the ±{Bare(ratio.Tape)} a tape leaves){part}. What was measured is used.";
    }

    public string RatioFromPoints() => $"The points make {Bare(result.Now.Strut.MotionRatio)} strut per wheel at drive height; none was measured.";

    /// <summary>What there is to mend: where nothing was lowered the roll centre stands where it did.</summary>
    public IEnumerable<JointMend> Mends() => result.Mends.Where(mend => Lowered || mend.Kind != MendKind.LowerBallJoint);

    /// <summary>A joint's mend in one sentence.</summary>
    public string Mend(JointMend mend)
    {
        string moves = string.Join(", ", mend.Moves.Select(move => $"{Joint(move.Point)} {Moved(move.Up_m)}{(move.Tape_m is { } tape ? $" (±{Length(tape)} on a tape's {Tape})" : "")}"));
        string toe = $"toe then changes by {Change(mend.WorkingToe.AtTo_rad)} over {_working} of bump and {Change(mend.WorkingToe.AtFrom_rad)} over as much droop";
        string roll = Lowered && mend.RollCentreLeft_m is { } left && Math.Abs(left) > 5e-5 ? $"; the roll centre stands {Length(Math.Abs(left))} {(left > 0 ? "further below the body than" : "nearer the body than")} it did" : "";
        string back = mend.Kind is MendKind.LowerBallJoint or MendKind.Both && mend.Holds ? "the roll centre is as far below the body as it was; " : "";
        return mend.Holds ? $"{Capital(moves)}: {back}{toe}{roll}." : $"No height within {Chosen(units, JointSearch.Most_m)} either way does it. The nearest: {moves}; {toe}{roll}.";
    }

    /// <summary>For a curve with the mend made.</summary>
    public string MendedLabel(JointMend mend) => string.Join(", ", mend.Moves.Select(move => $"{Joint(move.Point)} {Moved(move.Up_m)}"));

    /// <summary>What it is for, as a heading.</summary>
    public static string About(MendKind kind) => kind switch
    {
        MendKind.TieRodOuter => "outer tie rod",
        MendKind.TieRodInner => "rack",
        MendKind.LowerBallJoint => "ball joint",
        _ => "both",
    };

    /// <summary>What stands over the columns of <see cref="Heights"/>.</summary>
    public IReadOnlyList<string> Headings()
    {
        string length = units.Symbol(Dimension.Length);
        return ["camber", "toe", $"camber per {length}", $"toe per {length}", $"roll centre {length}", "ratio", $"track {length}", "lower arm", "tie rod"];
    }

    /// <summary>The old drive height and the one now as rows of a table.</summary>
    public IEnumerable<(string Name, LinkageState State, IReadOnlyList<string> Cells)> Heights()
    {
        if (Lowered && result.Old is { } old) yield return ("as it was", old, Cells(old));
        yield return ("now", result.Now, Cells(result.Now));
    }

    /// <summary>Why there is no whole answer; null where there is one.</summary>
    public string? Reason() => Limit() ?? (result.Mends.FirstOrDefault(mend => !mend.Holds) is { } mend ? Mend(mend) : null);

    public IEnumerable<Note> Notes()
    {
        if (Lowered) yield return new("old height", "What stands at the old drive height is what these points make there with the alignment left as it is now.");
        if (result.Mends.Count > 0)
            yield return new("mends", "At every mend camber and toe at drive height are set again as they were; the tie rod's length follows its joint.");
        if (result.Mends.Any(mend => mend.Moves.Any(move => move.Tape_m > Math.Abs(move.Up_m) / 2)))
            yield return new("tape", "A tape tells these heights poorly: measure the toe over travel on the car, move a joint by less, and measure again.");
        if (result.Mend(MendKind.LowerBallJoint) is { ArmLonger_m: { } longer } && Math.Abs(longer) > 5e-5)
            yield return new("lower arm", $"To that ball joint the arm would be {Length(Math.Abs(longer))} {(longer > 0 ? "longer" : "shorter")}; one left as it is {(longer > 0 ? "draws" : "pushes")} the joint {(longer > 0 ? "in" : "out")} by as much, which aligning takes up.");
        if (!result.Part.Points.ContainsKey("lowerBallJoint"))
            yield return new("ball joint", "This suspension has no lower ball joint on an arm: nothing is looked for that puts the roll centre back.");
        if (!result.Part.Points.ContainsKey("tieRodOuter"))
            yield return new("tie rod", "This suspension has no tie rod: nothing is looked for that takes the toe change away.");
        yield return new("roll centre", "From the paths of both wheels alike; it wanders as the car leans, and bushes are taken not to give.");
        yield return new("signs", LinkageWords.Signs);
    }

    private IReadOnlyList<string> Cells(LinkageState s) =>
    [
        LinkageWords.Angle(s.Camber_rad), LinkageWords.Angle(s.Toe_rad), Slope(s.CamberSlope_rad_per_m), Slope(s.ToeSlope_rad_per_m),
        units.Number(Dimension.Length, s.RollCentreHeight_m), Bare(s.Strut.MotionRatio), units.Number(Dimension.Length, s.TrackChange_m),
        LinkageWords.Angle(LinkAngles.LowerArm_rad(result.Part, s)), LinkageWords.Angle(LinkAngles.TieRod_rad(result.Part, s)),
    ];

    // Degrees over one of the length shown.
    private string Slope(double slope_rad_per_m) =>
        LinkageWords.Number(slope_rad_per_m * units.UnitOf(Dimension.Length).ToSi(1) * 180 / Math.PI, "0.0000") + "°";

    private string Going()
    {
        double toe = result.WorkingToe.AtTo_rad;
        return Math.Abs(toe) < Still_rad ? "keeps its toe" : $"toes {(toe < 0 ? "out" : "in")} {LinkageWords.Angle(Math.Abs(toe))}";
    }

    private string Fallen() => Lowered && result.RollCentre is { } fall
        ? $" and the roll centre has {(fall.Fell_m < 0 ? "risen" : "fallen")} {Length(Math.Abs(fall.Fell_m))} while the body fell {Length(fall.BodyFell_m)}" : "";

    private string Remedies()
    {
        string[] known = [.. ((string?[])[TieRod(), BallJoint()]).OfType<string>()];
        return known.Length == 0 ? "" : $": {string.Join("; ", known)}";
    }

    private string? TieRod() => result.Mend(MendKind.TieRodOuter) is { Holds: true } mend
        ? $"an outer tie-rod joint {Moved(mend.Moves[0].Up_m)} takes the toe away" : null;

    private string? BallJoint()
    {
        if (!Lowered) return null;
        if (result.Mend(MendKind.Both) is { Holds: true } both)
            return $"a ball joint {Moved(both.Moves[0].Up_m)} puts the roll centre back, with the outer tie-rod joint then {Moved(both.Moves[1].Up_m)}";
        return result.Mend(MendKind.LowerBallJoint) is { Holds: true } mend ? $"a ball joint {Moved(mend.Moves[0].Up_m)} puts the roll centre back" : null;
    }

    private string Moved(double up_m) => $"{Length(Math.Abs(up_m))} {(up_m < 0 ? "lower" : "higher")}";

    private static string Joint(string point) => point switch
    {
        "tieRodOuter" => "outer tie-rod joint",
        "tieRodInner" => "rack or inner joint",
        _ => "lower ball joint",
    };

    private static string Chosen(DisplayUnits units, double length_m) =>
        $"{PlainNumbers.Chosen(units.Value(Dimension.Length, length_m))} {units.Symbol(Dimension.Length)}";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Change(double angle_rad) => $"{LinkageWords.Angle(Math.Abs(angle_rad))} {(angle_rad < 0 ? "out" : "in")}";

    private static string Bare(double ratio) => LinkageWords.Number(ratio, "0.000");

    private static string Percent(double share) => $"{(share < 0 ? "" : "+")}{LinkageWords.Number(share * 100, "0.0")} %";

    private string Tape => Chosen(units, TapeSpread.Usual_m);

    private string Length(double length_m) => units.Text(Dimension.Length, length_m);
}
