using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads a <c>mould/1</c> document.</summary>
public static class MouldReader
{
    /// <exception cref="FaultsException">Anything in it cannot be used.</exception>
    public static Mould Read(string path) => Reading.Run(path, MouldFields.Kind, (mould, _) => Build(mould));

    internal static Mould Build(Place mould)
    {
        double bead = mould.Needed("beadRadius"), angle = mould.Needed("cordAngleAtBead");
        if (mould.Optional("girdleRadius") >= CordBellows.WidestRadius_m(bead, angle))
            mould.Member("girdleRadius")!.Report(
                "a radius that cords of this angle reach: less than beadRadius / sin(cordAngleAtBead)",
                "Check girdleRadius, beadRadius and the cord angle, which is counted from the meridian.");
        if (mould.Optional("plateRadius") < bead)
            mould.Member("plateRadius")!.Report("a radius of at least beadRadius", "Check both radii.");
        return new Mould(
            mould.Text("name"), (int)(mould.Optional("convolutions") ?? 0), bead, angle, mould.Needed("cordLength"),
            mould.Optional("girdleRadius"), mould.Optional("wallThickness") ?? 0, mould.Optional("plateRadius"),
            mould.Optional("plateThickness"));
    }
}
