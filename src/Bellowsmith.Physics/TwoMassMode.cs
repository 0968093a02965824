using System.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// A pair of eigenvalues of a damped system, the roots of <c>s² + Sum·s + Product</c>. Two conjugate roots ring; two real
/// ones creep back and have no damped frequency, but their product and sum still make a natural frequency and a damping
/// ratio (1 or more): those of the single mass on spring and damper with the same two roots.
/// </summary>
/// <param name="Sum_rad_per_s">Minus the sum of both roots, rad/s.</param>
/// <param name="Product_rad2_per_s2">Their product, (rad/s)².</param>
public readonly record struct TwoMassMode(double Sum_rad_per_s, double Product_rad2_per_s2)
{
    /// <summary>|s|/2π of conjugate roots: √Product/2π.</summary>
    public double NaturalFrequency_Hz => Math.Sqrt(Product_rad2_per_s2) / (2 * Math.PI);

    /// <summary>ζ = Sum/(2√Product).</summary>
    public double DampingRatio => Sum_rad_per_s / (2 * Math.Sqrt(Product_rad2_per_s2));

    /// <summary>True where the pair is complex, ζ below 1.</summary>
    public bool Rings => Discriminant < 0;

    /// <summary>|Im s|/2π; null where the pair is overdamped and nothing rings.</summary>
    public double? DampedFrequency_Hz => Rings ? Math.Sqrt(-Discriminant) / (4 * Math.PI) : null;

    /// <summary>Both roots, rad/s: conjugate, or real with the slow one first.</summary>
    public (Complex First, Complex Second) Eigenvalues
    {
        get
        {
            if (Rings)
            {
                Complex root = new(-Sum_rad_per_s / 2, Math.Sqrt(-Discriminant) / 2);
                return (root, Complex.Conjugate(root));
            }

            double fast = -(Sum_rad_per_s + Math.Sqrt(Discriminant)) / 2;
            return (Product_rad2_per_s2 / fast, fast);
        }
    }

    private double Discriminant => Sum_rad_per_s * Sum_rad_per_s - 4 * Product_rad2_per_s2;
}
