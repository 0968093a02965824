namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads a <c>kit/1</c> document with its car, springs, dampers and tables.</summary>
public static class KitReader
{
    /// <exception cref="FaultsException">Anything in it or in the files it names cannot be used.</exception>
    public static Kit Read(string path) => Reading.Run(path, KitFields.Kind, Build);

    private static Kit? Build(Place kit, Reading reading)
    {
        var car = kit.Part("car", CarFields.Kind) is { } found ? CarReader.Build(found) : null;
        var struts = kit.Member("struts");
        var front = Strut(struts?.Member("front"), car, AxleEnd.Front);
        var rear = Strut(struts?.Member("rear"), car, AxleEnd.Rear);
        if (struts is { Node.Kind: NodeKind.Map } && struts.Member("front") is null && struts.Member("rear") is null)
            struts.Report("front, rear or both", "Describe at least one strut.");
        if (kit.Optional("ambient") is not null && kit.Member("altitude") is { } altitude)
            altitude.Report("ambient or altitude, not both", "Take one of the two out.");
        return car is null ? null : new(
            kit.Text("name"), kit.File, car, front, rear, kit.Optional("ambient"), kit.Optional("altitude"))
        {
            WrittenUnits = reading.WrittenUnits,
            Inputs = reading.Inputs,
            Margins = ClearanceFields.Read(kit.Member("clearance")),
        };
    }

    private static StrutDesign? Strut(Place? strut, Car? car, AxleEnd end)
    {
        if (strut is null) return null;
        if (car is not null) CheckAgainst(car, strut, end);
        var spring = strut.Part("spring", AirSpringFields.Kind) is { } springPlace ? AirSpringReader.Build(springPlace) : null;
        var damper = strut.Part("damper", DamperFields.Kind) is { } damperPlace ? DamperReader.Build(damperPlace) : null;
        var (target, thread, limits) = (Target(strut.Member("target")), Thread(strut.Member("thread")), Limits(strut.Member("limits")));
        return spring is null || damper is null ? null : new(
            spring, damper, target, strut.OptionalText("load"),
            strut.Optional("driveHeight"), strut.Optional("strutLengthAtDrive"),
            strut.Optional("upperStack"), strut.Optional("lowerStack"), strut.Optional("springToDamper"), thread,
            strut.Optional("sealAreaInAir"), strut.Optional("displacedVolume"), strut.Optional("lineVolume"), limits)
        {
            Click = strut.Optional("click"),
            Friction_N = strut.Optional("friction"),
            Adjusters = AdjustersReader.Build(strut.Member("adjusters"), car?.At(end)?.Suspension),
            TopMount = TopMountReader.Build(strut.Member("topMount")),
            Guides = TopMountReader.Guides(strut.Member("guides")),
            SpringTilt_rad = strut.Optional("springTilt") ?? 0,
            SpringOffset_m = strut.Optional("springOffset"),
            LowerMount = LowerMountReader.Build(strut.Member("lowerMount")),
        };
    }

    private static void CheckAgainst(Car car, Place strut, AxleEnd end)
    {
        if (car.At(end) is null && Axles(car).Any())
            strut.ReportKey($"a strut on an axle of the car; it has {string.Join(" and ", Axles(car))}",
                "Describe that axle in the car, or take the strut out.");
        var cases = string.Join(", ", car.Loads.Select(load => load.Name));
        if (strut.Member("load") is { Node.Kind: NodeKind.Text } load && cases.Length > 0 && car.Loads.All(known => known.Name != load.Node.Text))
            load.Report($"a load case of the car: {cases}", "Write one of the car's load cases, or add this one to the car.");
    }

    private static IEnumerable<string> Axles(Car car)
    {
        if (car.Front is not null) yield return "front";
        if (car.Rear is not null) yield return "rear";
    }

    private static Target? Target(Place? target) =>
        target?.Optional("rideFrequency") is { } frequency ? new(TargetKind.RideFrequency, frequency)
        : target?.Optional("wheelRate") is { } wheelRate ? new(TargetKind.WheelRate, wheelRate)
        : target?.Optional("springRate") is { } springRate ? new(TargetKind.SpringRate, springRate)
        : null;

    private static ThreadDesign? Thread(Place? thread)
    {
        if (thread is null) return null;
        if (thread.Optional("least") > thread.Optional("greatest"))
            thread.Member("least")!.Report("at most greatest", "Write the least and the greatest exposed length.");
        return new(
            thread.Needed("pitch"), thread.Needed("least"), thread.Needed("greatest"), thread.Needed("exposedAtStop"),
            thread.Optional("diameter"), thread.Optional("engagedAtStop"), thread.Optional("shearStrength"));
    }

    private static TravelLimits Limits(Place? limits)
    {
        var common = new TravelLimits();
        return limits is null ? common : new(
            limits.Optional("topOutMargin") ?? common.TopOutMargin_m,
            limits.Optional("solidMargin") ?? common.SolidMargin_m,
            limits.Optional("droop") ?? common.Droop_m,
            limits.Optional("stopContact") ?? common.StopContact_m);
    }
}
