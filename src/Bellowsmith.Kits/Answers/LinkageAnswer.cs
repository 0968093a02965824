using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>A place of the linkage: unrounded, each number in the unit its name ends with. Where it is not reached all is null but the reason.</summary>
public sealed record LinkageRow(
    double Travel_mm, double Rack_mm, double? Camber_deg, double? Toe_deg, double? Caster_deg, double? KingpinInclination_deg, double? TrackChange_mm,
    double? StrutLength_mm, double? MotionRatio, double? TopMountTilt_deg, double? TopMountTurn_deg)
{
    public double? MotionRatioSlope_per_m { get; init; }

    public double? CamberSlope_deg_per_mm { get; init; }

    public double? ToeSlope_deg_per_mm { get; init; }

    public double? ScrubRadius_mm { get; init; }

    public double? MechanicalTrail_mm { get; init; }

    public double? WheelForward_mm { get; init; }

    public double? StrutAngle_deg { get; init; }

    public double? RollCentreHeight_mm { get; init; }

    public double? FrontInstantCentreY_mm { get; init; }

    public double? FrontInstantCentreZ_mm { get; init; }

    public double? SideInstantCentreX_mm { get; init; }

    public double? SideInstantCentreZ_mm { get; init; }

    public double? HalfshaftPlunge_mm { get; init; }

    public double? HalfshaftInner_deg { get; init; }

    public double? HalfshaftOuter_deg { get; init; }

    public IReadOnlyList<LinkageJoint>? Joints { get; init; }

    public LinkageTape? Tape { get; init; }

    public string? Reason { get; init; }
}

/// <summary>How far the joints of an arm or link have swung.</summary>
public sealed record LinkageJoint(string Part, double Inner_deg, double Outer_deg);

/// <summary>± what the tape's error in every coordinate makes of it.</summary>
public sealed record LinkageTape(
    double Camber_deg, double Toe_deg, double RollCentre_mm, double MotionRatio, string WorstForCamber, string WorstForToe);

/// <summary>The machine answer of <c>linkage</c>: a row for each wheel travel of each rack travel.</summary>
public sealed record LinkageAnswer(IReadOnlyList<LinkageRow> Rows)
{
    /// <summary>Where the rack is asked to go past its locks; null else.</summary>
    public string? Rack { get; init; }

    public static LinkageAnswer Of(LinkageResult result)
    {
        LinkageWords words = new(result, DisplayUnits.Metric);
        return new([.. result.Points.Select((point, k) => Row(point, result.Spreads?[k], words))]) { Rack = words.Rack() };
    }

    private static LinkageRow Row(LinkagePoint point, TapeSpread? spread, LinkageWords words)
    {
        if (point.State is not { } s)
            return new(point.Travel_m * 1e3, point.Rack_m * 1e3, null, null, null, null, null, null, null, null, null) { Reason = words.Reason(point.Limit!) };
        StrutState strut = s.Strut;
        SteeringAxis? steering = s.Steering;
        Point front = s.FrontInstantCentre, side = s.SideInstantCentre;
        HalfshaftState? shaft = s.Halfshaft;
        return new(
            point.Travel_m * 1e3, point.Rack_m * 1e3, Degrees(s.Camber_rad), Degrees(s.Toe_rad), Degrees(steering?.Caster_rad),
            Degrees(steering?.KingpinInclination_rad), s.TrackChange_m * 1e3, strut.Length_m * 1e3, strut.MotionRatio, Degrees(strut.Tilt_rad),
            Degrees(strut.Turn_rad))
        {
            MotionRatioSlope_per_m = strut.MotionRatioSlope_per_m,
            CamberSlope_deg_per_mm = Degrees(s.CamberSlope_rad_per_m) / 1e3,
            ToeSlope_deg_per_mm = Degrees(s.ToeSlope_rad_per_m) / 1e3,
            ScrubRadius_mm = steering?.ScrubRadius_m * 1e3,
            MechanicalTrail_mm = steering?.MechanicalTrail_m * 1e3,
            WheelForward_mm = s.WheelForward_m * 1e3,
            StrutAngle_deg = Degrees(strut.Angle_rad),
            RollCentreHeight_mm = s.RollCentreHeight_m * 1e3,
            FrontInstantCentreY_mm = Finite(front.Y),
            FrontInstantCentreZ_mm = Finite(front.Z),
            SideInstantCentreX_mm = Finite(side.X),
            SideInstantCentreZ_mm = Finite(side.Z),
            HalfshaftPlunge_mm = shaft?.Plunge_m * 1e3,
            HalfshaftInner_deg = Degrees(shaft?.Inner_rad),
            HalfshaftOuter_deg = Degrees(shaft?.Outer_rad),
            Joints = [.. s.Joints.Select(joint => new LinkageJoint(LinkageWords.Part(joint.Part), Degrees(joint.Inner_rad)!.Value, Degrees(joint.Outer_rad)!.Value))],
            Tape = spread is null ? null : new(
                Degrees(spread.Camber_rad)!.Value, Degrees(spread.Toe_rad)!.Value, spread.RollCentre_m * 1e3, spread.MotionRatio, spread.WorstForCamber,
                spread.WorstForToe),
        };
    }

    private static double? Degrees(double? angle_rad) => angle_rad * 180 / Math.PI;

    // An instant centre at infinity has no place.
    private static double? Finite(double place_m) => double.IsFinite(place_m) ? place_m * 1e3 : null;
}
