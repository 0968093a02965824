using Bellowsmith.Kits.Units;
using static Bellowsmith.Kits.Schemas.Shapes;

namespace Bellowsmith.Kits.Schemas;

/// <summary>The field list of <c>mould/1</c>.</summary>
internal static class MouldFields
{
    public static readonly DocumentKind Kind = new(
        "mould",
        "A bellows as it comes out of its mould: cord and rings.",
        Fields(
            Need("name", Text),
            Need("convolutions", new NumberShape(1, 20, whole: true)),
            Need("beadRadius", Length("1 mm", "500 mm", "44 mm")),
            May("girdleRadius", Length("1 mm", "500 mm", "47 mm")),
            Need("cordAngleAtBead", new QuantityShape(Dimension.Angle, "0 deg", "89 deg", "38 deg"), "From the meridian."),
            Need("cordLength", Length("1 mm", "2000 mm", "96 mm"), "Of one cord over one convolution, end to end."),
            May("wallThickness", Length("0 mm", "50 mm", "3.2 mm"), "0 mm where not given."),
            May("plateRadius", Length("1 mm", "500 mm", "60 mm"), "Of flat end plates the wall may lie on; the bead's where not given."),
            May("plateThickness", Length("0 mm", "50 mm", "6 mm"), "Of each end plate, outside the beads; spring heights count both. 0 mm where not given.")));
}
