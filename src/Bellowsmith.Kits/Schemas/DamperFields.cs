using Bellowsmith.Kits.Units;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The field list of <c>damper/1</c>.</summary>
internal static class DamperFields
{
    private static readonly Shape _bumpStop = Fields(
        Need("freeLength", Length("1 mm", "300 mm", "60 mm")),
        Need("solidLength", Length("0.5 mm", "300 mm", "22 mm")),
        May("rodAtShortest", Length("0 mm", "500 mm", "0 mm"), "Rod left between stop seat and damper head at the shortest length; 0 mm where not given."),
        Need("curve", new FileShape("a CSV table of compression and force")));

    public const string ReboundPositive = "rebound positive", CompressionPositive = "compression positive";
    public const string FromClosed = "from closed", FromOpen = "from open", GasIn = "in", GasOut = "out";

    private static readonly QuantityShape _slope = new(Dimension.Damping, "0 N*s/m", "100000 N*s/m", "800 N*s/m");
    private static readonly Shape _beyond = Fields(Need("rebound", _slope), Need("compression", _slope));

    public static readonly DocumentKind Kind = new(
        "damper",
        "A telescopic damper, or a linear damper of a given coefficient. Lengths are between outer faces.",
        new ObjectShape(
            [],
            [
                Need("coefficient", new QuantityShape(Dimension.Damping, "1 N*s/m", "1000000 N*s/m", "1500 N*s/m")),
                May("name", Text),
            ],
            [
                Need("name", Text),
                Need("rodDiameter", Length("2 mm", "200 mm", "14 mm")),
                Need("shortest", Length("20 mm", "2 m", "260 mm")),
                Need("longest", Length("20 mm", "2 m", "390 mm")),
                May("gasGaugePressure", Gauge("0 bar", "100 bar", "24 bar"), "At the longest length and 20 °C."),
                May("gasVolume", Volume("0.1 cm3", "10 L", "95 cm3"), "At the longest length and 20 °C."),
                May("bumpStop", _bumpStop),
                May("dyno", new FileShape("the damper's dyno file")),
                May("dynoSign", new ChoiceShape(ReboundPositive, CompressionPositive), "Of force, and of velocity where it has a sign; rebound positive where not given."),
                May("dynoClicks", new ChoiceShape(FromClosed, FromOpen), "Where the dyno file counts clicks from; from closed where not given."),
                May("clickCount", new NumberShape(1, 200, whole: true), "The click that is fully open, counted from fully closed."),
                May("dynoGas", new ChoiceShape(GasIn, GasOut), "Whether the gas force is in the dyno file's forces; where not given, in for raw sweeps and out for points."),
                May("dynoBeyond", _beyond, "Slopes by which the force goes on beyond the measured speeds; no force is known there where not given."),
            ]),
        headerless: "coefficient");
}
