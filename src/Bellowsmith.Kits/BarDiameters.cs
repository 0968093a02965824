using Bellowsmith.Physics;

namespace Bellowsmith.Kits;

/// <summary>How thick the bars of a suspension are, m; what the document does not give is taken as usual (common practice, no source).</summary>
public sealed record BarDiameters(double? TieRod_m = null, double? LowerArm_m = null, double? UpperArm_m = null, double? Links_m = null, double? OfHalfshaft_m = null)
{
    private const double UsualTieRod_m = 0.016, UsualArm_m = 0.035, UsualLink_m = 0.025, UsualHalfshaft_m = 0.028;

    public double Halfshaft_m => OfHalfshaft_m ?? UsualHalfshaft_m;

    public double Of_m(LinkagePart part) => Given_m(part) ?? part switch
    {
        LinkagePart.TieRod => UsualTieRod_m,
        LinkagePart.LowerArm or LinkagePart.UpperArm or LinkagePart.TrailingArm => UsualArm_m,
        _ => UsualLink_m,
    };

    /// <summary>Null where it is taken as usual.</summary>
    public double? Given_m(LinkagePart part) => part switch
    {
        LinkagePart.TieRod => TieRod_m,
        LinkagePart.LowerArm => LowerArm_m,
        LinkagePart.UpperArm => UpperArm_m,
        _ => Links_m,
    };
}
