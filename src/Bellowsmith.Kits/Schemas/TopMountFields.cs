using Bellowsmith.Kits.Units;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>What a strut's document says of its top mount and of what leads its rod.</summary>
internal static class TopMountFields
{
    public const string OnSteel = "steel on steel", OnBronze = "steel on bronze", OnFabric = "steel on fabric", Balls = "balls", Rollers = "rollers";

    private static readonly Shape _rating = new QuantityShape(Dimension.Force, "100 N", "10000 kN", "30 kN") { SetsUnit = false };
    private static readonly Shape _lean = new QuantityShape(Dimension.Angle, "-15 deg", "15 deg", "1.5 deg");

    private static readonly Shape _spherical = Fields(
        Need("dynamicRating", _rating, "C, from its maker, for a load along the strut."),
        Need("sphereDiameter", Length("5 mm", "200 mm", "29 mm"), "dk, mean diameter of what slides."),
        Need("tiltLimit", new QuantityShape(Dimension.Angle, "0.5 deg", "45 deg", "12 deg"), "Either way from its middle."),
        Need("surface", new ChoiceShape(OnSteel, OnBronze, OnFabric)),
        May("loadFactor", new QuantityShape(Dimension.Stress, "10 MPa", "1000 MPa", "100 MPa") { SetsUnit = false }, "K, the specific load at a load of C; 100 MPa, on fabric 300 MPa, where not given."),
        May("lifeFactor", new NumberShape(0.01, 100), "Product of its maker's factors for life; 1 where not given."));

    private static readonly Shape _turning = Fields(
        Need("dynamicRating", _rating, "C, from its maker."),
        Need("elements", new ChoiceShape(Balls, Rollers)),
        May("count", new NumberShape(3, 200, whole: true), "How many balls or rollers."));

    private static readonly Shape _part = Fields(Need("name", Text), Need("height", Length("0 mm", "300 mm", "12 mm")));

    public static readonly Shape TopMount = Fields(
        May("sphericalBearing", _spherical, "Lets the strut tilt."),
        May("turningBearing", _turning, "Lets it turn as the wheels steer."),
        May("tiltAtDrive", _lean, "The strut against the spherical bearing's axis at drive height, from ahead, its foot outward +; 0 where not given."),
        May("parts", new SomeShape(_part, "what stands from mount face to upper end plate, each with its height"), "Their sum is held against upperStack."));

    public static readonly Shape Guides = Fields(
        Need("topToGuide", Length("20 mm", "1 m", "210 mm"), "From the top mount's joint to the middle of the rod's guide, at drive height."),
        Need("guideToPiston", Length("5 mm", "1 m", "150 mm"), "From there to the middle of the piston, at drive height."),
        May("friction", new NumberShape(0.001, 1), "Coefficient; 0.1 where not given."));

    public static readonly Shape SpringTilt = _lean;

    public static readonly Shape SpringOffset = Length("-100 mm", "100 mm", "8 mm");
}
