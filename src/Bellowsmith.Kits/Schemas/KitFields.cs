using Bellowsmith.Kits.Units;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The field list of <c>kit/1</c>.</summary>
internal static class KitFields
{
    private static readonly Shape _perch = Length("-1 m", "2 m", "45 mm");
    private static readonly Shape _stack = Length("-100 mm", "1 m", "45 mm");
    private static readonly Shape _exposed = Length("0 mm", "1000 mm", "25 mm");
    private static readonly Shape _limit = Length("0 mm", "500 mm", "12 mm");

    private static readonly Shape _target = new ObjectShape(
        [],
        [Need("rideFrequency", new QuantityShape(Dimension.Frequency, "0.2 Hz", "20 Hz", "1.6 Hz"), "√(kw/ms)/2π, tyre rigid.")],
        [Need("wheelRate", Rate("0.5 N/mm", "2000 N/mm", "32 N/mm"))],
        [Need("springRate", Rate("0.5 N/mm", "2000 N/mm", "34 N/mm"))]);

    private static readonly Shape _thread = Fields(
        Need("pitch", Length("0.2 mm", "20 mm", "1.5 mm")),
        Need("least", _exposed, "Least exposed length."),
        Need("greatest", _exposed, "Greatest exposed length."),
        Need("exposedAtStop", _exposed, "Exposed length where the ring touches its stop: 0 turns."),
        May("diameter", Length("3 mm", "300 mm", "52 mm")),
        May("engagedAtStop", Length("0 mm", "500 mm", "18 mm")),
        May("shearStrength", new QuantityShape(Dimension.Stress, "1 MPa", "3000 MPa", "180 MPa"), "Of the nut's material."));

    private static readonly Shape _limits = new ObjectShape(
        [
            May("topOutMargin", _limit), May("solidMargin", _limit), May("droop", _limit), May("stopContact", _limit),
        ])
    {
        Refused = NeverWaived.Keys,
    };

    private static readonly Shape _slide = Range(Length("-60 mm", "60 mm", "8 mm"));

    private static readonly Shape _adjusters = Fields(
        May("camberSlide", _slide, "The top mount across the car, outward +."),
        May("knuckleSlot", new ObjectShape([
            .. Ends(new QuantityShape(Dimension.Angle, "-10 deg", "10 deg", "1.5 deg")), Need("pivot", SuspensionFields.Point, "The lower bolt."),
        ]), "The knuckle on the strut, top outward +."),
        May("tieRod", _slide, "Its length, longer +."),
        May("eccentricBolt", new ObjectShape([.. Ends(Length("-60 mm", "60 mm", "4 mm")), Need("point", Text, "The suspension's point it moves.")]), "An inner end across the car, outward +."));

    private static readonly Shape _strut = Fields(
        Need("spring", new PartShape(AirSpringFields.Kind)),
        Need("damper", new PartShape(DamperFields.Kind)),
        May("target", _target),
        May("load", Text, "A load case of the car; the first where not given."),
        May("driveHeight", Length("1 mm", "1000 mm", "80 mm"), "Spring height at drive where it is settled."),
        May("strutLengthAtDrive", Length("20 mm", "3 m", "480 mm"), "Mount face to lower datum."),
        May("upperStack", _stack),
        May("lowerStack", _stack),
        May("springToDamper", _perch, "Damper length minus spring height."),
        May("thread", _thread),
        May("sealAreaInAir", Area("0 cm2", "300 cm2", "1.54 cm2"), "Of the sliding seal between the spring's air and the outside."),
        May("displacedVolume", Volume("0 cm3", "20 L", "95 cm3"), "Solid bodies inside the bellows at drive height."),
        May("lineVolume", Volume("0 cm3", "20 L", "40 cm3"), "To the closed valve."),
        May("click", new NumberShape(0, 100), "Damper click driven with, counted from fully closed."),
        May("friction", new QuantityShape(Dimension.Force, "0 N", "2000 N", "40 N"), "Of strut and seals, beyond what the damper's dyno data hold."),
        May("adjusters", _adjusters, "How far each goes from where the suspension's points were measured, which is 0."),
        May("topMount", TopMountFields.TopMount),
        May("guides", TopMountFields.Guides, "What leads the damper's rod."),
        May("springTilt", TopMountFields.SpringTilt, "The spring's line of force against the strut's axis at drive height, from ahead, its foot outward +."),
        May("springOffset", TopMountFields.SpringOffset, "Middle of the lower end plate from the strut's axis, outward +; where not given the line runs through the top mount's joint."),
        May("lowerMount", LowerMountFields.Mount, "What joins the strut's foot to the knuckle."),
        May("limits", _limits));

    public static readonly DocumentKind Kind = new(
        "kit",
        "A kit for one car model: the struts of one or both axles.",
        Fields(
            Need("name", Text),
            Need("car", new PartShape(CarFields.Kind)),
            Need("struts", Fields(May("front", _strut), May("rear", _strut))),
            May("ambient", Ambient),
            May("altitude", Length("-500 m", "9000 m", "450 m")),
            May("clearance", ClearanceFields.Clearance)));

    private static ObjectShape Range(Shape end) => new([.. Ends(end)]);

    private static Field[] Ends(Shape end) => [Need("least", end), Need("greatest", end)];
}
