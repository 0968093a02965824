namespace Bellowsmith.Physics;

/// <summary>A run kept step by step, SI: body height from rest, up +; travel is wheel minus body, bump +; damper velocity extension +, entropy κ of the air against drive.</summary>
public sealed record RideTrace(
    double Step_s, double[] Body_m, double[] Acceleration_m_per_s2, double[] Travel_m, double[] DamperVelocity_m_per_s,
    double[] TyreForce_N, double[] StopForce_N, double[] Entropy)
{
    /// <summary>The first step that counts.</summary>
    public int Settled => Math.Min(Travel_m.Length, (int)Math.Round(RideRun.Settling_s / Step_s));
}
