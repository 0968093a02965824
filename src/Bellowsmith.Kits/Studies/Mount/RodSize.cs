using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Mount;

/// <summary>A rod of one diameter under the side load at drive height: stress goes with 1/d³, deflection with 1/d⁴.</summary>
public sealed record RodSize(double Diameter_m, double Stress_Pa, double Deflection_m)
{
    internal static RodSize Of(double diameter_m, RodGuides guides, double side_N)
    {
        StrutRod rod = new(diameter_m, guides.TopToGuide_m, guides.GuideToPiston_m);
        return new(diameter_m, rod.Under(side_N).Stress_Pa, rod.Deflection_m(side_N));
    }
}
