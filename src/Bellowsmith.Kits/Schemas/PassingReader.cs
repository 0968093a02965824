using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads what a suspension's document says of bars, lines and the car's underside.</summary>
internal static class PassingReader
{
    // What stands so near the wheel's centre is in the wheel; what stands so far is not of this corner. No source.
    private const double WithinWheel = 0.5, Farthest_m = 1.5;

    public static BarDiameters Diameters(Place? diameters) => diameters is null ? new() : new(
        diameters.Optional("tieRod"), diameters.Optional("lowerArm"), diameters.Optional("upperArm"), diameters.Optional("links"), diameters.Optional("halfshaft"));

    public static IReadOnlyList<CornerLine> Lines(Place? lines) => [.. (lines?.Items() ?? []).Select(Line).OfType<CornerLine>()];

    /// <summary>Reports points of the body that no car of this corner has: of the other side, within the wheel, far from it or under the road.</summary>
    public static void CheckPlaces(Place suspension, Point wheelCentre, double wheelRadius_m)
    {
        foreach (string name in SuspensionFields.Body)
            foreach (Place place in suspension.Member(name)?.Items() ?? [])
                if (SuspensionReader.PointAt(place) is { } point) Check(place, point, wheelCentre, wheelRadius_m);
        foreach (Place place in suspension.Member("underbody")?.Items() ?? [])
            if (SuspensionReader.PointAt(place) is { } point && point.Z <= wheelCentre.Z - wheelRadius_m)
                place.Report("a point over the road, which lies a wheel radius under the wheel's centre", "Measure it from the same plane as the other points.");
    }

    private static void Check(Place place, Point point, Point wheelCentre, double wheelRadius_m)
    {
        double away = (point - wheelCentre).Length;
        if (point.Y <= 0) place.Report("a point of the left side: y above 0", "Give the left side's points, y to the left.");
        else if (away < WithinWheel * wheelRadius_m) place.Report("a point outside the wheel", "It lies within the wheel itself: measure it again.");
        else if (away > Farthest_m) place.Report("a point within 1.5 m of the wheel's centre", "Measure it again, or leave it out.");
    }

    private static CornerLine? Line(Place line) =>
        line.Member("body") is { } body && SuspensionReader.PointAt(body) is { } from && line.Member("wheel") is { } wheel && SuspensionReader.PointAt(wheel) is { } to
            ? new(line.Text("name"), from, [.. (line.Member("via")?.Items() ?? []).Select(SuspensionReader.PointAt).OfType<Point>()], to, line.Needed("length"))
            : null;
}
