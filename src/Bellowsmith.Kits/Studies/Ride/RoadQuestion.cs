using Bellowsmith.Physics;

namespace Bellowsmith.Kits.Studies.Ride;

/// <summary>Which road, how fast and how long. Exactly one of class and velocity density says how rough it is.</summary>
/// <param name="Class">ISO 8608 class.</param>
/// <param name="VelocityDensity">One-sided density of the road's vertical velocity in time, (m/s)²/Hz.</param>
/// <param name="Speed_m_per_s">Driving speed.</param>
/// <param name="Time_s">Time driven, the first 5 s of it not counted.</param>
/// <param name="Seed">Which of the many roads of this roughness; the same number is the same road.</param>
public sealed record RoadQuestion(RoadClass? Class, double? VelocityDensity, double Speed_m_per_s, double Time_s = 60, ulong Seed = 1);
