namespace Bellowsmith.Physics;
public readonly record struct Biquad(double B0, double B1, double B2, double A1, double A2);
public static class RideWeighting { public static Biquad[] Vertical(double sampleRate_Hz) => [new(1,0,0,0,0)]; }
