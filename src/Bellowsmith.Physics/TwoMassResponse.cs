using System.Numerics;

namespace Bellowsmith.Physics;

/// <summary>
/// Steady answer of a corner to a sinusoidal road, per vertical road velocity (up +), as complex amplitudes.
/// </summary>
/// <param name="BodyAcceleration_per_s">Body acceleration, up +, per road velocity, 1/s.</param>
/// <param name="Travel_s">Suspension travel, wheel minus body (bump +), per road velocity, s.</param>
/// <param name="TyreForce_N_s_per_m">Tyre force above its static value, pressing + , per road velocity, N·s/m.</param>
public readonly record struct TwoMassResponse(Complex BodyAcceleration_per_s, Complex Travel_s, Complex TyreForce_N_s_per_m);
