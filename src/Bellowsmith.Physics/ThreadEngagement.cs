namespace Bellowsmith.Physics;

/// <summary>
/// What shears when a screw is pulled out of its thread, for 60° threads [FED-STD-H28 1978]. The tapped
/// hole shears at the screw's major diameter, the screw at the hole's minor diameter; both areas grow with the
/// engaged length, and every diameter is the one of the tolerance zone that engages least. Threads share load unevenly
/// and end threads are incomplete: the length is a bare minimum without a safety factor. SI throughout.
/// </summary>
/// <param name="Pitch_m">P.</param>
/// <param name="ScrewMajorLeast_m">Ds,min.</param>
/// <param name="ScrewPitchLeast_m">Es,min, pitch diameter of the screw.</param>
/// <param name="HolePitchGreatest_m">En,max, pitch diameter of the hole.</param>
/// <param name="HoleMinorGreatest_m">Kn,max.</param>
public sealed record ThreadEngagement(
    double Pitch_m,
    double ScrewMajorLeast_m,
    double ScrewPitchLeast_m,
    double HolePitchGreatest_m,
    double HoleMinorGreatest_m)
{
    // The standard prints 1/√3 as 0.57735.
    private const double HalfAngleTangent = 0.57735;

    /// <summary>
    /// The ISO basic profile without tolerances: pitch diameter d − ¾H, minor d − 5⁄4·H, H = P·√3/2 (ISO 68-1, from
    /// memory). Real threads engage less: for M10×1.5 6g in 6H the hole's shear area is about a fifth smaller.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">
    /// The pitch is zero or negative, or the diameter leaves no minor diameter.
    /// </exception>
    public static ThreadEngagement BasicProfile(double diameter_m, double pitch_m)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pitch_m);
        var triangle = pitch_m * Math.Sqrt(3) / 2;
        var (pitchDiameter, minor) = (diameter_m - 0.75 * triangle, diameter_m - 1.25 * triangle);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(minor, nameof(diameter_m));
        return new(pitch_m, diameter_m, pitchDiameter, pitchDiameter, minor);
    }

    /// <summary>Of the tapped hole: <c>(π/P)·Ds·[P/2 + 0.57735·(Ds − En)]</c>, m² per m of engagement.</summary>
    public double HoleShearArea_m2_per_m => ShearArea(ScrewMajorLeast_m, ScrewMajorLeast_m - HolePitchGreatest_m);

    /// <summary>Of the screw: <c>(π/P)·Kn·[P/2 + 0.57735·(Es − Kn)]</c>, m² per m of engagement.</summary>
    public double ScrewShearArea_m2_per_m => ShearArea(HoleMinorGreatest_m, ScrewPitchLeast_m - HoleMinorGreatest_m);

    /// <summary>Engaged length in m at which the hole's thread just carries the force.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The force is negative, or the strength zero or negative.</exception>
    public double LengthToHold_m(double force_N, double holeShearStrength_Pa) =>
        Length(force_N, holeShearStrength_Pa, HoleShearArea_m2_per_m);

    /// <summary>Engaged length in m at which both threads just carry the force: the weaker one decides.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The force is negative, or a strength zero or negative.</exception>
    public double LengthToHold_m(double force_N, double holeShearStrength_Pa, double screwShearStrength_Pa) =>
        Math.Max(
            Length(force_N, holeShearStrength_Pa, HoleShearArea_m2_per_m),
            Length(force_N, screwShearStrength_Pa, ScrewShearArea_m2_per_m));

    /// <summary>Stress area of the screw in tension, <c>(π/4)·(d − 0.9382·P)²</c>, m² (ISO 898-1, from memory).</summary>
    public static double TensileStressArea_m2(double diameter_m, double pitch_m)
    {
        var stressDiameter = diameter_m - 0.9382 * pitch_m;
        return Math.PI / 4 * stressDiameter * stressDiameter;
    }

    private double ShearArea(double diameter_m, double overlap_m) =>
        Math.PI / Pitch_m * diameter_m * (Pitch_m / 2 + HalfAngleTangent * overlap_m);

    private static double Length(double force_N, double shearStrength_Pa, double areaPerLength_m2_per_m)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(force_N);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(shearStrength_Pa);
        return force_N / (shearStrength_Pa * areaPerLength_m2_per_m);
    }
}
