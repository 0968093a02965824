namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads what a strut's document says of its lower mount.</summary>
internal static class LowerMountReader
{
    public static LowerMount? Build(Place? mount)
    {
        if (mount?.Member("bracket") is not { } bracket || mount.Member("knuckle") is not { } knuckle || mount.Member("bolts") is not { } bolts) return null;
        if (Bolt(bolts) is not { } bolt) return null;
        PlanePoint[] holes = Holes(bracket), measured = Holes(knuckle);
        if (holes.Length == 0 || measured.Length == 0) return null;
        LowerMount read = new(
            new(bracket.Needed("thickness"), holes, bracket.Needed("holeDiameter"), bracket.Optional("tolerance") ?? BracketPlate.UsualPosition_m)
            {
                Material = bracket.OptionalText("material"),
                Width_m = bracket.Optional("width"),
                Height_m = bracket.Optional("height"),
                Slot_m = bracket.Optional("slot"),
                AllowedBearing_Pa = bracket.Optional("allowedBearing"),
            },
            new(measured, knuckle.Needed("holeDiameter"), knuckle.Needed("tolerance")),
            new(bolt, bolts.Optional("friction"), (int)(bolts.Optional("shearPlanes") ?? 1)))
        {
            Clamp = Clamp(mount.Member("clamp")),
            HoseBracket = mount.Member("hoseBracket") is { } hose ? At(hose) : null,
            SensorBracket = mount.Member("sensorBracket") is { } sensor ? At(sensor) : null,
        };
        Check(read, bracket, knuckle, bolts);
        return read;
    }

    private static MountClamp? Clamp(Place? clamp) => clamp?.Member("bolts") is { } bolts && Bolt(bolts) is { } bolt
        ? new(clamp.Needed("diameter"), clamp.Needed("height"), bolt, (int)(bolts.Optional("count") ?? 1), bolts.Optional("friction"))
        : null;

    private static MetricBolt? Bolt(Place bolts) => MetricBolt.Read(bolts.Text("size"), bolts.Text("strengthClass"));

    private static PlanePoint[] Holes(Place of) => of.Member("holes") is { } list ? [.. list.Items().Select(At)] : [];

    private static PlanePoint At(Place place) => place.Node.Items.Count == 2 ? new(place.Item(0).Value ?? double.NaN, place.Item(1).Value ?? double.NaN) : new(double.NaN, double.NaN);

    private static void Check(LowerMount mount, Place bracket, Place knuckle, Place bolts)
    {
        IReadOnlyList<PlanePoint> holes = mount.Bracket.Holes;
        if (holes.Count < 2) bracket.Member("holes")!.Report("two holes or more", "One bolt lets the strut turn: give two.");
        if (mount.Knuckle.Holes.Count != holes.Count)
            knuckle.Member("holes")!.Report($"{holes.Count} holes, as the bracket has", "Measure each hole the bracket has a bolt for, in the same order.");
        if (bolts.Optional("count") is { } count && count != holes.Count)
            bolts.Member("count")!.Report($"{holes.Count}, one for each hole", "Take count out, or add the holes.");
        if (mount.Bracket.Slot_m <= mount.Bracket.HoleDiameter_m)
            bracket.Member("slot")!.Report("more than holeDiameter", "A slot is longer than it is wide: give its length over the ends.");
        Apart(mount.Knuckle.Holes, mount.Knuckle.HoleDiameter_m, knuckle);
        Apart(holes, mount.Bracket.HoleDiameter_m, bracket);
        for (int i = 0; i < holes.Count; i++)
        {
            Place at = bracket.Member("holes")!.Item(i);
            if (!RunsInto(holes, i, mount.Bracket.HoleDiameter_m) && Outside(mount, holes[i])) at.Report("a hole within the plate", "Make the plate larger or move the hole: x counts from the strut's axis, y from the lower datum.");
        }
    }

    private static void Apart(IReadOnlyList<PlanePoint> holes, double diameter_m, Place of)
    {
        for (int i = 0; i < holes.Count; i++)
            if (RunsInto(holes, i, diameter_m)) of.Member("holes")!.Item(i).Report("a hole clear of the others", "Two holes run into each other.");
    }

    private static bool RunsInto(IReadOnlyList<PlanePoint> holes, int i, double diameter_m) => holes.Take(i).Any(other => Distance(other, holes[i]) < diameter_m);

    private static bool Outside(LowerMount mount, PlanePoint hole)
    {
        (PlanePoint least, PlanePoint greatest) = mount.Plate;
        double radius = mount.Bracket.HoleDiameter_m / 2;
        return hole.X_m - radius < least.X_m || hole.X_m + radius > greatest.X_m || hole.Y_m - radius < least.Y_m || hole.Y_m + radius > greatest.Y_m;
    }

    private static double Distance(PlanePoint a, PlanePoint b) => Math.Sqrt((a.X_m - b.X_m) * (a.X_m - b.X_m) + (a.Y_m - b.Y_m) * (a.Y_m - b.Y_m));
}
