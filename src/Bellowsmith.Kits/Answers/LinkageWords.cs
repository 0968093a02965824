using System.Globalization;
using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>The sentences of a linkage: what the wheel does over its travel, where it ends, and what a tape leaves open.</summary>
public sealed class LinkageWords(LinkageResult result, DisplayUnits units)
{
    public const string Signs = "Camber + top out, toe + in, bump +, rack + to the left, outward and forward +, per wheel.";

    public string Answer()
    {
        LinkagePoint[] reached = [.. result.Points.Where(point => point.Rack_m == result.Question.Racks_m[0] && point.State is not null)];
        if (reached.Length == 0) return Reason(result.Points[0].Limit!);
        (LinkageState first, LinkageState last) = (reached[0].State!, reached[^1].State!);
        string ends = first == last
            ? $"At {Length(first.Travel_m)} of travel camber is {Angle(first.Camber_rad)} and toe {Angle(first.Toe_rad)}"
            : $"From {Length(first.Travel_m)} to {Length(last.Travel_m)} of travel camber goes from {Angle(first.Camber_rad)} to {Angle(last.Camber_rad)}, "
                + $"toe lies between {Angle(reached.Min(point => point.State!.Toe_rad))} and {Angle(reached.Max(point => point.State!.Toe_rad))}";
        return $"{ends}. At drive height the strut moves {Number(result.Linkage.Rest.Strut.MotionRatio, "0.000")} of the wheel's travel.";
    }

    /// <summary>Where the way ends, each end once.</summary>
    public IEnumerable<string> Limits() => result.Points.Select(point => point.Limit).OfType<LinkageLimit>().Select(Reason).Distinct();

    /// <summary>"It goes no further than −251.3 mm of travel: the lower arm holds it."</summary>
    public string Reason(LinkageLimit limit) => Reason(limit, units);

    public static string Reason(LinkageLimit limit, DisplayUnits units) => limit.Travel_m == 0 && limit.Rack_m != 0
        ? $"The rack goes no further than {units.Text(Dimension.Length, limit.Rack_m)}: the {Part(limit.Part)} holds it."
        : $"It goes no further than {units.Text(Dimension.Length, limit.Travel_m)} of travel{(limit.Rack_m == 0 ? "" : $" with the rack at {units.Text(Dimension.Length, limit.Rack_m)}")}: the {Part(limit.Part)} holds it.";

    /// <summary>Where the rack is asked to go past its locks; null where it is not, or where they were not counted.</summary>
    public string? Rack() => result.Part.RackTravel_m is { } lock_m && result.Question.Racks_m.Max(Math.Abs) is var most_m && most_m > lock_m
        ? $"The rack goes {Length(lock_m)} to either lock, so the document says: what stands past that, up to {Length(most_m)}, is never reached." : null;

    /// <summary>What a tape's error does where it does most; null where it was not asked for.</summary>
    public string? Tape()
    {
        if (result.Question.Tape_m is not { } tape_m || result.Spreads?.OfType<TapeSpread>().ToArray() is not { Length: > 0 } spreads) return null;
        TapeSpread camber = spreads.MaxBy(s => s.Camber_rad)!, toe = spreads.MaxBy(s => s.Toe_rad)!;
        return $"±{Length(tape_m)} in every coordinate leave camber within ±{Angle(camber.Camber_rad)} (mostly {Point(camber.WorstForCamber)}), "
            + $"toe within ±{Angle(toe.Toe_rad)} (mostly {Point(toe.WorstForToe)}), the roll centre within ±{Length(spreads.Max(s => s.RollCentre_m))} "
            + $"and the motion ratio within ±{Number(spreads.Max(s => s.MotionRatio), "0.000")} over this travel.";
    }

    public static string Part(LinkagePart part) => part switch
    {
        LinkagePart.LowerArm => "lower arm",
        LinkagePart.UpperArm => "upper arm",
        LinkagePart.TieRod => "tie rod",
        LinkagePart.Strut => "strut",
        LinkagePart.TrailingArm => "trailing arm",
        LinkagePart.OtherTrailingArm => "other trailing arm",
        LinkagePart.UpperLink => "upper link",
        LinkagePart.PanhardRod => "Panhard rod",
        LinkagePart.LowerFrontLink => "lower front link",
        LinkagePart.LowerRearLink => "lower rear link",
        LinkagePart.UpperFrontLink => "upper front link",
        LinkagePart.UpperRearLink => "upper rear link",
        _ => "wheel",
    };

    /// <summary>Degrees with two decimals: "−1.25°".</summary>
    public static string Angle(double? angle_rad) => angle_rad is { } angle ? Number(angle * 180 / Math.PI, "0.00") + "°" : "–";

    public static string Number(double value, string format)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return text.StartsWith('-') ? text.AsSpan(1).ContainsAnyInRange('1', '9') ? "−" + text[1..] : text[1..] : text;
    }

    // "lowerBallJoint" as "lower ball joint".
    private static string Point(string name) =>
        string.Concat(name.Select(letter => char.IsUpper(letter) ? " " + char.ToLowerInvariant(letter) : letter.ToString()));

    private string Length(double length_m) => units.Text(Dimension.Length, length_m);
}
