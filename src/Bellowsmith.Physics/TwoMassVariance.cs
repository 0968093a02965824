namespace Bellowsmith.Physics;

/// <summary>
/// What a random road does to a corner, as variances about the mean (the mean is zero): body acceleration, suspension
/// travel (wheel minus body, at the wheel) and tyre force about its static value.
/// </summary>
public readonly record struct TwoMassVariance(double BodyAcceleration_m2_per_s4, double Travel_m2, double TyreForce_N2)
{
    public double BodyAccelerationRms_m_per_s2 => Math.Sqrt(BodyAcceleration_m2_per_s4);

    public double TravelRms_m => Math.Sqrt(Travel_m2);

    public double TyreForceRms_N => Math.Sqrt(TyreForce_N2);
}
