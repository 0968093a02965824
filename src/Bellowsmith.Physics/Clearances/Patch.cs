namespace Bellowsmith.Physics.Clearances;

/// <summary>
/// A piece of a surface of revolution: a stretch of one line of the outline, from its middle (X, R) half its run to either side, turned
/// through an angle to either side of another.
/// </summary>
internal readonly record struct Patch(double X, double R, double HalfX, double HalfR, double Angle_rad, double HalfAngle_rad)
{
    public double GreatestR => R + Math.Abs(HalfR);

    /// <summary>Chord, at the greatest radius, from the middle to either side.</summary>
    public double Chord_m => 2 * GreatestR * Math.Sin(HalfAngle_rad / 2);

    public double HalfLength_m => Math.Sqrt(HalfX * HalfX + HalfR * HalfR);

    /// <summary>No place of it is further from its middle.</summary>
    public double Reach_m => Math.Sqrt(HalfX * HalfX + HalfR * HalfR + Chord_m * Chord_m);

    /// <summary>Either half of the stretch.</summary>
    public (Patch, Patch) Shorter => (
        this with { X = X - HalfX / 2, R = R - HalfR / 2, HalfX = HalfX / 2, HalfR = HalfR / 2 },
        this with { X = X + HalfX / 2, R = R + HalfR / 2, HalfX = HalfX / 2, HalfR = HalfR / 2 });

    /// <summary>Either half of the angle.</summary>
    public (Patch, Patch) Narrower => (
        this with { Angle_rad = Angle_rad - HalfAngle_rad / 2, HalfAngle_rad = HalfAngle_rad / 2 },
        this with { Angle_rad = Angle_rad + HalfAngle_rad / 2, HalfAngle_rad = HalfAngle_rad / 2 });
}
