using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The field list of <c>air-spring/1</c>.</summary>
internal static class AirSpringFields
{
    private static readonly Shape _height = Length("1 mm", "1000 mm", "80 mm");

    public static readonly DocumentKind Kind = new(
        "air-spring",
        "An air spring with its test data, or a linear spring of a given rate.",
        new ObjectShape(
            [],
            [Need("rate", Rate("0.1 N/mm", "5000 N/mm", "25 N/mm")), May("name", Text)],
            [
                Need("name", Text),
                Need("shape", Text, "Such as double convolution or sleeve."),
                Need("heightRange", new ListShape(_height, 2, "least and greatest height between the outer faces of the end plates"), ""),
                Need("maxGaugePressure", Gauge("0.1 bar", "50 bar", "8 bar")),
                May("exponent", new NumberShape(0.9, 1.7), "Polytropic exponent in service."),
                May("maxDiameter", Length("10 mm", "1000 mm", "165 mm")),
                May("mould", new PartShape(MouldFields.Kind), "Mould and cords of its bellows: the section then shows the wall they make."),
                May("ambient", Ambient, "At the test; 101.325 kPa where not given."),
                Need("data", new FileShape("a CSV table of spring data")),
            ]),
        headerless: "rate");
}
