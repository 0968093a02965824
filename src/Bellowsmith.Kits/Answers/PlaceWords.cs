using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Answers;

/// <summary>What a wheel does at one place of its travel and steering, row by row; an en dash where there is nothing to say.</summary>
public static class PlaceWords
{
    public static readonly IReadOnlyList<string> Labels =
    [
        "camber", "toe", "caster", "kingpin", "scrub radius", "trail", "track change", "roll centre", "motion ratio", "strut length", "mount tilts", "mount turns",
    ];

    /// <summary>In the order of the labels.</summary>
    public static IReadOnlyList<string> Of(LinkageState? state, DisplayUnits units)
    {
        if (state is not { } s) return [.. Labels.Select(_ => "–")];
        (StrutState strut, SteeringAxis? axis) = (s.Strut, s.Steering);
        return
        [
            Angle(s.Camber_rad), Angle(s.Toe_rad), Angle(axis?.Caster_rad), Angle(axis?.KingpinInclination_rad), Length(axis?.ScrubRadius_m), Length(axis?.MechanicalTrail_m),
            units.Change(Dimension.Length, s.TrackChange_m), Length(s.RollCentreHeight_m), LinkageWords.Number(strut.MotionRatio, "0.000"), Length(strut.Length_m), Angle(strut.Tilt_rad), Angle(strut.Turn_rad),
        ];

        string Length(double? si) => si is { } length ? units.Text(Dimension.Length, length) : "–";
    }

    private static string Angle(double? angle_rad) => LinkageWords.Angle(angle_rad);
}
