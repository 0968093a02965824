using Bellowsmith.Kits.Tables;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads a <c>car/1</c> document.</summary>
public static class CarReader
{
    private const double LeastRatio = 0.05, MostRatio = 5, LedTravel_m = 0.1;

    /// <exception cref="FaultsException">Anything in it or in the files it names cannot be used.</exception>
    public static Car Read(string path) => Reading.Run(path, CarFields.Kind, (car, _) => Build(car));

    internal static Car Build(Place car)
    {
        var loads = car.Member("loads")?.Named().ConvertAll(Case) ?? [];
        var axles = car.Member("axles");
        var (front, rear) = (Axle(axles?.Member("front")), Axle(axles?.Member("rear")));
        if (axles is { Node.Kind: NodeKind.Map } && front is null && rear is null)
            axles.Report("front, rear or both", "Describe at least one axle.");
        CheckSprung(axles?.Member("front"), front, loads, AxleEnd.Front);
        CheckSprung(axles?.Member("rear"), rear, loads, AxleEnd.Rear);
        return new(car.Text("name"), loads, front, rear);
    }

    private static LoadCase Case(Place load) => new(
        load.Name, load.Needed("leftFront"), load.Needed("rightFront"), load.Needed("leftRear"), load.Needed("rightRear"));

    private static Axle? Axle(Place? axle)
    {
        if (axle is null) return null;
        SuspensionPart? suspension = axle.Part("suspension", SuspensionFields.Kind) is { } place ? SuspensionReader.Build(place) : null;
        MotionRatio? led = Led(axle, suspension);
        return new(
            axle.Needed("unsprungMass"),
            led ?? Ratio(axle.Member("motionRatio") ?? axle.Member("springRatio")),
            led ?? Ratio(axle.Member("motionRatio") ?? axle.Member("damperRatio")),
            axle.Optional("parasiticRate") ?? 0,
            axle.Optional("tyreRate"),
            axle.Optional("track"),
            axle.Optional("archHeightAtDrive"),
            axle.OptionalText("suspension") is null ? null : InputFile.Readable(axle.Member("suspension")!.FullPath))
        {
            Suspension = suspension,
            RatioFromPoints = led is not null,
            Wheel = Wheel(axle),
        };
    }

    private static RoadWheel? Wheel(Place axle)
    {
        if (axle.OptionalText("wheel") is not { } text || WheelText.Wheel(text) is not { } wheel)
        {
            if (axle.Member("wheel") is null && axle.Member("wheelSection") is { } alone) alone.Report("a wheel beside it", "Add \"wheel\": the rim, its offset and the tyre size.");
            return null;
        }

        return axle.OptionalText("wheelSection") is { } section && WheelText.Section(section) is { } catalogue
            ? wheel with { Tyre = wheel.Tyre with { Catalogue = catalogue } } : wheel;
    }

    /// <summary>The ratio the suspension's points make; null where a measured one stands beside them, which wins, or there are none.</summary>
    private static MotionRatio? Led(Place axle, SuspensionPart? suspension)
    {
        bool measured = axle.Member("motionRatio") is not null || axle.Member("springRatio") is not null || axle.Member("damperRatio") is not null;
        if (measured || suspension is null) return null;
        Linkage linkage = suspension.Linkage();
        if (linkage.Rest.Strut.MotionRatio is >= LeastRatio and <= MostRatio) return MotionRatio.Of(linkage, LedTravel_m);
        axle.Member("suspension")!.Report("a strut that moves 0.05 to 5 times as far as the wheel", "Check strutTop and the strut's lower point.");
        return null;
    }

    private static MotionRatio Ratio(Place? ratio)
    {
        if (ratio?.Table("table", RatioTable.Read) is { } table)
            return MotionRatio.FromTable([.. table.WheelTravel_m], [.. table.StrutTravel_m]);
        var constant = ratio?.Value ?? ratio?.Optional("strutPerWheel") ?? 1 / ratio?.Optional("wheelPerStrut")
            ?? ratio?.Optional("strutTravel") / ratio?.Optional("wheelTravel");
        if (constant is < LeastRatio or > MostRatio)
            ratio!.Report("strut travel of 0.05 to 5 times wheel travel", "Check both travels and their units.");
        // Where the ratio was faulty the reading ends in faults; any number holds its place until then.
        return MotionRatio.Constant(constant is >= LeastRatio and <= MostRatio ? constant.Value : 1);
    }

    private static void CheckSprung(Place? place, Axle? axle, List<LoadCase> loads, AxleEnd end)
    {
        foreach (var load in loads)
        {
            var (left, right) = load.At(end);
            if (axle is not null && (left + right) / 2 <= axle.UnsprungMass_kg)
                place!.Member("unsprungMass")!.Report($"less than half of what the axle's scales read in {load.Name}",
                    "Give the unsprung mass of one corner, and check the readings' units.");
        }
    }
}
