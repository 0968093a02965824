using Bellowsmith.Kits;

namespace Bellowsmith.Tests.Kits.Studies;

/// <summary>A plate of 8 mm with holes of 12.5 mm for M12 8.8, 60 mm over each other and 40 mm outward, on a knuckle like it.</summary>
internal static class SampleMount
{
    public static LowerMount Of(params (double X, double Y)[] measured_mm) => With([(40, 30), (40, 90)], measured_mm);

    public static LowerMount With((double X, double Y)[] holes_mm, (double X, double Y)[] measured_mm, double knuckle_mm = 0.3) => new(
        new BracketPlate(0.008, [.. holes_mm.Select(At)], 0.0125, 0.1e-3),
        new KnuckleHoles([.. measured_mm.Select(At)], 0.0125, knuckle_mm * 1e-3),
        new JointBolts(MetricBolt.Read("M12", "8.8")!, null, 1));

    private static PlanePoint At((double X, double Y) place_mm) => new(place_mm.X * 1e-3, place_mm.Y * 1e-3);
}
