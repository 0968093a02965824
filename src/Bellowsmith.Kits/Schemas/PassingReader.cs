using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads what a suspension's document says of bars, lines and the car's underside.</summary>
internal static class PassingReader
{
    public static BarDiameters Diameters(Place? diameters) => diameters is null ? new() : new(
        diameters.Optional("tieRod"), diameters.Optional("lowerArm"), diameters.Optional("upperArm"), diameters.Optional("links"), diameters.Optional("halfshaft"));

    public static IReadOnlyList<CornerLine> Lines(Place? lines) => [.. (lines?.Items() ?? []).Select(Line).OfType<CornerLine>()];

    private static CornerLine? Line(Place line) =>
        line.Member("body") is { } body && SuspensionReader.PointAt(body) is { } from && line.Member("wheel") is { } wheel && SuspensionReader.PointAt(wheel) is { } to
            ? new(line.Text("name"), from, [.. (line.Member("via")?.Items() ?? []).Select(SuspensionReader.PointAt).OfType<Point>()], to, line.Needed("length"))
            : null;
}
