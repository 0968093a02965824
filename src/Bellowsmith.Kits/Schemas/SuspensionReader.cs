using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads a <c>suspension/1</c> document.</summary>
public static class SuspensionReader
{
    private const double MostAngle_rad = 15 * Math.PI / 180;

    /// <exception cref="FaultsException">Anything in it cannot be used.</exception>
    public static SuspensionPart Read(string path) => Reading.Run(path, SuspensionFields.Kind,
        (suspension, reading) => Build(suspension) is { } part ? part with { WrittenUnits = reading.WrittenUnits } : null);

    /// <summary>The suspension; null where its points cannot be used, which is a fault by then.</summary>
    internal static SuspensionPart? Build(Place suspension)
    {
        foreach (var known in SuspensionFields.Kinds)
        {
            if (suspension.Member(known.Key) is not { Node.Kind: NodeKind.Map } group) continue;
            Dictionary<string, Point> points = [];
            bool complete = known.Points.All(name => Add(group, name, points));
            foreach (string name in SuspensionFields.Halfshaft) Add(suspension, name, points);
            if (!complete || suspension.Optional("wheelRadius") is not { } radius_m) return null;
            var (camber, toe) = Static(suspension, group, points["wheelCentre"]);
            string seat = group.OptionalText(SuspensionFields.StrutOn) ?? "";
            StrutCarrier carrier = known.Seats.FirstOrDefault(choice => choice.Word == seat)?.Carrier ?? StrutCarrier.Upright;
            SuspensionPart part = new(suspension.Text("name"), suspension.File, known.Kind, radius_m, camber, toe, points, carrier)
            {
                LoweredBy_m = suspension.Optional("loweredBy"),
                RackTravel_m = suspension.Optional("rackTravel"),
                ArchEdge = Several(suspension, "archEdge"),
                Liner = Several(suspension, "liner"),
                Tower = Several(suspension, "tower"),
                Underbody = Several(suspension, "underbody"),
                Diameters = PassingReader.Diameters(suspension.Member("diameters")),
                Lines = PassingReader.Lines(suspension.Member("lines")),
            };
            PassingReader.CheckPlaces(suspension, points["wheelCentre"], radius_m);
            return SuspensionCheck.Holds(part, group) ? part : null;
        }

        return null;
    }

    private static bool Add(Place group, string name, Dictionary<string, Point> points)
    {
        if (group.Member(name) is not { } place || PointAt(place) is not { } point) return false;
        points[name] = point;
        return true;
    }

    /// <summary>A point as written; null where it is faulty, which is reported by then.</summary>
    internal static Point? PointAt(Place place) =>
        place.Node is { Kind: NodeKind.List, Items.Count: 3 } && place.Item(0).Value is { } x && place.Item(1).Value is { } y && place.Item(2).Value is { } z
            ? new(x, y, z) : null;

    private static IReadOnlyList<Point> Several(Place suspension, string name) =>
        [.. (suspension.Member(name)?.Items() ?? []).Select(PointAt).OfType<Point>()];

    private static (double Camber_rad, double Toe_rad) Static(Place suspension, Place group, Point centre)
    {
        (double Camber_rad, double Toe_rad) given = (suspension.Optional("staticCamber") ?? 0, suspension.Optional("staticToe") ?? 0);
        Dictionary<string, Point> axis = [];
        if (!Add(group, SuspensionFields.WheelAxisPoint, axis)) return given;
        foreach (string twice in (string[])["staticCamber", "staticToe"])
            if (suspension.Member(twice) is { } place) place.ReportKey($"{twice} or {SuspensionFields.WheelAxisPoint}, not both", "Take one of the two out.");
        var (camber, toe) = LinkageWheel.Of(centre, axis[SuspensionFields.WheelAxisPoint]);
        if (Math.Abs(camber) <= MostAngle_rad && Math.Abs(toe) <= MostAngle_rad) return (camber, toe);
        group.Member(SuspensionFields.WheelAxisPoint)!.Report("a point that makes camber and toe of 15° at most", "Give a point on the line the wheel spins about.");
        return given;
    }
}
