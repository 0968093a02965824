using Bellowsmith.Kits.Answers;
using Bellowsmith.Kits.Studies.LinkageTravel;
using Bellowsmith.Kits.Units;
using Bellowsmith.Physics;

namespace Bellowsmith.App.Terminal;

/// <summary>A linkage over its travel as a person reads it.</summary>
internal static class LinkageView
{
    public static void Show(Screen screen, LinkageResult result, DisplayUnits units)
    {
        LinkageWords words = new(result, units);
        screen.Blank();
        screen.Title($"{result.Part.Name}: how does the wheel move?");
        if (result.Points.Any(point => point.State is not null)) screen.Answer(words.Answer());
        foreach (string limit in words.Limits()) screen.Warn(limit);
        string length = units.Symbol(Dimension.Length);
        screen.Table(
            [$"travel {length}", $"rack {length}", "camber", "toe", "caster", "kingpin", $"track {length}", $"roll centre {length}", $"strut {length}", "ratio", "tilt", "turn"],
            result.Points.Where(point => point.State is not null).Select(point => (Cells(point.State!, units), point.Travel_m == 0 && point.Rack_m == 0)));
        LinkageState rest = result.Linkage.Rest;
        if (rest.Steering is { } steering)
            screen.Point("drive height", $"scrub radius {units.Text(Dimension.Length, steering.ScrubRadius_m)}, mechanical trail {units.Text(Dimension.Length, steering.MechanicalTrail_m)}");
        if (words.Rack() is { } rack) screen.Point("rack", rack);
        if (words.Tape() is { } tape) screen.Point("tape", tape);
        screen.Point("signs", LinkageWords.Signs);
        screen.Blank();
        screen.Quiet(Cautions.RaisedCar);
        screen.Quiet(Cautions.Local);
    }

    private static IReadOnlyList<string> Cells(LinkageState s, DisplayUnits units) =>
    [
        units.Number(Dimension.Length, s.Travel_m), units.Number(Dimension.Length, s.Rack_m), LinkageWords.Angle(s.Camber_rad), LinkageWords.Angle(s.Toe_rad),
        LinkageWords.Angle(s.Steering?.Caster_rad), LinkageWords.Angle(s.Steering?.KingpinInclination_rad), units.Number(Dimension.Length, s.TrackChange_m),
        units.Number(Dimension.Length, s.RollCentreHeight_m), units.Number(Dimension.Length, s.Strut.Length_m), LinkageWords.Number(s.Strut.MotionRatio, "0.000"),
        LinkageWords.Angle(s.Strut.Tilt_rad), LinkageWords.Angle(s.Strut.Turn_rad),
    ];
}
