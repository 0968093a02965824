using Bellowsmith.Physics.Ride;

namespace Bellowsmith.Physics;

/// <summary>
/// One corner of a car as everything it does over wheel travel w (bump +, 0 at drive), SI. Above it the sprung mass, below
/// the unsprung mass on a tyre that can only push. With v = −id·ẇ the damper's extension velocity,
/// <code>
/// ms·z̈s = A(w, κ) − id·(Fd(v) − E(w)) − ms·g
/// mu·z̈u = T − [A(w, κ) − id·(Fd(v) − E(w))] − mu·g
/// T = max(0, kt·(zr − zu) + (ms + mu)·g)
/// κ' = (Tw/T − 1)/τ
/// </code>
/// A is what air, damper gas and parasitic rate push at the wheel, E the stops' force at the strut. κ = ln(pabs·Vⁿ) against
/// drive (n = 1.4): it moves only by the heat the wall gives, so a run without heat comes back to where it was.
/// </summary>
public sealed record Corner
{
    public required double SprungMass_kg { get; init; }
    public required double UnsprungMass_kg { get; init; }
    public required double TyreRate_N_per_m { get; init; }

    /// <summary>The wheel travel the polynomials hold for; beyond it they stay what they are at its ends.</summary>
    public required TravelRange Range { get; init; }

    /// <summary>A at κ = 0 and its first and second power of κ, N at the wheel.</summary>
    public required TravelPolynomial Force { get; init; }
    public required TravelPolynomial ForceByEntropy { get; init; }
    public required TravelPolynomial ForceByEntropySquare { get; init; }

    /// <summary>Tw/T − 1 at κ = 0 and its first power of κ: how much colder the air is than the wall.</summary>
    public required TravelPolynomial Cooling { get; init; }
    public required TravelPolynomial CoolingByEntropy { get; init; }

    /// <summary>τ, in which the air's temperature error falls to 1/e; infinite where no heat flows.</summary>
    public required double TimeConstant_s { get; init; }

    /// <summary>id over wheel travel.</summary>
    public required TravelPolynomial DamperRatio { get; init; }

    /// <summary>Fd over extension velocity with friction, N at the strut; see <see cref="Damper"/>.</summary>
    public required MonotoneCurve DamperForce { get; init; }

    /// <summary>Bump stop over wheel travel, N at the strut, + pushes apart, nothing up to its first point; null where there is none.</summary>
    public MonotoneCurve? BumpStop { get; init; }

    /// <summary>Top-out stop over wheel travel, N at the strut, − pulls together, nothing from its last point on; null where there is none.</summary>
    public MonotoneCurve? TopOut { get; init; }

    /// <summary>The force at the wheel that holds the sprung mass at drive, N.</summary>
    public double StaticForce_N => Force.At(-Range.Centre_m / Range.Half_m);
}
