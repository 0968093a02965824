using Bellowsmith.Kits.Studies.Alignment;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of an alignment: where the adjusters are to stand, what they give, and what that changes besides.</summary>
public sealed class AlignmentWords(AlignmentResult result, DisplayUnits units)
{
    private const double Degree_rad = Math.PI / 180;

    /// <summary>Settings and what they give in one sentence.</summary>
    public string Answer()
    {
        string settings = string.Join(", ", result.Adjusters.Select(adjuster => $"{Name(adjuster.Kind)} {Setting(adjuster)}"));
        return $"{Capital(settings)}: camber {LinkageWords.Angle(result.Camber_rad)} and toe {LinkageWords.Angle(result.Toe_rad)} per wheel ({TotalToe()}) at drive height.";
    }

    /// <summary>"0.10° in all, 3′ per wheel, 0.4 mm at the rim".</summary>
    public string TotalToe()
    {
        string rim = result.ToeAtRim_m is { } at ? $", {units.Text(Dimension.Length, at)} at the rim" : "";
        return $"{LinkageWords.Angle(2 * result.Toe_rad)} in all; per wheel {LinkageWords.Number(result.Toe_rad / Degree_rad * 60, "0.0")}′{rim}";
    }

    /// <summary>Which range ends before what is wanted, and what it would take; null where both are met.</summary>
    public string? Reason()
    {
        if (result.Solved) return null;
        string ends = string.Join(" and ", result.Adjusters.Where(IsShort).Select(End));
        return $"{Wanted()} cannot be had: {(ends.Length == 0 ? "no setting within reach does it" : ends)}. The nearest is camber {LinkageWords.Angle(result.Camber_rad)} and toe {LinkageWords.Angle(result.Toe_rad)}.";
    }

    /// <summary>An adjuster: where it stands, what is left either way, what a little of it does.</summary>
    public string Adjuster(AdjusterSetting adjuster) =>
        $"{Setting(adjuster)}; {Amount(adjuster, adjuster.LeastLeft)} left {Ways(adjuster.Kind).Least} and {Amount(adjuster, adjuster.GreatestLeft)} {Ways(adjuster.Kind).Greatest}. {Effect(adjuster)}.";

    /// <summary>What the strut's length at drive height asks of the height thread.</summary>
    public string Thread()
    {
        string strut = $"The strut is {Length(Math.Abs(result.StrutLonger_m))} {(result.StrutLonger_m < 0 ? "shorter" : "longer")} at drive height";
        return result.ThreadTurns is { } turns
            ? $"{strut}: {LinkageWords.Number(Math.Abs(turns), "0.00")} turns {(turns < 0 ? "less" : "more")} of exposed thread hold the car's height on the same spring height."
            : $"{strut}.";
    }

    /// <summary>What stood before and stands now, as rows of a table.</summary>
    public IEnumerable<(string Name, string Before, string After)> Changes()
    {
        (LinkageState before, LinkageState after) = (result.Before.Rest, result.After.Rest);
        yield return ("camber", LinkageWords.Angle(before.Camber_rad), LinkageWords.Angle(after.Camber_rad));
        yield return ("toe per wheel", LinkageWords.Angle(before.Toe_rad), LinkageWords.Angle(after.Toe_rad));
        if (before.Steering is { } was && after.Steering is { } now)
        {
            yield return ("kingpin inclination", LinkageWords.Angle(was.KingpinInclination_rad), LinkageWords.Angle(now.KingpinInclination_rad));
            yield return ("caster", LinkageWords.Angle(was.Caster_rad), LinkageWords.Angle(now.Caster_rad));
            yield return ("scrub radius", Length(was.ScrubRadius_m), Length(now.ScrubRadius_m));
        }

        yield return ("motion ratio", LinkageWords.Number(before.Strut.MotionRatio, "0.000"), LinkageWords.Number(after.Strut.MotionRatio, "0.000"));
        yield return ("strut length", Length(before.Strut.Length_m), Length(after.Strut.Length_m));
        yield return ("track, this side", "0", units.Change(Dimension.Length, result.TrackChange_m, 0));
    }

    public IEnumerable<Note> Notes()
    {
        if (result.Case.Camber is AdjusterKind.CamberSlide)
            yield return new("about", "The slide turns the wheel about the lower ball joint, not about the hub: the wheel moves across the car with it.");
        if (result.Case.Camber is AdjusterKind.KnuckleSlot)
            yield return new("about", "The knuckle turns on the strut about its bolt while the top stays: the wheel goes about the lower ball joint as well, not about the hub.");
        if (result.Question.Camber_rad is not null && result.Question.Toe_rad is null && result.Case.Toe is null)
            yield return new("toe", "The kit names no tie rod: toe is left where camber's adjuster puts it.");
        if (result.Question is { Toe_rad: null, Camber_rad: not null } && result.Case.Toe is not null)
            yield return new("toe", "Toe is put back to what it is: camber's adjuster moves it.");
        if (result.Case.Wheel is null)
            yield return new("rim", "The car names no wheel, so toe at the rim is not known: give the axle a \"wheel\".");
        yield return new("tie rod", "Degrees a turn of the tie rod are not said: its pitch is not known.");
        yield return new("signs", LinkageWords.Signs);
    }

    public static string Name(AdjusterKind kind) => kind switch
    {
        AdjusterKind.CamberSlide => "top mount",
        AdjusterKind.KnuckleSlot => "knuckle",
        AdjusterKind.EccentricBolt => "eccentric bolt",
        _ => "tie rod",
    };

    private static (string Least, string Greatest) Ways(AdjusterKind kind) => kind switch
    {
        AdjusterKind.TieRod => ("shorter", "longer"),
        AdjusterKind.KnuckleSlot => ("top in", "top out"),
        _ => ("inward", "outward"),
    };

    private string Setting(AdjusterSetting adjuster) => adjuster.Setting == 0 ? "where it is"
        : $"{Amount(adjuster, Math.Abs(adjuster.Setting))} {(adjuster.Setting < 0 ? Ways(adjuster.Kind).Least : Ways(adjuster.Kind).Greatest)}";

    private string Amount(AdjusterSetting adjuster, double amount) => adjuster.IsAngle ? LinkageWords.Angle(amount) : Length(amount);

    // Degrees a length shown, or a degree of turn.
    private string Effect(AdjusterSetting adjuster)
    {
        double unit = adjuster.IsAngle ? 1 : units.UnitOf(Dimension.Length).ToSi(1) / Degree_rad;
        string per = adjuster.IsAngle ? "degree" : units.Symbol(Dimension.Length);
        return $"A {per} {Ways(adjuster.Kind).Greatest} is {Signed(adjuster.CamberEffect * unit)} of camber and {Signed(adjuster.ToeEffect * unit)} of toe";
    }

    private static bool IsShort(AdjusterSetting adjuster) =>
        adjuster.Needed is not { } needed ? adjuster.LeastLeft == 0 || adjuster.GreatestLeft == 0 : needed < adjuster.Range.Least || needed > adjuster.Range.Greatest;

    private string End(AdjusterSetting adjuster)
    {
        string way = adjuster.LeastLeft == 0 ? Ways(adjuster.Kind).Least : Ways(adjuster.Kind).Greatest;
        string needed = adjuster.Needed is { } there ? $"; it would take {Amount(adjuster, Math.Abs(there))}" : "";
        return $"the {Name(adjuster.Kind)} ends {Amount(adjuster, Math.Abs(adjuster.Setting))} {way}{needed}";
    }

    private string Wanted() => result.WantedCamber_rad is { } camber
        ? $"Camber {LinkageWords.Angle(camber)} with toe {LinkageWords.Angle(result.WantedToe_rad)}" : $"Toe {LinkageWords.Angle(result.WantedToe_rad)}";

    private static string Signed(double degrees) => $"{(degrees < 0 ? "" : "+")}{LinkageWords.Number(degrees, "0.000")}°";

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];

    private string Length(double length_m) => units.Text(Dimension.Length, length_m);
}
