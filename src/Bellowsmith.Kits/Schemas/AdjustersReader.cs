using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads what a strut's document says of its adjusters.</summary>
internal static class AdjustersReader
{
    private static readonly string[] _inner =
        ["lowerArmFront", "lowerArmRear", "upperArmFront", "upperArmRear", "lowerFrontInner", "lowerRearInner", "upperFrontInner", "upperRearInner"];

    public static Adjusters? Build(Place? adjusters, SuspensionPart? suspension)
    {
        if (adjusters is null) return null;
        var slot = adjusters.Member("knuckleSlot");
        var bolt = adjusters.Member("eccentricBolt");
        if (bolt?.Member("point") is { } point) CheckPoint(point, suspension);
        return new()
        {
            CamberSlide = Range(adjusters.Member("camberSlide")),
            KnuckleSlot = Range(slot),
            KnucklePivot = slot?.Member("pivot") is { } pivot ? Pivot(pivot, suspension) : null,
            TieRod = Range(adjusters.Member("tieRod")),
            EccentricBolt = Range(bolt),
            EccentricPoint = bolt?.OptionalText("point"),
        };
    }

    // A bolt of the knuckle, so within a wheel of its centre.
    private static Point? Pivot(Place place, SuspensionPart? suspension)
    {
        Point? pivot = SuspensionReader.PointAt(place);
        if (pivot is { } bolt && suspension is not null && (bolt - suspension.Points["wheelCentre"]).Length > suspension.WheelRadius_m)
            place.Report("a point of the knuckle, nearer to wheelCentre than the wheel's radius", "Give the lower bolt in the axes of the suspension's points.");
        return pivot;
    }

    // Where the points were measured is 0, and the car stands there.
    private static AdjusterRange? Range(Place? range)
    {
        if (range is null) return null;
        AdjusterRange read = new(range.Needed("least"), range.Needed("greatest"));
        if (read.Least > 0) range.Member("least")!.Report("0 or below", "Count from where the points were measured, which is 0.");
        if (read.Greatest < 0) range.Member("greatest")!.Report("0 or above", "Count from where the points were measured, which is 0.");
        return read;
    }

    private static void CheckPoint(Place point, SuspensionPart? suspension)
    {
        string[] known = [.. _inner.Where(name => suspension?.Points.ContainsKey(name) == true)];
        if (suspension is null) point.Report("a point of the axle's suspension", "Give the car's axle a suspension, or take the bolt out.");
        else if (!known.Contains(point.Node.Text)) point.Report($"one of {string.Join(", ", known)}", "Write the inner point the bolt moves.");
    }
}
