using Bellowsmith.Kits.Units;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The field list of <c>car/1</c>.</summary>
internal static class CarFields
{
    private static readonly NumberShape _ratioNumber = new(0.05, 5);

    private static readonly Shape _reading = new QuantityShape(Dimension.Mass, "10 kg", "10000 kg", "402 kg", orForce: true);

    private static readonly Shape _case = Fields(
        Need("leftFront", _reading), Need("rightFront", _reading), Need("leftRear", _reading), Need("rightRear", _reading));

    /// <summary>Strut travel per wheel travel, however it was measured.</summary>
    public static readonly Shape Ratio = new NumberOrShape(_ratioNumber, new ObjectShape(
        [],
        [Need("wheelTravel", Length("0.1 mm", "1000 mm", "40 mm")), Need("strutTravel", Length("0.1 mm", "1000 mm", "38.5 mm"))],
        [Need("strutPerWheel", _ratioNumber)],
        [Need("wheelPerStrut", new NumberShape(0.2, 20))],
        [Need("table", new FileShape("a CSV table of wheel travel and strut travel"))]));

    private static readonly Shape _suspension = new PartShape(SuspensionFields.Kind);

    private static readonly Shape _axle = new ObjectShape(
        [
            Need("unsprungMass", Mass("1 kg", "1000 kg", "38 kg"), "Per corner."),
            May("parasiticRate", Rate("0 N/mm", "500 N/mm", "2.5 N/mm"), "At the wheel, with zero force at drive height."),
            May("tyreRate", Rate("10 N/mm", "5000 N/mm", "220 N/mm")),
            May("track", Length("0.3 m", "4 m", "1520 mm")),
            May("archHeightAtDrive", Length("100 mm", "2 m", "640 mm")),
            May("wheel", new WheelShape(), "Rim, offset and tyre size it was measured with."),
            May("wheelSection", new SectionShape(), "The tyre's section as catalogued or measured, and on which rim width."),
        ],
        [Need("suspension", _suspension, "Gives the ratio where none was measured.")],
        [Need("motionRatio", Ratio, "Of spring and damper alike."), May("suspension", _suspension)],
        [Need("springRatio", Ratio), Need("damperRatio", Ratio), May("suspension", _suspension)]);

    public static readonly DocumentKind Kind = new(
        "car",
        "A measured car: scale readings by load case, and what each axle carries and how it moves.",
        Fields(
            Need("name", Text),
            Need("loads", new MapShape("load case", _case), "Four scale readings per load case, as mass or force."),
            Need("axles", Fields(May("front", _axle), May("rear", _axle)))));
}
