namespace Bellowsmith.Kits.Studies;

/// <summary>What a study needs of the axle a strut stands at; what is missing becomes a fault that names the field to fill.</summary>
internal static class SuspensionNeeds
{
    public static SuspensionPart? Points(Kit kit, AxleEnd end, List<Fault> faults)
    {
        if (kit.Car.At(end)?.Suspension is { } part) return part;
        faults.Add(new(kit.File, $"car.axles.{(end == AxleEnd.Front ? "front" : "rear")}.suspension", "nothing", "a suspension document",
            "Measure the axle's points and name their document in the car: \"suspension\": \"file.suspension.json\"."));
        return null;
    }
}
