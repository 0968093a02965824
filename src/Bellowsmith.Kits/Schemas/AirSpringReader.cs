using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads an <c>air-spring/1</c> document.</summary>
public static class AirSpringReader
{
    /// <exception cref="FaultsException">Anything in it or in the files it names cannot be used, or it is a bare rate.</exception>
    public static AirSpringPart Read(string path) => Reading.Run(path, AirSpringFields.Kind, (spring, _) =>
    {
        if (spring.Member("rate") is { } rate) rate.ReportKey("an air spring", "No air spring: give the document of one with its test data.");
        return Build(spring) as AirSpringPart;
    });

    /// <summary>The spring; null where its data cannot be used, which is a fault by then.</summary>
    internal static SpringPart? Build(Place spring)
    {
        if (spring.Optional("rate") is { } rate) return new LinearSpringPart(rate);
        var ambient_Pa = spring.Optional("ambient") ?? StandardAtmosphere.SeaLevel_Pa;
        var data = spring.Table("data", (table, faults) => SpringTable.Read(table, ambient_Pa, faults));
        var mould = spring.Part("mould", MouldFields.Kind) is { } place ? MouldReader.Build(place) : null;
        var range = spring.Member("heightRange");
        var (least, greatest) = range?.Node.Items.Count == 2 ? (range.Item(0).Value, range.Item(1).Value) : (null, null);
        if (least >= greatest) range!.Report("the least height before the greatest", "Write the least height first.");
        return data is null ? null : new AirSpringPart(
            spring.Text("name"), spring.Text("shape"), least ?? double.NaN, greatest ?? double.NaN, spring.Needed("maxGaugePressure"),
            spring.Optional("exponent"), spring.Optional("maxDiameter"), data,
            InputFile.Readable(spring.Member("data")!.FullPath), ambient_Pa, mould);
    }
}
