namespace Bellowsmith.Physics;

/// <summary>
/// A strut's rod as a beam from the top mount over the guide to the piston: the side force at its top bends it over the guide. The
/// mount is a joint; a tube that steadies the rod, clearance and the guide's own length are left out.
/// </summary>
/// <param name="Diameter_m">d; stress goes with 1/d³, deflection with 1/d⁴.</param>
/// <param name="TopToGuide_m">From the top mount's joint to the middle of the guide.</param>
/// <param name="GuideToPiston_m">From there to the middle of the piston, shorter as the strut extends.</param>
public sealed record StrutRod(double Diameter_m, double TopToGuide_m, double GuideToPiston_m)
{
    /// <summary>Of steel; common practice, no source.</summary>
    public const double SteelModulus_Pa = 206e9;

    public RodLoad Under(double sideForce_N) => new(
        Guide_N: sideForce_N * (TopToGuide_m + GuideToPiston_m) / GuideToPiston_m,
        Piston_N: sideForce_N * TopToGuide_m / GuideToPiston_m,
        Moment_Nm: sideForce_N * TopToGuide_m,
        Stress_Pa: sideForce_N * TopToGuide_m * 32 / (Math.PI * Math.Pow(Diameter_m, 3)));

    /// <summary>How far its top moves aside, m: S·a²·(a + b)/(3·E·I), I = π·d⁴/64.</summary>
    public double Deflection_m(double sideForce_N, double modulus_Pa = SteelModulus_Pa) =>
        sideForce_N * TopToGuide_m * TopToGuide_m * (TopToGuide_m + GuideToPiston_m) * 64
        / (3 * modulus_Pa * Math.PI * Math.Pow(Diameter_m, 4));
}

/// <summary>What a side force does to a rod. Guide and piston push opposite ways; the moment is greatest over the guide.</summary>
public readonly record struct RodLoad(double Guide_N, double Piston_N, double Moment_Nm, double Stress_Pa)
{
    /// <summary>Along the rod, against its motion, of guide and piston together.</summary>
    public double Friction_N(double coefficient) => coefficient * (Guide_N + Piston_N);
}
