using Bellowsmith.Kits.Studies.Bodies;
using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.WheelFit;

/// <summary>What a change of camber does at the top of rim and tyre, over the hub, at drive height.</summary>
/// <param name="RimOutward_m">At the rim's edge, further out at the arch +.</param>
/// <param name="TyreOutward_m">At the tread.</param>
/// <param name="RimTowardStrut_m">Less room to the strut +; nothing where wheel and strut turn together.</param>
/// <param name="TyreTowardStrut_m">The same at the tread.</param>
public sealed record CamberShift(double RimOutward_m, double TyreOutward_m, double RimTowardStrut_m, double TyreTowardStrut_m)
{
    internal static CamberShift Of(CamberAdjuster adjuster, CamberSet set, WheelFitQuestion question)
    {
        double rim = question.New.Rim.EdgeRadius_m, tyre = question.New.FreeRadius_m;
        return new(Outward(rim), Outward(tyre), Toward(rim), Toward(tyre));

        double Outward(double overHub) => adjuster.MadeAt is null ? WheelChange.TiltOutward_m(overHub, set.Camber_rad)
            : Top_m(set.Linkage!, overHub) - Top_m(adjuster.Linkage!, overHub);

        double Toward(double overHub) => adjuster switch
        {
            { Pivot: { } pivot } => -WheelChange.TiltOutward_m(overHub + adjuster.Linkage!.Rest.WheelCentre.Z - pivot.Z, set.Setting!.Value),
            { TurnsWithStrut: true } => 0,
            _ => -Outward(overHub),
        };

        double Top_m(Linkage linkage, double overHub)
        {
            LinkageState rest = linkage.Rest;
            return (CornerBodies.Middle(rest, question.Change.Shift_m) + overHub * Point.Up.SquareTo(rest.WheelAxis).Unit()).Y;
        }
    }
}
