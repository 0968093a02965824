using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Schemas;

/// <summary>Reads what a strut's document says of its top mount and its rod's guides.</summary>
internal static class TopMountReader
{
    // Specific load at the dynamic rating; from memory of makers' catalogues.
    private const double UsualLoadFactor_Pa = 100e6, FabricLoadFactor_Pa = 300e6;

    public static TopMount? Build(Place? mount)
    {
        if (mount is null) return null;
        var spherical = mount.Member("sphericalBearing");
        return new()
        {
            SphericalBearing = Spherical(spherical),
            LifeFactor = spherical?.Optional("lifeFactor") ?? 1,
            TurningBearing = Turning(mount.Member("turningBearing")),
            TiltAtDrive_rad = mount.Optional("tiltAtDrive") ?? 0,
            Parts = [.. mount.Member("parts")?.Items().Select(part => new StackPart(part.Text("name"), part.Needed("height"))) ?? []],
        };
    }

    public static RodGuides? Guides(Place? guides) => guides is null ? null : new(
        guides.Needed("topToGuide"), guides.Needed("guideToPiston"), guides.Optional("friction") ?? RodGuides.UsualFriction);

    private static SphericalPlainBearing? Spherical(Place? bearing)
    {
        if (bearing is null) return null;
        var (surface, usual_Pa) = bearing.Text("surface") switch
        {
            TopMountFields.OnFabric => (SlidingSurface.SteelOnFabric, FabricLoadFactor_Pa),
            TopMountFields.OnBronze => (SlidingSurface.SteelOnSinteredBronze, UsualLoadFactor_Pa),
            _ => (SlidingSurface.SteelOnSteel, UsualLoadFactor_Pa),
        };
        return new(
            bearing.Needed("dynamicRating"), bearing.Optional("loadFactor") ?? usual_Pa, bearing.Needed("sphereDiameter"), surface, bearing.Needed("tiltLimit"));
    }

    private static TurningBearing? Turning(Place? bearing) => bearing is null ? null : new(
        new(bearing.Needed("dynamicRating"), bearing.Text("elements") == TopMountFields.Rollers ? RollingBearing.Roller : RollingBearing.Ball),
        (int?)bearing.Optional("count"));
}
